/** A client's copy as it came back: its cells as they stand, and whether a workbook has one at all. */
import { columnLetters } from '../../core/cells/cell-range.ts';
import type { CalendarDay } from '../../core/units/calendar-day.ts';
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import { cleanText } from '../grammar/check/clean-text.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import { isMark } from '../stamp.ts';
import { LINES } from './client-columns.ts';
import { COPY_SHEET, MARK_LABEL, NUMBER_LABEL, THIS_ROOM } from './client-words.ts';

/** A sheet of a workbook. */
export interface CopySheet {
  readonly name: string;
  /** Those that aren't blank. */
  readonly rows: readonly RawRow[];
  /** Its cells that hold a formula: C12. */
  readonly formulas: ReadonlySet<string>;
}

/** A workbook that is a client's copy. */
export interface CopyFile {
  readonly sheet: CopySheet;
  /** By what its plan is found; as its file tells it, or its sheet where that is lost. */
  readonly number?: string;
  /** As its sheet has it now; undefined where that is no day. */
  readonly day?: CalendarDay;
}

/** What a workbook's file tells of itself that a copy tells too. */
const NUMBER_PROPERTY = 'Number';

/**
 * The client's copy that a workbook is: by its headings, whatever its sheet is called, and by the number
 * that its file tells. The shop's own workbook has the same headings on its sheet Client.
 *
 * @param properties custom document properties of its file
 */
export function copyIn(
  sheets: readonly CopySheet[],
  properties: Readonly<Record<string, unknown>>,
): CopyFile | undefined {
  if (sheets.some(({ name }) => name === SHEET_NAMES.production)) return undefined;
  const told = markIn(properties[NUMBER_PROPERTY]);
  const sheet =
    sheets.find(({ rows }) => columnsIn(rows) !== undefined) ??
    (told === undefined ? undefined : sheets.find(({ name }) => name === COPY_SHEET));
  if (sheet === undefined) return undefined;
  const labels = [MARK_LABEL, NUMBER_LABEL];
  const [onSheet] = labels.flatMap((label) =>
    besides(sheet, label).flatMap((cell) => markIn(cell) ?? []),
  );
  const day = besides(sheet, 'Date').find(
    (cell) => typeof cell === 'object' && cell?.kind === 'date' && cell.day !== undefined,
  );
  const number = told ?? onSheet;
  return {
    sheet,
    ...(number === undefined ? {} : { number }),
    ...(typeof day === 'object' && day?.kind === 'date' && day.day !== undefined
      ? { day: day.day }
      : {}),
  };
}

/** A number that a program took for one has lost its zeros. */
function markIn(value: unknown): string | undefined {
  const text = typeof value === 'number' ? String(value).padStart(8, '0') : value;
  return typeof text === 'string' && isMark(text.trim()) ? text.trim() : undefined;
}

/** The first cell that is filled behind each of these labels. */
function besides({ rows }: CopySheet, label: string): RawCell[] {
  return rows.flatMap(({ cells }) => {
    const at = cells.findIndex((cell) => textOf(cell) === label);
    const next = at < 0 ? undefined : cells.slice(at + 1).find((cell) => cell !== null);
    return next === undefined ? [] : [next];
  });
}

/** By the columns of the copy as it was handed over, from 0: where each stands now. */
export type CopyColumns = readonly number[];

const HEADED = ['length', 'quantity', 'asQuoted', 'together', 'priceEach', 'price'] as const;
/** Before what a heading says of units and money. */
const WORDS: Readonly<Record<(typeof HEADED)[number], string>> = {
  length: 'Length each',
  quantity: 'Quantity',
  asQuoted: 'As quoted',
  together: 'Together (',
  priceEach: 'Price each, about (',
  price: 'Price (',
};

/** The columns by the first row that has all headings of a room's lines; a column may have come in between. */
export function columnsIn(rows: readonly RawRow[]): CopyColumns | undefined {
  for (const { cells } of rows) {
    const found = columnsOfHeadings(cells);
    if (found !== undefined) return found;
  }
  return undefined;
}

function columnsOfHeadings(cells: readonly RawCell[]): CopyColumns | undefined {
  const texts = Array.from(cells, textOf);
  const columns = HEADED.map((name) => {
    const words = WORDS[name];
    return texts.findIndex((text) =>
      words.endsWith('(') ? text.startsWith(words) : text === words,
    );
  });
  const [length = -1] = columns;
  const room = texts.findLastIndex((text, at) => text !== '' && at < length);
  return columns.includes(-1) || room < 0 ? undefined : [room, ...columns];
}

/** What a row is to the lines of a room. */
export type LineRow =
  | { readonly is: 'headings'; readonly room: string }
  | { readonly is: 'line' | 'sum'; readonly room: string }
  | { readonly is: 'other' };

const CONTINUED = /, continued$/u;

/**
 * Walks rows, and tells of each whether it belongs to a block of lines: from headings, which bear the
 * room's name, to the row that sums it. A note among the lines is none of them.
 */
export function walkLines(rows: readonly RawRow[], columns: CopyColumns): LineRow[] {
  const at = (cells: readonly RawCell[], name: 'molding' | 'quantity' | 'asQuoted' | 'price') =>
    cells[columns[LINES.start(name)] ?? 0] ?? null;
  let room: string | undefined;
  return rows.map(({ cells }): LineRow => {
    const name = textOf(at(cells, 'molding'));
    if (
      textOf(at(cells, 'quantity')) === WORDS.quantity &&
      textOf(at(cells, 'asQuoted')) === WORDS.asQuoted
    ) {
      room = name.replace(CONTINUED, '');
      return { is: 'headings', room };
    }
    if (room === undefined) return { is: 'other' };
    const of = { room };
    if (name === THIS_ROOM) {
      room = undefined;
      return { is: 'sum', ...of };
    }
    const isFilled = (['quantity', 'asQuoted', 'price'] as const).some(
      (column) => at(cells, column) !== null,
    );
    return isFilled ? { is: 'line', ...of } : { is: 'other' };
  });
}

/** What a text cell says, on one line; nothing of any other. */
export function textOf(cell: RawCell | undefined): string {
  return typeof cell === 'string' ? cleanText(cell).replace(/\s+/gu, ' ').trim() : '';
}

export function cellAt(row: RawRow, column: number): string {
  return `${columnLetters(column)}${row.line}`;
}
