/** One sheet of a file as plain data. */
import type { Cell, CellStyle, CellValue, Sheet } from 'hucre/xlsx';

import { cellName, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import { DIGIT_PIXELS } from '../../sheets/grammar/page-size.ts';
import { MOST_GRID_COLUMNS, MOST_GRID_ROWS } from '../tables/limits.ts';
import { serialOf } from './date-serial.ts';
import { fileColor } from './file-colors.ts';
import { formulaFromFile, readsOtherWorkbook } from '../formulas/file-formulas.ts';
import { styleFromFile } from './file-styles.ts';
import type { FileCell, FileExtras, FileStyle, FileSheet } from './file-workbook.ts';
import { sharedFormulas } from './shared-formulas.ts';
import { withoutTables, type KnownTables } from '../formulas/table-references.ts';

/** What is the same for all sheets of a file, and what is noticed along the way. */
export interface SheetReading {
  readonly theme: readonly string[] | undefined;
  readonly date1904: boolean;
  readonly placeOfStyle: (style: FileStyle) => number | undefined;
  readonly tables: KnownTables;
  /** Names of the sheets made here. */
  readonly ours: ReadonlySet<string>;
  /** Cells that take values from other workbooks, as Sheet!A1. */
  readonly otherWorkbooks: string[];
  /** Cells whose formulas name a table's columns, or all of it. */
  readonly tableColumns: string[];
}

export function readFileSheet(sheet: Sheet, reading: SheetReading): FileSheet {
  const tabColor = fileColor(sheet.view?.tabColor, reading.theme);
  return {
    name: sheet.name,
    hidden: sheet.hidden === true || sheet.veryHidden === true,
    ours: reading.ours.has(sheet.name),
    cells: readCells(sheet, reading),
    columns: Object.fromEntries(
      (sheet.columns ?? []).slice(0, MOST_GRID_COLUMNS).map(({ width, hidden }, at) => [
        at,
        {
          // ECMA-376 part 1, 18.3.1.13: a stored width holds the padding too.
          ...(width === undefined ? {} : { pixels: Math.round(width * DIGIT_PIXELS * 10) / 10 }),
          ...(hidden === true ? { hidden } : {}),
        },
      ]),
    ),
    rows: Object.fromEntries(
      [...(sheet.rowDefs ?? [])]
        .filter(([row]) => row < MOST_GRID_ROWS)
        .map(([row, { height, hidden }]) => [
          row,
          {
            ...(height === undefined ? {} : { points: height }),
            ...(hidden === true ? { hidden } : {}),
          },
        ]),
    ),
    merges: (sheet.merges ?? [])
      .map(({ startRow, startCol, endRow, endCol }) => ({
        top: startRow,
        left: startCol,
        bottom: endRow,
        right: endCol,
      }))
      .filter(({ bottom, right }) => bottom < MOST_GRID_ROWS && right < MOST_GRID_COLUMNS),
    freeze: { rows: sheet.freezePane?.rows ?? 0, columns: sheet.freezePane?.columns ?? 0 },
    gridLines: sheet.view?.showGridLines !== false,
    rightToLeft: sheet.view?.rightToLeft === true,
    ...(tabColor === undefined ? {} : { tabColor }),
    tables: (sheet.tables ?? []).flatMap(({ name, displayName, range, showTotalRow }) => {
      const where = parseRange(range ?? '');
      if (where === null) return [];
      const bottom = showTotalRow === true ? where.bottom - 1 : where.bottom;
      if (bottom <= where.top) return [];
      return [{ name: displayName ?? name, range: rangeName({ ...where, bottom }) }];
    }),
    extras: extrasOf(sheet),
    pictures: [],
  };
}

function rangeName({ top, left, bottom, right }: CellRange): string {
  return `${cellName(top, left)}:${cellName(bottom, right)}`;
}

function extrasOf(sheet: Sheet): FileExtras {
  const { dataValidations, conditionalRules, pageSetup, headerFooter, rowBreaks, colBreaks } =
    sheet;
  const all = { dataValidations, conditionalRules, pageSetup, headerFooter, rowBreaks, colBreaks };
  return Object.fromEntries(Object.entries(all).filter(([, one]) => one !== undefined));
}

function readCells(sheet: Sheet, reading: SheetReading): FileSheet['cells'] {
  const placeOf = stylePlaces(reading);
  const shared = sharedFormulas(sheet);
  const spilled = spilledCells(sheet);
  const made: Record<number, Record<number, FileCell>> = {};
  sheet.rows.slice(0, MOST_GRID_ROWS).forEach((values, r) => {
    const row: Record<number, FileCell> = {};
    values.slice(0, MOST_GRID_COLUMNS).forEach((value, c) => {
      const key = `${r},${c}`;
      const details = sheet.cells?.get(key);
      if (details === undefined && (value === null || value === '')) return;
      const place = details?.style === undefined ? undefined : placeOf(details.style);
      const content = spilled.has(key)
        ? { value: null }
        : contentOf(
            value,
            details,
            shared.get(key),
            { sheet: sheet.name, row: r, column: c },
            reading,
          );
      if (content.value === null && content.formula === undefined && place === undefined) return;
      row[c] = place === undefined ? content : { ...content, style: place };
    });
    if (Object.keys(row).length > 0) made[r] = row;
  });
  return made;
}

function contentOf(
  value: CellValue,
  details: Cell | undefined,
  sharedFormula: string | undefined,
  where: { readonly sheet: string; readonly row: number; readonly column: number },
  reading: SheetReading,
): FileCell {
  const held = value instanceof Date ? serialOf(value) : value === '' ? null : value;
  const error = details?.type === 'error' ? { error: true } : {};
  const stored = sharedFormula ?? details?.formula;
  if (stored === undefined || stored === '') return { value: held, ...error };
  if (readsOtherWorkbook(stored)) {
    reading.otherWorkbooks.push(`${where.sheet}!${cellName(where.row, where.column)}`);
    return { value: held, ...error };
  }
  const { formula, namedColumns } = withoutTables(formulaFromFile(stored), reading.tables, where);
  if (namedColumns)
    reading.tableColumns.push(`${where.sheet}!${cellName(where.row, where.column)}`);
  const spill = details?.formulaType === 'array' ? details.formulaRef : undefined;
  return {
    value: held,
    ...error,
    formula,
    ...(spill === undefined ? {} : { spill }),
  };
}

/** Cells that hold answers of a formula which stands in another cell. */
function spilledCells(sheet: Sheet): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const [own, { formulaType, formulaRef = '' }] of sheet.cells ?? []) {
    const range = formulaType === 'array' ? parseRange(formulaRef) : null;
    if (range === null) continue;
    const bottom = Math.min(range.bottom, MOST_GRID_ROWS);
    const right = Math.min(range.right, MOST_GRID_COLUMNS);
    for (let r = range.top; r <= bottom; r++) {
      for (let c = range.left; c <= right; c++) keys.add(`${r},${c}`);
    }
    keys.delete(own);
  }
  return keys;
}

/** The library makes a style anew for each cell, of parts that stay the same. */
function stylePlaces({
  theme,
  placeOfStyle,
}: SheetReading): (style: CellStyle) => number | undefined {
  const numbers = new Map<object, number>();
  const places = new Map<string, number | undefined>();
  const number = (part: object | undefined): number => {
    if (part === undefined) return 0;
    const known = numbers.get(part) ?? numbers.size + 1;
    numbers.set(part, known);
    return known;
  };
  return (style) => {
    const { font, fill, border, alignment, numFmt = '' } = style;
    const key = `${[font, fill, border, alignment].map(number).join()},${numFmt}`;
    if (!places.has(key)) places.set(key, placeOfStyle(styleFromFile(style, theme)));
    return places.get(key);
  };
}
