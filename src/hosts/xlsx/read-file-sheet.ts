/** One sheet of a file as plain data. */
import type { Cell, CellStyle, CellValue, Sheet } from 'hucre/xlsx';

import { cellName, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import { serialOf } from '../../core/units/day-serial.ts';
import { DIGIT_PIXELS } from '../../sheets/grammar/page-size.ts';
import { MOST_GRID_COLUMNS, MOST_GRID_ROWS } from '../tables/limits.ts';
import { fileColor } from './file-colors.ts';
import { callsOurs, formulaFromFile, readsOtherWorkbook } from '../formulas/file-formulas.ts';
import { styleFromFile } from './file-styles.ts';
import {
  STANDARD_PIXELS,
  type PlainCell,
  type PlainSheet,
  type PlainStyle,
} from '../workbook/plain-workbook.ts';
import { pageFromFile, type FileExtras } from './sheet-page.ts';
import { sharedFormulas } from './shared-formulas.ts';
import { withoutTables, type KnownTables } from '../formulas/table-references.ts';

/** What is the same for all sheets of a file, and what is noticed along the way. */
export interface SheetReading {
  readonly theme: readonly string[] | undefined;
  readonly date1904: boolean;
  readonly styleName: (style: PlainStyle) => string | undefined;
  readonly tables: KnownTables;
  /** Names of the sheets made here. */
  readonly ours: ReadonlySet<string>;
  /** Cells that take values from other workbooks, as Sheet!A1. */
  readonly otherWorkbooks: string[];
  /** Cells whose formulas name a table's columns, or all of it. */
  readonly tableColumns: string[];
}

export function readFileSheet(sheet: Sheet, reading: SheetReading): PlainSheet {
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
    otherPixels: STANDARD_PIXELS,
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
    page: pageFromFile(extrasOf(sheet)),
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

function readCells(sheet: Sheet, reading: SheetReading): PlainSheet['cells'] {
  const nameOf = styleNames(reading);
  const shared = sharedFormulas(sheet);
  const spilled = spilledCells(sheet);
  const made: Record<number, Record<number, PlainCell>> = {};
  sheet.rows.slice(0, MOST_GRID_ROWS).forEach((values, r) => {
    const row: Record<number, PlainCell> = {};
    values.slice(0, MOST_GRID_COLUMNS).forEach((value, c) => {
      const key = `${r},${c}`;
      const details = sheet.cells?.get(key);
      if (details === undefined && (value === null || value === '')) return;
      const style = details?.style === undefined ? undefined : nameOf(details.style);
      const content = spilled.has(key)
        ? { value: null }
        : contentOf(
            value,
            details,
            shared.get(key),
            { sheet: sheet.name, row: r, column: c },
            reading,
          );
      if (content.value === null && content.formula === undefined && style === undefined) return;
      row[c] = style === undefined ? content : { ...content, style };
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
): PlainCell {
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
  // Those that call our functions, or have an error, come without a value: they are worked out at once.
  const anew = details?.type === 'error' || callsOurs(formula);
  return {
    value: anew ? null : held,
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
function styleNames({ theme, styleName }: SheetReading): (style: CellStyle) => string | undefined {
  const numbers = new Map<object, number>();
  const names = new Map<string, string | undefined>();
  const number = (part: object | undefined): number => {
    if (part === undefined) return 0;
    const known = numbers.get(part) ?? numbers.size + 1;
    numbers.set(part, known);
    return known;
  };
  return (style) => {
    const { font, fill, border, alignment, numFmt = '' } = style;
    const key = `${[font, fill, border, alignment].map(number).join()},${numFmt}`;
    if (!names.has(key)) names.set(key, styleName(styleFromFile(style, theme)));
    return names.get(key);
  };
}
