import { entryAt } from './entry-at.ts';
import { askSplices, relaxSplices } from './ask-splices.ts';
import { certify } from './column-generation/certify.ts';
import { laborIn, rowOfRelaxed, type Instance } from './column-generation/instance.ts';
import { makeInstance } from './column-generation/make-instance.ts';
import { hasLabor } from './problem/strip-labor.ts';
import { profilesOf } from './problem/profiles.ts';
import type { StickBound, StickProblem } from './problem/problem.ts';
import type { CutList } from './quick/cut-list.ts';
import { volumeBound } from './bound/volume-bound.ts';

/**
 * A bound at once, before any program is solved: by volume where one profile is cut from plain
 * sticks and boards that cost no labor; else from prices in proportion to length, at the cheapest rate of each blank.
 *
 * @param unserved ids of the demands that the plan leaves over
 */
export function firstBound(
  problem: StickProblem,
  lists: readonly CutList[],
  unserved: ReadonlyMap<string, unknown>,
): StickBound {
  const profiles = profilesOf(problem);
  const [only] = profiles;
  const credited = profiles.some(({ offcutCredit }) => offcutCredit !== undefined);
  const ripped = problem.supplies.some(({ rips }) => rips !== undefined);
  const spliced = lists.some((list) => list.spliced.size > 0);
  const isPlain = !credited && !ripped && !spliced && !hasLabor(profiles);
  if (profiles.length === 1 && only !== undefined && isPlain) {
    const whole = problem.demands.filter(({ id }) => !unserved.has(id));
    const bound = volumeBound(problem, { whole, spliced: [] });
    return { ...bound, duals: bound.duals.map((dual) => ({ ...dual, profile: only.id })) };
  }
  const instance = servedInstance(problem, lists, unserved);
  const proof = certify(instance, ratesByLength(instance));
  return proof?.bound ?? { costCents: 0, duals: [], credits: [] };
}

/** What is served, the splices relaxed. */
export function servedInstance(
  problem: StickProblem,
  lists: readonly CutList[],
  unserved: ReadonlyMap<string, unknown>,
): Instance {
  const whole = lists.map(({ blocks }) =>
    blocks.filter(({ pieces }) =>
      pieces.every(({ demandId, part }) => part === undefined && !unserved.has(demandId)),
    ),
  );
  const none = profilesOf(problem).map(() => []);
  const splices = askSplices(problem, lists, (id) => !unserved.has(id));
  const bare = makeInstance(problem, whole, none);
  return splices.length === 0
    ? bare
    : makeInstance(problem, whole, relaxSplices(problem, splices, bare));
}

/** Duals in proportion to weight: what a unit of each profile's blank costs at the least. */
function ratesByLength(instance: Instance): Float64Array {
  const rateOf = instance.profiles.map((_, profile) => {
    const rates = entryAt(instance.slotsOf, profile).map((at) => {
      const slot = entryAt(instance.slots, at);
      const { capacity, priceCents, supply } = slot;
      const labor = laborIn(instance, profile, slot);
      if (supply >= 0) return (priceCents + labor) / capacity;
      // A board's price shared among its strips alike; the scaling sets right what that misses.
      const shares = instance.supplies.flatMap(({ supply: own, rips }) =>
        rips.flatMap(({ strips }) =>
          strips.some(({ slot }) => slot === at)
            ? [own.priceCents / strips.reduce((sum, { count }) => sum + count, 0)]
            : [],
        ),
      );
      return (Math.min(...shares) + labor) / capacity;
    });
    const paid = rates.filter((rate) => rate > 0 && Number.isFinite(rate));
    return paid.length === 0 ? 0 : Math.min(...paid);
  });
  const duals = new Float64Array(instance.rowLeast.length);
  instance.items.forEach(({ profile, weight }, at) => {
    duals[at] = weight * entryAt(rateOf, profile);
  });
  instance.profiles.forEach((_, profile) => {
    duals[rowOfRelaxed(instance, profile)] = entryAt(rateOf, profile) * instance.relaxedScale;
  });
  return duals;
}
