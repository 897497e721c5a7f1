/** Writes any plain workbook as an .xlsx file's bytes. */
import { writeXlsx, type WriteOptions } from 'hucre/xlsx';

import { absoluteRange, parseRange, quoteSheet } from '../../core/cells/cell-range.ts';
import { cleanText } from '../../sheets/grammar/check/clean-text.ts';
import { formulaForFile } from '../formulas/file-formulas.ts';
import { MADE, markText } from '../made-mark.ts';
import type { PlainSheet, PlainWorkbook } from '../workbook/plain-workbook.ts';
import { styleForFile } from './file-styles.ts';
import { finishFile } from './finish-file.ts';
import { extrasForFile } from './page-for-file.ts';
import { xlsxSheet } from './xlsx-sheet.ts';

type Names = NonNullable<WriteOptions['namedRanges']>;

/** Of a workbook that tells no day; so the same workbook gives the same bytes. */
const NO_DAY = '2000-01-01';
const DAY_SIGNS = NO_DAY.length;

/**
 * Writes the workbook; whatever is text stays text, formulas keep their cached values.
 *
 * @param workbook Its tables such as a file can hold: headings in text, none twice, and no merge.
 * @returns The bytes of an .xlsx file, the same for the same workbook.
 */
export async function writePlainWorkbook(workbook: PlainWorkbook): Promise<Uint8Array> {
  const { title, font, styles, sheets, names, properties = {}, texts = {} } = workbook;
  const { made = NO_DAY } = workbook;
  const written = new Date(made.length === DAY_SIGNS ? `${made}T00:00:00Z` : made);
  const cellStyles = new Map(
    Object.entries(styles).map(([name, style]) => [name, styleForFile(style, font)]),
  );
  const bytes = await writeXlsx({
    sheets: sheets.map((sheet) => xlsxSheet(sheet, cellStyles)),
    namedRanges: [
      ...names.map(({ name, refersTo, sheet }) => ({
        name,
        range: formulaForFile(refersTo),
        ...(sheet === undefined ? {} : { scope: sheet }),
      })),
      ...sheets.flatMap(sheetNames),
    ],
    defaultFont: { ...font },
    properties: {
      title: cleanText(title),
      created: written,
      modified: written,
      custom: { ...properties },
    },
  });
  return finishFile(bytes, texts);
}

/** Names that the library would write without the quotes that a sheet's name may need; and our mark. */
function sheetNames({ name, ours, page }: PlainSheet): Names {
  const { printTitlesRow, printTitlesColumn, printArea } = extrasForFile(page).pageSetup ?? {};
  const titles = [printTitlesColumn, printTitlesRow].filter((one) => one !== undefined);
  const quoted = quoteSheet(name);
  const area = printedArea(name, printArea);
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
    ...(area === undefined ? [] : [{ name: '_xlnm.Print_Area', range: area, scope: name }]),
    ...(ours ? [{ name: MADE, range: markText(name).slice(1), scope: name }] : []),
  ];
}

/** Whole columns, or one range; what is neither is left out. */
function printedArea(sheet: string, area = ''): string | undefined {
  if (/^\$[A-Z]{1,3}:\$[A-Z]{1,3}$/u.test(area)) return `${quoteSheet(sheet)}!${area}`;
  const range = parseRange(area.replaceAll('$', ''));
  return range === null ? undefined : absoluteRange(sheet, range);
}
