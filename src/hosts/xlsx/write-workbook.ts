/** Writes a description of sheets as an .xlsx file's bytes. */
import { writeXlsx, type WriteOptions, type WriteSheet } from 'hucre/xlsx';

import { absoluteRange, quoteSheet, soundRange } from '../../core/cells/cell-range.ts';
import { checkDescription } from '../../sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../sheets/grammar/check/clean-text.ts';
import {
  DESCRIPTION_VERSION,
  type SheetDescription,
  type WorkbookDescription,
} from '../../sheets/grammar/description.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import { finishFile } from './finish-file.ts';
import { pictures, type Paint } from './xlsx-pictures.ts';
import { xlsxSheet } from './xlsx-sheet.ts';

/** The same description gives the same bytes, so the file tells nothing of when or where. */
const WRITTEN = new Date(Date.UTC(2000, 0, 1));

export interface WriteTools {
  /** Needed for a description with drawings. */
  readonly paint?: Paint;
}

type Names = NonNullable<WriteOptions['namedRanges']>;

/**
 * Writes a workbook: values, formulas with their calculated values, styles, tables, validations,
 * highlights, names, panes, print set-up and drawings, as pictures at their true size.
 *
 * @param description The workbook as plain data; its texts are cleaned first.
 * @param tools What paints its drawings.
 * @returns The bytes of an .xlsx file, the same for the same description and paint.
 * @throws RangeError that lists what no workbook can hold, or says that there are drawings and
 *   nothing to paint them (a bug of the caller's).
 */
export async function writeWorkbook(
  description: WorkbookDescription,
  tools: WriteTools = {},
): Promise<Uint8Array> {
  const clean = cleanDescription(description);
  const wrong = checkDescription(clean);
  if (wrong.length > 0) throw new RangeError(`No workbook can hold this: ${wrong.join(' ')}`);
  const sheets: WriteSheet[] = [];
  for (const sheet of clean.sheets) sheets.push(await drawnSheet(sheet, tools));
  const bytes = await writeXlsx({
    sheets,
    namedRanges: [...names(clean), ...clean.sheets.flatMap(titleRows)],
    defaultFont: STANDARD_FONT,
    properties: {
      title: clean.title,
      created: WRITTEN,
      modified: WRITTEN,
      custom: { 'Description version': DESCRIPTION_VERSION },
    },
  });
  return finishFile(bytes);
}

async function drawnSheet(sheet: SheetDescription, { paint }: WriteTools): Promise<WriteSheet> {
  const { drawings = [] } = sheet;
  if (drawings.length === 0) return xlsxSheet(sheet);
  if (paint === undefined) throw new RangeError(`Nothing paints the drawings of "${sheet.name}".`);
  return { ...xlsxSheet(sheet), images: await pictures(sheet, paint) };
}

function names(description: WorkbookDescription): Names {
  return (description.names ?? []).map(({ name, sheet, range }) => ({
    name,
    range: absoluteRange(sheet, soundRange(range)),
  }));
}

/** Written as the name that Excel keeps for it: the library's own setting leaves out the quotes. */
function titleRows({ name, print }: SheetDescription): Names {
  if (print.titleRows === undefined) return [];
  const [first, last] = print.titleRows;
  const range = `${quoteSheet(name)}!$${first}:$${last}`;
  return [{ name: '_xlnm.Print_Titles', range, scope: name }];
}
