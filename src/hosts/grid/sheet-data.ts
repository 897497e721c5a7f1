/** One sheet of a plain workbook as the grid holds it. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IWorksheetData,
} from '@univerjs/core';
import { POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { STANDARD_POINTS } from '../../sheets/grammar/row-height.ts';
import type { PlainCell, PlainSheet } from '../workbook/plain-workbook.ts';
import { toCustomData } from './sheet-metadata.ts';

const PIXELS_PER_POINT = 96 / POINTS_PER_INCH;
/** Blank rows and columns beyond what is there, for the person to go on in. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 8;
const LEAST_COLUMNS = 26;

/**
 * Pixels between a cell's edge and its text, on the screen alone. Rows of our own sheets are as high as their lines
 * on paper: more air would cut these off.
 */
const AIR = { t: 2, r: 5, b: 2, l: 5 };
const AIR_ON_OURS = { t: 1, r: 3, b: 1, l: 3 };

/** A sheet as the grid takes it in: what is left out is the grid's own usual value. */
export type GridSheetData = Partial<IWorksheetData>;

/** The sheet without its pictures; its cells' styles go by the names that the workbook gives them. */
export function sheetData(sheet: PlainSheet, id: string): GridSheetData {
  const { name, ours, freeze, merges, tables, tabColor = '' } = sheet;
  const { print, validations, ...rules } = sheet.page;
  const { bottom, right } = farthest(sheet);
  return {
    id,
    name,
    tabColor: tabColor === '' ? '' : `#${tabColor}`,
    hidden: flag(sheet.hidden),
    freeze: {
      xSplit: freeze.columns,
      ySplit: freeze.rows,
      startRow: freeze.rows === 0 ? -1 : freeze.rows,
      startColumn: freeze.columns === 0 ? -1 : freeze.columns,
    },
    rowCount: bottom + 1 + SPARE_ROWS,
    columnCount: Math.max(LEAST_COLUMNS, right + 1 + SPARE_COLUMNS),
    defaultColumnWidth: sheet.otherPixels,
    defaultRowHeight: STANDARD_POINTS * PIXELS_PER_POINT,
    mergeData: merges.map((one): IRange => ({
      startRow: one.top,
      startColumn: one.left,
      endRow: one.bottom,
      endColumn: one.right,
    })),
    cellData: cellData(sheet),
    rowData: Object.fromEntries(
      Object.entries(sheet.rows).map(([row, { points, hidden }]) => [
        row,
        {
          ...(points === undefined
            ? {}
            : { h: points * PIXELS_PER_POINT, ia: BooleanNumber.FALSE }),
          ...(hidden === true ? { hd: BooleanNumber.TRUE } : {}),
        },
      ]),
    ),
    columnData: Object.fromEntries(
      Object.entries(sheet.columns).map(([column, { pixels, hidden }]) => [
        column,
        {
          ...(pixels === undefined ? {} : { w: pixels }),
          ...(hidden === true ? { hd: BooleanNumber.TRUE } : {}),
        },
      ]),
    ),
    defaultStyle: { pd: sheet.ours ? AIR_ON_OURS : AIR },
    rowHeader: { width: 46 },
    columnHeader: { height: 20 },
    showGridlines: flag(sheet.gridLines),
    rightToLeft: flag(sheet.rightToLeft),
    custom: toCustomData({
      owner: ours ? 'tool' : 'person',
      name,
      print,
      tables,
      validations,
      ...rules,
    }),
  };
}

function flag(is: boolean): BooleanNumber {
  return is ? BooleanNumber.TRUE : BooleanNumber.FALSE;
}

/** The last row and column, from 0, of which the sheet says anything. */
function farthest({ cells, columns, merges, freeze }: PlainSheet): {
  readonly bottom: number;
  readonly right: number;
} {
  const widest = Object.values(cells).map((row) => highest(Object.keys(row).map(Number)));
  return {
    bottom: highest([
      ...Object.keys(cells).map(Number),
      ...merges.map((one) => one.bottom),
      freeze.rows,
    ]),
    right: highest([
      ...widest,
      ...Object.keys(columns).map(Number),
      ...merges.map((one) => one.right),
      freeze.columns,
    ]),
  };
}

function highest(numbers: readonly number[]): number {
  return numbers.reduce((most, one) => Math.max(most, one), -1);
}

function cellData({ cells }: PlainSheet): IWorksheetData['cellData'] {
  const made: Record<number, Record<number, ICellData>> = {};
  for (const [row, ofRow] of Object.entries(cells)) {
    made[Number(row)] = Object.fromEntries(
      Object.entries(ofRow).map(([column, cell]) => [column, gridCell(cell)]),
    );
  }
  return made;
}

function gridCell(cell: PlainCell): ICellData {
  const { style, formula } = cell;
  return {
    ...(style === undefined ? {} : { s: style }),
    ...(formula === undefined ? {} : { f: `=${formula}` }),
    ...held(cell),
  };
}

function held({ value, error }: PlainCell): Pick<ICellData, 'v' | 't'> {
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value !== 'string') return {};
  // An error's code as text is told from the error by its type.
  return error === true ? { v: value } : { v: value, t: CellValueType.STRING };
}
