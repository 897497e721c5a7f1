/** Keeps the answers of one formula where another's, which is blocked, would have stood. */
import {
  ObjectMatrix,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type IUniverInstanceService,
  type Nullable,
  type Workbook,
} from '@univerjs/core';
import { ErrorType, FormulaDataModel, FormulaRuntimeService } from '@univerjs/engine-formula';

type Cells<T> = IObjectMatrixPrimitiveType<T>;
type BySheet<T> = Readonly<Record<string, Nullable<Readonly<Record<string, Nullable<T>>>>>>;

/** What is touched of the engine's record of spilled answers. */
interface Model {
  readonly _univerInstanceService: IUniverInstanceService;
  readonly _arrayFormulaRange: BySheet<Cells<Nullable<IRange>>>;
  readonly _arrayFormulaCellData: BySheet<Cells<Nullable<ICellData>>>;
  clearPreviousArrayFormulaCellData: (this: Model, cleared: BySheet<Matrix>) => void;
  mergeArrayFormulaCellData: (this: Model, answers: BySheet<Matrix>) => void;
  updateArrayFormulaCellData: (
    this: Model,
    unitId: string,
    sheetId: string,
    cells: Cells<Nullable<ICellData>>,
  ) => boolean;
}
type Matrix = Pick<ObjectMatrix<unknown>, 'getValue'>;

/** What is touched of the engine's calculation. */
interface Runtime {
  readonly _currentConfigService: {
    getArrayFormulaRange: () => BySheet<Cells<Nullable<IRange>>>;
    getUnitData: () => BySheet<{ readonly cellData: ObjectMatrix<Nullable<ICellData>> }>;
  };
  readonly _runtimeData: BySheet<ObjectMatrix<Nullable<ICellData>>>;
  readonly _unitArrayFormulaRange: BySheet<Cells<Nullable<IRange>>>;
  _isInOtherArrayFormulaRange: (
    this: Runtime,
    unitId: string,
    sheetId: string,
    formulaRow: number,
    formulaColumn: number,
    row: number,
    column: number,
  ) => boolean;
}

/** A formula that has answers in several cells, or would have. */
interface Spill {
  readonly row: number;
  readonly column: number;
  readonly range: IRange;
}

const MENDED = Symbol('mended');

/**
 * The engine notes of a blocked formula (#SPILL!) where its answers would have stood. Whenever it is
 * worked out again, or typed over, the engine wipes all of these cells, a neighbor's answers with them;
 * and formulas that are worked out at once don't see each other. Seen with version 0.25.1; does
 * nothing where it was called before.
 */
export function keepSpillsApart(): void {
  const model = FormulaDataModel.prototype as unknown as Model & { [MENDED]?: true };
  if (model[MENDED] === true) return;
  model[MENDED] = true;
  const { clearPreviousArrayFormulaCellData: clear, mergeArrayFormulaCellData: merge } = model;
  model.clearPreviousArrayFormulaCellData = function (cleared): void {
    const restore = neighborsOf(this, cleared);
    clear.call(this, cleared);
    restore();
  };
  model.mergeArrayFormulaCellData = function (answers): void {
    const restore = neighborsOf(this, answers);
    merge.call(this, answers);
    restore();
  };
  const { updateArrayFormulaCellData: update } = model;
  model.updateArrayFormulaCellData = function (unitId, sheetId, cells): boolean {
    const left = leftBehind(this, unitId, sheetId, new ObjectMatrix(cells));
    const isChanged = update.call(this, unitId, sheetId, cells);
    return left() || isChanged;
  };
  const runtime = FormulaRuntimeService.prototype as unknown as Runtime;
  runtime._isInOtherArrayFormulaRange = function (unitId, sheetId, ownRow, ownColumn, row, column) {
    return otherSpills(this, unitId, sheetId).some(
      (one) => (one.row !== ownRow || one.column !== ownColumn) && isWithin(one.range, row, column),
    );
  };
}

/**
 * Answers of formulas that aren't worked out this time, where the engine is about to wipe those of some
 * that are: returns what puts them back.
 */
function neighborsOf(model: Model, workedOut: BySheet<Matrix>): () => void {
  const kept: (() => void)[] = [];
  for (const [unitId, sheets] of Object.entries(workedOut)) {
    for (const [sheetId, matrix] of Object.entries(sheets ?? {})) {
      if (matrix === null || matrix === undefined) continue;
      const spills = spillsOf(model._arrayFormulaRange[unitId]?.[sheetId]);
      const isWorkedOut = ({ row, column }: Spill): boolean =>
        (matrix.getValue(row, column) ?? undefined) !== undefined;
      const wiped = spills.filter(isWorkedOut);
      const standing = standingOf(model, unitId, sheetId, spills).filter(
        (one) => !isWorkedOut(one),
      );
      const cells = new ObjectMatrix(model._arrayFormulaCellData[unitId]?.[sheetId] ?? {});
      for (const { range } of wiped) {
        for (const other of standing) {
          forShared(range, other.range, (row, column) => {
            const cell = cells.getValue(row, column);
            if (cell === null || cell === undefined) return;
            kept.push(() => {
              const now = model._arrayFormulaCellData[unitId]?.[sheetId];
              if (now !== null && now !== undefined) {
                new ObjectMatrix(now).setValue(row, column, cell);
              }
            });
          });
        }
      }
    }
  }
  return () => kept.forEach((put) => put());
}

/** Of a formula that is typed over, the answers that the engine leaves where a blocked one would stand. */
function leftBehind(
  model: Model,
  unitId: string,
  sheetId: string,
  typed: ObjectMatrix<Nullable<ICellData>>,
): () => boolean {
  const spills = spillsOf(model._arrayFormulaRange[unitId]?.[sheetId]);
  const standing = standingOf(model, unitId, sheetId, spills);
  const gone = standing.filter(({ row, column }) => typed.getValue(row, column) !== undefined);
  const others = standing.filter((one) => !gone.includes(one));
  return () => {
    const cells = new ObjectMatrix(model._arrayFormulaCellData[unitId]?.[sheetId] ?? {});
    let isChanged = false;
    for (const { range } of gone) {
      forShared(range, range, (row, column) => {
        const isOthers = others.some((other) => isWithin(other.range, row, column));
        if (isOthers || (cells.getValue(row, column) ?? undefined) === undefined) return;
        cells.realDeleteValue(row, column);
        isChanged = true;
      });
    }
    return isChanged;
  };
}

/** Those that aren't blocked. */
function standingOf(
  { _univerInstanceService: instances }: Model,
  unitId: string,
  sheetId: string,
  spills: readonly Spill[],
): Spill[] {
  const cells = instances.getUnit<Workbook>(unitId)?.getSheetBySheetId(sheetId)?.getCellMatrix();
  return spills.filter(({ row, column }) => !isBlocked(cells?.getValue(row, column)));
}

/** As far as they are worked out by now; the others as they stood before. */
function otherSpills(runtime: Runtime, unitId: string, sheetId: string): Spill[] {
  const { _currentConfigService: config, _runtimeData: answers } = runtime;
  const now = spillsOf(runtime._unitArrayFormulaRange[unitId]?.[sheetId]);
  const answered = answers[unitId]?.[sheetId];
  const stood = config.getUnitData()[unitId]?.[sheetId]?.cellData;
  const isAnswered = ({ row, column }: Spill): boolean =>
    (answered?.getValue(row, column) ?? undefined) !== undefined;
  const before = spillsOf(config.getArrayFormulaRange()[unitId]?.[sheetId]);
  return [
    ...now.filter((one) => isAnswered(one) && !isBlocked(answered?.getValue(one.row, one.column))),
    ...before.filter((one) => !isAnswered(one) && !isBlocked(stood?.getValue(one.row, one.column))),
  ];
}

function spillsOf(ranges: Nullable<Cells<Nullable<IRange>>>): Spill[] {
  const spills: Spill[] = [];
  new ObjectMatrix(ranges ?? {}).forValue((row, column, range) => {
    if (range !== null && range !== undefined) spills.push({ row, column, range });
  });
  return spills;
}

function isBlocked(cell: Nullable<ICellData>): boolean {
  return cell?.v === ErrorType.SPILL;
}

function isWithin(range: IRange, row: number, column: number): boolean {
  const { startRow, endRow, startColumn, endColumn } = range;
  return startRow <= row && row <= endRow && startColumn <= column && column <= endColumn;
}

function forShared(one: IRange, other: IRange, call: (row: number, column: number) => void): void {
  const endRow = Math.min(one.endRow, other.endRow);
  const endColumn = Math.min(one.endColumn, other.endColumn);
  for (let row = Math.max(one.startRow, other.startRow); row <= endRow; row++) {
    for (let column = Math.max(one.startColumn, other.startColumn); column <= endColumn; column++) {
      call(row, column);
    }
  }
}
