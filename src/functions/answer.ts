/**
 * Answers a call: reads the ranges by a function's table of arguments, goes through their cells, and
 * turns faults into error cells, so that a bad cell spoils its own answer and no other.
 */
import { ok, type Caution, type Fault, type Outcome } from '../core/faults/fault.ts';
import type { ArgumentTable, Values } from './argument.ts';
import { cellError } from './cell-error.ts';
import type { Range, Result, Results } from './cell.ts';
import { readArgument } from './read-argument.ts';
import { sayReasons } from './say-reasons.ts';
import {
  blockOf,
  fitColumns,
  fitSingles,
  fitTogether,
  isBlankCell,
  lastFilled,
  WHOLE_COLUMN,
  type Fit,
  type NamedBlock,
} from './shape.ts';

/** The ranges of a call, by the names of its arguments. */
export type Ranges<Table extends ArgumentTable> = { readonly [Key in keyof Table]: Range };

/** An answer a cell, of the size that the ranges make together. */
export function answerEach<Table extends ArgumentTable>(
  table: Table,
  ranges: Ranges<Table>,
  answer: (given: Values<Table>) => Outcome<Result>,
): Results {
  return answerCells(table, ranges, {
    answer: (given) => {
      const outcome = answer(given);
      return outcome.ok ? outcome.value : cellError(outcome.faults);
    },
    refuse: cellError,
  });
}

/** As answerEach, where words are the answer: what can't be read is said in `refuse`'s way. */
export function answerCells<Table extends ArgumentTable>(
  table: Table,
  ranges: Ranges<Table>,
  ways: {
    readonly answer: (given: Values<Table>) => Result;
    readonly refuse: (faults: readonly Fault[]) => Result;
  },
): Results {
  const call = openCall(table, ranges, fitTogether);
  if (call.faults.length > 0) return [[ways.refuse(call.faults)]];
  return Array.from({ length: call.rows }, (_, row) =>
    Array.from({ length: call.columns }, (_empty, column) => {
      if (call.isBlank(row, column)) return BLANK;
      const given = call.read(row, column);
      return given.ok ? ways.answer(given.value) : ways.refuse(given.faults);
    }),
  );
}

/** One row of an answer: its numbers, or every fault that stands against it. */
export interface RowAnswer {
  readonly numbers: readonly Result[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * A row for each row of the ranges, which are columns or single cells: so many numbers, then what is
 * to be said in words. A row at fault has its error once, in the first cell.
 */
export function answerRows<Table extends ArgumentTable>(
  table: Table,
  ranges: Ranges<Table>,
  numberCount: number,
  answer: (given: Values<Table>) => RowAnswer,
): Results {
  const call = openCall(table, ranges, fitColumns);
  const write = ({ numbers, faults, cautions }: RowAnswer): Result[] => {
    const words = sayReasons(faults, cautions);
    if (faults.length === 0) return [...numbers, words];
    const blanks = Array.from({ length: numberCount - 1 }, () => '');
    return [cellError(faults), ...blanks, words];
  };
  const refused = (faults: readonly Fault[]): Result[] =>
    write({ numbers: [], faults, cautions: [] });
  if (call.faults.length > 0) return [refused(call.faults)];
  return Array.from({ length: call.rows }, (_, row) => {
    if (call.isBlank(row, 0)) return Array.from({ length: numberCount + 1 }, () => BLANK);
    const given = call.read(row, 0);
    return given.ok ? write(answer(given.value)) : refused(given.faults);
  });
}

/** One answer of any size, from single cells; or one error. */
export function answerOnce<Table extends ArgumentTable>(
  table: Table,
  ranges: Ranges<Table>,
  answer: (given: Values<Table>) => Outcome<Results>,
): Results {
  const call = openCall(table, ranges, fitSingles);
  if (call.faults.length > 0) return [[cellError(call.faults)]];
  const given = call.read(0, 0);
  const outcome = given.ok ? answer(given.value) : given;
  return outcome.ok ? outcome.value : [[cellError(outcome.faults)]];
}

/** A null would show as 0. */
const BLANK = '';

interface Call<Table extends ArgumentTable> extends Fit {
  /**
   * Whether nothing stands there in any of the ranges: no row to be answered, as in whole columns. A
   * single blank cell is one that is left out, and at fault where it is needed.
   */
  readonly isBlank: (row: number, column: number) => boolean;
  /** All arguments at a place, or every fault among them. */
  readonly read: (row: number, column: number) => Outcome<Values<Table>>;
}

function openCall<Table extends ArgumentTable>(
  table: Table,
  ranges: Ranges<Table>,
  fit: (blocks: readonly NamedBlock[]) => Fit,
): Call<Table> {
  const blocks = Object.entries(table).map(([key, argument]) => {
    const block = blockOf(ranges[key]);
    // A single cell is read once, however many rows stand beside it.
    const single =
      block.rows === 1 && block.columns === 1 ? readArgument(argument, block.at(0, 0)) : undefined;
    return { key, argument, block, single };
  });
  const read = (row: number, column: number): Outcome<Values<Table>> => {
    const values: Record<string, unknown> = {};
    const faults: Fault[] = [];
    for (const { key, argument, block, single } of blocks) {
      const one = single ?? readArgument(argument, block.at(row, column));
      if (one.ok) values[key] = one.value;
      else faults.push(...one.faults);
    }
    // Every key of the table was read by its own argument.
    return faults.length > 0 ? { ok: false, faults } : ok(values as Values<Table>);
  };
  const named = blocks.map(({ argument, block }) => [argument.name, block] as const);
  const rangesGiven = blocks.filter(({ block }) => block.rows > 1 || block.columns > 1);
  const isBlank = (row: number, column: number): boolean =>
    rangesGiven.length > 0 && rangesGiven.every(({ block }) => isBlankCell(block.at(row, column)));
  const size = fit(named);
  if (size.rows < WHOLE_COLUMN) return { ...size, isBlank, read };
  // Answers to a sheet's end have room in its first row alone: they go as far as anything is filled in.
  const used = lastFilled(size.rows, (row) => !isBlank(row, 0));
  return { ...size, rows: Math.max(1, used), isBlank, read };
}
