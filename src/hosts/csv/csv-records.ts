/** The records of a CSV file, wherever the program runs. */
import { CsvError, parse } from 'csv-parse/browser/esm/sync';

import { own } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { formatNumber } from '../../core/units/format-number.ts';
import { fileKind } from '../tables/file-kind.ts';
import { largerThanRead, LONGEST_CSV_ROW, MOST_SHEET_ROWS } from '../tables/limits.ts';
import { decodeWindows1252 } from './windows-1252.ts';

const [FEED, RETURN] = [0x0a, 0x0d];
/** What a line that holds nothing may have beside the separator: a space, a tab. */
const BLANK = [0x20, 0x09] as const;
/** No cell of a person's has as many blank lines in it. */
const LONG_RUN = 1_000;
const SEPARATORS = [',', ';', '\t'] as const;

/**
 * Reads CSV as spreadsheets save it: separated by commas, semicolons or tabs (found from the first
 * line that has any), quoted cells with line ends in them, rows of unlike length, inch marks in
 * cells that aren't quoted. Every cell comes as text, as it stands.
 *
 * @param content Text, or the file's bytes, at most 50 MB: UTF-8, UTF-16 with its mark, or else
 *   Windows-1252.
 * @param fileName What faults and places call it.
 * @param each Called with each record, blank ones too, and the line that it begins on, from 1, until it
 *   says stop: no more is looked at then.
 * @returns Nothing; or one fault: file.too-large, file.not-text, file.not-csv (a row of more than a million
 *   characters with it), file.too-many-lines.
 */
export function readRecords(
  content: string | Uint8Array,
  fileName: string,
  each: (cells: string[], line: number) => 'go on' | 'stop',
): Outcome<void> {
  const text = typeof content === 'string' ? ok(content) : decode(content, fileName);
  if (!text.ok) return text;
  const [plain, named] = withoutSepLine(text.value.replace(/^\uFEFF/, ''));
  const delimiter = named ?? separatorOf(plain);
  const { bytes, lineOf } = takeLines(plain, delimiter);
  let brokenAt: number | null = null;
  let nextLine = 1;
  let records = 0;
  try {
    parse(bytes, {
      delimiter,
      record_delimiter: '\n',
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: LONGEST_CSV_ROW,
      on_record: (cells: string[], { lines: lastLine }) => {
        const within = cells.reduce((sum, cell) => sum + countLineEnds(cell), 0);
        const line = lineOf(lastLine - within);
        nextLine = lastLine + 1;
        if (cells.some(swallowsLines)) brokenAt ??= line;
        if (++records > MOST_SHEET_ROWS) throw new Stopped('too many');
        if (each(cells, line) === 'stop') throw new Stopped('asked to');
        return null;
      },
    });
  } catch (error) {
    if (error instanceof Stopped) {
      if (error.message === 'asked to') return ok(undefined);
      const limit = { limit: MOST_SHEET_ROWS };
      return failed(fault('file.too-many-lines', 'file', fileName, limit));
    }
    if (!(error instanceof CsvError)) throw error;
    if (error.code === 'CSV_MAX_RECORD_SIZE') return failed(longRow(fileName, lineOf(nextLine)));
    // Only a quote that is never closed is an error to a reader as lenient as this.
    brokenAt ??= lineOf(nextLine);
  }
  return brokenAt === null ? ok(undefined) : failed(openQuote(fileName, brokenAt));
}

function decode(bytes: Uint8Array, fileName: string): Outcome<string> {
  const tooLarge = largerThanRead(own(fileName), bytes.length);
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
function withoutSepLine(text: string): readonly [text: string, named: string | undefined] {
  const [line = '', named] = /^"?sep=([,;\t|])"?(?=[\r\n])/iu.exec(text) ?? [];
  return [text.slice(line.length), named];
}

/** Reading ends here, and nothing is wrong with what was read. */
class Stopped extends Error {}

/**
 * A text's bytes, every line end a line feed, and the lines of the text that theirs are. Long runs of blank
 * lines are left out: a sheet with formats to its end has a million of these. As bytes, since of a text the
 * reader makes bytes one by one, in twenty times the memory.
 */
function takeLines(
  text: string,
  separator: string,
): {
  readonly bytes: Uint8Array;
  readonly lineOf: (line: number) => number;
} {
  const bytes = new TextEncoder().encode(text);
  const blank = new Set([...BLANK, separator.charCodeAt(0)]);
  const left: { readonly before: number; readonly count: number }[] = [];
  // Where the blank lines that were just read begin, how many they are, and where this line begins.
  let [runAt, run, lineAt] = [0, 0, 0];
  let [to, lines, isBlank] = [0, 0, true];
  for (let from = 0; from < bytes.length; from++) {
    const byte = bytes[from] ?? 0;
    if (byte === RETURN && bytes[from + 1] === FEED) continue;
    const plain = byte === RETURN ? FEED : byte;
    bytes[to] = plain;
    to += 1;
    if (plain === FEED) {
      lines += 1;
      lineAt = to;
      if (isBlank) run += 1;
      else [runAt, run] = [to, 0];
      isBlank = true;
    } else if (isBlank && !blank.has(plain)) {
      isBlank = false;
      if (run < LONG_RUN) continue;
      bytes.copyWithin(runAt, lineAt, to);
      to -= lineAt - runAt;
      lines -= run;
      left.push({ before: lines, count: run });
    }
  }
  const isAllRead = isBlank && run >= LONG_RUN;
  return { bytes: bytes.subarray(0, isAllRead ? runAt : to), lineOf: linesWith(left) };
}

/** Asked for lines in their order, as a reader comes to them, it looks at each run once. */
function linesWith(
  left: readonly { readonly before: number; readonly count: number }[],
): (line: number) => number {
  let [next, sum] = [0, 0];
  return (line) => {
    for (let run = left[next]; run !== undefined && run.before < line; run = left[next]) {
      sum += run.count;
      next += 1;
    }
    return line + sum;
  };
}

/** The most frequent separator of the first line that has one; a comma where none has. */
function separatorOf(text: string): string {
  // Over a few lines: a title above the table may have commas of its own.
  const few = text
    .slice(0, LONGEST_CSV_ROW)
    .split(/\r\n?|\n/u, 5)
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
  return notCsv(fileName, line, `the quote opened on line ${line} is never closed`);
}

function longRow(fileName: string, line: number): Fault {
  const most = formatNumber(LONGEST_CSV_ROW, 0, '.');
  const why = `the row on line ${line} has more than ${most} characters; a quote may have been left open there`;
  return notCsv(fileName, line, why);
}

function notCsv(fileName: string, line: number, why: string): Fault {
  const details = { why };
  const one = fault('file.not-csv', 'file', fileName, { details });
  return placeFault(one, { file: fileName, line, column: 1 });
}
