/** One described sheet as the grid holds it. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IWorksheetData,
} from '@univerjs/core';
import { soundRange } from '../../core/cells/cell-range.ts';
import type { CellDescription, SheetDescription } from '../../sheets/grammar/description.ts';
import { columnPixels, POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { rowHeights, STANDARD_POINTS } from '../../sheets/grammar/row-height.ts';
import type { StyleName } from '../../sheets/grammar/styles.ts';
import { customDataFor, type SheetOwner } from './sheet-metadata.ts';

const PIXELS_PER_POINT = 96 / POINTS_PER_INCH;
/** Blank rows and columns beyond what is described, for the person to go on in. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 8;
const LEAST_COLUMNS = 26;

/** A sheet as the grid takes it in: what is left out is the grid's own usual value. */
export type GridSheetData = Partial<IWorksheetData>;

/** A description that was cleaned and checked. Styles are those of gridStyles. */
export function sheetData(sheet: SheetDescription, id: string, owner: SheetOwner): GridSheetData {
  const merges = (sheet.merges ?? []).map(soundRange);
  const widest = Math.max(
    sheet.columns.length,
    ...sheet.rows.map(({ cells }) => cells.length),
    ...merges.map(({ right }) => right + 1),
  );
  const { rows = 0, columns = 0 } = sheet.freeze ?? {};
  return {
    id,
    name: sheet.name,
    tabColor: '',
    hidden: BooleanNumber.FALSE,
    freeze: {
      xSplit: columns,
      ySplit: rows,
      startRow: rows === 0 ? -1 : rows,
      startColumn: columns === 0 ? -1 : columns,
    },
    rowCount: sheet.rows.length + SPARE_ROWS,
    columnCount: Math.max(LEAST_COLUMNS, widest + SPARE_COLUMNS),
    defaultColumnWidth: 73,
    defaultRowHeight: STANDARD_POINTS * PIXELS_PER_POINT,
    mergeData: merges.map(({ top, left, bottom, right }): IRange => ({
      startRow: top,
      startColumn: left,
      endRow: bottom,
      endColumn: right,
    })),
    cellData: cells(sheet, merges),
    rowData: rowData(sheet),
    columnData: Object.fromEntries(
      sheet.columns.map(({ width }, column) => [column, { w: columnPixels(width) }]),
    ),
    rowHeader: { width: 46 },
    columnHeader: { height: 20 },
    showGridlines: BooleanNumber.TRUE,
    rightToLeft: BooleanNumber.FALSE,
    custom: customDataFor(sheet, owner),
  };
}

function rowData(sheet: SheetDescription): IWorksheetData['rowData'] {
  return Object.fromEntries(
    Array.from(rowHeights(sheet), ([row, { height }]) => [
      row,
      { h: height * PIXELS_PER_POINT, ia: BooleanNumber.FALSE },
    ]),
  );
}

function cells(
  sheet: SheetDescription,
  merges: readonly ReturnType<typeof soundRange>[],
): IWorksheetData['cellData'] {
  const made: Record<number, Record<number, ICellData>> = {};
  sheet.rows.forEach(({ cells: row }, r) => {
    const ofRow: Record<number, ICellData> = {};
    const count = Math.max(row.length, sheet.columns.length);
    for (let c = 0; c < count; c++) {
      const cell = row[c] ?? null;
      const style = cell === null ? sheet.columns[c]?.style : undefined;
      if (cell !== null) ofRow[c] = cellData(cell);
      else if (style !== undefined) ofRow[c] = { s: style };
    }
    made[r] = ofRow;
  });
  // What a merge hides has its first cell's style, or its border would have gaps.
  for (const { top, left, bottom, right } of merges) {
    const style: StyleName = sheet.rows[top]?.cells[left]?.style ?? 'plain';
    for (let r = top; r <= bottom; r++) {
      const ofRow = (made[r] ??= {});
      for (let c = left; c <= right; c++) if (r !== top || c !== left) ofRow[c] = { s: style };
    }
  }
  return made;
}

function cellData({ value, formula, style = 'plain' }: CellDescription): ICellData {
  const styled = { s: style };
  if (formula !== undefined) return { ...styled, f: `=${formula}`, ...held(value) };
  return value === null || value === '' ? styled : { ...styled, ...held(value) };
}

function held(value: CellDescription['value']): Pick<ICellData, 'v' | 't'> {
  if (typeof value === 'string') return { v: value, t: CellValueType.STRING };
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return {};
}
