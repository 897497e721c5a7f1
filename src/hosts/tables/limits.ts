/** How much is read of a file: bounds on what one person's house can need, many times over. */
import type { Argument } from '../../core/faults/argument.ts';
import { fault, type Fault } from '../../core/faults/fault.ts';

export const LARGEST_FILE_MB = 50;
/** What a workbook's parts may come to when unpacked: all together, and one in XML but a sheet. */
export const LARGEST_UNPACKED_MB = 128;
export const LARGEST_SMALL_PART_MB = 16;
/** Of a workbook's formats: as many as Excel holds (65,490), in a hundred bytes each. */
export const LARGEST_STYLES_MB = 6.5;
/** What a sheet has at most (Microsoft, "Excel specifications and limits"), and a CSV file of lines. */
export const MOST_SHEET_ROWS = 1_048_576;
/** Characters of one row of a CSV file. */
export const LONGEST_CSV_ROW = 1_000_000;
/** Of all sheets of a workbook, empty ones with them: two sheets with formats to their end, and a large house. */
export const MOST_WORKBOOK_ROWS = 2 * MOST_SHEET_ROWS;
export const MOST_WORKBOOK_CELLS = 8_000_000;
/** Rows of one table, blank ones not counted. */
export const MOST_TABLE_ROWS = 20_000;
/** Columns of a sheet that are looked at. */
export const MOST_TABLE_COLUMNS = 256;

/** What the grid on the page opens: read and shown in some three seconds, measured on two cores. */
export const MOST_GRID_ROWS = 30_000;
export const MOST_GRID_COLUMNS = 256;
export const LARGEST_GRID_SHEETS_MB = 24;

const BYTES_PER_MB = 1_000_000;

/**
 * The fault of a file, or of what it unpacks to, that is larger than is read; null where it isn't.
 *
 * @param what What is so large.
 */
export function largerThanRead(
  what: Argument,
  bytes: number,
  limitMb: number = LARGEST_FILE_MB,
): Fault | null {
  if (bytes <= limitMb * BYTES_PER_MB) return null;
  const megabytes = Math.ceil((bytes / BYTES_PER_MB) * 10) / 10;
  return fault('file.too-large', what, megabytes, { limit: limitMb });
}
