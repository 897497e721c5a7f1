/** What is left of a stick once its set-up spare is crosscut off. It is coved next, so it must be long enough. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import { isSpare } from './job-plan.ts';
import type { CutStick, ProfilePlan } from './job-plan.ts';
import type { Shop } from './shop.ts';

type Limits = Pick<Shop, 'endTrim' | 'crosscutKerf' | 'leastBlankLength'>;

/**
 * The rest of the stick that the spare comes from, where it is a shorter blank than the shop's least:
 * the stick less the end trimmed off, the spare and one cut. Undefined where it is long enough, or
 * where no piece is cut from it, so that it is never coved.
 */
export function shortRest(
  { sticks }: Pick<ProfilePlan, 'sticks'>,
  shop: Limits,
): ExactInches | undefined {
  return sticks.flatMap((stick) => shortRestOf(stick, shop) ?? [])[0];
}

/** The same of one stick. */
export function shortRestOf(
  { length, pieces }: Pick<CutStick, 'length' | 'pieces'>,
  shop: Limits,
): ExactInches | undefined {
  const spare = pieces.find(isSpare);
  if (spare === undefined || pieces.length === 1) return undefined;
  const rest = length.sub(shop.endTrim).sub(spare.length).sub(shop.crosscutKerf);
  return rest.lt(shop.leastBlankLength) ? rest : undefined;
}

/** A caution for each profile whose spare must stay on, at its row: the cove is cut on the whole stick. */
export function shortRestCautions(
  profiles: readonly Pick<ProfilePlan, 'profile' | 'sticks'>[],
  shop: Limits,
): Caution[] {
  return profiles.flatMap((planned) => {
    const rest = shortRest(planned, shop);
    if (rest === undefined) return [];
    const limit = { inches: Number(shop.leastBlankLength) };
    const { name, where } = planned.profile;
    const one = fault('job.spare-leaves-short', own(name), { inches: Number(rest) }, { limit });
    return [placeFault(one, where)];
  });
}
