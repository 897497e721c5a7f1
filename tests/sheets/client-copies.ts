/** Clients' sheets as tests look at them: rooms, lines and sums by the letters of their columns. */
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { CellDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { type JobPlan, isPriced } from '../../src/planning/job-plan.ts';
import { rowWith } from './sheet-jobs.ts';

/** A row from 1 with its cells from A to G. */
export interface CopyRow {
  readonly row: number;
  readonly cells: readonly (CellDescription | null)[];
}

export interface CopyRoom {
  readonly name: string;
  readonly lines: readonly CopyRow[];
  readonly sum: CopyRow;
}

/** Every room with lines: under headings that say Quantity, up to the row "This room". */
export function roomsOf({ rows }: SheetDescription): CopyRoom[] {
  const rooms: CopyRoom[] = [];
  let name = '';
  let lines: CopyRow[] = [];
  rows.forEach(({ cells }, index) => {
    const row = { row: index + 1, cells };
    if (cells[2]?.value === 'Quantity') {
      if (lines.length === 0) name = String(cells[0]?.value);
    } else if (cells[0]?.value === 'This room') {
      rooms.push({ name, lines, sum: row });
      lines = [];
    } else if (cells[2]?.style === 'inputWhole') lines.push(row);
  });
  return rooms;
}

/** Its profile, without what it goes around and which piece of it it is. */
export function moldingOf({ cells }: CopyRow): string {
  return String(cells[0]?.value)
    .replace(/: \d+ (?:door|window|cased opening).*$/u, '')
    .replace(', return to the wall', '');
}

export function numberIn({ cells, row }: CopyRow, column: string): number {
  const value = cells['ABCDEFG'.indexOf(column)]?.value;
  if (typeof value !== 'number') throw new Error(`${column}${row} holds no number.`);
  return value;
}

export function rowNamed(sheet: SheetDescription, label: string): CopyRow {
  const at = rowWith(sheet, label);
  return { row: at + 1, cells: sheet.rows[at]?.cells ?? [] };
}

/** Where options are taken up. */
export function optionCells(sheet: SheetDescription, { options }: JobPlan): string[] {
  return options.filter(isPriced).map((_, at) => `C${rowNamed(sheet, 'Option').row + 1 + at}`);
}

/** What stands beside what is to be paid, where the rooms end. */
export function payAgain({ options }: JobPlan): string {
  return `To pay, all rooms${options.some(isPriced) ? ', options taken up' : ''} and tax`;
}

/** Where a copy's file holds its one sheet. */
export const COPY_PART = 'xl/worksheets/sheet1.xml';

/** What stands in a cell after a person was there: a number, a text, a formula with its value, an error, nothing. */
export type Typed =
  | number
  | string
  | null
  | { readonly formula: string; readonly value: number }
  | { readonly error: string };

/** The file as a person leaves it who types into cells: C12. */
export function typeInto(bytes: Uint8Array, typed: Readonly<Record<string, Typed>>): Uint8Array {
  const parts = unzipSync(bytes);
  let xml = strFromU8(parts[COPY_PART]!);
  for (const [at, value] of Object.entries(typed)) {
    const cell = new RegExp(`<c r="${at}"((?: s="\\d+")?)[^>]*?(?:/>|>.*?</c>)`, 'u');
    if (!cell.test(xml)) throw new Error(`The sheet has no cell ${at}.`);
    xml = xml.replace(cell, (_, style: string) => `<c r="${at}"${style}${cellOf(value)}`);
  }
  return zipSync({ ...parts, [COPY_PART]: strToU8(xml) });
}

function cellOf(value: Typed): string {
  if (value === null) return '/>';
  if (typeof value === 'number') return `><v>${value}</v></c>`;
  if (typeof value === 'string') return ` t="inlineStr"><is><t>${value}</t></is></c>`;
  if ('error' in value) return ` t="e"><v>${value.error}</v></c>`;
  return `><f>${value.formula}</f><v>${value.value}</v></c>`;
}

/** As a program saves it that keeps no custom properties. */
export function withoutProperties(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const custom = 'docProps/custom.xml';
  const link = /<(?:Override|Relationship)[^>]*docProps\/custom\.xml[^>]*\/>/gu;
  const others = Object.entries(parts).filter(([name]) => name !== custom);
  if (others.length === Object.keys(parts).length) throw new Error('The file has no properties.');
  return zipSync(
    Object.fromEntries(
      others.map(([name, part]) =>
        /(?:\.rels|\[Content_Types\]\.xml)$/u.test(name)
          ? [name, strToU8(strFromU8(part).replace(link, ''))]
          : [name, part],
      ),
    ),
  );
}
