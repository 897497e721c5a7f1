/** Opens an .xlsx file's bytes, or says why not. */
import { readXlsx, type Cell, type CellValue, type Sheet, type Workbook } from 'hucre/xlsx';

import { own, phrase } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { columnLetters } from '../../core/cells/cell-range.ts';
import { serialOf } from '../../core/units/day-serial.ts';
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import { fileKind } from '../tables/file-kind.ts';
import {
  LARGEST_SMALL_PART_MB,
  LARGEST_STYLES_MB,
  LARGEST_UNPACKED_MB,
  largerThanRead,
  MOST_TABLE_COLUMNS,
  MOST_WORKBOOK_CELLS,
  MOST_WORKBOOK_ROWS,
} from '../tables/limits.ts';
import { isBlankRow, tooManyRows } from '../tables/raw-rows.ts';
import { withoutProperties } from './kept-properties.ts';
import type { SheetLayout } from '../tables/sheet-layout.ts';
import { shownCell } from '../tables/shown-number.ts';
import { scanSheets } from './scan-sheets.ts';
import { showsMoreThanNumbers } from './telling-formats.ts';
import { lostTextFault } from './lost-texts.ts';
import { unpackedParts, type UnpackedPart } from './unpacked-size.ts';

/** Which cells of the sheets are read, and whether with all of their styles. */
export interface ReadMore {
  readonly range?: string;
  readonly styles?: boolean;
}

/** Of a date whose format isn't told. */
const DAY_FORMAT = 'yyyy-mm-dd';
const LAST_COLUMN = columnLetters(MOST_TABLE_COLUMNS - 1);
/** Everything a sheet can have below its columns that are looked at. */
const LOOKED_AT = `A1:${LAST_COLUMN}1048576`;

/**
 * Opens a workbook.
 *
 * @param bytes The .xlsx file, at most 50 MB.
 * @param fileName What faults call it.
 * @param wanted Which sheets' cells are read, by name.
 * @param more What of them; the values of the columns that are looked at, where left out.
 * @returns The workbook; or one fault: file.too-large, file.protected, file.old-workbook,
 *   file.opendocument, file.not-workbook, file.torn, file.lost-text, file.too-many-cells,
 *   table.too-many-rows.
 */
export async function openWorkbook(
  bytes: Uint8Array,
  fileName: string,
  wanted: (sheet: string) => boolean,
  { range = LOOKED_AT, styles = false }: ReadMore = {},
): Promise<Outcome<Workbook>> {
  const parts = partsOf(bytes, fileName);
  if (!parts.ok) return parts;
  const unsound = scanFault(bytes, fileName) ?? lostTextFault(bytes, fileName);
  if (unsound !== null) return failed(unsound);
  const sheets = ({ name }: { readonly name: string }): boolean => wanted(name);
  const read = async (file: Uint8Array): Promise<Workbook> => {
    const opened = await readXlsx(file, { sheets, range, readStyles: styles });
    if (styles || !showsMoreThanNumbers(file)) return opened;
    // Cells with formats to a sheet's end fill the memory: they are read down to the last value.
    const rows = Math.max(1, ...opened.sheets.map(lastFilledRow));
    const filled = `A1:${LAST_COLUMN}${rows}`;
    return readXlsx(file, { sheets, range: filled, readStyles: true });
  };
  try {
    return ok(await read(bytes));
  } catch (error) {
    const opened = await readWithoutProperties(bytes, read).catch(() => null);
    return opened === null ? failed(openFault(error, fileName)) : ok(opened);
  }
}

/** What a file says of itself may be broken where its sheets are sound. */
async function readWithoutProperties(
  bytes: Uint8Array,
  read: (file: Uint8Array) => Promise<Workbook>,
): Promise<Workbook | null> {
  const without = withoutProperties(bytes);
  if (without === null) return null;
  const workbook = await read(without.bytes);
  return { ...workbook, properties: { ...workbook.properties, custom: { ...without.broken } } };
}

/**
 * What can be told before anything is unpacked.
 *
 * @returns The file's parts; or one fault: file.too-large, file.protected, file.old-workbook,
 *   file.opendocument, file.not-workbook.
 */
export function partsOf(bytes: Uint8Array, fileName: string): Outcome<readonly UnpackedPart[]> {
  const tooLarge = largerThanRead(own(fileName), bytes.length);
  if (tooLarge !== null) return failed(tooLarge);
  const kind = fileKind(bytes);
  if (kind === 'encrypted-office') return failed(fault('file.protected', 'workbook', fileName));
  if (kind === 'opendocument') return failed(fault('file.opendocument', 'workbook', fileName));
  if (kind === 'old-office') return failed(fault('file.old-workbook', 'workbook', fileName));
  const parts = kind === 'zip' ? unpackedParts(bytes) : null;
  if (parts === null) return failed(fault('file.not-workbook', 'workbook', fileName));
  const total = parts.reduce((sum, part) => sum + part.bytes, 0);
  // Sheets are read as they stream by; other XML is built up in memory, many times its size.
  const small = parts.filter(({ name }) => /(?<!worksheets\/[^/]*)\.(xml|rels)$/i.test(name));
  const largest = Math.max(0, ...small.map((part) => part.bytes));
  const styles = parts.filter(({ name }) => /(?:^|\/)styles\.xml$/iu.test(name));
  const ofStyles = Math.max(0, ...styles.map((part) => part.bytes));
  const named = { file: own(fileName) };
  const vast =
    largerThanRead(phrase('unpacked', named), total, LARGEST_UNPACKED_MB) ??
    largerThanRead(phrase('partUnpacked', named), largest, LARGEST_SMALL_PART_MB) ??
    largerThanRead(phrase('formatsUnpacked', named), ofStyles, LARGEST_STYLES_MB);
  return vast === null ? ok(parts) : failed(vast);
}

function scanFault(bytes: Uint8Array, fileName: string): Fault | null {
  const most = { rows: MOST_WORKBOOK_ROWS, cells: MOST_WORKBOOK_CELLS };
  const { isTorn, rows, cells } = scanSheets(bytes, most);
  for (const [what, count, limit] of [
    ['rows', rows, most.rows],
    ['cells', cells, most.cells],
  ] as const) {
    if (count <= limit) continue;
    return fault('file.too-many-cells', 'workbook', fileName, { limit, details: { what } });
  }
  return isTorn ? fault('file.torn', 'workbook', fileName) : null;
}

/** The reader refuses a sheet whose used area is vast, even if nearly all of it is blank. */
function openFault(error: unknown, fileName: string): Fault {
  const message = error instanceof Error ? error.message : '';
  const vast = /^Sheet "(.*)" spans (\d+) rows/.exec(message);
  if (vast !== null) return tooManyRows(vast[1] ?? fileName, Number(vast[2]));
  return fault('file.not-workbook', 'workbook', fileName);
}

/** From 1; 0 where there is none. */
function lastFilledRow({ rows, cells }: Sheet): number {
  const held = rows.findLastIndex((values) => values.some((value) => value !== null));
  const detailed = Array.from(cells?.keys() ?? [], (key) => Number.parseInt(key));
  return detailed.reduce((most, row) => Math.max(most, row + 1), held + 1);
}

/** The rows of a sheet that aren't blank, their cells from column A on. */
export function rowsOf(sheet: Sheet): RawRow[] {
  const detailed = new Set<number>();
  for (const [key, { type }] of sheet.cells ?? []) {
    if (type !== 'empty') detailed.add(Number.parseInt(key));
  }
  const rows: RawRow[] = [];
  sheet.rows.forEach((values, r) => {
    // A sheet with formats to its end has a million of these.
    if (!detailed.has(r) && values.every((value) => value === null)) return;
    const cells = values.map((value, c) => rawCell(value, sheet.cells?.get(`${r},${c}`)));
    if (isBlankRow(cells)) return;
    rows.push({ line: r + 1, cells: cells.slice(0, cells.findLastIndex((c) => c !== null) + 1) });
  });
  return rows;
}

/** Rows that a filter leaves out are stored as hidden ones. */
export function layoutOf({ rowDefs, columns, merges = [] }: Sheet): SheetLayout {
  return {
    isHiddenRow: (line) => rowDefs?.get(line - 1)?.hidden === true,
    isHiddenColumn: (column) => columns?.[column]?.hidden === true,
    merges: merges.map(({ startRow, startCol, endRow, endCol }) => ({
      top: startRow,
      left: startCol,
      bottom: endRow,
      right: endCol,
    })),
  };
}

/** `details` is there for errors, formulas, rich text and, where formats were read, styles. */
function rawCell(value: CellValue, details: Cell | undefined): RawCell {
  if (details?.type === 'error') return { kind: 'error', text: String(value) };
  if (details?.formula !== undefined && value === null) return { kind: 'uncalculated' };
  const format = details?.style?.numFmt ?? '';
  if (value instanceof Date) {
    // The library takes the letters of some currencies for those of days.
    const serial = serialOf(value);
    return shownCell(serial, format === '' ? DAY_FORMAT : format);
  }
  if (typeof value === 'number') return shownCell(value, format);
  return value === '' ? null : value;
}
