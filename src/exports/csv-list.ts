/** A list as CSV that any spreadsheet opens (RFC 4180), in the shop's own decimal sign. */
import { stringify } from 'csv-stringify/browser/esm/sync';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { ExportFile } from './export-file.ts';

export type ListValue = string | number | null;

export interface List {
  /** Of its file, without folder and ending. */
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly ListValue[])[];
}

/** Before any of these a lesser reader, or one of another separator, may begin a row or a cell. */
const PARTS = /[\r\n,;\t]/u;
/** What begins a formula, in full width too, or is passed over before one (OWASP, "CSV Injection"). */
const SIGN = '[=+\\-@\\t\\r\uFF1D\uFF0B\uFF0D\uFF20]';
/** It stands where a cell may begin: at the start of a line, spaces passed over, or right behind a separator. */
const FORMULA_START = new RegExp(`(?<=^|[\\r\\n])[ "]*${SIGN}|(?<=[,;\\t])"*${SIGN}`, 'gu');

/**
 * Writes a list. Where the decimal sign is a comma, semicolons part the cells, as spreadsheets of
 * those countries save them. What a spreadsheet would take for a formula, in any line of a text or behind
 * a separator in it, has an apostrophe before it; the mark at the start says that it is UTF-8.
 */
export function writeList({ name, headings, rows }: List, decimalSign: DecimalSign): ExportFile {
  const text = stringify([headings, ...rows], {
    bom: true,
    delimiter: decimalSign === ',' ? ';' : ',',
    record_delimiter: 'windows',
    cast: {
      number: (value) => String(value).replace('.', decimalSign),
      string: (value) => ({
        value: value.replace(FORMULA_START, "'$&"),
        ...(PARTS.test(value) ? { quoted: true } : {}),
      }),
    },
  });
  return { path: `lists/${name}.csv`, text };
}
