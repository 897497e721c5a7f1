/** Writes a description of sheets as an .xlsx file's bytes. */
import { writeXlsx, type WriteOptions } from 'hucre/xlsx';

import { absoluteRange, quoteSheet, soundRange } from '../../sheets/cell-range.ts';
import { checkDescription } from '../../sheets/check-description.ts';
import { cleanDescription } from '../../sheets/clean-text.ts';
import {
  DESCRIPTION_VERSION,
  type SheetDescription,
  type WorkbookDescription,
} from '../../sheets/description.ts';
import { STANDARD_FONT } from './xlsx-style.ts';
import { xlsxSheet } from './xlsx-sheet.ts';

/** The same description gives the same bytes, so the file tells nothing of when or where. */
const WRITTEN = new Date(Date.UTC(2000, 0, 1));

type Names = NonNullable<WriteOptions['namedRanges']>;

/**
 * Writes a workbook: values, formulas with their calculated values, styles, tables, validations,
 * highlights, names, panes and print set-up.
 *
 * @param description The workbook as plain data; its texts are cleaned first.
 * @returns The bytes of an .xlsx file, the same for the same description.
 * @throws RangeError that lists what no workbook can hold (a bug of the caller's).
 */
export async function writeWorkbook(description: WorkbookDescription): Promise<Uint8Array> {
  const clean = cleanDescription(description);
  const wrong = checkDescription(clean);
  if (wrong.length > 0) throw new RangeError(`No workbook can hold this: ${wrong.join(' ')}`);
  return writeXlsx({
    sheets: clean.sheets.map(xlsxSheet),
    namedRanges: [...names(clean), ...clean.sheets.flatMap(titleRows)],
    defaultFont: STANDARD_FONT,
    properties: {
      title: clean.title,
      created: WRITTEN,
      modified: WRITTEN,
      custom: { 'Description version': DESCRIPTION_VERSION },
    },
  });
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
