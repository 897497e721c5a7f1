/**
 * What a written workbook tells of its making: from which inputs, on which day, by which version, and
 * how long was looked for a cheaper plan. So a print beside a changed list can be told to be behind.
 */
import { formatNumber, type DecimalSign } from '../core/units/format-number.ts';
import { sayDay, type CalendarDay } from '../core/units/calendar-day.ts';
import { VERSION } from '../core/version.ts';
import type { Job } from '../planning/job.ts';
import type { SearchEffort } from '../planning/search-effort.ts';
import type { TitleBlock } from '../planning/title-block.ts';
import type { SheetDescription, WorkbookDescription } from './grammar/description.ts';
import { headerOf, titleProperties } from './words/say-title.ts';

export interface Stamp {
  /** Of the input tables as they were read, see planning/input/fingerprint.ts. */
  readonly fingerprint: string;
  /** The caller's own, by a clock or as a person fixed it. */
  readonly day: CalendarDay;
  /** By the clock, `2026-11-30T09:12:00.000Z`; absent where a person fixed the day, so that bytes repeat. */
  readonly moment?: string;
  readonly effort: SearchEffort;
}

/** As much of the fingerprint as two people read to each other. */
const MARK_DIGITS = 8;

/** The inputs' mark, the same wherever a plan of them is shown. */
export function markOf({ fingerprint }: Pick<Stamp, 'fingerprint'>): string {
  return fingerprint.slice(0, MARK_DIGITS);
}

/** Whether a text could be such a mark. */
export function isMark(text: string): boolean {
  return text.length === MARK_DIGITS && /^[0-9a-f]+$/u.test(text);
}

/** `Inputs 7f3a2b1c, planned 30 Nov 2026 by Coveledger 0.6.0, 20 s of search at most.` */
export function sayStamp(stamp: Stamp, decimalSign: DecimalSign): string {
  const { day, effort } = stamp;
  return `Inputs ${markOf(stamp)}, planned ${sayDay(day)} by Coveledger ${VERSION}, ${sayEffort(effort, decimalSign)}.`;
}

function sayEffort(effort: SearchEffort, decimalSign: DecimalSign): string {
  if ('steps' in effort) return `${effort.steps} steps of search at most`;
  if (effort.seconds === 0) return 'the quick plan alone';
  return `${formatNumber(effort.seconds, 3, decimalSign)} s of search at most`;
}

/** The sheet with its job over every printed page that has a header, and the stamp after its footer. */
export function stampSheet(
  sheet: SheetDescription,
  { titleBlock, shop }: Pick<Job, 'titleBlock' | 'shop'>,
  stamp: Stamp | undefined,
): SheetDescription {
  const { print } = sheet;
  if (print.start !== undefined) return sheet;
  const made = stamp === undefined ? '' : `. ${sayStamp(stamp, shop.decimalSign)}`;
  const header = headerOf(titleBlock);
  return { ...sheet, print: { ...print, header, footer: `${print.footer}${made}` } };
}

/** The stamp for machines. */
export function madeToJson(stamp: Stamp) {
  const { fingerprint, day, effort } = stamp;
  return { inputs: fingerprint, mark: markOf(stamp), date: day, version: VERSION, ...effort };
}

type Told = Pick<WorkbookDescription, 'made' | 'properties'>;

/** What the file of a shop's workbook tells of itself. */
export function tellOfShop(title: TitleBlock, stamp: Stamp | undefined): Told {
  const ofJob = titleProperties(title);
  if (stamp === undefined) return { properties: ofJob };
  const { fingerprint, day, moment = day, effort } = stamp;
  return {
    made: moment,
    properties: {
      ...ofJob,
      'Inputs fingerprint': fingerprint,
      'Planned on': day,
      'Planned by': `Coveledger ${VERSION}`,
      'Search at most':
        'steps' in effort ? `${effort.steps} steps` : `${String(effort.seconds)} seconds`,
    },
  };
}

/** What the file of a client's copy tells: its day, and by what the shop finds the plan it is of. */
export function tellOfClient(title: TitleBlock, stamp: Stamp | undefined): Told {
  const ofJob = titleProperties(title);
  if (stamp === undefined) return { properties: ofJob };
  const { day, moment = day } = stamp;
  return {
    made: moment,
    properties: { ...ofJob, Number: markOf(stamp), Date: title.date ?? day },
  };
}
