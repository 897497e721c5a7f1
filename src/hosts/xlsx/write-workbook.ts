/** Writes a description of sheets as an .xlsx file's bytes. */
import { checkDescription } from '../../sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../sheets/grammar/check/clean-text.ts';
import type { SheetDescription, WorkbookDescription } from '../../sheets/grammar/description.ts';
import { describedWorkbook } from '../workbook/described-workbook.ts';
import type { KeptTexts } from '../workbook/kept-text.ts';
import type { PlainPicture } from '../workbook/plain-workbook.ts';
import { writePlainWorkbook } from './write-plain-workbook.ts';
import { paintPictures, type Paint } from './xlsx-pictures.ts';

export interface WriteTools {
  /** Needed for a description with drawings. */
  readonly paint?: Paint;
  /** Kept in the workbook, out of sight: never in one that goes to others. */
  readonly texts?: KeptTexts;
}

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
  const pictures: PlainPicture[][] = [];
  for (const sheet of clean.sheets) pictures.push(await picturesOf(sheet, tools));
  const workbook = describedWorkbook(clean);
  const sheets = workbook.sheets.map((sheet, at) => ({ ...sheet, pictures: pictures[at] ?? [] }));
  const { texts } = tools;
  return writePlainWorkbook({ ...workbook, sheets, ...(texts === undefined ? {} : { texts }) });
}

async function picturesOf(
  { name, drawings = [] }: SheetDescription,
  { paint }: WriteTools,
): Promise<PlainPicture[]> {
  if (drawings.length === 0) return [];
  if (paint === undefined) throw new RangeError(`Nothing paints the drawings of "${name}".`);
  return paintPictures(drawings, paint);
}
