/** Formulas that a file writes once for many cells (ECMA-376 part 1, 18.3.1.40), each as its own cell's. */
import type { Sheet } from 'hucre/xlsx';

import { shiftFormula } from '../formulas/shift-formula.ts';

interface Master {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/** By row and column as the library keys its cells. */
export function sharedFormulas({ cells }: Sheet): ReadonlyMap<string, string> {
  const masters = new Map<number, Master>();
  const formulas = new Map<string, string>();
  for (const [key, { formula = '', formulaType, formulaSharedIndex }] of cells ?? []) {
    if (formulaType !== 'shared' || formulaSharedIndex === undefined) continue;
    const [row = 0, column = 0] = key.split(',').map(Number);
    if (formula !== '') masters.set(formulaSharedIndex, { row, column, formula });
    const master = masters.get(formulaSharedIndex);
    if (master === undefined) continue;
    formulas.set(key, shiftFormula(master.formula, row - master.row, column - master.column));
  }
  return formulas;
}
