/** The records of a CSV file, wherever the program runs. */
import { CsvError, parse } from 'csv-parse/browser/esm/sync';

import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { fileKind } from '../tables/file-kind.ts';
import { largerThanRead } from '../tables/limits.ts';
import { decodeWindows1252 } from './windows-1252.ts';

const SEPARATORS = [',', ';', '\t'] as const;

/**
 * Reads CSV as spreadsheets save it: separated by commas, semicolons or tabs (found from the first
 * line that has any), quoted cells with line ends in them, rows of unlike length, inch marks in
 * cells that aren't quoted. Every cell comes as text, as it stands.
 *
 * @param content Text, or the file's bytes, at most 50 MB: UTF-8, UTF-16 with its mark, or else
 *   Windows-1252.
 * @param fileName What faults and places call it.
 * @param each Called with each record, blank ones too, and the line that it begins on, from 1.
 * @returns Nothing; or one fault: file.too-large, file.not-text, file.not-csv.
 */
export function readRecords(
  content: string | Uint8Array,
  fileName: string,
  each: (cells: string[], line: number) => void,
): Outcome<void> {
  const text = typeof content === 'string' ? ok(content) : decode(content, fileName);
  if (!text.ok) return text;
  const [lines, named] = withoutSepLine(text.value.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n'));
  let brokenAt: number | null = null;
  let nextLine = 1;
  try {
    parse(lines, {
      delimiter: named ?? separatorOf(lines),
      record_delimiter: '\n',
      relax_column_count: true,
      relax_quotes: true,
      on_record: (cells: string[], { lines: lastLine }) => {
        const line = lastLine - cells.reduce((sum, cell) => sum + countLineEnds(cell), 0);
        nextLine = lastLine + 1;
        if (cells.some(swallowsLines)) brokenAt ??= line;
        each(cells, line);
        return null;
      },
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    // Only a quote that is never closed is an error to a reader as lenient as this.
    brokenAt ??= nextLine;
  }
  return brokenAt === null ? ok(undefined) : failed(openQuote(fileName, brokenAt));
}

function decode(bytes: Uint8Array, fileName: string): Outcome<string> {
  const tooLarge = largerThanRead(fileName, bytes.length);
  if (tooLarge !== null) return failed(tooLarge);
  const kind = fileKind(bytes);
  if (kind === 'utf-16') {
    return ok(new TextDecoder(bytes[0] === 0xfe ? 'utf-16be' : 'utf-16le').decode(bytes));
  }
  if (kind !== 'text') return failed(fault('file.not-text', 'file', fileName));
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return ok(decodeWindows1252(bytes));
  }
}

/** Some programs name the separator on a first line of its own, sep=; which stays as a blank one. */
function withoutSepLine(lines: string): readonly [lines: string, named: string | undefined] {
  const [line = '', named] = /^"?sep=([,;\t|])"?(?=\n)/iu.exec(lines) ?? [];
  return [lines.slice(line.length), named];
}

/** The most frequent separator of the first line that has one; a comma where none has. */
function separatorOf(lines: string): string {
  // Over a few lines: a title above the table may have commas of its own.
  const few = lines
    .split('\n', 5)
    .join('\n')
    .replace(/"[^"]*"/g, '');
  const counts = SEPARATORS.map((separator) => few.split(separator).length);
  return SEPARATORS[counts.indexOf(Math.max(...counts))] ?? ',';
}

function countLineEnds(cell: string): number {
  return cell.split('\n').length - 1;
}

/**
 * A cell that begins with a quote and goes on over a line's end was left open: the reader went on
 * to the next quote anywhere and kept both as they stand.
 */
function swallowsLines(cell: string): boolean {
  return cell.startsWith('"') && cell.includes('\n');
}

function openQuote(fileName: string, line: number): Fault {
  const details = { why: `the quote opened on line ${line} is never closed` };
  const one = fault('file.not-csv', 'file', fileName, { details });
  return placeFault(one, { file: fileName, line, column: 1 });
}
