/** Writes any workbook that is plain data (plain-workbook.ts) as an .xlsx file's bytes. */
import {
  writeXlsx,
  type Cell,
  type CellStyle,
  type WriteOptions,
  type WriteSheet,
} from 'hucre/xlsx';

import {
  absoluteRange,
  cellName,
  parseRange,
  quoteSheet,
  soundRange,
} from '../../core/cells/cell-range.ts';
import { cleanText, MOST_CELL_TEXT } from '../../sheets/grammar/check/clean-text.ts';
import { DIGIT_PIXELS } from '../../sheets/grammar/page-size.ts';
import { MADE, markText } from '../made-mark.ts';
import { errorResult, finishFile } from './finish-file.ts';
import { callsOurs, formulaForFile, reckonsWithRanges } from '../formulas/file-formulas.ts';
import { styleForFile } from './file-styles.ts';
import { extrasForFile } from './page-for-file.ts';
import type { PlainCell, PlainSheet, PlainWorkbook } from '../workbook/plain-workbook.ts';
import { soundTables } from './sound-tables.ts';
import { escapeText, looksLikeError } from './xlsx-sheet.ts';

type Names = NonNullable<WriteOptions['namedRanges']>;
type XlsxCell = Partial<Cell>;
/** By the names that cells call them. */
type CellStyles = ReadonlyMap<string, CellStyle>;

/** The same workbook gives the same bytes, and they tell nothing of when or where. */
const WRITTEN = new Date(Date.UTC(2000, 0, 1));

/**
 * Writes the workbook; whatever is text stays text, formulas keep their cached values.
 *
 * @returns The bytes of an .xlsx file, the same for the same workbook.
 */
export async function writePlainWorkbook(workbook: PlainWorkbook): Promise<Uint8Array> {
  const { title, font, styles, sheets, names } = workbook;
  const cellStyles = new Map(
    Object.entries(styles).map(([key, style]) => [key, styleForFile(style, font)]),
  );
  const tables = soundTables(sheets);
  const bytes = await writeXlsx({
    sheets: sheets.map((sheet) => ({
      ...xlsxSheet(sheet, cellStyles),
      tables: tables.get(sheet) ?? [],
    })),
    namedRanges: [
      ...names.map(({ name, refersTo, sheet }) => ({
        name,
        range: formulaForFile(refersTo),
        ...(sheet === undefined ? {} : { scope: sheet }),
      })),
      ...sheets.flatMap(sheetNames),
    ],
    defaultFont: { ...font },
    properties: { title: cleanText(title), created: WRITTEN, modified: WRITTEN },
  });
  return finishFile(bytes);
}

/** Names that the library would write without the quotes that a sheet's name may need; and our mark. */
function sheetNames({ name, ours, page }: PlainSheet): Names {
  const { printTitlesRow, printTitlesColumn, printArea } = extrasForFile(page).pageSetup ?? {};
  const titles = [printTitlesColumn, printTitlesRow].filter((one) => one !== undefined);
  const area = parseRange((printArea ?? '').replaceAll('$', ''));
  const quoted = quoteSheet(name);
  return [
    ...(titles.length === 0
      ? []
      : [
          {
            name: '_xlnm.Print_Titles',
            range: titles.map((one) => `${quoted}!${one}`).join(),
            scope: name,
          },
        ]),
    ...(area === null
      ? []
      : [{ name: '_xlnm.Print_Area', range: absoluteRange(name, area), scope: name }]),
    ...(ours ? [{ name: MADE, range: markText(name).slice(1), scope: name }] : []),
  ];
}

function xlsxSheet(sheet: PlainSheet, styles: CellStyles): WriteSheet {
  const { columns, rows, freeze } = sheet;
  const extras = extrasForFile(sheet.page);
  const widest = Math.max(-1, ...Object.keys(columns).map(Number));
  // eslint-disable-next-line @typescript-eslint/no-unused-vars -- they are written as names
  const { printTitlesRow, printTitlesColumn, printArea, ...pageSetup } = extras.pageSetup ?? {};
  return {
    ...extras,
    name: sheet.name,
    hidden: sheet.hidden,
    columns: Array.from({ length: widest + 1 }, (_, at) => {
      const { pixels, hidden } = columns[at] ?? {};
      return {
        ...(pixels === undefined ? {} : { width: Math.trunc((pixels / DIGIT_PIXELS) * 256) / 256 }),
        ...(hidden === true ? { hidden } : {}),
      };
    }),
    // The library leaves out rows past the last cell, and with them the room of a picture there.
    rows: Array.from({ length: Math.max(-1, ...Object.keys(rows).map(Number)) + 1 }, () => []),
    cells: xlsxCells(sheet, styles),
    rowDefs: new Map(
      Object.entries(rows).map(([row, { points, hidden }]) => [
        Number(row),
        {
          ...(points === undefined ? {} : { height: points }),
          ...(hidden === true ? { hidden } : {}),
        },
      ]),
    ),
    merges: sheet.merges.map(({ top, left, bottom, right }) => ({
      startRow: top,
      startCol: left,
      endRow: bottom,
      endCol: right,
    })),
    ...(freeze.rows + freeze.columns === 0 ? {} : { freezePane: { ...freeze } }),
    view: {
      showGridLines: sheet.gridLines,
      rightToLeft: sheet.rightToLeft,
      ...(sheet.tabColor === undefined ? {} : { tabColor: { rgb: sheet.tabColor } }),
    },
    ...(extras.pageSetup === undefined ? {} : { pageSetup }),
    images: sheet.pictures.map(({ png, row, column, width, height, title, alt }) => ({
      data: png,
      type: 'png',
      anchor: { from: { row, col: column }, to: { row: row + 1, col: column + 1 } },
      width,
      height,
      title,
      altText: alt,
    })),
  };
}

function xlsxCells(sheet: PlainSheet, styles: CellStyles): Map<string, XlsxCell> {
  const made = new Map<string, XlsxCell>();
  for (const [row, cells] of Object.entries(sheet.cells)) {
    for (const [column, cell] of Object.entries(cells)) {
      const style = styles.get(cell.style ?? '');
      made.set(`${row},${column}`, {
        ...(style === undefined ? {} : { style }),
        ...content(cell, Number(row), Number(column)),
      });
    }
  }
  return made;
}

function content(
  { value, error, formula, spill }: PlainCell,
  row: number,
  column: number,
): XlsxCell {
  if (formula !== undefined) {
    const result =
      error === true
        ? errorResult(errorCode(value))
        : typeof value === 'string'
          ? text(value)
          : value;
    const stored = { formula: formulaForFile(formula), formulaResult: result };
    const several = spill !== undefined || callsOurs(formula) || reckonsWithRanges(formula);
    if (!several) return stored;
    const formulaRef = spill ?? cellName(row, column);
    return {
      ...stored,
      formulaType: 'array',
      formulaRef: oneCell(formulaRef),
      formulaDynamic: true,
    };
  }
  if (error === true) return { value: errorCode(value) };
  if (typeof value === 'number') return { value: Number.isFinite(value) ? value : null };
  if (typeof value !== 'string') return { value };
  const held = text(value);
  if (held === '') return { value: null };
  return looksLikeError(held) ? { value: held, richText: [{ text: held }] } : { value: held };
}

/** Errors that files know; newer ones, and a grid's own, are written as the one that stands for any. */
function errorCode(value: PlainCell['value']): string {
  const code = String(value);
  return /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/u.test(code) ? code : '#VALUE!';
}

/** A1:A1 is written as A1. */
function oneCell(range: string): string {
  const { top, left, bottom, right } = soundRange(range);
  return top === bottom && left === right ? cellName(top, left) : range;
}

function text(typed: string): string {
  return escapeText(cleanText(typed).slice(0, MOST_CELL_TEXT));
}
