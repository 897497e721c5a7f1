/** Answers of formulas that stand in other cells than the formula: the grid keeps them apart. */
import type { ICellData, Injector, IObjectMatrixPrimitiveType, IRange } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';

/** By sheet's id, row and column. */
export interface GridSpills {
  /** Where a formula's answers stand, by its own cell. */
  readonly ranges: BySheet<IRange>;
  /** What stands there. */
  readonly cells: BySheet<ICellData>;
}

type BySheet<T> = Readonly<Record<string, IObjectMatrixPrimitiveType<T | null> | null | undefined>>;

export const NO_SPILLS: GridSpills = { ranges: {}, cells: {} };

/**
 * @param services Where the grid's own services are had from.
 * @param id The workbook's.
 */
export function gridSpills(services: Injector, id: string): GridSpills {
  const formulas = services.get(FormulaDataModel);
  return {
    ranges: formulas.getArrayFormulaRange()[id] ?? {},
    cells: (formulas.getArrayFormulaCellData()[id] ?? {}) as GridSpills['cells'],
  };
}
