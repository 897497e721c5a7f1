/** The table Hours: what the job took in truth. */
import { fault, placeFault, sayWhere, type Fault } from '../../core/faults/fault.ts';
import { parseNumber, sayGiven } from '../../core/units/number.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { nameKey, sameName, type Job, type Profile } from '../job.ts';
import { HOURS_CELLS, type HoursRow } from '../work/hours-row.ts';
import { isOfTheJob, type WorkRow } from '../work/work-row.ts';
import { cellsOf } from './cells-of.ts';
import { HOURS_HEADINGS } from './headings/hours-headings.ts';
import { tableArgument, type RawTable } from './raw-table.ts';
import { plainValue, type CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** More than a person's year in one row is a slip. Common practice [C]. */
const MOST_HOURS = 2_000;
const HOURS_PER_DAY = 24;
const MINUTES_PER_HOUR = 60;
/** What is typed has few digits; minutes over sixty have more. */
const SAME_HOURS = 1e-9;
const ALL = 'all';

const OF_HOURS = ['h', 'hr', 'hrs', 'hour', 'hours'];
const OF_MINUTES = /^([\d.,]+)\s*(?:m|min|mins|minutes?)\.?$/iu;
/** `1:30`, and `1 h 30 min`. */
const CLOCK = /^(\d{1,4})(?::|\s*h(?:rs?|ours?)?\s*)([0-5]?\d)\s*(?:m|min|mins|minutes?)?$/iu;

/** What rows of Hours are read by. */
interface HoursFacts {
  readonly work: readonly WorkRow[];
  readonly profiles: readonly Pick<Profile, 'name'>[];
}

/** Kinds of work and profiles that there are, and hours that can be; refused is what can't be told apart. */
export function readHours(
  table: RawTable | undefined,
  facts: HoursFacts,
  reading: CellReading,
  findings: Findings,
): HoursRow[] {
  const rows = table === undefined ? [] : readRows(table, HOURS_HEADINGS, reading, findings);
  const read = rows.flatMap((row) => readRow(row, facts, reading) ?? []);
  findings.faults.push(...overlaps(read));
  findings.cautions.push(...repeated(read), ...longDays(read));
  return read;
}

function readRow(row: RowReader, facts: HoursFacts, reading: CellReading): HoursRow | undefined {
  const day = row.day('dayOfHours', 'dayOfHours');
  const said = row.requiredText('workDone');
  const kinds = facts.work.filter(({ work }) => said !== undefined && sameName(work, said));
  const isAll = said !== undefined && nameKey(said) === ALL && kinds.length === 0;
  if (said !== undefined && !isAll) judgeWork(row, said, kinds, facts);
  const profile = readProfile(row, facts, kinds);
  const hours = readHoursOf(row, reading);
  if (said === undefined || hours === undefined) return undefined;
  return {
    ...(day === undefined ? {} : { day }),
    ...(isAll ? {} : { work: kinds[0]?.work ?? said }),
    ...(profile === undefined ? {} : { profile }),
    hours,
    cells: cellsOf(row, HOURS_CELLS),
  };
}

function judgeWork(
  row: RowReader,
  said: string,
  kinds: readonly WorkRow[],
  { work }: HoursFacts,
): void {
  if (kinds.length === 0) {
    const names = [...new Set(work.map((one) => one.work)), ALL];
    const details = { may: findNearNames(said, names).join(' or ') };
    row.refuse('workDone', fault('job.hours-work-unknown', 'workDone', said, { details }));
  } else if (kinds.every(({ per }) => per === 'factor')) {
    row.refuse('workDone', fault('job.hours-of-factor', 'workDone', said));
  }
}

function readProfile(
  row: RowReader,
  { profiles }: HoursFacts,
  kinds: readonly WorkRow[],
): string | undefined {
  const said = row.text('profile');
  if (said === '' || nameKey(said) === ALL) return undefined;
  const profile = profiles.find(({ name }) => sameName(name, said));
  if (profile === undefined) {
    return row.refuse('profile', fault('job.profile-unknown', 'profile', said));
  }
  const [first] = kinds;
  if (first !== undefined && kinds.every(({ per }) => isOfTheJob(per))) {
    const details = { work: first.work };
    return row.refuse('profile', fault('job.hours-profile-of-job', 'profile', said, { details }));
  }
  return profile.name;
}

/** More than 0. A number is hours; a clock's 1:30, and what says minutes, are read too. */
function readHoursOf(row: RowReader, reading: CellReading): number | undefined {
  if (row.isBlank('hours')) return row.refuse('hours', fault('number.unreadable', 'hours', null));
  const hours = hoursIn(row, reading);
  if (hours === undefined) return undefined;
  if (hours <= 0) return row.refuse('hours', fault('number.not-positive', 'hours', hours));
  if (hours > MOST_HOURS) {
    const limit = MOST_HOURS;
    return row.refuse('hours', fault('number.too-large', 'hours', Math.round(hours), { limit }));
  }
  return hours;
}

function hoursIn(row: RowReader, reading: CellReading): number | undefined {
  const cell = row.cell('hours');
  if (typeof cell === 'object' && cell?.kind === 'date') {
    return row.refuse('hours', fault('job.hours-as-time', 'hours', null));
  }
  const value = row.value('hours');
  if (!value.ok || value.value === null) return undefined;
  const given = plainValue(value.value);
  const text = typeof given === 'string' ? given.trim() : '';
  const [, whole, minutes] = CLOCK.exec(text) ?? [];
  if (whole !== undefined) return Number(whole) + Number(minutes) / MINUTES_PER_HOUR;
  const [, inMinutes] = OF_MINUTES.exec(text) ?? [];
  if (inMinutes !== undefined) {
    const read = parseNumber(inMinutes, 'hours', reading.decimalSign);
    if (read.ok) return read.value / MINUTES_PER_HOUR;
  }
  // A number in a text that is none of these has its fault from whoever reads numbers.
  const isNumber = typeof given === 'number' || parseNumber(text, 'hours').ok || /\d/u.test(text);
  if (!isNumber || text.includes(':')) {
    return row.refuse('hours', fault('job.hours-unreadable', 'hours', sayGiven(given)));
  }
  return row.number('hours', -Infinity, Infinity, { words: OF_HOURS });
}

/** Of what it may hold hours: `smooth of Crown`, `smooth`, `all work`. */
export function sayScope({ work, profile }: Pick<HoursRow, 'work' | 'profile'>): string {
  return `${work ?? 'all work'}${profile === undefined ? '' : ` of ${profile}`}`;
}

/** Rows of the same work on the same moldings are summed. */
export function scopeKey({ work, profile }: Pick<HoursRow, 'work' | 'profile'>): string {
  return JSON.stringify([work, profile].map((name) => (name === undefined ? '' : nameKey(name))));
}

/** Hours of which some may be in others: a kind and all work, or a molding and all of them. */
function overlaps(rows: readonly HoursRow[]): Fault[] {
  const mayBeSame = (one: string | undefined, other: string | undefined): boolean =>
    one === undefined || other === undefined || sameName(one, other);
  return rows.flatMap((row, at) => {
    const other = rows
      .slice(0, at)
      .find(
        (one) =>
          scopeKey(one) !== scopeKey(row) &&
          mayBeSame(one.work, row.work) &&
          mayBeSame(one.profile, row.profile),
      );
    if (other === undefined) return [];
    const details = { other: sayScope(other), row: sayWhere(other.cells.workDone) };
    const found = fault('job.hours-overlap', 'workDone', sayScope(row), { details });
    return [placeFault(found, row.cells.workDone)];
  });
}

function repeated(rows: readonly HoursRow[]): Fault[] {
  const seen = new Set<string>();
  return rows.flatMap((row) => {
    const key = JSON.stringify([row.day, scopeKey(row), row.hours]);
    const isAgain = seen.has(key);
    seen.add(key);
    if (!isAgain) return [];
    const details = { day: row.day ?? '' };
    const twice = fault('job.hours-twice', 'hours', rounded(row.hours), { details });
    return [placeFault(twice, row.cells.hours)];
  });
}

/** Days with more hours than a day has: once a day, where it comes to that. */
function longDays(rows: readonly HoursRow[]): Fault[] {
  const days = new Map<string, number>();
  return rows.flatMap(({ day, hours, cells }) => {
    if (day === undefined) return [];
    const before = days.get(day) ?? 0;
    days.set(day, before + hours);
    const most = HOURS_PER_DAY + SAME_HOURS;
    if (before > most || before + hours <= most) return [];
    const details = { day };
    const given = rounded(before + hours);
    const long = fault('job.hours-per-day', 'hours', given, { limit: HOURS_PER_DAY, details });
    return [placeFault(long, cells.hours)];
  });
}

function rounded(hours: number): number {
  return Math.round(hours * 100) / 100;
}

/** Hours of no job: there is nothing that they could have gone into. */
export function checkHours({ hours, runs, openings }: Job): Fault[] {
  if (hours.length === 0 || runs.length + openings.length > 0) return [];
  return [fault('job.hours-without-job', tableArgument('Hours'), null)];
}
