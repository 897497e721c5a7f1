/** One sheet of the grid as a file takes it. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IRowData,
  type IStyleData,
  type IWorksheetData,
  type Nullable,
} from '@univerjs/core';
import { cellName } from '../../../core/cells/cell-range.ts';
import { POINTS_PER_INCH } from '../../../sheets/grammar/page-size.ts';
import { pageFromFile } from '../../xlsx/sheet-page.ts';
import {
  STANDARD_PIXELS,
  type PlainCell,
  type PlainColumn,
  type PlainPicture,
  type PlainRow,
  type PlainSheet,
} from '../../workbook/plain-workbook.ts';
import { callsOurs, reckonsWithRanges } from '../../formulas/file-formulas.ts';
import { shiftFormula } from '../../formulas/shift-formula.ts';
import { readCustomData } from '../sheet-metadata.ts';
import { hexColor } from '../convert-style.ts';
import { cellText } from './cell-text.ts';

const POINTS_PER_PIXEL = POINTS_PER_INCH / 96;
/** Finer parts of a point are what multiplying has left. */
const PARTS_OF_POINT = 1e6;
const STANDARD_ROW_PIXELS = 20;
const ERROR = /^#[A-Z/0-9]+[!?]?$/u;

/** What the grid keeps apart from the sheet. */
export interface SheetParts {
  readonly spillRanges: Matrix<IRange>;
  readonly spillCells: Matrix<ICellData>;
  readonly pictures: readonly PlainPicture[];
  /** What a cell's style is called, from the styles that apply to it, the first the farthest. */
  readonly styleName: (styles: readonly Nullable<IStyleData | string>[]) => string | undefined;
}

type Matrix<T> = Nullable<
  Readonly<Record<number, Nullable<Readonly<Record<number, Nullable<T>>>>>>
>;
type SheetData = Partial<IWorksheetData>;

export function fileSheet(data: SheetData, parts: SheetParts): PlainSheet {
  const { name = '', freeze, mergeData = [], custom } = data;
  const kept = readCustomData(custom);
  const tabColor = hexColor(data.tabColor);
  const cells = fileCells(data, parts);
  return {
    name,
    hidden: data.hidden === BooleanNumber.TRUE,
    ours: kept?.owner === 'tool' && kept.name === name,
    cells,
    columns: fileColumns(data, cells),
    otherPixels: data.defaultColumnWidth ?? STANDARD_PIXELS,
    rows: fileRows(data),
    merges: mergeData.map(({ startRow, startColumn, endRow, endColumn }) => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    })),
    freeze: { rows: freeze?.ySplit ?? 0, columns: freeze?.xSplit ?? 0 },
    gridLines: data.showGridlines !== BooleanNumber.FALSE,
    rightToLeft: data.rightToLeft === BooleanNumber.TRUE,
    ...(tabColor === undefined ? {} : { tabColor }),
    tables: kept?.tables ?? [],
    page: kept ?? pageFromFile({}),
    pictures: parts.pictures,
  };
}

function fileColumns(data: SheetData, cells: PlainSheet['cells']): Record<number, PlainColumn> {
  const { columnData = {}, defaultColumnWidth = STANDARD_PIXELS } = data;
  const used = Object.values(cells).map((row) => Math.max(...Object.keys(row).map(Number)));
  const widest = [...used, ...Object.keys(columnData).map(Number)].reduce(
    (most, one) => Math.max(most, one),
    -1,
  );
  const columns: Record<number, PlainColumn> = {};
  for (let column = 0; column <= widest; column++) {
    const { w, hd } = columnData[column] ?? {};
    const said = w !== undefined || defaultColumnWidth !== STANDARD_PIXELS;
    columns[column] = {
      ...(said ? { pixels: w ?? defaultColumnWidth } : {}),
      ...(hd === BooleanNumber.TRUE ? { hidden: true } : {}),
    };
  }
  return columns;
}

/** A row that the grid fits to its text is left to the program that opens the file, unless it is higher. */
function fileRows({ rowData = {} }: SheetData): Record<number, PlainRow> {
  const rows: Record<number, PlainRow> = {};
  const given: Readonly<Record<number, Partial<IRowData>>> = rowData;
  for (const [row, { h, ah, ia, hd }] of Object.entries(given)) {
    const fitted = ia === BooleanNumber.TRUE || h === undefined;
    const pixels = fitted ? (ah ?? h) : h;
    const plain = pixels === undefined || (fitted && pixels <= STANDARD_ROW_PIXELS);
    const hidden = hd === BooleanNumber.TRUE;
    if (plain && !hidden) continue;
    rows[Number(row)] = {
      ...(plain ? {} : { points: wholeParts(pixels * POINTS_PER_PIXEL) }),
      ...(hidden ? { hidden } : {}),
    };
  }
  return rows;
}

function fileCells(data: SheetData, parts: SheetParts): PlainSheet['cells'] {
  const { cellData = {}, rowData = {}, columnData = {}, defaultStyle } = data;
  const shared = sharedFormulas(cellData);
  const made: Record<number, Record<number, PlainCell>> = {};
  const put = (row: number, column: number, cell: PlainCell): void => {
    (made[row] ??= {})[column] = cell;
  };
  forEachCell(cellData, (row, column, cell) => {
    const spilled = parts.spillCells?.[row]?.[column];
    const formula = formulaOf(cell, row, column, shared);
    const content =
      formula === undefined && spilled !== undefined && spilled !== null && isBlank(cell)
        ? fileCell(spilled)
        : fileCell(cell, formula, spillOf(formula, row, column, parts));
    const style = parts.styleName([defaultStyle, rowData[row]?.s, columnData[column]?.s, cell.s]);
    if (content.value === null && content.formula === undefined && style === undefined) return;
    put(row, column, style === undefined ? content : { ...content, style });
  });
  forEachCell(parts.spillCells, (row, column, cell) => {
    if (made[row]?.[column] === undefined) put(row, column, fileCell(cell));
  });
  return made;
}

function fileCell(cell: ICellData, formula?: string, spill?: string): PlainCell {
  const value = valueOf(cell);
  const looksSo = typeof value === 'string' && ERROR.test(value);
  const error = looksSo && (formula !== undefined || cell.t === undefined || cell.t === null);
  return {
    value,
    ...(error ? { error } : {}),
    ...(formula === undefined ? {} : { formula }),
    ...(spill === undefined ? {} : { spill }),
  };
}

/** A spreadsheet that takes one cell of each range must be told of a formula that may take them whole. */
function spillOf(
  formula: string | undefined,
  row: number,
  column: number,
  { spillRanges }: SheetParts,
): string | undefined {
  if (formula === undefined) return undefined;
  const range = spillRanges?.[row]?.[column];
  if (range !== undefined && range !== null) {
    const last = cellName(range.endRow, range.endColumn);
    return `${cellName(range.startRow, range.startColumn)}:${last}`;
  }
  return callsOurs(formula) || reckonsWithRanges(formula) ? cellName(row, column) : undefined;
}

function valueOf({ v, t, p }: ICellData): PlainCell['value'] {
  if (p !== undefined && p !== null) return cellText(p);
  if (v === undefined || v === null || v === '') return null;
  if (t === CellValueType.BOOLEAN) return v === true || v === 1 || v === '1' || v === 'TRUE';
  if (t === CellValueType.NUMBER && typeof v === 'string') {
    const number = Number(v);
    return Number.isFinite(number) ? number : v;
  }
  return v;
}

function isBlank({ v, f, p }: ICellData): boolean {
  return (v ?? f ?? p ?? '') === '';
}

/** One formula stands for many cells that were filled from it: they name it by its id. */
type SharedFormulas = ReadonlyMap<
  string,
  { readonly row: number; readonly column: number; readonly formula: string }
>;

function sharedFormulas(cells: Matrix<ICellData>): SharedFormulas {
  const found = new Map<string, { row: number; column: number; formula: string }>();
  forEachCell(cells, (row, column, { f, si }) => {
    if (typeof f === 'string' && typeof si === 'string')
      found.set(si, { row, column, formula: bare(f) });
  });
  return found;
}

function formulaOf(
  { f, si }: ICellData,
  row: number,
  column: number,
  shared: SharedFormulas,
): string | undefined {
  if (typeof f === 'string' && f !== '') return bare(f);
  const master = typeof si === 'string' ? shared.get(si) : undefined;
  if (master === undefined) return undefined;
  return shiftFormula(master.formula, row - master.row, column - master.column);
}

function bare(formula: string): string {
  return formula.replace(/^=/u, '');
}

function forEachCell<T>(
  matrix: Matrix<T>,
  each: (row: number, column: number, one: T) => void,
): void {
  for (const [row, cells] of Object.entries(matrix ?? {})) {
    for (const [column, one] of Object.entries(cells ?? {})) {
      if (one !== null && one !== undefined) each(Number(row), Number(column), one);
    }
  }
}

function wholeParts(points: number): number {
  return Math.round(points * PARTS_OF_POINT) / PARTS_OF_POINT;
}
