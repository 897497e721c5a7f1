/** The rows of a sheet of the grid, as the tables' reader takes them. */
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import { MOST_TABLE_COLUMNS } from '../tables/limits.ts';
import { isBlankRow } from '../tables/raw-rows.ts';
import { shownCell } from '../tables/shown-number.ts';
import type { GridSheet } from './grid-sheets.ts';
import type { Grid } from './grid.ts';
import { cellText } from './to-file/cell-text.ts';

/** As files and the grid itself show it: #N/A, #DIV/0!, #NAME?. */
const ERROR = /^#[A-Z/0-9]+[!?]?$/u;

/** What stands in each cell by row and column from 0; where nothing does, nothing is there. */
type Cells = Nullable<
  Readonly<Record<number, Nullable<Readonly<Record<number, Nullable<ICellData>>>>>>
>;

/** Those that aren't blank, their cells from column A on; columns beyond those looked at are left out. */
export function rowsOf(grid: Grid, sheet: GridSheet): RawRow[] {
  const own: Cells = sheet.worksheet.getCellMatrix().getMatrix();
  const spilled = spilledCells(grid, sheet.id);
  const lines = new Set([own, spilled].flatMap((cells) => indexes(cells)));
  const rows: RawRow[] = [];
  for (const row of Array.from(lines).sort((one, other) => one - other)) {
    const cells: RawCell[] = [];
    for (const part of [own, spilled]) {
      for (const column of indexes(part?.[row])) {
        if (column >= MOST_TABLE_COLUMNS || (cells[column] ?? null) !== null) continue;
        const cell = part?.[row]?.[column];
        if (cell !== null && cell !== undefined) {
          cells[column] = rawCell(cell, part === spilled, sheet, row, column);
        }
      }
    }
    const whole = Array.from(cells, (cell: RawCell | undefined) => cell ?? null);
    if (isBlankRow(whole)) continue;
    const last = whole.findLastIndex((cell) => cell !== null);
    rows.push({ line: row + 1, cells: whole.slice(0, last + 1) });
  }
  return rows;
}

/** Answers that stand in other cells than their formula: the grid keeps them apart. */
function spilledCells(grid: Grid, sheet: string): Cells {
  const formulas = grid.services.get(FormulaDataModel);
  return formulas.getArrayFormulaCellData()[grid.book().getId()]?.[sheet];
}

function indexes(cells: Nullable<Readonly<Record<number, unknown>>>): number[] {
  return Object.keys(cells ?? {}).map(Number);
}

function rawCell(
  cell: ICellData,
  isAnswer: boolean,
  { worksheet }: GridSheet,
  row: number,
  column: number,
): RawCell {
  const { v, t, p, f, si } = cell;
  if (p !== null && p !== undefined) return cellText(p) || null;
  const hasFormula = isAnswer || (f ?? si ?? '') !== '';
  if (v === null || v === undefined) return hasFormula ? { kind: 'uncalculated' } : null;
  if (t === CellValueType.BOOLEAN) return v === true || v === 1 || v === 'TRUE' || v === '1';
  if (typeof v === 'boolean') return v;
  const number = typeof v === 'string' && t === CellValueType.NUMBER && v !== '' ? Number(v) : v;
  if (typeof number === 'number' && Number.isFinite(number)) {
    const format = worksheet.getComposedCellStyle(row, column).n?.pattern ?? '';
    return shownCell(number, format);
  }
  if (v === '') return null;
  // A text that looks like an error's code is told from an error by its type.
  const untyped = t === null || t === undefined;
  const text = String(v);
  return ERROR.test(text) && (hasFormula || untyped) ? { kind: 'error', text } : text;
}
