import { gcd } from './greatest-divisor.ts';
import type { Highs } from 'highs';
import { askSplices } from './ask-splices.ts';
import { servedInstance } from './first-bound.ts';
import type { Incumbent } from './incumbent.ts';
import { certify, type Proof } from './column-generation/certify.ts';
import { enumerateLayouts } from './column-generation/enumerate-layouts.ts';
import type { Instance } from './column-generation/instance.ts';
import { makeInstance } from './column-generation/make-instance.ts';
import { boundAlone, searchLeast, type SearchHooks } from './column-generation/search.ts';
import { wholeSticks } from './column-generation/whole-sticks.ts';
import { hasLabor } from './problem/strip-labor.ts';
import { profilesOf } from './problem/profiles.ts';
import type { PlanSticksOptions, StickProblem, UnservedReason } from './problem/problem.ts';
import type { Block } from './quick/cut-list.ts';
import type { StepBudget } from './step-budget.ts';
import type { WholeStick } from './whole-stick.ts';

/** While stock leaves pieces over, so many dives look for a plan that serves more. */
const RESCUE_DIVES = 40;

export type ImproveOptions = PlanSticksOptions & { readonly stepBudget: StepBudget };

/** Rounds of the search at most; each follows a plan that serves more. */
const MOST_ROUNDS = 4;

/**
 * From the quick plan on: rounds of the search, another each time a cheaper plan left stock for what
 * had been left over.
 */
export async function improve(
  problem: StickProblem,
  incumbent: Incumbent,
  highs: Highs,
  options: ImproveOptions,
): Promise<void> {
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const servesMore = await improveOnce(problem, incumbent, highs, options, round === 0);
    if (!servesMore || incumbent.isProven() || options.stepBudget.isOver()) return;
  }
}

/**
 * From the quick plan on: where stock was short, a search for a plan that serves more; then the
 * search for the least cost of what is served, and a bound for just that.
 *
 * @returns whether the cheaper plan serves more than was asked of it
 */
async function improveOnce(
  problem: StickProblem,
  incumbent: Incumbent,
  highs: Highs,
  options: ImproveOptions,
  isFirst: boolean,
): Promise<boolean> {
  if (isFirst && incumbent.leftOver() > 0) await rescue(problem, incumbent, highs, options);
  const { lists, unserved } = incumbent.best;
  const isServed = ({ pieces }: Block): boolean =>
    !pieces.some(({ demandId }) => unserved.has(demandId));
  const spliced = lists.some((list) => list.spliced.size > 0);
  const isWhole = ({ pieces }: Block): boolean => pieces.every(({ part }) => part === undefined);
  const whole = lists.map(({ blocks }) => blocks.filter(isServed).filter(isWhole));
  const none = profilesOf(problem).map(() => []);
  const splices = askSplices(problem, lists, (id) => !unserved.has(id));
  if (splices.length === 0 && whole.every((blocks) => blocks.length === 0)) return false;
  const instance = makeInstance(problem, whole, none, splices);
  if (spliced) {
    const relaxed = servedInstance(problem, lists, unserved);
    await boundAlone(relaxed, highs, {
      ...hooksOf(options),
      onDuals: (duals) => {
        incumbent.raiseBound(certify(relaxed, duals)?.bound, 'least possible cost');
        return incumbent.beatCents(leastGain(relaxed));
      },
    });
  }
  let proof: Proof | undefined;
  // Once more is served, what is searched here is another problem's answer.
  const beat = (): number =>
    incumbent.best.unserved.size < unserved.size
      ? -Infinity
      : incumbent.beatCents(leastGain(instance));
  await searchLeast(instance, highs, incumbent.best.sticks, {
    ...hooksOf(options),
    onSticks: (sticks, phase) => {
      incumbent.offer({ sticks, unserved, lists }, phase);
      return beat();
    },
    enumerateLayouts: async (size, phase) => {
      if (proof === undefined) return beat();
      for (let isOpen = true; isOpen;) {
        const mostCents = incumbent.netCents - leastGain(instance);
        const outcome = await enumerateLayouts(instance, proof, {
          ...hooksOf(options),
          ...size,
          mostCents,
        });
        if (outcome === 'none') incumbent.allTried(phase);
        isOpen =
          typeof outcome !== 'string' &&
          incumbent.offer({ sticks: wholeSticks(instance, outcome), unserved, lists }, phase) &&
          beat() > -Infinity;
      }
      return beat();
    },
    onDuals: (duals, phase) => {
      proof = spliced ? undefined : certify(instance, duals);
      incumbent.raiseBound(proof?.bound, phase);
      return beat();
    },
  });
  return incumbent.best.unserved.size < unserved.size;
}

/** Every piece that any stick gives is asked for; what is left over is priced beyond all sticks. */
async function rescue(
  problem: StickProblem,
  incumbent: Incumbent,
  highs: Highs,
  options: ImproveOptions,
): Promise<void> {
  const { lists, sticks: start } = incumbent.best;
  const isWhole = ({ pieces }: Block): boolean => pieces.every(({ part }) => part === undefined);
  const whole = lists.map(({ blocks }) => blocks.filter(isWhole));
  const none = profilesOf(problem).map(() => []);
  const splices = askSplices(problem, lists, () => true);
  const instance = makeInstance(problem, whole, none, splices);
  const unservable = lists.flatMap((list) => list.unservable);
  let beatCents = Infinity;
  await searchLeast(instance, highs, start, {
    ...hooksOf(options),
    mostDives: RESCUE_DIVES,
    onSticks: (sticks, phase, cents = Infinity) => {
      const unserved = leftOver(
        problem,
        lists.flatMap(({ blocks }) => blocks),
        sticks,
      );
      for (const { demandId, why } of unservable) unserved.set(demandId, why);
      incumbent.offer({ sticks, unserved, lists }, phase);
      beatCents = Math.min(beatCents, cents);
      return incumbent.leftOver() === 0 ? -Infinity : beatCents;
    },
    onDuals: () => beatCents,
  });
}

function leftOver(
  problem: StickProblem,
  asked: readonly Block[],
  sticks: readonly WholeStick[],
): Map<string, UnservedReason> {
  const served = new Set(sticks.flatMap(({ blocks }) => blocks.flatMap(({ demands }) => demands)));
  const unserved = new Map<string, UnservedReason>();
  for (const { demands } of asked) {
    for (const at of demands) {
      const id = problem.demands[at]?.id;
      if (!served.has(at) && id !== undefined) unserved.set(id, 'stock used up');
    }
  }
  return unserved;
}

function hooksOf(
  options: ImproveOptions,
): Pick<SearchHooks, 'seed' | 'isSpent' | 'isOver' | 'secondsLeft' | 'pause'> {
  return {
    seed: options.seed ?? 1,
    ...options.stepBudget,
    pause: async () => options.pause?.(),
  };
}

/** A cheaper plan is cheaper by this at least, in cents. */
function leastGain(instance: Instance): number {
  if (instance.profiles.some(({ offcutCredit }) => offcutCredit !== undefined)) return 1;
  if (hasLabor(instance.profiles)) return 1;
  const common = instance.supplies.reduce(
    (divisor, { supply }) => gcd(divisor, supply.priceCents),
    0,
  );
  return Math.max(1, common);
}
