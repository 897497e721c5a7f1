/** Our functions as the grid's engine calls them. */
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from '@univerjs/engine-formula';

/** A cell as it goes in and comes out: null is a blank; an error goes in and out as its code. */
export type GridCell = string | number | boolean | null | GridError;

export class GridError {
  /** `#N/A`, say. */
  readonly code: string;
  /** What is wrong, in words. */
  readonly message: string;
  constructor(code: string, message = '') {
    this.code = code;
    this.message = message;
  }
}

export interface GridFunctionEntry {
  /** COVE.APPROACH, say. */
  readonly name: string;
  readonly description: string;
  /** Whether each of its answers is an angle in degrees. */
  readonly answersDegrees: boolean;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
  }[];
  /** An argument is a matrix of cells, undefined where it is left out; so is the answer. Never throws. */
  readonly call: (...given: readonly (GridCell[][] | undefined)[]) => GridCell[][];
}

/** A function's answer, with the cell of the formula that it was called in. */
export interface AnswerNote {
  readonly name: string;
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly GridCell[])[];
}

export type Executor = new (name: string) => BaseFunction;

/**
 * The class of a function. It is no "custom function" of the engine's: those get a blank cell as 0,
 * and a blank and a 0 are two things here (a blank kerf is the usual one).
 */
export function executorOf(
  { name, call, parameters }: GridFunctionEntry,
  note: (answered: AnswerNote) => void,
): Executor {
  return class extends BaseFunction {
    // What is missing is the function's own to say: the engine would call it #N/A.
    override minParams = 0;
    override maxParams = parameters.length;

    // Else the engine would take the text 3/4 for a day in March.
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const cells = call(...given.map(matrixOf));
      const { unitId = '', subUnitId = '', row, column } = this;
      note({ name, unitId: unitId ?? '', sheetId: subUnitId ?? '', row, column, cells });
      return answerOf(cells);
    }
  };
}

/** Undefined where the argument is left out between two commas. */
function matrixOf(value: BaseValueObject): GridCell[][] | undefined {
  if (value.isNull()) return undefined;
  if (!(value instanceof ArrayValueObject)) return [[cellOf(value)]];
  const rows = value.getArrayValue();
  return Array.from({ length: value.getRowCount() }, (_, row) =>
    Array.from({ length: value.getColumnCount() }, (__, column) =>
      cellOf(rows[row]?.[column] ?? NullValueObject.create()),
    ),
  );
}

function cellOf(value: BaseValueObject): GridCell {
  if (value.isNull()) return null;
  if (value instanceof ErrorValueObject) return new GridError(value.getErrorType());
  return value.getValue();
}

/** One cell alone, so that it takes part in whatever stands around the call. */
function answerOf(cells: readonly (readonly GridCell[])[]): BaseValueObject {
  const values = cells.map((row) => row.map(valueOf));
  const [[only] = []] = values;
  if (only !== undefined && values.length === 1 && values[0]?.length === 1) return only;
  return ArrayValueObject.create({
    calculateValueList: values,
    rowCount: values.length,
    columnCount: values[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

function valueOf(cell: GridCell): BaseValueObject {
  if (cell === null) return NullValueObject.create();
  if (typeof cell === 'number') return NumberValueObject.create(cell);
  if (typeof cell === 'boolean') return BooleanValueObject.create(cell);
  if (typeof cell === 'string') return StringValueObject.create(cell);
  return ErrorValueObject.create(errorTypeOf(cell.code));
}

function errorTypeOf(code: string): ErrorType {
  return Object.values(ErrorType).find((type: string) => type === code) ?? ErrorType.VALUE;
}
