/** Clients' copies as they come back: typed over, widened, read again. */
import { expect } from '@jest/globals';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type { RawCell, RawRow } from '../../src/planning/input/raw-table.ts';
import type { ReturnedCopy } from '../../src/planning/compare/returned-copy.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { copyIn, type CopyFile, type CopySheet } from '../../src/sheets/client/copy-sheet.ts';
import { readCopy } from '../../src/sheets/client/read-copy.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { rawRowsOf } from './sheet-jobs.ts';

export const STAMP = { fingerprint: '0a1b2c3d4e5f6071', day: '2026-11-30', effort: { steps: 20 } };

/** The sheet as a host reads it: what a formula came to, and where one stands. */
export function cellsOf(sheet: SheetDescription): CopySheet {
  const formulas = sheet.rows.flatMap(({ cells }, row) =>
    cells.flatMap((one, at) => (one?.formula === undefined ? [] : [`${'ABCDEFG'[at]!}${row + 1}`])),
  );
  const rows = rawRowsOf(sheet).map(({ line, cells }) => ({
    line,
    cells: cells.map((cell): RawCell => (cell === '' ? null : cell)),
  }));
  return { name: sheet.name, rows, formulas: new Set(formulas) };
}

export function copyOf(plan: JobPlan): CopyFile {
  const [sheet] = cleanDescription(describeClientCopy(plan, STAMP)).sheets;
  const found = copyIn([cellsOf(sheet!)], { Number: '0a1b2c3d' });
  if (found === undefined) throw new Error('The copy is not known for one.');
  return found;
}

export function read(plan: JobPlan, copy: CopyFile): ReturnedCopy {
  const outcome = readCopy(plan, STAMP, copy, 'copy.xlsx');
  expect(outcome.ok ? [] : outcome.faults.map(({ message }) => message)).toEqual([]);
  if (!outcome.ok) throw new Error('The copy is refused.');
  return outcome.value;
}

export const COLUMN = 'ABCDEFGHIJ';

/** With other values in cells, named as on the sheet; what formulas show stays as it was. */
export function typed(copy: CopyFile, values: Readonly<Record<string, RawCell>>): CopyFile {
  const rows = copy.sheet.rows.map(({ line, cells }) => {
    const now = [...cells];
    for (const [at, value] of Object.entries(values)) {
      if (Number(at.slice(1)) !== line) continue;
      const column = COLUMN.indexOf(at[0]!);
      while (now.length < column) now.push(null);
      now[column] = value;
    }
    return { line, cells: now };
  });
  return withRows(copy, rows);
}

export const withRows = (copy: CopyFile, rows: readonly RawRow[]): CopyFile => ({
  ...copy,
  sheet: { ...copy.sheet, rows },
});

/** With a row more before a line, or a column more before one, from 0: cells and formulas move on. */
export function widened(copy: CopyFile, line: number, column: number): CopyFile {
  const rows = copy.sheet.rows.map((row) => ({
    line: row.line < line ? row.line : row.line + 1,
    cells:
      column < row.cells.length
        ? [...row.cells.slice(0, column), null, ...row.cells.slice(column)]
        : row.cells,
  }));
  const formulas = [...copy.sheet.formulas].map((at) => {
    const [place, row] = [COLUMN.indexOf(at[0]!), Number(at.slice(1))];
    return `${COLUMN[place < column ? place : place + 1]!}${row < line ? row : row + 1}`;
  });
  return { ...copy, sheet: { ...copy.sheet, rows, formulas: new Set(formulas) } };
}

export const NONE = 9_999;

/** Line, from 1, of the first row that says this in its first cell, from a line on. */
export function lineOf({ sheet }: CopyFile, text: string | RegExp, from = 1): number {
  const is = (cell: RawCell | undefined): boolean =>
    typeof cell === 'string' && (typeof text === 'string' ? cell === text : text.test(cell));
  const row = sheet.rows.find(({ line, cells }) => line >= from && is(cells[0]));
  if (row === undefined) throw new Error(`No row says ${String(text)}.`);
  return row.line;
}
