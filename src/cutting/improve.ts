import type { Highs } from 'highs';
import type { Incumbent } from './incumbent.ts';
import { certify } from './master/certify.ts';
import { makeInstance, type Instance, type SplicedLength } from './master/instance.ts';
import { searchLeast } from './master/search.ts';
import { profilesOf } from './offcut-credit.ts';
import type { PlanSticksOptions, StickProblem } from './problem.ts';

/** From the quick plan on: the exact search for what it serves, and a bound for just that. */
export async function improve(
  problem: StickProblem,
  incumbent: Incumbent,
  highs: Highs,
  options: PlanSticksOptions & { readonly isStopped: () => boolean },
): Promise<void> {
  const { lists, unserved } = incumbent.best;
  const served = lists.map(({ blocks }) =>
    blocks.filter((block) => !block.pieces.some(({ demandId }) => unserved.has(demandId))),
  );
  const none = profilesOf(problem).map((): readonly SplicedLength[] => []);
  const instance = makeInstance(problem, served, none);
  const pause = async (): Promise<void> => options.pause?.();
  const beat = (): number =>
    incumbent.isProven() ? -Infinity : incumbent.netCents - leastGain(instance) + 1e-3;
  await searchLeast(instance, highs, incumbent.best.sticks, {
    seed: options.seed ?? 1,
    isSpent: options.isStopped,
    pause,
    onSticks: (sticks, phase) => {
      incumbent.offer({ sticks, unserved, lists }, phase);
      return beat();
    },
    onDuals: (duals, phase) => {
      const spliced = lists.some((list) => list.spliced.size > 0);
      if (!spliced) incumbent.raiseBound(certify(instance, duals), phase);
      return beat();
    },
  });
}

/** A cheaper plan is cheaper by this at least, in cents. */
function leastGain(instance: Instance): number {
  if (instance.profiles.some(({ offcutCredit }) => offcutCredit !== undefined)) return 1;
  const common = instance.supplies.reduce(
    (divisor, { supply }) => gcd(divisor, supply.priceCents),
    0,
  );
  return Math.max(1, common);
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

