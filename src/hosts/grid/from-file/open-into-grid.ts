/** Opens a person's file into the grid: a workbook, or one sheet as CSV. */
import { generateRandomId, type IWorkbookData } from '@univerjs/core';
import { failed, fault, ok, type Caution, type Outcome } from '../../../core/faults/fault.ts';
import { readFileWorkbook } from '../../xlsx/read-file-workbook.ts';
import { csvWorkbook } from './csv-workbook.ts';
import { unknownFunctions } from './known-functions.ts';
import { workbookData } from './workbook-data.ts';

const CSV = /\.(?:csv|tsv|txt)$/iu;

export interface Opened {
  readonly data: IWorkbookData;
  /** What was left out, or stands differently from how it stood in the file. */
  readonly cautions: readonly Caution[];
}

/**
 * Reads a file for the grid. What was written here and downloaded is known again as ours.
 *
 * @param bytes At most 50 MB.
 * @param fileName With its ending, which says whether it is CSV.
 * @returns The grid's workbook under an id of its own; or one fault in words: what readFileWorkbook
 *   and csvWorkbook find.
 */
export async function openIntoGrid(bytes: Uint8Array, fileName: string): Promise<Outcome<Opened>> {
  const id = `opened-${generateRandomId()}`;
  if (CSV.test(fileName)) {
    const table = csvWorkbook(bytes, fileName);
    return table.ok
      ? ok({ data: workbookData(table.value, id), cautions: [] })
      : failed(...table.faults);
  }
  const read = await readFileWorkbook(bytes, fileName);
  if (!read.ok) return read;
  const { workbook, cautions } = read.value;
  const unknown = unknownFunctions(workbook);
  const data = workbookData(workbook, id);
  if (unknown === null) return ok({ data, cautions });
  const { names, first } = unknown;
  const details = { details: { first } };
  return ok({
    data,
    cautions: [...cautions, fault('grid.unknown-functions', 'workbook', names.join(', '), details)],
  });
}
