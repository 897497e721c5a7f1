/** What the grid shows of a sheet, taken for printing. */
import { CellValueType, type ICellData, type IWorksheetData } from '@univerjs/core';
import { readCustomData } from '../../hosts/grid/sheet-metadata.ts';
import { toFileStyle } from '../../hosts/grid/convert-style.ts';
import type { Grid } from '../../hosts/grid/grid.ts';
import { gridPictures } from '../../hosts/grid/to-file/grid-pictures.ts';
import type { PlainStyle } from '../../hosts/workbook/plain-workbook.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import { POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import type {
  PrintedCell,
  PrintedPicture,
  PrintedSheet,
} from '../../browser/print/printed-sheet.ts';

type FSheet = ReturnType<ReturnType<Grid['book']>['getActiveSheet']>;

const POINTS_PER_PIXEL = POINTS_PER_INCH / 96;

/** Of a sheet that wasn't described by us. */
const usualPrint = (name: string): PrintDescription => ({
  paper: 'letter',
  orientation: 'portrait',
  fitWidth: true,
  header: '',
  footer: name,
});

export function printedFromGrid(grid: Grid, sheet: FSheet): PrintedSheet {
  const worksheet = sheet.getSheet();
  // Rows that a filter has out of sight have their height too.
  const heightOf = (row: number): number =>
    worksheet.getRowManager().getRowHeight(row) * POINTS_PER_PIXEL;
  const data = worksheet.getConfig();
  const { name } = data;
  const pictures = picturesOn(grid, sheet.getSheetId());
  const print = readCustomData(data.custom)?.print ?? usualPrint(name);
  const { rows, columns: used } = usedSize(data, pictures, heightOf);
  const columns = Math.min(used, print.printedColumns ?? used);
  const shown =
    rows === 0 ? [] : sheet.getRange(0, 0, rows, Math.max(columns, 1)).getDisplayValues();
  const styles = new Map<string, PlainStyle>();
  const cell = (row: number, column: number): PrintedCell | null => {
    const text = shown[row]?.[column] ?? '';
    const style = worksheet.getComposedCellStyle(row, column);
    const key = JSON.stringify(style);
    const printed = styles.get(key) ?? toFileStyle(style, STANDARD_FONT);
    styles.set(key, printed);
    if (text === '' && Object.keys(printed).length === 0) return null;
    const isNumber = worksheet.getCell(row, column)?.t === CellValueType.NUMBER;
    return { text, style: printed, isNumber };
  };
  return {
    name,
    columns: Array.from(
      { length: columns },
      (_, column) => worksheet.getColumnWidth(column) * POINTS_PER_PIXEL,
    ),
    rows: Array.from({ length: rows }, (_, row) => ({
      height: heightOf(row),
      cells: Array.from({ length: columns }, (__, column) => cell(row, column)),
    })),
    merges: data.mergeData
      .filter(({ startColumn }) => startColumn < columns)
      .map(({ startRow, startColumn, endRow, endColumn }) => ({
        top: startRow,
        left: startColumn,
        bottom: endRow,
        right: Math.min(endColumn, columns - 1),
      })),
    pictures: pictures.filter(({ column }) => column < columns),
    print,
  };
}

function picturesOn(grid: Grid, sheet: string): PrintedPicture[] {
  const all = gridPictures(grid.book().save().resources);
  return (all.get(sheet) ?? []).map(({ png, row, column, width, height, alt }) => ({
    image: { png },
    row,
    column,
    width: width * POINTS_PER_PIXEL,
    height: height * POINTS_PER_PIXEL,
    alt,
  }));
}

/** As far as anything is written or drawn; a style alone is nothing to be printed. */
function usedSize(
  data: IWorksheetData,
  pictures: readonly PrintedPicture[],
  heightOf: (row: number) => number,
): { readonly rows: number; readonly columns: number } {
  let [rows, columns] = [0, 0];
  const cells: Readonly<Record<number, Readonly<Record<number, ICellData | null>>>> = data.cellData;
  for (const [row, ofRow] of Object.entries(cells)) {
    for (const [column, one] of Object.entries(ofRow)) {
      if ((one?.v ?? one?.f ?? one?.p ?? '') === '') continue;
      rows = Math.max(rows, Number(row) + 1);
      columns = Math.max(columns, Number(column) + 1);
    }
  }
  for (const { startRow, startColumn, endRow, endColumn } of data.mergeData) {
    if (startRow < rows && startColumn < columns) {
      rows = Math.max(rows, endRow + 1);
      columns = Math.max(columns, endColumn + 1);
    }
  }
  for (const { row, column, height } of pictures) {
    let last = row;
    for (let left = height; left > 0; last++) left -= heightOf(last);
    rows = Math.max(rows, last);
    columns = Math.max(columns, column + 1);
  }
  return { rows, columns };
}
