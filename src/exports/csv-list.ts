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

/**
 * Writes a list. Where the decimal sign is a comma, semicolons part the cells, as spreadsheets of
 * those countries save them. A text that a spreadsheet would take for a formula has an apostrophe
 * before it (OWASP, "CSV Injection"); the mark at the start says that it is UTF-8.
 */
export function writeList({ name, headings, rows }: List, decimalSign: DecimalSign): ExportFile {
  const text = stringify([headings, ...rows], {
    bom: true,
    delimiter: decimalSign === ',' ? ';' : ',',
    record_delimiter: 'windows',
    escape_formulas: true,
    cast: { number: (value) => String(value).replace('.', decimalSign) },
  });
  return { path: `lists/${name}.csv`, text };
}
