/** Reads a whole workbook, styles and all, for a grid that shows it. */
import type { Cell, Sheet, Workbook } from 'hucre/xlsx';

import { own } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  type Caution,
  type FaultCode,
  type Outcome,
} from '../../core/faults/fault.ts';
import { columnLetters } from '../../core/cells/cell-range.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import { LARGEST_GRID_SHEETS_MB, MOST_GRID_COLUMNS, MOST_GRID_ROWS } from '../tables/limits.ts';
import { readFileSheet, type SheetReading } from './read-file-sheet.ts';
import { formulaFromFile, readsOtherWorkbook } from '../formulas/file-formulas.ts';
import { withoutTables, type KnownTables } from '../formulas/table-references.ts';
import { knownTables } from './known-tables.ts';
import { styleList } from './file-styles.ts';
import type { PlainName, PlainSheet, PlainWorkbook } from '../workbook/plain-workbook.ts';
import { keptTextsOf } from './kept-parts.ts';
import { keptProperties } from './kept-properties.ts';
import { openWorkbook, partsOf } from './open-workbook.ts';
import { MADE } from '../made-mark.ts';

const BYTES_PER_MB = 1_000_000;
/** One row and one column more than are taken, so that more than that is seen. */
const LOOKED_AT = `A1:${columnLetters(MOST_GRID_COLUMNS)}${MOST_GRID_ROWS + 1}`;

export interface ReadFile {
  readonly workbook: PlainWorkbook;
  /** What was left out, or stands differently. */
  readonly cautions: readonly Caution[];
}

/**
 * Reads every sheet of a workbook: values, formulas with their values, styles, widths, heights,
 * merges, panes, names, tables, page and rules. Macros are never run and not kept.
 *
 * @param bytes The .xlsx or .xlsm file, at most 50 MB.
 * @param fileName What faults call it.
 * @returns The workbook with cautions; or one fault: file.too-large, file.protected,
 *   file.old-workbook, file.not-workbook, grid.too-large, grid.too-many-rows, grid.no-sheet.
 */
export async function readFileWorkbook(
  bytes: Uint8Array,
  fileName: string,
): Promise<Outcome<ReadFile>> {
  const parts = partsOf(bytes, fileName);
  if (!parts.ok) return parts;
  const sheetBytes = parts.value
    .filter(({ name }) => /worksheets\/[^/]+\.xml$/iu.test(name))
    .reduce((sum, part) => sum + part.bytes, 0);
  if (sheetBytes > LARGEST_GRID_SHEETS_MB * BYTES_PER_MB) {
    const limit = { limit: LARGEST_GRID_SHEETS_MB };
    return failed(
      fault('grid.too-large', own(fileName), Math.ceil(sheetBytes / BYTES_PER_MB), limit),
    );
  }
  const opened = await openWorkbook(bytes, fileName, () => true, {
    range: LOOKED_AT,
    styles: true,
  });
  if (!opened.ok) return opened;
  const long = opened.value.sheets.find(({ rows }) => rows.slice(MOST_GRID_ROWS).some(holds));
  if (long !== undefined) {
    return failed(fault('grid.too-many-rows', own(long.name), null, { limit: MOST_GRID_ROWS }));
  }
  if (opened.value.sheets.length === 0) return failed(fault('grid.no-sheet', 'workbook', fileName));
  const macros = parts.value.some(({ name }) => /vbaProject\.bin$/iu.test(name));
  const read = fromWorkbook(opened.value, fileName, macros);
  return ok({ ...read, workbook: { ...read.workbook, texts: keptTextsOf(bytes) } });
}

function fromWorkbook(opened: Workbook, fileName: string, macros: boolean): ReadFile {
  const list = styleList();
  const reading: SheetReading = {
    theme: opened.themeColors,
    date1904: opened.dateSystem === '1904',
    styleName: list.add,
    tables: knownTables(opened.sheets),
    ours: marked(opened),
    otherWorkbooks: [],
    tableColumns: [],
  };
  const sheets = opened.sheets.map((sheet) => readFileSheet(sheet, reading));
  const { name = STANDARD_FONT.name, size = STANDARD_FONT.size } = opened.defaultFont ?? {};
  const workbook: PlainWorkbook = {
    title: opened.properties?.title ?? '',
    font: { name, size },
    styles: list.styles,
    sheets,
    names: namesOf(opened, sheets, reading.tables),
    properties: keptProperties(opened),
  };
  const counted = (code: FaultCode, cells: readonly string[]): Caution[] => {
    const [first = ''] = cells;
    const details = { count: cells.length, first };
    return cells.length === 0 ? [] : [fault(code, 'workbook', fileName, { details })];
  };
  const out = leftOut(opened, reading.ours);
  const cautions = [
    ...(macros ? [fault('grid.macros', 'workbook', fileName)] : []),
    ...counted('grid.other-workbooks', reading.otherWorkbooks),
    ...counted('grid.table-columns', reading.tableColumns),
    ...(out.length === 0 ? [] : [fault('grid.left-out', 'workbook', out.join(', '))]),
    ...(reading.date1904 && sheets.some(hasDates)
      ? [fault('grid.dates-1904', 'workbook', fileName)]
      : []),
  ];
  return { workbook, cautions };

  function hasDates({ cells }: PlainSheet): boolean {
    return Object.values(cells).some((row) =>
      Object.values(row).some(({ style, value }) => {
        const format = style === undefined ? '' : (list.styles[style]?.format ?? '');
        return (
          typeof value === 'number' && /[dy]/iu.test(format.replace(/"[^"]*"|\[[^\]]*\]/gu, ''))
        );
      }),
    );
  }
}

/** The sheets that bear our mark under the name that they were written under. */
function marked({ namedRanges = [] }: Workbook): ReadonlySet<string> {
  const ours = namedRanges.filter(({ name, range, scope }) => {
    const text = /^"(.*)"$/su.exec(range)?.[1]?.replaceAll('""', '"');
    return name === MADE && scope !== undefined && text === scope;
  });
  return new Set(ours.map(({ scope = '' }) => scope));
}

/** Names that begin with _xlnm. are a program's own, as is our mark. */
function namesOf(
  { namedRanges = [] }: Workbook,
  sheets: readonly PlainSheet[],
  tables: KnownTables,
): PlainName[] {
  const there = new Set(sheets.map(({ name }) => name));
  return namedRanges
    .filter(
      ({ name, range }) => !/^_xlnm\./iu.test(name) && name !== MADE && !readsOtherWorkbook(range),
    )
    .filter(({ scope }) => scope === undefined || there.has(scope))
    .map(({ name, range, scope }) => ({
      name,
      refersTo: withoutTables(formulaFromFile(range), tables).formula,
      ...(scope === undefined ? {} : { sheet: scope }),
    }));
}

function holds(row: readonly unknown[]): boolean {
  return row.some((value) => value !== null && value !== '');
}

/** What a person would miss, in their words. */
function leftOut({ sheets, properties }: Workbook, ours: ReadonlySet<string>): string[] {
  const hasDateProperty = Object.values(properties?.custom ?? {}).some(
    (one) => one instanceof Date,
  );
  const any = (has: (sheet: Sheet) => boolean): boolean => sheets.some(has);
  const cells = (has: (cell: Cell) => boolean): boolean =>
    any((sheet) => [...(sheet.cells?.values() ?? [])].some(has));
  const found: readonly (readonly [string, boolean])[] = [
    ['pictures', any(({ name, images = [] }) => images.length > 0 && !ours.has(name))],
    [
      'the drawings of written sheets (write the sheets again, and they are back)',
      any(({ name, images = [] }) => images.length > 0 && ours.has(name)),
    ],
    ['charts', any(({ charts = [] }) => charts.length > 0)],
    ['text boxes', any(({ textBoxes = [] }) => textBoxes.length > 0)],
    ['notes', cells(({ comment }) => comment !== undefined)],
    ['links', cells(({ hyperlink }) => hyperlink !== undefined)],
    ['document properties that are dates', hasDateProperty],
    ['pivot tables', any(({ pivotTables = [] }) => pivotTables.length > 0)],
    [
      `what stands right of column ${columnLetters(MOST_GRID_COLUMNS - 1)}`,
      any(({ rows }) => rows.some((row) => holds(row.slice(MOST_GRID_COLUMNS)))),
    ],
  ];
  return found.filter(([, there]) => there).map(([what]) => what);
}
