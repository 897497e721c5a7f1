/** The Work table, and what stands in for the usual kinds of work that it leaves out. */
import { fault } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { MAKES, nameKey, sameName, type Profile } from '../job.ts';
import { SETTINGS, type SettingKey, type Shop, type ShopCells } from '../shop.ts';
import { PER_UNITS, type PerUnit } from '../work/per-units.ts';
import { minutesOf, USUAL_WORK, usualRows } from '../work/usual-work.ts';
import {
  isNotIncluded,
  isOfTheJob,
  WORK_CELLS,
  type WorkPer,
  type WorkRow,
} from '../work/work-row.ts';
import { cellsOf } from './cells-of.ts';
import { WORK_HEADINGS } from './headings/work-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** More than a week of work for one of anything is a slip. Common practice [C]. */
const MOST_MINUTES = 10_000;
const MOST_FACTOR = 20;
const MOST_MONEY = 1_000_000;
/** What a Work row and a setting may differ by and be the same: what is typed has few digits. */
const SAME_SHARE = 0.005;
/** By which a number typed in another unit may differ. */
const SAME_MINUTES = 1e-9;
const ALL = 'all';

/** What rows of Work are read by. */
export interface WorkFacts {
  readonly shop: Shop;
  /** Where the settings stand that somebody typed. */
  readonly shopCells: ShopCells;
  /** Settings left to their usual values. */
  readonly left: readonly SettingKey[];
  readonly profiles: readonly Pick<Profile, 'name'>[];
}

/** What is typed, in its order, then the usual rows. */
export function readWork(
  table: RawTable | undefined,
  facts: WorkFacts,
  reading: CellReading,
  findings: Findings,
): WorkRow[] {
  const rows = table === undefined ? [] : readRows(table, WORK_HEADINGS, reading, findings);
  const seen = new Set<string>();
  const typed = rows.flatMap((row) => {
    const read = readRow(row, facts);
    if (read === undefined) return [];
    const key = JSON.stringify([nameKey(read.work), forKey(read)]);
    if (seen.has(key)) row.refuse('workDone', fault('job.work-twice', 'workDone', read.work));
    seen.add(key);
    return repeatsUsual(row, read, facts.shop) ? [] : [read];
  });
  return [...typed, ...usualRows(facts.shop)];
}

/**
 * A row as `new` fills it in: its minutes, and whether it is in the price, as they are without it. So it says
 * nothing, and nothing is said of it. A usual kind that isn't in the price, named with no and without minutes,
 * is somebody's own word.
 */
function repeatsUsual(row: RowReader, read: WorkRow, shop: Shop): boolean {
  if (read.for !== undefined || read.range !== undefined || read.money !== 0) return false;
  // A workbook made for inches may be turned to millimetres, and the other way about.
  return (['in', 'mm'] as const).some((unit) => {
    const usual = usualRows({ ...shop, unit }).find(({ work }) => sameName(work, read.work));
    if (usual === undefined) return false;
    const isSaid = usual.isOurs || !row.isBlank('minutes');
    const isSame = Math.abs(read.minutes - usual.minutes) <= SAME_MINUTES * usual.minutes;
    return isSaid && isSame && read.per === usual.per && read.isOurs === usual.isOurs;
  });
}

function forKey({ for: whom }: WorkRow): string {
  if (whom === undefined) return '';
  return 'make' in whom ? `make ${whom.make}` : `profile ${nameKey(whom.profile)}`;
}

function readRow(row: RowReader, facts: WorkFacts): WorkRow | undefined {
  const work = row.requiredText('workDone');
  if (work === undefined) return undefined;
  const usual = USUAL_WORK.find((one) => sameName(one.work, work));
  const counted = readPer(row, usual?.per);
  if (counted === undefined) return undefined;
  const { per, holds } = counted;
  const whom = readFor(row, counted, facts.profiles);
  const money = readMoney(row, per);
  const isOurs = row.yesNo('ours', true);
  const minutes = readMinutes(row, work, counted, { isOurs, money, facts });
  if (minutes === undefined) return undefined;
  const range = readRange(row, { work, per, minutes, money, isOurs });
  return {
    work,
    per,
    minutes: minutes / holds,
    ...(range === undefined ? {} : { range: { low: range.low / holds, high: range.high / holds } }),
    money: money / holds,
    ...(whom === undefined ? {} : { for: whom }),
    isOurs,
    typed: { where: row.where('workDone'), cells: cellsOf(row, WORK_CELLS) },
  };
}

function readPer(row: RowReader, usual: WorkPer | undefined): PerUnit | undefined {
  if (!row.isBlank('per')) {
    const words = PER_UNITS.map(({ word }) => word);
    const said = row.word('per', words, 'unknown');
    return PER_UNITS.find(({ word }) => word === said);
  }
  if (usual !== undefined) return { per: usual, word: usual, holds: 1 };
  return row.refuse('per', fault('text.missing', 'per', null));
}

function readMoney(row: RowReader, per: WorkPer): number {
  const money = row.number('moneyEach', 0, MOST_MONEY, { currency: '' }) ?? 0;
  if (per === 'factor' && money > 0) {
    row.refuse('moneyEach', fault('job.work-factor-money', 'moneyEach', money));
  }
  return money;
}

function readFor(
  row: RowReader,
  { per }: PerUnit,
  profiles: WorkFacts['profiles'],
): WorkRow['for'] | undefined {
  const said = row.text('for');
  if (said === '' || nameKey(said) === ALL) return undefined;
  if (isOfTheJob(per)) {
    return row.refuse('for', fault('job.work-for-of-job', 'for', said, { details: { per } }));
  }
  const profile = profiles.find(({ name }) => sameName(name, said));
  if (profile !== undefined) return { profile: profile.name };
  const make = MAKES.find((one) => sameName(one, said));
  if (make !== undefined) return { make };
  const names = [...profiles.map(({ name }) => name), ...MAKES];
  const may = findNearNames(said, names).join(' or ');
  return row.refuse('for', fault('job.work-for-unknown', 'for', said, { details: { may } }));
}

/** For one of what Per says, in feet or in metres. */
function readMinutes(
  row: RowReader,
  work: string,
  { per, holds }: PerUnit,
  {
    isOurs,
    money,
    facts,
  }: { readonly isOurs: boolean; readonly money: number; readonly facts: WorkFacts },
): number | undefined {
  const usual = USUAL_WORK.find((one) => sameName(one.work, work) && one.per === per);
  if (row.isBlank('minutes')) {
    if (usual !== undefined) {
      return holds * minutesOf(usual, facts.shop);
    }
    if (money > 0 || !isOurs) return 0;
    return row.refuse('minutes', fault('job.work-needs-minutes', 'minutes', work));
  }
  const minutes = readEach(row, 'minutes', per);
  if (minutes === undefined) return undefined;
  if (per === 'factor' && minutes === 0) {
    return row.refuse('minutes', fault('number.not-positive', 'minutes', 0));
  }
  const setting = usual?.setting;
  const isForAll = row.isBlank('for') || nameKey(row.text('for')) === ALL;
  if (setting === undefined || !isOurs || !isForAll) return minutes;
  const isSaid = facts.shopCells[setting] !== undefined && !facts.left.includes(setting);
  const ofShop = usual === undefined ? minutes : holds * minutesOf(usual, facts.shop);
  if (isSaid && Math.abs(minutes - ofShop) > SAME_SHARE * Math.max(minutes, ofShop)) {
    const details = { setting: SETTINGS[setting].name };
    const limit = Number(ofShop.toPrecision(4));
    return row.refuse('minutes', fault('job.work-differs', 'minutes', minutes, { limit, details }));
  }
  return minutes;
}

/** Of one: its minutes, or a factor. */
function readEach(
  row: RowReader,
  heading: 'minutes' | 'minutesLow' | 'minutesHigh',
  per: WorkPer,
): number | undefined {
  const isFactor = per === 'factor';
  return row.number(heading, 0, isFactor ? MOST_FACTOR : MOST_MINUTES, {
    words: isFactor ? ['x', '×', 'times'] : ['min', 'mins', 'minutes'],
  });
}

/** Low and High, each standing in for a blank one by the minutes; refused where nothing would come of them. */
function readRange(
  row: RowReader,
  { work, per, minutes, money, isOurs }: Omit<WorkRow, 'range' | 'for' | 'typed'>,
): WorkRow['range'] | undefined {
  const headings = (['minutesLow', 'minutesHigh'] as const).filter((one) => !row.isBlank(one));
  const [first] = headings;
  if (first === undefined) return undefined;
  if (isNotIncluded({ work, per, isOurs, minutes, money })) {
    return row.refuse(first, fault('job.work-range-of-nothing', first, work));
  }
  const read = (heading: 'minutesLow' | 'minutesHigh'): number | undefined =>
    row.isBlank(heading) ? minutes : readEach(row, heading, per);
  const [low, high] = [read('minutesLow'), read('minutesHigh')];
  if (low === undefined || high === undefined) return undefined;
  if (low > minutes) {
    row.refuse('minutesLow', fault('job.work-low-above', 'minutesLow', low, { limit: minutes }));
  }
  if (high < minutes) {
    row.refuse(
      'minutesHigh',
      fault('job.work-high-below', 'minutesHigh', high, { limit: minutes }),
    );
  }
  return { low, high };
}
