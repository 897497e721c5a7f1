/** What is kept with a sheet, after rows or columns have come or gone in it. */
import type { FileExtras } from '../xlsx/sheet-page.ts';
import { cellName, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import type { SheetMetadata } from './sheet-metadata.ts';

/** Whole rows or columns, from 0, that come before `at` or go from there on. */
export interface LineChange {
  readonly lines: 'rows' | 'columns';
  readonly kind: 'come' | 'go';
  readonly at: number;
  readonly count: number;
}

/** Tables whose headings go, and rules whose cells all go, go too. */
export function shiftMetadata(kept: SheetMetadata, change: LineChange): SheetMetadata {
  const { tables, validations, highlights, print, file } = kept;
  const inPlace = <T extends { readonly range: string }>(all: readonly T[]): T[] =>
    all.flatMap((one) => {
      const range = shiftRanges(one.range, change);
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
    print: shiftPrint(print, change),
    ...(file === undefined ? {} : { file: shiftExtras(file, change, inPlace) }),
  };
}

/** First and last of lines from 0, after the change; null where all of them are gone. */
export function shiftLines(
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
function shiftRanges(text: string, change: LineChange): string | null {
  const moved = text.split(' ').flatMap((one) => {
    const range = parseRange(one.replaceAll('$', ''));
    return range === null ? [one] : (shiftRange(range, change) ?? []);
  });
  return moved.length === 0 ? null : moved.join(' ');
}

function shiftRange({ top, left, bottom, right }: CellRange, change: LineChange): string | null {
  const isRows = change.lines === 'rows';
  const lines = isRows ? shiftLines(top, bottom, change) : shiftLines(left, right, change);
  if (lines === null) return null;
  const [first, last] = lines;
  const from = isRows ? cellName(first, left) : cellName(top, first);
  const to = isRows ? cellName(last, right) : cellName(bottom, last);
  return from === to ? from : `${from}:${to}`;
}

function shiftPrint(print: PrintDescription, change: LineChange): PrintDescription {
  if (change.lines !== 'rows') {
    if (print.printedColumns === undefined) return print;
    const { printedColumns, ...all } = print;
    const columns = shiftLines(0, printedColumns - 1, change);
    // A column that comes before the first is printed too.
    return columns === null ? all : { ...all, printedColumns: columns[1] + 1 };
  }
  const { titleRows, breaksAfter, ...rest } = print;
  const titles =
    titleRows === undefined ? null : shiftLines(titleRows[0] - 1, titleRows[1] - 1, change);
  return {
    ...rest,
    ...(titles === null ? {} : { titleRows: [titles[0] + 1, titles[1] + 1] as const }),
    ...(breaksAfter === undefined ? {} : { breaksAfter: shiftBreaks(breaksAfter, change) }),
  };
}

/** A page begins after each of these rows, from 1; it goes where its row goes. */
function shiftBreaks(breaksAfter: readonly number[], change: LineChange): number[] {
  return breaksAfter
    .flatMap((row) => shiftLines(row - 1, row - 1, change)?.[0] ?? [])
    .map((row) => row + 1);
}

function shiftExtras(
  extras: FileExtras,
  change: LineChange,
  inPlace: <T extends { readonly range: string }>(all: readonly T[]) => T[],
): FileExtras {
  const { dataValidations, conditionalRules, pageSetup, rowBreaks, colBreaks } = extras;
  const isRows = change.lines === 'rows';
  const moved = (all: readonly number[]): number[] =>
    all.flatMap((line) => shiftLines(line, line, change)?.[0] ?? []);
  const titles = /^\$?(\d+):\$?(\d+)$/u.exec(pageSetup?.printTitlesRow ?? '');
  const rows =
    titles === null ? null : shiftLines(Number(titles[1]) - 1, Number(titles[2]) - 1, change);
  const { printTitlesRow, printArea, ...setup } = pageSetup ?? {};
  const keptTitles =
    titles === null || !isRows
      ? printTitlesRow
      : rows === null
        ? undefined
        : `$${rows[0] + 1}:$${rows[1] + 1}`;
  const keptArea = printArea === undefined ? undefined : shiftArea(printArea, change);
  return {
    ...extras,
    ...(dataValidations === undefined ? {} : { dataValidations: inPlace(dataValidations) }),
    ...(conditionalRules === undefined ? {} : { conditionalRules: inPlace(conditionalRules) }),
    ...(rowBreaks !== undefined && isRows ? { rowBreaks: moved(rowBreaks) } : {}),
    ...(colBreaks !== undefined && !isRows ? { colBreaks: moved(colBreaks) } : {}),
    ...(pageSetup === undefined
      ? {}
      : {
          pageSetup: {
            ...setup,
            ...(keptTitles === undefined ? {} : { printTitlesRow: keptTitles }),
            ...(keptArea === undefined ? {} : { printArea: keptArea }),
          },
        }),
  };
}

/** What of a sheet is printed, `$A:$L` or `$A$1:$D$9`; any other way of saying it stays as it is. */
function shiftArea(area: string, change: LineChange): string | undefined {
  const whole = /^\$([A-Z]{1,3}):\$([A-Z]{1,3})$/u.exec(area);
  if (whole !== null) {
    if (change.lines === 'rows') return area;
    const moved = shiftMarks(`${whole[1]}1:${whole[2]}1`, change);
    return moved?.replace(/([A-Z]+)\d+/gu, '$$$1');
  }
  if (!/^\$[A-Z]{1,3}\$\d+:\$[A-Z]{1,3}\$\d+$/u.test(area)) return area;
  return shiftMarks(area.replaceAll('$', ''), change)?.replace(/([A-Z]+)(\d+)/gu, '$$$1$$$2');
}

/** `B3:D9`, after the change; undefined where all of it goes. */
function shiftMarks(cells: string, change: LineChange): string | undefined {
  const range = parseRange(cells);
  const moved = range === null ? cells : shiftRange(range, change);
  if (moved === null) return undefined;
  return moved.includes(':') ? moved : `${moved}:${moved}`;
}
