/** What is said of a copy that came back, on the sheet Changes, on the terminal and in the pane alike. */
import type { Where } from '../../core/faults/fault.ts';
import { sayDay, type CalendarDay } from '../../core/units/calendar-day.ts';
import { count } from './print-length.ts';
import {
  changedLines,
  takenUp,
  type CopyLine,
  type ReturnedCopy,
} from '../../planning/compare/returned-copy.ts';

/** What a quantity is, and what becomes of one that was changed. */
export const COUNTS_NOTE =
  'A quantity counts pieces of its line’s length, each as it is cut. Nothing is changed in the job: change the rows named here by hand, and plan. A plan of the changed job tells its price; the one here is at the price each that was quoted.';

export const AS_THEY_WERE = 'Every quantity is as quoted.';

/** `number 7f3a2b1c, dated 30 Nov 2026` */
export function sayNumbered(number: string, day: CalendarDay | undefined): string {
  return `number ${number}${day === undefined ? ', without a date' : `, dated ${sayDay(day)}`}`;
}

/** `2 of 14 lines have another quantity than quoted.` */
export function sayChanged(copy: ReturnedCopy): string {
  const changed = changedLines(copy).length;
  if (changed === 0) return AS_THEY_WERE;
  return `${changed} of ${count(copy.lines.length, 'line')} ${changed === 1 ? 'has' : 'have'} another quantity than quoted.`;
}

/** `Taken up: A, Crown in the hall. Write yes under Taken on Options, and plan.`; undefined where nobody takes one up. */
export function sayTaken(copy: ReturnedCopy): string | undefined {
  const names = takenUp(copy).map(({ name }) => name);
  if (names.length === 0) return undefined;
  const again =
    names.length === 1
      ? ''
      : ' Each is at the price it had by itself; together they are priced again.';
  return `Taken up: ${names.join(', ')}. Write yes under Taken in ${names.length === 1 ? 'its rows' : 'their rows'} of Options, and plan.${again}`;
}

/** What is otherwise besides; undefined where nothing is. */
export function sayOtherwise({ findings }: ReturnedCopy): string | undefined {
  return findings.length === 0
    ? undefined
    : `Besides quantities, ${count(findings.length, 'thing is', 'things are')} not as handed over: see each at its cell. No price is taken over from the copy.`;
}

export function sayAccepted({ accepted: { name, date } }: ReturnedCopy): string {
  if (name === '' && date === '') return 'The line to sign is empty.';
  return `On the line to sign: ${name === '' ? 'no name' : name}, ${date === '' ? 'no date' : date}.`;
}

/** A row of the job's inputs that pieces of a line come from. */
export interface RowOfLine {
  readonly run: string;
  readonly where: Where;
  readonly pieces: number;
}

/** The rows that a line's pieces come from: where its quantity is to be changed. */
export function rowsOfLine({ pieces }: Pick<CopyLine, 'pieces'>): RowOfLine[] {
  const rows = new Map<string, RowOfLine>();
  for (const { run, where } of pieces) {
    const key = JSON.stringify([run, where]);
    const before = rows.get(key)?.pieces ?? 0;
    rows.set(key, { run, where, pieces: before + 1 });
  }
  return [...rows.values()];
}

/** Rows named one by one; more are only counted. */
const MOST_NAMED = 8;

function sayRow(where: Where): string {
  return 'sheet' in where
    ? `${where.sheet}, row ${/\d+$/u.exec(where.cell)?.[0] ?? ''}`
    : `${where.file}, line ${where.line}`;
}

/** `north, 2 pieces (Runs, row 2); east, 1 piece (Runs, row 4)` */
export function sayRowsOfLine(line: Pick<CopyLine, 'pieces'>): string {
  const rows = rowsOfLine(line);
  const named = rows
    .slice(0, MOST_NAMED)
    .map(({ run, where, pieces }) => `${run}, ${count(pieces, 'piece')} (${sayRow(where)})`);
  const more = rows.length - named.length;
  return `${named.join('; ')}${more > 0 ? `; and ${count(more, 'row')} more` : ''}`;
}
