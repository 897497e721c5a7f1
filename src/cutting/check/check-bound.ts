import {
  countOf,
  indexProblem,
  roomOf,
  servesBlank,
  type ProblemIndex,
} from './indexed-problem.ts';
import type { StickBound, StickPlan, StickProblem } from '../problem/problem.ts';
import { gcd } from './knapsack.ts';
import { readServed, type Served } from './served-blocks.ts';
import { supplyWorths, type BoundRead } from './supply-worth.ts';

/** The finest part of a cent that figures are counted in. */
const MOST_GRAINS = 2 ** 40;

/**
 * Recomputes a bound from the words of StickBound alone, in whole numbers, sharing no code with any
 * planner: what each supply is worth by the bound's duals, then what they prove. What is known only
 * from trying (`tried`) is not tried again; of such a bound the duals are checked.
 *
 * @param problem a sound problem
 * @param plan a plan that checkPlan finds nothing wrong with
 * @param isQuick leaves supplies out whose worth would take long, or can't be worked out exactly
 * @returns one sentence for each thing that is wrong, naming the supply or the figure; none if nothing is
 */
export function checkBound(
  problem: StickProblem,
  plan: StickPlan,
  bound: StickBound,
  isQuick = false,
): readonly string[] {
  const index = indexProblem(problem);
  const wrong = checkFigures(index, bound);
  if (wrong.length > 0) return wrong;
  const grains = grainsOf(bound);
  if (grains === undefined) return ['A figure of the bound is finer than sums can be exact to.'];
  const served = readServed(index, plan, bound);
  const rates = new Map(
    (bound.spliceRates ?? []).map(({ profile, centsPerUnit }) => [profile, centsPerUnit]),
  );
  const read = { index, bound, served, rates, grains, isQuick };
  if (!areSumsExact(read)) return ['The figures of the bound are too large to be added exactly.'];
  return [...checkSplices(read), ...checkSupplies(read), ...checkCost(read, plan)];
}

/** Figures are 0 or more, each said once and of something that there is. */
function checkFigures({ profiles, supplies }: ProblemIndex, bound: StickBound): readonly string[] {
  const { duals, credits, spliceRates = [] } = bound;
  const figures = [
    ...duals.map((dual) => ({ name: `dual of ${sayDual(dual)}`, cents: dual.cents })),
    ...credits.map(({ supplyId, cents }) => ({ name: `credit of ${supplyId}`, cents })),
    ...spliceRates.map((one) => ({
      name: `splice rate of ${one.profile}`,
      cents: one.centsPerUnit,
    })),
  ];
  const seen = new Set<string>();
  const wrong = figures.flatMap(({ name, cents }) => {
    const isTwice = seen.has(name);
    seen.add(name);
    return [
      ...(Number.isFinite(cents) && cents >= 0 ? [] : [`The ${name} is ${cents} cents.`]),
      ...(isTwice ? [`The ${name} is given twice.`] : []),
    ];
  });
  for (const { supplyId } of credits) {
    const supply = supplies.get(supplyId);
    if (supply === undefined) wrong.push(`The credit of ${supplyId} is of a supply not listed.`);
    else if (supply.buyMost === null) {
      wrong.push(`Supply ${supplyId} has a credit and never runs out.`);
    }
  }
  for (const { profile } of [...duals, ...spliceRates]) {
    if (!profiles.has(profile)) wrong.push(`The bound names a profile “${profile}”, not listed.`);
  }
  const { costCents, tried } = bound;
  for (const cents of [costCents, ...(tried === undefined ? [] : [tried.pricesCents])]) {
    if (!Number.isSafeInteger(cents)) wrong.push(`A bound of ${cents} cents is not whole.`);
  }
  return wrong;
}

function sayDual({ length, profile, spliced, match }: StickBound['duals'][number]): string {
  const group = match === undefined ? '' : ` in the matched group ${match}`;
  return `${length} of “${profile}”${spliced === true ? ', spliced' : ''}${group}`;
}

function grainsOf({ duals, credits, spliceRates = [] }: StickBound): number | undefined {
  const figures = [
    ...duals.map(({ cents }) => cents),
    ...credits.map(({ cents }) => cents),
    ...spliceRates.map(({ centsPerUnit }) => centsPerUnit),
  ];
  let grains = 1;
  for (const cents of figures) {
    while (!Number.isInteger(cents * grains)) {
      grains *= 2;
      if (grains > MOST_GRAINS) return undefined;
    }
  }
  return grains;
}

/** Whatever is cut from a strip, and all that is served together, stays a safe whole number of grains. */
function areSumsExact({ index, served, rates, grains }: BoundRead): boolean {
  const { supplies } = index.problem;
  const longest = supplies.reduce((most, { length }) => Math.max(most, length), 0);
  const inGrains = (cents: number): bigint => BigInt(cents * grains);
  const asked = [...served.blocks, ...served.splices];
  const pieces = asked.reduce((sum, { cents }) => sum + inGrains(cents), 0n);
  const besides = [...index.profiles.values()].map(({ id, offcutCredit }) => {
    const parts = inGrains(rates.get(id) ?? 0) * BigInt(longest + index.problem.kerf);
    return parts + inGrains(offcutCredit?.mostCents ?? 0);
  });
  const most = besides.reduce((highest, one) => (one > highest ? one : highest), 0n);
  return pieces + most <= BigInt(Number.MAX_SAFE_INTEGER);
}

/** A spliced piece is worth no more than what its fewest parts are by the rate of its profile. */
function checkSplices({ served, rates, grains }: BoundRead): readonly string[] {
  return served.splices.flatMap(({ demandId, profile, cents, leastUnits }) => {
    const most = BigInt((rates.get(profile) ?? 0) * grains) * BigInt(leastUnits);
    if (BigInt(cents * grains) <= most) return [];
    const said = Number(most) / grains;
    return [`Spliced piece ${demandId} is worth ${cents} cents and its parts are worth ${said}.`];
  });
}

/** No stick or board is worth more than its price and its credit, however it is ripped and cut. */
function checkSupplies(read: BoundRead): readonly string[] {
  const { index, bound, grains, isQuick } = read;
  const credits = new Map(bound.credits.map(({ supplyId, cents }) => [supplyId, cents]));
  const usable = index.problem.supplies.filter((supply) => countOf(supply) > 0);
  return supplyWorths(read, usable).flatMap(({ supply: { id, priceCents }, most, isExact }) => {
    const credit = credits.get(id) ?? 0;
    const allowed = BigInt(priceCents) * BigInt(grains) + BigInt(credit * grains);
    if (most <= allowed || (isQuick && !isExact)) return [];
    const [worth, limit] = [Number(most) / grains, Number(allowed) / grains];
    return isExact
      ? [`Supply ${id} is worth ${worth} cents, more than its price and credit, ${limit}.`]
      : [`Supply ${id} may be worth ${worth} cents, more than ${limit}: lengths were rounded.`];
  });
}

/** What the duals prove is what the bound says, and no more than the plan costs. */
function checkCost(read: BoundRead, plan: StickPlan): readonly string[] {
  const { index, bound, served, grains } = read;
  const { costCents, tried } = bound;
  const wrong: string[] = [];
  const total =
    [...served.blocks, ...served.splices].reduce(
      (sum, { cents }) => sum + BigInt(cents * grains),
      0n,
    ) -
    bound.credits.reduce((sum, { supplyId, cents }) => {
      const supply = index.supplies.get(supplyId);
      const count = supply === undefined ? 0 : countOf(supply);
      return sum + BigInt(cents * grains) * BigInt(count);
    }, 0n);
  // A matched piece's stick is one that holds its group; whoever looks at the piece alone proves less.
  const proven = [true, false].map((isWhole) => proveCents(read, total, isWhole));
  const stated = tried?.pricesCents ?? costCents;
  if (!proven.includes(stated)) {
    wrong.push(`The duals prove ${proven[0] ?? 0} cents, not ${stated}.`);
  }
  if (tried !== undefined && costCents < tried.pricesCents) {
    wrong.push(`The bound of ${costCents} cents is less than its duals prove.`);
  }
  const net = plan.costCents + plan.laborCents - plan.creditCents;
  if (costCents > net) wrong.push(`The bound is ${costCents} cents and the plan costs ${net}.`);
  return wrong;
}

/** The figure rounded up to what a cost can be. */
function proveCents({ index, served, grains }: BoundRead, total: bigint, isWhole: boolean): number {
  const isCredited = [...index.profiles.values()].some(
    ({ offcutCredit }) => (offcutCredit?.mostCents ?? 0) > 0,
  );
  const isLabored = [...index.profiles.values()].some(({ labor }) => labor !== undefined);
  const step = isCredited || isLabored ? 1 : commonPrice(index, served, isWhole);
  const inGrains = BigInt(step) * BigInt(grains);
  // Without credits nothing costs less than 0.
  if (total <= 0n && !isCredited) return 0;
  const steps = total > 0n ? (total + inGrains - 1n) / inGrains : total / inGrains;
  return Number(steps) * step;
}

/** The greatest number of cents that the prices of all sticks which can serve are multiples of. */
function commonPrice(index: ProblemIndex, served: Served, isWhole: boolean): number {
  const { supplies, kerf } = index.problem;
  const lightest = new Map<string, number>();
  for (const { profile, weight, lightest: piece } of served.blocks) {
    const own = isWhole ? weight : piece;
    lightest.set(profile, Math.min(lightest.get(profile) ?? Infinity, own));
  }
  // A splice's part may be of any length.
  for (const { profile } of served.splices) lightest.set(profile, 0);
  const serving = supplies.filter(
    (supply) =>
      countOf(supply) > 0 &&
      [...index.profiles.values()].some(
        ({ id, blank }) =>
          servesBlank(supply, blank) &&
          (lightest.get(id) ?? Infinity) <= roomOf(index, supply) + kerf,
      ),
  );
  return Math.max(
    1,
    serving.reduce((common, { priceCents }) => gcd(common, priceCents), 0),
  );
}
