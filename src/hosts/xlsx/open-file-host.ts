/** An opened .xlsx file in the workbook's place: it is read as it was, and writing makes a new file. */
import type { Sheet, Workbook } from 'hucre/xlsx';

import { sayArgument, type ArgumentKey } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { tableArgument, type RawRow, type RawTable } from '../../planning/input/raw-table.ts';
import { parseRange } from '../../core/cells/cell-range.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import type { TablePlace, WorkbookHost, WorkbookSurvey, Written } from '../host.ts';
import { notesIn, withNotes } from '../notes.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { headingsAt, tableOf, tooManyRows } from '../tables/raw-rows.ts';
import { withLayout } from '../tables/sheet-layout.ts';
import { sayRowsBelow, tableRows, type TableRows, type TableSpan } from '../tables/table-rows.ts';
import { withText } from '../workbook/kept-text.ts';
import { keptTextsOf } from './kept-parts.ts';
import { keptProperties } from './kept-properties.ts';
import { layoutOf, openWorkbook, rowsOf } from './open-workbook.ts';
import { writeWorkbook, type WriteTools } from './write-workbook.ts';

export interface FileToOpen extends WriteTools {
  /** The file's name, with its ending. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Opens a file as a host. What it writes is a workbook of its own, holding the described sheets
 * alone, and the plan that is kept with them. Its notes are the file's; what is noted on them lasts as
 * long as the host.
 *
 * @returns The host; or one fault: file.too-large, file.protected, file.old-workbook,
 *   file.not-workbook, table.too-many-rows.
 */
export async function openFileHost(file: FileToOpen): Promise<Outcome<WorkbookHost>> {
  const { name } = file;
  const opened = await openWithoutVast(file);
  if (!opened.ok) return opened;
  const workbook = opened.value;
  let properties = keptProperties(workbook);
  let texts = keptTextsOf(file.bytes);
  const cannot = (what: ArgumentKey) => Promise.resolve(failed(fault('host.cannot', what, name)));
  return ok({
    kind: 'file',
    can: {
      showCells: false,
      putFormulas: false,
      appendRows: false,
      writeInPlace: false,
      undoWrites: false,
    },
    survey: () => Promise.resolve(ok(surveyWorkbook(name, workbook))),
    readTable: (place, tableName) => Promise.resolve(readTable(workbook, place, tableName)),
    write: (description) => write({ ...file, texts }, description),
    appendRows: () => cannot('addingRowsToTable'),
    show: () => cannot('showingACell'),
    putFormula: () => cannot('puttingAFormula'),
    listSeparator: () => Promise.resolve(','),
    recall: (keys) => Promise.resolve(ok(notesIn(properties, keys))),
    remember: (notes) => {
      properties = withNotes(properties, notes);
      return Promise.resolve(ok(undefined));
    },
    keptText: (key) => Promise.resolve(ok(texts[key])),
    keepText: (key, text) => {
      texts = withText(texts, key, text);
      return Promise.resolve(ok(undefined));
    },
    readSheet: (sheetName) => {
      const sheet = workbook.sheets.find((one) => one.name === sheetName);
      return Promise.resolve(ok(sheet === undefined ? [] : rowsOf(sheet)));
    },
    watch: () => () => undefined,
    watchRow: () => () => undefined,
  });
}

/** A sheet too vast to be read is no table of a job: the file's others are read without it. */
async function openWithoutVast({ name, bytes }: FileToOpen): Promise<Outcome<Workbook>> {
  const vast = new Set<string>();
  for (;;) {
    const opened = await openWorkbook(bytes, name, (one) => !vast.has(one));
    if (opened.ok) return opened;
    const [first] = opened.faults;
    const sheet = first?.code === 'table.too-many-rows' ? sayArgument(first.argument) : undefined;
    if (sheet === undefined || vast.has(sheet)) return opened;
    vast.add(sheet);
  }
}

/** A place with the rows of it that aren't blank, headings first. */
interface FilePlace {
  readonly place: TablePlace;
  readonly sheet: Sheet;
  readonly rows: readonly RawRow[];
  /** Of a table proper. */
  readonly own?: Pick<TableRows, 'below'> & { readonly left: number };
}

function surveyWorkbook(name: string, workbook: Workbook): WorkbookSurvey {
  return {
    name,
    places: placesOf(workbook).map(({ place }) => place),
    sheets: workbook.sheets.map((sheet) => ({ name: sheet.name, ours: false, pointedAtBy: [] })),
  };
}

/** Tables proper first, then the sheets that have none. */
function placesOf(workbook: Workbook): FilePlace[] {
  const tables = workbook.sheets.flatMap((sheet) => {
    const all = tablesOf(sheet);
    return all.flatMap((span) => {
      const others = all.filter((one) => one !== span).map(({ range }) => range);
      const found = tableRows(rowsOf(sheet), span, others);
      const names = { key: `table/${span.name}`, sheet: sheet.name, table: span.name };
      const own = { left: span.range.left, below: found.below };
      return placeOf(sheet, names, found.rows, 0).map((place) => ({ ...place, own }));
    });
  });
  const bare = workbook.sheets
    .filter((sheet) => tablesOf(sheet).length === 0)
    .flatMap((sheet) => {
      const rows = rowsOf(sheet);
      const names = { key: `sheet/${sheet.name}`, sheet: sheet.name };
      return placeOf(sheet, names, rows, headingsAt(rows));
    });
  return [...tables, ...bare];
}

function placeOf(
  sheet: Sheet,
  names: Pick<TablePlace, 'key' | 'sheet' | 'table'>,
  all: readonly RawRow[],
  from: number,
): FilePlace[] {
  const [headings, ...below] = all.slice(from);
  if (headings === undefined) return [];
  const { line, cells } = headings;
  const place = { ...names, line, headings: cells, rowCount: below.length };
  return [{ place, sheet, rows: [headings, ...below] }];
}

function readTable(workbook: Workbook, wanted: TablePlace, name: string): Outcome<RawTable> {
  const found = placesOf(workbook).find(({ place }) => place.key === wanted.key);
  if (found === undefined)
    return failed(fault('host.gone', tableArgument(name), wanted.table ?? wanted.sheet));
  const { sheet, rows, own } = found;
  const source = { kind: 'sheet', name: sheet.name } as const;
  if (own !== undefined) {
    const [headings = { line: 1, cells: [] }, ...below] = rows;
    if (below.length > MOST_TABLE_ROWS) return failed(tooManyRows(name, below.length));
    const read = withLayout({ name, source, headings, rows: below }, layoutOf(sheet));
    if (!read.ok) return read;
    return ok(sayRowsBelow(read.value, found.place.table ?? '', own, own.left));
  }
  const table = tableOf(name, source, rows);
  return table.ok ? withLayout(table.value, layoutOf(sheet)) : table;
}

function tablesOf(sheet: Sheet): (TableSpan & { readonly name: string })[] {
  return (sheet.tables ?? []).flatMap(({ name, displayName, range: text, showTotalRow }) => {
    const range = parseRange(text ?? '');
    if (range === null) return [];
    const hasTotals = showTotalRow === true;
    const bottom = hasTotals ? range.bottom - 1 : range.bottom;
    return [{ name: displayName ?? name, range: { ...range, bottom }, hasTotals }];
  });
}

async function write(
  { name, ...tools }: FileToOpen,
  description: WorkbookDescription,
): Promise<Outcome<Written>> {
  const sheets = description.sheets.map((sheet) => sheet.name);
  const bytes = await writeWorkbook(description, tools);
  return ok({ sheets, file: { name: fileName(name, sheets), bytes } });
}

/** After the opened file and the first sheet that is written: trim-production.xlsx. */
function fileName(opened: string, [first = 'sheets']: readonly string[]): string {
  const base = opened.replace(/\.[^.]*$/u, '');
  const what = first.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  return `${base}-${what}.xlsx`;
}
