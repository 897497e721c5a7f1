/** What is kept with a sheet, after rows or columns have come or gone in it. */
import type { FileExtras } from '../xlsx/file-workbook.ts';
import { cellName, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import type { KeptOfSheet } from './kept.ts';

/** Whole rows or columns, from 0, that come before `at` or go from there on. */
export interface LineChange {
  readonly lines: 'rows' | 'columns';
  readonly kind: 'come' | 'go';
  readonly at: number;
  readonly count: number;
}

/** Tables whose headings go, and rules whose cells all go, go too. */
export function movedKept(kept: KeptOfSheet, change: LineChange): KeptOfSheet {
  const { tables, validations, highlights, print, file } = kept;
  const inPlace = <T extends { readonly range: string }>(all: readonly T[]): T[] =>
    all.flatMap((one) => {
      const range = movedRanges(one.range, change);
      return range === null ? [] : [{ ...one, range }];
    });
  const headed = tables.filter(({ range }) => {
    const where = parseRange(range);
    return where === null || !goes(where.top, change, 'rows');
  });
  return {
    ...kept,
    tables: inPlace(headed),
    validations: inPlace(validations),
    ...(highlights === undefined ? {} : { highlights: inPlace(highlights) }),
    print: movedPrint(print, change),
    ...(file === undefined ? {} : { file: movedExtras(file, change, inPlace) }),
  };
}

/** First and last of lines from 0, after the change; null where all of them are gone. */
export function movedLines(
  first: number,
  last: number,
  { kind, at, count }: Omit<LineChange, 'lines'>,
): readonly [number, number] | null {
  if (kind === 'come') {
    return [first >= at ? first + count : first, last >= at ? last + count : last];
  }
  const before = (line: number): number => Math.min(Math.max(line - at, 0), count);
  const left = last - first + 1 - (before(last + 1) - before(first));
  const begins = first - before(first);
  return left === 0 ? null : [begins, begins + left - 1];
}

function goes(line: number, { lines, kind, at, count }: LineChange, which: string): boolean {
  return lines === which && kind === 'go' && line >= at && line < at + count;
}

/** One range, or several with blanks between them as rules in a file have them. */
function movedRanges(text: string, change: LineChange): string | null {
  const moved = text.split(' ').flatMap((one) => {
    const range = parseRange(one.replaceAll('$', ''));
    return range === null ? [one] : (movedRange(range, change) ?? []);
  });
  return moved.length === 0 ? null : moved.join(' ');
}

function movedRange({ top, left, bottom, right }: CellRange, change: LineChange): string | null {
  const isRows = change.lines === 'rows';
  const lines = isRows ? movedLines(top, bottom, change) : movedLines(left, right, change);
  if (lines === null) return null;
  const [first, last] = lines;
  const from = isRows ? cellName(first, left) : cellName(top, first);
  const to = isRows ? cellName(last, right) : cellName(bottom, last);
  return from === to ? from : `${from}:${to}`;
}

function movedPrint(print: PrintDescription, change: LineChange): PrintDescription {
  if (change.lines !== 'rows') return print;
  const { titleRows, breaksAfter, ...rest } = print;
  const titles =
    titleRows === undefined ? null : movedLines(titleRows[0] - 1, titleRows[1] - 1, change);
  return {
    ...rest,
    ...(titles === null ? {} : { titleRows: [titles[0] + 1, titles[1] + 1] as const }),
    ...(breaksAfter === undefined ? {} : { breaksAfter: movedBreaks(breaksAfter, change) }),
  };
}

/** A page begins after each of these rows, from 1; it goes where its row goes. */
function movedBreaks(breaksAfter: readonly number[], change: LineChange): number[] {
  return breaksAfter
    .flatMap((row) => movedLines(row - 1, row - 1, change)?.[0] ?? [])
    .map((row) => row + 1);
}

function movedExtras(
  extras: FileExtras,
  change: LineChange,
  inPlace: <T extends { readonly range: string }>(all: readonly T[]) => T[],
): FileExtras {
  const { dataValidations, conditionalRules, pageSetup, rowBreaks, colBreaks } = extras;
  const isRows = change.lines === 'rows';
  const moved = (all: readonly number[]): number[] =>
    all.flatMap((line) => movedLines(line, line, change)?.[0] ?? []);
  const titles = /^\$?(\d+):\$?(\d+)$/u.exec(pageSetup?.printTitlesRow ?? '');
  const rows =
    titles === null ? null : movedLines(Number(titles[1]) - 1, Number(titles[2]) - 1, change);
  const setup = { ...pageSetup };
  delete setup.printTitlesRow;
  return {
    ...extras,
    ...(dataValidations === undefined ? {} : { dataValidations: inPlace(dataValidations) }),
    ...(conditionalRules === undefined ? {} : { conditionalRules: inPlace(conditionalRules) }),
    ...(rowBreaks !== undefined && isRows ? { rowBreaks: moved(rowBreaks) } : {}),
    ...(colBreaks !== undefined && !isRows ? { colBreaks: moved(colBreaks) } : {}),
    ...(titles === null || !isRows
      ? {}
      : {
          pageSetup: {
            ...setup,
            ...(rows === null ? {} : { printTitlesRow: `$${rows[0] + 1}:$${rows[1] + 1}` }),
          },
        }),
  };
}
