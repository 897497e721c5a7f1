/** A workbook from a file as the grid holds it. */
import {
  BooleanNumber,
  CellValueType,
  LocaleType,
  type ICellData,
  type IWorkbookData,
} from '@univerjs/core';
import { POINTS_PER_INCH } from '../../../sheets/grammar/page-size.ts';
import { STANDARD_POINTS } from '../../../sheets/grammar/row-height.ts';
import { callsOurs } from '../../formulas/file-formulas.ts';
import { printOf, validationsOf } from '../../xlsx/file-extras.ts';
import type { FileCell, FileSheet, FileWorkbook } from '../../xlsx/file-workbook.ts';
import { nameResources } from '../defined-names.ts';
import { gridStyles } from '../grid-style.ts';
import { toCustomData } from '../sheet-metadata.ts';
import { toGridStyle } from '../convert-style.ts';
import type { GridSheetData } from '../sheet-data.ts';

const PIXELS_PER_POINT = 96 / POINTS_PER_INCH;
/** Blank rows and columns beyond what is there, for the person to go on in. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 8;
const LEAST_COLUMNS = 26;
/** Of columns and rows that a file says nothing of (ECMA-376 part 1, 18.3.1.81). */
const STANDARD_PIXELS = 64;

/** @param id What the grid calls the workbook; no other that is open may have it. */
export function workbookData(workbook: FileWorkbook, id: string): IWorkbookData {
  const { title, font, styles, sheets, names } = workbook;
  const ids = new Map(sheets.map(({ name }, index) => [name, `sheet-${index + 1}`]));
  return {
    id,
    name: title,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: {
      ...gridStyles(),
      ...Object.fromEntries(
        styles.map((style, place) => [styleId(place), toGridStyle(style, font)]),
      ),
    },
    sheetOrder: [...ids.values()],
    sheets: Object.fromEntries(
      sheets.map((sheet) => {
        const sheetId = ids.get(sheet.name) ?? '';
        return [
          sheetId,
          { ...sheetData(sheet, sheetId), defaultStyle: { ff: font.name, fs: font.size } },
        ];
      }),
    ),
    resources: nameResources(names, (sheet) => ids.get(sheet)),
  };
}

/** Apart from the names of our own styles. */
function styleId(place: number): string {
  return `file-${place}`;
}

function sheetData(sheet: FileSheet, id: string): GridSheetData {
  const { name, hidden, ours, freeze, merges, tables, extras, tabColor = '' } = sheet;
  const rows = Object.keys(sheet.cells).map(Number);
  const columns = Object.values(sheet.cells).flatMap((row) =>
    Math.max(...Object.keys(row).map(Number)),
  );
  const bottom = highest([...rows, ...merges.map((one) => one.bottom), freeze.rows]);
  const right = highest([
    ...columns,
    ...Object.keys(sheet.columns).map(Number),
    ...merges.map((one) => one.right),
    freeze.columns,
  ]);
  return {
    id,
    name,
    tabColor: tabColor === '' ? '' : `#${tabColor}`,
    hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    freeze: {
      xSplit: freeze.columns,
      ySplit: freeze.rows,
      startRow: freeze.rows === 0 ? -1 : freeze.rows,
      startColumn: freeze.columns === 0 ? -1 : freeze.columns,
    },
    rowCount: bottom + 1 + SPARE_ROWS,
    columnCount: Math.max(LEAST_COLUMNS, right + 1 + SPARE_COLUMNS),
    defaultColumnWidth: STANDARD_PIXELS,
    defaultRowHeight: STANDARD_POINTS * PIXELS_PER_POINT,
    mergeData: merges.map((one) => ({
      startRow: one.top,
      startColumn: one.left,
      endRow: one.bottom,
      endColumn: one.right,
    })),
    cellData: cellData(sheet),
    rowData: Object.fromEntries(
      Object.entries(sheet.rows).map(([row, one]) => [
        row,
        {
          ...(one.points === undefined
            ? {}
            : { h: one.points * PIXELS_PER_POINT, ia: BooleanNumber.FALSE }),
          ...(one.hidden === true ? { hd: BooleanNumber.TRUE } : {}),
        },
      ]),
    ),
    columnData: Object.fromEntries(
      Object.entries(sheet.columns).map(([column, one]) => [
        column,
        {
          ...(one.pixels === undefined ? {} : { w: one.pixels }),
          ...(one.hidden === true ? { hd: BooleanNumber.TRUE } : {}),
        },
      ]),
    ),
    rowHeader: { width: 46 },
    columnHeader: { height: 20 },
    showGridlines: sheet.gridLines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rightToLeft: sheet.rightToLeft ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    custom: toCustomData({
      owner: ours ? 'tool' : 'person',
      name,
      print: printOf(extras),
      tables,
      validations: validationsOf(extras),
      file: extras,
    }),
  };
}

function highest(numbers: readonly number[]): number {
  return numbers.reduce((most, one) => Math.max(most, one), -1);
}

function cellData(sheet: FileSheet): Record<number, Record<number, ICellData>> {
  const made: Record<number, Record<number, ICellData>> = {};
  for (const [row, cells] of Object.entries(sheet.cells)) {
    const ofRow: Record<number, ICellData> = {};
    for (const [column, cell] of Object.entries(cells)) ofRow[Number(column)] = gridCell(cell);
    made[Number(row)] = ofRow;
  }
  return made;
}

/** Formulas that call our functions, or have an error, come without a value: they are worked out at once. */
function gridCell(cell: FileCell): ICellData {
  const styled = cell.style === undefined ? {} : { s: styleId(cell.style) };
  if (cell.formula === undefined) return { ...styled, ...held(cell) };
  const anew = cell.error === true || callsOurs(cell.formula);
  return { ...styled, f: `=${cell.formula}`, ...(anew ? {} : held(cell)) };
}

function held({ value, error }: FileCell): Pick<ICellData, 'v' | 't'> {
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value !== 'string') return {};
  // An error's code as text is told from the error by its type.
  return error === true ? { v: value } : { v: value, t: CellValueType.STRING };
}
