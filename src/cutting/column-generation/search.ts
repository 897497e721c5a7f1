import type { Highs } from 'highs';
import type { WholeStick } from '../whole-stick.ts';
import { seededChance } from '../seeded-chance.ts';
import type { StepBudget } from '../step-budget.ts';
import { EPSILON_CENTS } from '../tolerances.ts';
import { ripColumns, shortfallColumns, spliceColumns, type ColumnUses } from './column.ts';
import { dive } from './dive.ts';
import type { EnumerateOptions } from './enumerate-layouts.ts';
import { generateColumns } from './generate-columns.ts';
import { mostLaborIn, type Instance } from './instance.ts';
import { LinearProgram } from './linear-program.ts';
import { LayoutPricer } from './pricing.ts';
import { startColumns } from './start-columns.ts';
import { wholeSticks } from './whole-sticks.ts';
import { settleByProgram } from './whole-program.ts';

/** Dives at most, whatever the budget. */
const MOST_DIVES = 600;
/** After so many dives the whole-number program over all layouts found so far is tried. */
const DIVES_A_PROGRAM = 8;
/** Past so many different lengths that program is slow and finds little. */
const MOST_ITEMS_FOR_PROGRAM = 220;
/** So many dives that gain nothing end the search. */
const MOST_IDLE_DIVES = 200;
/** Past so many sticks several are settled at one step of a dive. */
const STICKS_FOR_SHARES = 50;

type EnumerationSize = Pick<EnumerateOptions, 'mostLayouts' | 'mostLooks' | 'mostBoardSets'>;

/** Before the dives, and later, when less is left to try. */
const ENUMERATION_SIZES: readonly (EnumerationSize & { readonly dive: number })[] = [
  { dive: 0, mostLayouts: 3_000, mostLooks: 60_000, mostBoardSets: 300 },
  { dive: 12, mostLayouts: 20_000, mostLooks: 600_000, mostBoardSets: 3_000 },
  { dive: 60, mostLayouts: 60_000, mostLooks: 4_000_000, mostBoardSets: 20_000 },
];

export interface SearchHooks extends StepBudget {
  readonly seed: number;
  readonly pause: () => Promise<void>;
  /**
   * @param cents what the columns come to, pieces left over included
   * @returns the cost that is to be beaten from now on, in cents; -Infinity where none can be
   */
  readonly onSticks: (sticks: readonly WholeStick[], phase: string, cents?: number) => number;
  readonly mostDives?: number;
  /** Tries every plan that could be cheaper, if they are not too many. */
  readonly enumerateLayouts?: (size: EnumerationSize, phase: string) => Promise<number>;
  readonly onDuals: (duals: Float64Array, phase: string) => number;
}

/** The bound alone: for an instance whose plan is looked for in another. */
export async function boundAlone(
  instance: Instance,
  highs: Highs,
  hooks: Pick<SearchHooks, 'isSpent' | 'pause' | 'onDuals'>,
): Promise<void> {
  const program = new LinearProgram(highs, instance.rowLeast);
  try {
    program.add(shortfallColumns(instance, shortfallCents(instance)));
    program.add(ripColumns(instance));
    const pricer = new LayoutPricer(instance, 'up');
    const root = await generateColumns(instance, program, pricer, hooks);
    hooks.onDuals(root.bestDuals, 'bound');
  } finally {
    program.dispose();
  }
}

function centsOf(uses: ColumnUses): number {
  let cents = 0;
  for (const [{ costCents }, times] of uses) cents += costCents * times;
  return cents;
}

/** What a piece left over costs in the program: more than serving it ever would. */
function shortfallCents(instance: Instance): number {
  const dearest = instance.supplies.reduce(
    (most, { supply }) => Math.max(most, supply.priceCents),
    1,
  );
  const labor = instance.slots.reduce(
    (most, slot) => Math.max(most, mostLaborIn(instance, slot)),
    0,
  );
  return 100 * (dearest + labor);
}

/**
 * From a plan that stands to cheaper ones, and to a bound: column generation, then dives from its
 * answer, ever more shaken, and whole-number programs over the layouts found.
 *
 * @param start sticks that serve every block of the instance; or not, where stock is short
 */
export async function searchLeast(
  instance: Instance,
  highs: Highs,
  start: readonly WholeStick[],
  hooks: SearchHooks,
): Promise<void> {
  const program = new LinearProgram(highs, instance.rowLeast);
  try {
    const pricer = new LayoutPricer(instance, 'up');
    program.add(shortfallColumns(instance, shortfallCents(instance)));
    program.add(ripColumns(instance));
    program.add(spliceColumns(instance));
    program.add(startColumns(instance, start));
    let beatCents = Infinity;
    const root = await generateColumns(instance, program, pricer, {
      isSpent: hooks.isSpent,
      pause: hooks.pause,
    });
    beatCents = hooks.onDuals(root.bestDuals, 'least possible cost');
    const mostDives = hooks.mostDives ?? MOST_DIVES;
    const chance = seededChance(hooks.seed);
    // Of the splices that are offered here nothing is cheaper, whatever others might be.
    const leastCents = root.finished ? root.boundCents - EPSILON_CENTS : -Number.MAX_VALUE;
    const sticks = root.solution.uses.reduce((sum, use) => sum + use, 0);
    const isTooWide = instance.items.length > MOST_ITEMS_FOR_PROGRAM;
    let lastGain = 0;
    for (let number = 0; number < mostDives && beatCents >= leastCents; number += 1) {
      if (number - lastGain > MOST_IDLE_DIVES) return;
      if (hooks.isSpent()) return;
      const size = ENUMERATION_SIZES.find((one) => one.dive === number);
      if (size !== undefined && hooks.enumerateLayouts !== undefined) {
        beatCents = await hooks.enumerateLayouts(size, 'trying every lay-out');
        if (beatCents < leastCents) return;
      }
      const shake = number === 0 ? 0 : Math.min(1.6, 0.2 + 0.1 * (number % 15));
      const share = sticks > STICKS_FOR_SHARES ? 0.04 : 0;
      const dived = await dive(instance, program, pricer, {
        ...hooks,
        chance,
        shake,
        share,
        beatCents,
      });
      if (dived !== undefined) {
        lastGain = number;
        beatCents = hooks.onSticks(
          wholeSticks(instance, dived),
          `try ${number + 1}`,
          centsOf(dived),
        );
      }
      const isTurn = number % DIVES_A_PROGRAM === DIVES_A_PROGRAM - 1;
      if (!isTurn || beatCents < leastCents || isTooWide) continue;
      const settled = settleByProgram(instance, highs, program.columns, {
        beatCents,
        isOver: hooks.isOver,
        secondsLeft: hooks.secondsLeft,
      });
      if (settled === undefined) continue;
      lastGain = number;
      beatCents = hooks.onSticks(
        wholeSticks(instance, settled),
        'combining lay-outs',
        centsOf(settled),
      );
    }
  } finally {
    program.dispose();
  }
}
