/** A look over the XML of all sheets before the library builds anything out of it: is it whole, is it bounded. */
import { unzipSync } from 'fflate';

import { crc32 } from '../png/crc32.ts';
import { unpackedParts } from './unpacked-size.ts';

export interface SheetsScan {
  /**
   * Whether the XML of a sheet stops before its end (ECMA-376 part 1, 18.3.1.99: worksheet is its root), or its
   * cells do, or whether it, or what it takes its texts from, isn't what was packed: the library reads what is
   * there, and says nothing of it.
   */
  readonly isTorn: boolean;
  /** Of all sheets together, empty ones counted; not counted on once there are more than asked for. */
  readonly rows: number;
  readonly cells: number;
}

export interface ScanLimits {
  readonly rows: number;
  readonly cells: number;
}

export const SHEET = /(?:^|\/)worksheets\/[^/]+\.xml$/iu;
/** What sheets take their texts, names, formats and tables from: each must be what was packed too. */
const READ_BESIDE = /(?:^|\/)(?:sharedStrings|workbook|styles|tables\/[^/]+)\.xml$/iu;
/** `<`, `/`, `:` and `>`. */
const [OPEN, SLASH, COLON, CLOSE] = [0x3c, 0x2f, 0x3a, 0x3e];
/** A prefix and the longest name that is looked for; a longer one is none of them. */
const LONGEST_NAME = 64;

/**
 * @param bytes An .xlsx file that was seen to be a zip. What can't be unpacked is left to the library.
 * @param most Rows and cells after which nothing more is counted.
 */
export function scanSheets(bytes: Uint8Array, most: ScanLimits): SheetsScan {
  let [rows, cells, isTorn] = [0, 0, false];
  const written = new Map((unpackedParts(bytes) ?? []).map(({ name, crc }) => [name, crc]));
  for (const name of partNames(bytes, SHEET)) {
    if (rows > most.rows || cells > most.cells) break;
    // One at a time, so that no more than one is in memory.
    const sheet = unpack(bytes, name);
    if (sheet === null) break;
    isTorn ||= written.has(name) && written.get(name) !== crc32(sheet);
    // UTF-16, which the standard allows and hardly anybody writes, is left to the library.
    if (sheet[0] === 0xff || sheet[0] === 0xfe || sheet[1] === 0) continue;
    const left = { rows: most.rows - rows, cells: most.cells - cells };
    const scanned = scanSheet(sheet, left);
    rows += scanned.rows;
    cells += scanned.cells;
    isTorn ||= scanned.isTorn;
  }
  isTorn ||= partNames(bytes, READ_BESIDE).some((name) => {
    const part = written.has(name) ? unpack(bytes, name) : null;
    return part !== null && written.get(name) !== crc32(part);
  });
  return { isTorn, rows, cells };
}

/** The zip's parts whose names are like that; none where it can't be read. */
export function partNames(bytes: Uint8Array, like: RegExp): string[] {
  const names: string[] = [];
  const filter = ({ name }: { readonly name: string }): boolean => {
    if (like.test(name)) names.push(name);
    return false;
  };
  try {
    unzipSync(bytes, { filter });
    return names;
  } catch {
    return [];
  }
}

/** Null where it can't be. */
export function unpack(bytes: Uint8Array, wanted: string): Uint8Array | null {
  try {
    return unzipSync(bytes, { filter: ({ name }) => name === wanted })[wanted] ?? null;
  } catch {
    return null;
  }
}

/** By its bytes alone: a text of all of it would take twice its memory. */
function scanSheet(sheet: Uint8Array, most: ScanLimits): SheetsScan {
  let [rows, cells] = [0, 0];
  let isClosed = false;
  let data: 'none' | 'open' | 'closed' = 'none';
  for (let at = sheet.indexOf(OPEN); at !== -1; at = sheet.indexOf(OPEN, at + 1)) {
    switch (tagAt(sheet, at + 1)) {
      case 'row':
        if (++rows > most.rows) return { isTorn: false, rows, cells };
        break;
      case 'c':
        if (++cells > most.cells) return { isTorn: false, rows, cells };
        break;
      case 'sheetData':
        if (!isEmptyTag(sheet, at)) data = 'open';
        break;
      case '/sheetData':
        data = 'closed';
        break;
      case 'worksheet':
        isClosed ||= isEmptyTag(sheet, at);
        break;
      case '/worksheet':
        isClosed = true;
        break;
      default:
    }
  }
  return { isTorn: !isClosed || data === 'open', rows, cells };
}

/** Of the tag whose name begins at `from`: the name without its prefix, a slash before it where it closes. */
function tagAt(sheet: Uint8Array, from: number): string {
  const slash = sheet[from] === SLASH ? '/' : '';
  let name = '';
  for (let at = from + slash.length; at < from + LONGEST_NAME; at++) {
    const byte = sheet[at] ?? CLOSE;
    if (byte === COLON) name = '';
    else if (byte <= 0x20 || byte === SLASH || byte === CLOSE) break;
    else name += String.fromCharCode(byte);
  }
  return slash + name;
}

/** `<sheetData/>` holds nothing and closes itself. */
function isEmptyTag(sheet: Uint8Array, from: number): boolean {
  const end = sheet.indexOf(CLOSE, from);
  return end !== -1 && sheet[end - 1] === SLASH;
}
