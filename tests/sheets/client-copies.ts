/** Clients' sheets as tests look at them: rooms, lines and sums by the letters of their columns. */
import type { CellDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { isPriced, type JobPlan } from '../../src/planning/job-plan.ts';
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
