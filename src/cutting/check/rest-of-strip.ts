import { creditFor, type CreditRule } from './indexed-problem.ts';

/** Steps of an offcut's credit that are looked at one by one; what lies beyond is taken to be one. */
const MOST_STEPS = 2_000_000;

/**
 * What is left of a strip beside its blocks: parts of splices at a rate, any length of them, and the
 * offcut that remains.
 *
 * @param kerf the cut that frees the offcut, in the planner's units
 * @param rate grains that a unit of a splice's part and its kerf is worth; 0 where none is spliced
 * @param grains how many make a cent
 * @param longest the longest rest that is asked for, in the planner's units
 * @returns the most that a rest is worth, in grains, by the units that it takes up with its last kerf
 */
export function restWorths(
  rule: CreditRule,
  kerf: number,
  rate: number,
  grains: number,
  longest: number,
): (rest: number) => number {
  if (creditFor(rule, longest) === 0) return (rest) => rate * rest;
  if (rate === 0) return (rest) => grains * creditFor(rule, Math.max(0, rest - kerf));
  const { offcuts, gains } = gainsOf(rule, rate, grains, longest);
  return (rest) => {
    // The last step that the offcut reaches; what it takes up is not poured into, nor is its kerf.
    let [from, to] = [0, offcuts.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((offcuts[middle] ?? 0) <= rest - kerf) from = middle + 1;
      else to = middle;
    }
    const gain = from === 0 ? 0 : (gains[from - 1] ?? 0);
    return Math.max(rate * rest, rate * (rest - kerf) + gain);
  };
}

/**
 * Where an offcut's credit takes a step up, and the most that any offcut up to there gains over
 * pouring it full; in grains, and less than 0 where it gains nothing.
 */
function gainsOf(
  rule: CreditRule,
  rate: number,
  grains: number,
  longest: number,
): { offcuts: readonly number[]; gains: readonly number[] } {
  const offcuts: number[] = [];
  const gains: number[] = [];
  let offcut = Math.max(1, Math.ceil(rule.leastOffcut));
  let cents = creditFor(rule, offcut);
  let most = -Infinity;
  while (offcut <= longest) {
    if (offcuts.length === MOST_STEPS) cents = creditFor(rule, longest);
    most = Math.max(most, cents * grains - rate * offcut);
    offcuts.push(offcut);
    gains.push(most);
    offcut = nextStep(rule, offcut, cents, longest);
    cents = creditFor(rule, offcut);
  }
  return { offcuts, gains };
}

/** The shortest offcut that is worth more than one that is worth so many cents; Infinity where none is. */
function nextStep(rule: CreditRule, offcut: number, cents: number, longest: number): number {
  if (creditFor(rule, longest) <= cents) return Infinity;
  let [below, above] = [offcut, longest];
  while (above - below > 1) {
    const middle = Math.floor((below + above) / 2);
    if (creditFor(rule, middle) > cents) above = middle;
    else below = middle;
  }
  return above;
}
