import { entryAt } from '../entry-at.ts';
import type { Column, ColumnUses } from './column.ts';
import { enumerateRest, MOST_TO_ENUMERATE, piecesLeft } from './enumerate-rest.ts';
import { generateColumnsBelow } from './generate-columns.ts';
import type { Instance } from './instance.ts';
import type { LinearProgram, LinearSolution } from './linear-program.ts';
import type { LayoutPricer } from './pricing.ts';
import { EPSILON_DIVE_CENTS, EPSILON_USES } from '../tolerances.ts';

/** Layouts sought anew at each step down. */
const ROUNDS_A_STEP = 3;

export interface DiveOptions {
  readonly chance: () => number;
  /** How much the choice is shaken: 0 takes the column nearest to a whole number of uses. */
  readonly shake: number;
  /** Share of the remaining sticks that may be settled at one step. */
  readonly share: number;
  /** A plan that costs as much is of no use. */
  readonly beatCents: number;
  readonly isSpent: () => boolean;
  readonly pause: () => Promise<void>;
}

/**
 * Goes down from the linear program's answer to whole numbers: settles the columns that are used a
 * whole number of times and the one nearest to one, takes off what they cover, seeks layouts for
 * what is left, and so on (diving with column generation: R. Sadykov and others, Primal heuristics
 * for branch and price, INFORMS J. on Computing 31, 2019 [M]).
 *
 * @returns undefined where it comes to nothing cheaper than asked
 */
export async function dive(
  instance: Instance,
  program: LinearProgram,
  pricer: LayoutPricer,
  options: DiveOptions,
): Promise<ColumnUses | undefined> {
  const left = Float64Array.from(instance.rowLeast);
  const settled = new Map<Column, number>();
  let settledCents = 0;
  const settle = (column: Column, times: number): void => {
    settled.set(column, (settled.get(column) ?? 0) + times);
    settledCents += times * column.costCents;
    column.rows.forEach((row, at) => {
      left[row] = entryAt(left, row) - times * entryAt(column.values, at);
    });
  };
  try {
    while (isOpen(left)) {
      await options.pause();
      if (options.isSpent()) return undefined;
      program.setRows(left);
      const open = counts(instance, left);
      program.close(closedColumns(instance, program, left, open));
      const solution = generateColumnsBelow(instance, program, pricer, open, ROUNDS_A_STEP);
      if (settledCents + solution.costCents >= options.beatCents - EPSILON_DIVE_CENTS)
        return undefined;
      // Strips bought and not yet used would be bought again: only where there are none.
      if (isSmall(instance, left)) {
        const mostCents = Math.floor(options.beatCents - settledCents);
        const rest = await enumerateRest(instance, left, solution.duals, mostCents);
        if (rest === 'none') return undefined;
        if (rest !== 'too many') {
          for (const [column, times] of rest) settle(column, times);
          return settled;
        }
      }
      if (!settleSome(instance, program, solution, left, settle, options)) return undefined;
    }
    return settledCents < options.beatCents - EPSILON_DIVE_CENTS ? settled : undefined;
  } finally {
    program.close(new Uint8Array(program.columns.length));
    program.setRows(instance.rowLeast);
  }
}

function isOpen(left: Float64Array): boolean {
  return left.some((least) => least > EPSILON_USES);
}

function isSmall(instance: Instance, left: Float64Array): boolean {
  return (
    instance.slots.every(({ supply }) => supply >= 0) &&
    piecesLeft(instance, left) <= MOST_TO_ENUMERATE
  );
}

/** How many of each item can still come: what is left, and the parts of splices not yet settled. */
function counts(instance: Instance, left: Float64Array): Float64Array {
  const most = left.slice(0, instance.items.length).map((least) => Math.round(least));
  for (const { row, ways } of instance.choices) {
    const open = Math.max(0, Math.round(entryAt(left, row)));
    if (open === 0) continue;
    const inOne = new Map<number, number>();
    for (const { items } of ways) {
      const own = new Map<number, number>();
      for (const item of items) own.set(item, (own.get(item) ?? 0) + 1);
      for (const [item, count] of own) inOne.set(item, Math.max(inOne.get(item) ?? 0, count));
    }
    for (const [item, count] of inOne) most[item] = entryAt(most, item) + open * count;
  }
  return most.map((count) => Math.max(0, count));
}

/**
 * How often a column can still be used without covering more of a piece than can come, or using more
 * of a supply than there is.
 *
 * @param open how many of each item can still come
 */
function mostUses(
  instance: Instance,
  { rows, values, what }: Column,
  left: Float64Array,
  open: Float64Array,
): number {
  let most = Infinity;
  rows.forEach((row, at) => {
    const value = values[at] ?? 0;
    if (row >= instance.firstSupplyRow)
      most = Math.min(most, Math.floor((left[row] ?? 0) / value + EPSILON_USES));
    else if (value > 0 && row < instance.items.length && what.kind === 'layout') {
      most = Math.min(most, Math.floor((open[row] ?? 0) / value + EPSILON_USES));
    } else if (what.kind === 'shortfall' || (what.kind === 'splice' && value > 0)) {
      most = Math.min(most, Math.floor((left[row] ?? 0) + EPSILON_USES));
    }
  });
  return Math.max(0, most);
}

function closedColumns(
  instance: Instance,
  program: LinearProgram,
  left: Float64Array,
  open: Float64Array,
): Uint8Array {
  return Uint8Array.from(program.columns, (column) =>
    mostUses(instance, column, left, open) < 1 ? 1 : 0,
  );
}

/** Settles every whole use, and of the others those nearest to one. */
function settleSome(
  instance: Instance,
  program: LinearProgram,
  { uses }: LinearSolution,
  left: Float64Array,
  settle: (column: Column, times: number) => void,
  { chance, shake, share }: DiveOptions,
): boolean {
  const parts: { column: Column; part: number; key: number }[] = [];
  let open = counts(instance, left);
  const settleAs = (column: Column, times: number): void => {
    settle(column, times);
    if (instance.choices.length > 0) open = counts(instance, left);
    else for (const row of column.rows) if (row < open.length) open[row] = entryAt(left, row);
  };
  let all = 0;
  let done = 0;
  for (const [at, column] of program.columns.entries()) {
    const use = entryAt(uses, at);
    if (use < EPSILON_USES) continue;
    all += use;
    const whole = Math.min(Math.floor(use + EPSILON_USES), mostUses(instance, column, left, open));
    if (whole > 0) {
      settleAs(column, whole);
      done += whole;
    }
    const part = use - Math.floor(use + EPSILON_USES);
    if (part < EPSILON_USES) continue;
    parts.push({ column, part, key: part * (1 + shake * (chance() - 0.5)) });
  }
  if (parts.length === 0) return done > 0;
  // Boards are bought once it is known what is cut from them.
  const layouts = parts.filter(({ column }) => column.what.kind !== 'rip');
  if (layouts.length > 0) parts.splice(0, parts.length, ...layouts);
  parts.sort((a, b) => b.key - a.key);
  const most = Math.max(1, Math.floor(share * all) - done);
  let some = 0;
  for (const { column, part } of parts) {
    if (some >= most || (some + done > 0 && part < 0.55)) break;
    if (mostUses(instance, column, left, open) < 1) continue;
    settleAs(column, 1);
    some += 1;
  }
  return some + done > 0;
}
