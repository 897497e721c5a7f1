/** Why a cell of the grid holds an error, in our function's own words, where the grid shows its own few. */
import { ObjectMatrix, type Injector, type IRange, type Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { CellAlertManagerService, type ICellAlert } from '@univerjs/sheets-ui';
import { fault } from '../../core/faults/fault.ts';
import { callsOurs } from '../formulas/file-formulas.ts';
import { GridError, type AnswerNote, type GridCell } from './grid-function.ts';

/** Of the notice that comes up over a cell with an error. */
const ALERT_KEY = 'SHEET_FORMULA_ALERT';

interface Reason {
  readonly name: string;
  readonly cells: readonly (readonly GridCell[])[];
}

export interface ErrorReasons {
  /** What a function answered in a formula's cell. */
  readonly note: (answered: AnswerNote) => void;
  /** From now on the grid says them over the cells. */
  readonly show: (services: Injector) => void;
}

export function errorReasons(): ErrorReasons {
  const reasons = new Map<string, Reason>();
  const keyOf = (...place: readonly (string | number)[]): string => place.join('\n');
  const reasonAt = (services: Injector, { unitId, subUnitId, row, col }: Location): string => {
    const formulas = services.get(FormulaDataModel);
    const spill = spillOver(formulas.getArrayFormulaRange()[unitId]?.[subUnitId], row, col);
    const [top, left] = spill === undefined ? [row, col] : [spill.startRow, spill.startColumn];
    const formula = formulas.getFormulaStringByCell(top, left, subUnitId, unitId) ?? '';
    if (!callsOurs(formula)) return '';
    const bare = unquotedFraction(formula);
    if (bare !== undefined) return fault('function.fraction-unquoted', 'aLength', bare).message;
    const cell = reasons.get(keyOf(unitId, subUnitId, top, left))?.cells[row - top]?.[col - left];
    return cell instanceof GridError ? cell.message : '';
  };
  return {
    note: ({ name, unitId, sheetId, row, column, cells }) => {
      const key = keyOf(unitId, sheetId, row, column);
      if (cells.flat().some((cell) => cell instanceof GridError)) reasons.set(key, { name, cells });
      // Of several functions in one formula another may have failed.
      else if (reasons.get(key)?.name === name) reasons.delete(key);
    },
    show: (services) => {
      const alerts = services.get(CellAlertManagerService);
      const show = alerts.showAlert.bind(alerts);
      alerts.showAlert = (alert: ICellAlert) => {
        const reason = alert.key === ALERT_KEY ? reasonAt(services, alert.location) : '';
        show(reason === '' ? alert : { ...alert, message: reason });
      };
    },
  };
}

type Location = ICellAlert['location'];

function spillOver(
  ranges: Nullable<ConstructorParameters<typeof ObjectMatrix<Nullable<IRange>>>[0]>,
  row: number,
  column: number,
): IRange | undefined {
  let found: IRange | undefined;
  new ObjectMatrix<Nullable<IRange>>(ranges ?? {}).forValue((_, __, range) => {
    const isOver =
      range !== null &&
      range !== undefined &&
      range.startRow <= row &&
      row <= range.endRow &&
      range.startColumn <= column &&
      column <= range.endColumn;
    if (isOver) found = range;
  });
  return found;
}

/** `3 1/2` as a woodworker types it, where a text was meant. */
function unquotedFraction(formula: string): string | undefined {
  return /\d+\s+\d+\s*\/\s*\d+/u.exec(formula.replace(/"[^"]*"/gu, '""'))?.[0];
}
