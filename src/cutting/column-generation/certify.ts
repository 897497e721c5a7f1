import { entryAt } from '../entry-at.ts';
import { gcd } from '../greatest-divisor.ts';
import { hasLabor } from '../problem/strip-labor.ts';
import type { StickBound, StickProblem } from '../problem/problem.ts';
import type { Block } from '../quick/cut-list.ts';
import { EPSILON_SCALE_SHARE } from '../tolerances.ts';
import { supplyWorths } from './dual-bound.ts';
import { demandRows, rowOfRelaxed, type Instance } from './instance.ts';
import { LayoutPricer } from './pricing.ts';

/** Figures are whole counts of 1/2^20 cent at the finest. */
const FINEST = 2 ** 20;

/** A bound with the whole numbers behind it. */
export interface Proof {
  readonly bound: StickBound;
  /** How many grains make a cent: a power of two. */
  readonly grain: number;
  /** What one piece of each item is worth, in grains. */
  readonly items: Float64Array;
  /** The most that the layouts of each slot are worth, in grains. */
  readonly slots: Float64Array;
  /** What one more of each supply would save, in grains; 0 for those that don't run out. */
  readonly credits: Float64Array;
  /** The bound before it is rounded up to what prices can make, in grains; can be below 0. */
  readonly total: number;
}

/**
 * A bound from duals, recomputed in whole numbers: the duals rounded down, every slot's best layout
 * found anew, the credits rounded up. All sums stay below 2^53, so that floating-point numbers hold
 * them exactly.
 *
 * @param duals cents; near the least cost's own for the bound to be near it; any will do
 * @returns undefined where no whole numbers come to a bound above 0
 */
export function certify(instance: Instance, duals: ArrayLike<number>): Proof | undefined {
  const pricer = new LayoutPricer(instance, 'down');
  const counts = instance.items.map(({ most }) => most);
  const rows = demandRows(instance);
  let demanded = 1;
  for (let row = 0; row < rows; row += 1) {
    demanded += entryAt(duals, row) * entryAt(instance.rowLeast, row);
  }
  const stock = instance.supplies.reduce(
    (sum, { supply, count }) => sum + (Number.isFinite(count) ? count * supply.priceCents : 0),
    0,
  );
  let grain = FINEST;
  while (grain > 1 && (demanded + stock) * grain * 4 > Number.MAX_SAFE_INTEGER) grain /= 2;
  const whole = wholeDuals(instance, duals, grain);
  for (let attempt = 0; attempt < 4; attempt += 1) {
    const tooDear = rescale(instance, whole, pricer, counts, grain);
    if (tooDear === undefined) return undefined;
    if (tooDear.scale >= 1) return boundOf(instance, whole, tooDear, grain);
    for (const list of [whole.items, whole.rates]) {
      list.forEach((value, at) => (list[at] = Math.floor(value * tooDear.scale)));
    }
  }
  return undefined;
}

interface WholeDuals {
  /** Of each item, in grains. */
  readonly items: Float64Array;
  /** Of a unit of each profile's relaxed splices, in grains. */
  readonly rates: Float64Array;
}

function wholeDuals(instance: Instance, duals: ArrayLike<number>, grain: number): WholeDuals {
  return {
    items: Float64Array.from(instance.items, (_, at) => Math.floor(entryAt(duals, at) * grain)),
    rates: Float64Array.from(instance.profiles, (_, profile) =>
      entryAt(instance.relaxedUnits, profile) > 0
        ? Math.floor(
            (entryAt(duals, rowOfRelaxed(instance, profile)) / instance.relaxedScale) * grain,
          )
        : 0,
    ),
  };
}

/** The worths in grains, and by how much the duals are to shrink: 1 where they stand. */
function rescale(
  instance: Instance,
  whole: WholeDuals,
  pricer: LayoutPricer,
  counts: readonly number[],
  grain: number,
): { scale: number; worths: Float64Array; slots: Float64Array } | undefined {
  // Worked in cents of grain-th parts: dividing by a power of two loses nothing.
  const cents = new Float64Array(instance.rowLeast.length);
  whole.items.forEach((value, at) => (cents[at] = value / grain));
  whole.rates.forEach((value, profile) => {
    cents[rowOfRelaxed(instance, profile)] = (value / grain) * instance.relaxedScale;
  });
  const { worth } = pricer.price(cents, counts);
  const slots = Float64Array.from(worth, (own) => Math.ceil(own * grain));
  const worths = supplyWorths(instance, slots);
  let scale = 1;
  instance.supplies.forEach(({ supply, count }, at) => {
    const price = supply.priceCents * grain;
    if (Number.isFinite(count) || entryAt(worths, at) <= price) return;
    scale = Math.min(scale, (price / entryAt(worths, at)) * (1 - EPSILON_SCALE_SHARE));
  });
  return Number.isFinite(scale) ? { scale, worths, slots } : undefined;
}

function boundOf(
  instance: Instance,
  whole: WholeDuals,
  { worths, slots }: { readonly worths: Float64Array; readonly slots: Float64Array },
  grain: number,
): Proof {
  const { problem, items, profiles, supplies } = instance;
  const credits = supplies.flatMap(({ supply, count }, at) => {
    const excess = entryAt(worths, at) - supply.priceCents * grain;
    return Number.isFinite(count) && excess > 0 ? [{ supply, count, excess }] : [];
  });
  const pieces = items.reduce(
    (sum, { blocks }, at) => sum + blocks.length * entryAt(whole.items, at),
    0,
  );
  const relaxed = profiles.reduce(
    (sum, _, profile) =>
      sum + entryAt(instance.relaxedUnits, profile) * entryAt(whole.rates, profile),
    0,
  );
  const total = pieces + relaxed - credits.reduce((sum, one) => sum + one.count * one.excess, 0);
  const step = commonPrice(instance) * grain;
  const duals = items.flatMap(({ profile, blocks }, at) =>
    sayDuals(entryAt(profiles, profile).id, blocks, entryAt(whole.items, at) / grain, problem),
  );
  instance.relaxedSplices.forEach((lengths, profile) => {
    for (const { length, units } of lengths) {
      const cents = (units * entryAt(whole.rates, profile)) / grain;
      duals.push({ length, profile: entryAt(profiles, profile).id, cents, spliced: true });
    }
  });
  const rates = profiles.flatMap(({ id }, at) =>
    entryAt(instance.relaxedUnits, at) > 0
      ? [{ profile: id, centsPerUnit: entryAt(whole.rates, at) / grain }]
      : [],
  );
  const ownCredits = new Float64Array(supplies.length);
  supplies.forEach((supply, at) => {
    ownCredits[at] = credits.find((one) => one.supply === supply.supply)?.excess ?? 0;
  });
  const bound = {
    // Credits could pay for more than the sticks cost.
    costCents: roundUp(total, step, isCredited(instance)) * commonPrice(instance),
    duals,
    credits: credits.map(({ supply, excess }) => ({ supplyId: supply.id, cents: excess / grain })),
    ...(rates.length === 0 ? {} : { spliceRates: rates }),
  };
  return { bound, grain, items: whole.items, slots, credits: ownCredits, total };
}

/** A line for each length of single pieces, and one for each matched group. */
function sayDuals(
  profile: string,
  blocks: readonly Block[],
  cents: number,
  problem: StickProblem,
): SaidDual[] {
  const said = new Map<string, SaidDual>();
  for (const block of blocks) {
    const demand = entryAt(problem.demands, entryAt(block.demands, 0));
    const match = demand.match ?? '';
    const length = block.pieces.reduce((sum, piece) => sum + piece.length, 0);
    const line = { length, profile, cents, ...(match === '' ? {} : { match }) };
    said.set(`${length} ${match}`, line);
  }
  return [...said.values()];
}

type SaidDual = StickBound['duals'][number];

function roundUp(total: number, step: number, canBeNegative: boolean): number {
  return total <= 0 && !canBeNegative ? 0 : Math.ceil(total / step) + 0;
}

/** Whether costs are multiples of no more than a cent. */
function isOddCents(instance: Instance): boolean {
  return isCredited(instance) || hasLabor(instance.profiles);
}

function isCredited({ profiles }: Instance): boolean {
  return profiles.some(({ offcutCredit }) => (offcutCredit?.mostCents ?? 0) > 0);
}

/** The greatest whole number of cents that every cost is a multiple of. */
function commonPrice(instance: Instance): number {
  const { profiles, items, slots, slotsOf, supplies } = instance;
  if (isOddCents(instance)) return 1;
  const lightest = profiles.map((_, profile) =>
    entryAt(instance.relaxedUnits, profile) > 0
      ? 0
      : items.reduce(
          (least, item) => (item.profile === profile ? Math.min(least, item.weight) : least),
          Infinity,
        ),
  );
  const ofUse = new Set(
    profiles.flatMap((_, profile) =>
      entryAt(slotsOf, profile).filter(
        (slot) => entryAt(slots, slot).capacity >= entryAt(lightest, profile),
      ),
    ),
  );
  const common = supplies.reduce((divisor, { supply, rips }, at) => {
    const serves =
      rips.some(({ strips }) => strips.some(({ slot }) => ofUse.has(slot))) ||
      [...ofUse].some((slot) => slots[slot]?.supply === at);
    return serves ? gcd(divisor, supply.priceCents) : divisor;
  }, 0);
  return Math.max(1, common);
}
