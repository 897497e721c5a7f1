/** Calls the functions as a spreadsheet does: with matrices, by their ids. */
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import type { CellError, Range, Result, Results } from '../../src/functions/cell.ts';

/** A single cell. */
export const one = (cell: unknown): unknown[][] => [[cell]];

/** A column of cells. */
export const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

export function call(id: string, ...given: Range[]): Results {
  const entry = CATALOGUE.find((each) => each.id === id);
  if (entry === undefined) throw new Error(`There is no function ${id}.`);
  return entry.call(...given);
}

/** Calls with single cells; undefined for an argument that is left out. */
export function callWith(id: string, ...cells: unknown[]): Results {
  return call(id, ...cells.map((cell) => (cell === undefined ? undefined : one(cell))));
}

/** The answer of a call that gives one cell. */
export function answer(id: string, ...cells: unknown[]): Result {
  const results = callWith(id, ...cells);
  const [[only] = []] = results;
  if (results.length !== 1 || results[0]?.length !== 1 || only === undefined) {
    throw new Error(`${id} gave ${JSON.stringify(results)}.`);
  }
  return only;
}

export function isError(cell: unknown): cell is CellError {
  return typeof cell === 'object' && cell !== null && 'kind' in cell && cell.kind === 'cell error';
}

/** Code and message of an error cell, for tests to read in a line. */
export function said(cell: Result | undefined): string {
  return isError(cell) ? `${cell.code} ${cell.message}` : `no error: ${String(cell)}`;
}
