/**
 * What passes between a cell and a function: every argument is a matrix of cells, and so is every
 * result. A function here knows no spreadsheet; register.ts turns an error cell into Excel's own.
 */

/** One cell of an argument, as the spreadsheet hands it over: also null, "" and error objects. */
export type Cell = unknown;

/** An argument: rows of cells; null or undefined when omitted. */
export type Range = readonly (readonly Cell[])[] | null | undefined;

export interface CellError {
  readonly kind: 'cell error';
  /** Bad input is #VALUE!; sound input that has no answer is #N/A. */
  readonly code: '#VALUE!' | '#N/A';
  readonly message: string;
}

export type Result = number | string | boolean | CellError;

/** Rows of equal length; a blank cell is "". */
export type Results = Result[][];
