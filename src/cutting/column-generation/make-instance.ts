import { creditCap } from '../problem/offcut-credit.ts';
import type { StickProblem } from '../problem/problem.ts';
import { blanksOf, profilesOf } from '../problem/profiles.ts';
import { capacityOf, countOf, ripsFor } from '../problem/supplies.ts';
import type { Block } from '../quick/cut-list.ts';
import {
  demandRows,
  rowOfRelaxed,
  type Instance,
  type Item,
  type RelaxedSplice,
  type RipStrips,
  type Slot,
  type SpliceChoice,
} from './instance.ts';

/** Spliced demands of one profile and length with the part lengths that come into question. */
export interface AskedSplice {
  readonly profile: number;
  readonly demands: readonly number[];
  readonly ways: readonly (readonly number[])[];
}

/**
 * States what is to be cut as rows to be covered.
 *
 * @param lists the blocks that are to be cut, of each profile in the order of the profiles
 * @param relaxedSplices for each profile the spliced lengths whose parts may be of any length; for a
 *   bound
 * @param splices the demands whose parts are chosen along with the plan; their parts are in no list
 */
export function makeInstance(
  problem: StickProblem,
  lists: readonly (readonly Block[])[],
  relaxedSplices: readonly (readonly RelaxedSplice[])[],
  splices: readonly AskedSplice[] = [],
): Instance {
  const profiles = profilesOf(problem);
  const relaxedUnits = relaxedSplices.map((lengths) =>
    lengths.reduce((sum, { units, count }) => sum + units * count, 0),
  );
  const items = lists.flatMap((blocks, profile) =>
    itemsOf(blocks, profile, partsOf(problem, splices, profile)),
  );
  const stripBase = demandRows({ items, profiles });
  const slots: Slot[] = [];
  const strips = new Map<string, number>();
  const credited = profiles.some(({ offcutCredit }) => offcutCredit !== undefined);
  const blanks = blanksOf(problem);
  const stripSlot = (blank: string, capacity: number, capCents: number): number => {
    const key = `${capacity} ${credited ? capCents : 0} ${blank}`;
    const known = strips.get(key);
    if (known !== undefined) return known;
    const stripRow = stripBase + strips.size;
    strips.set(key, slots.length);
    slots.push({ blank, capacity, priceCents: 0, supply: -1, capCents, stripRow });
    return slots.length - 1;
  };
  const drafts = problem.supplies
    .map((supply) => ({ supply, count: countOf(supply) }))
    .filter(({ supply, count }) => count > 0 && capacityOf(problem, supply) > problem.kerf)
    .map(({ supply, count }, at) => {
      const rips: { rip: number; strips: RipStrips[] }[] = [];
      ripsFor(supply, blanks).forEach(({ rip, strips: given }) => {
        const [only] = given;
        if (only === undefined) return;
        if (given.length === 1 && only.count === 1) {
          const { priceCents } = supply;
          const capacity = capacityOf(problem, supply);
          const capCents = creditCap(supply, rip);
          slots.push({
            blank: only.blank,
            capacity,
            priceCents,
            supply: at,
            capCents,
            stripRow: -1,
          });
        } else {
          rips.push({
            rip,
            strips: given.map(({ blank, count: some }) => ({
              slot: stripSlot(blank, capacityOf(problem, supply), creditCap(supply, rip)),
              count: some,
            })),
          });
        }
      });
      return { supply, count, rips };
    });
  const spliceBase = stripBase + strips.size;
  const choices = choicesOf(problem, items, splices, spliceBase);
  const firstSupplyRow = spliceBase + choices.length;
  let row = firstSupplyRow;
  const supplies = drafts.map((draft) => ({
    ...draft,
    row: Number.isFinite(draft.count) ? row++ : -1,
  }));
  const rowLeast = new Float64Array(row);
  items.forEach((item, at) => (rowLeast[at] = item.blocks.length));
  const relaxedScale = slots.reduce((most, { capacity }) => Math.max(most, capacity), 1);
  relaxedUnits.forEach((units, at) => {
    rowLeast[rowOfRelaxed({ items }, at)] = units / relaxedScale;
  });
  for (const { row: own, count } of supplies) if (own >= 0) rowLeast[own] = -count;
  for (const choice of choices) rowLeast[choice.row] = choice.demands.length;
  const slotsOf = profiles.map(({ blank }) =>
    slots.flatMap((slot, at) => (slot.blank === blank ? [at] : [])),
  );
  return {
    problem,
    profiles,
    items,
    slots,
    supplies,
    slotsOf,
    relaxedSplices,
    relaxedUnits,
    relaxedScale,
    choices,
    rowLeast,
    firstSupplyRow,
  };
}

/** What the parts of splices weigh, and how many of each there can be. */
function partsOf(
  problem: StickProblem,
  splices: readonly AskedSplice[],
  profile: number,
): ReadonlyMap<number, number> {
  const most = new Map<number, number>();
  for (const { profile: own, demands, ways } of splices) {
    if (own !== profile) continue;
    const inOne = new Map<number, number>();
    for (const parts of ways) {
      for (const [weight, count] of countWeights(parts, problem.kerf)) {
        inOne.set(weight, Math.max(inOne.get(weight) ?? 0, count));
      }
    }
    for (const [weight, count] of inOne) {
      most.set(weight, (most.get(weight) ?? 0) + count * demands.length);
    }
  }
  return most;
}

function countWeights(parts: readonly number[], kerf: number): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const part of parts) counts.set(part + kerf, (counts.get(part + kerf) ?? 0) + 1);
  return counts;
}

function choicesOf(
  problem: StickProblem,
  items: readonly Item[],
  splices: readonly AskedSplice[],
  firstRow: number,
): SpliceChoice[] {
  const place = new Map(items.map(({ profile, weight }, at) => [`${profile} ${weight}`, at]));
  return splices.map(({ profile, demands, ways }, at) => ({
    profile,
    demands,
    row: firstRow + at,
    ways: ways.map((parts) => ({
      parts,
      items: parts.map((part) => {
        const item = place.get(`${profile} ${part + problem.kerf}`);
        if (item === undefined) throw new RangeError(`No item for a part of ${part}.`);
        return item;
      }),
    })),
  }));
}

function itemsOf(
  blocks: readonly Block[],
  profile: number,
  parts: ReadonlyMap<number, number>,
): Item[] {
  const byWeight = new Map<number, Block[]>();
  for (const block of blocks) {
    const same = byWeight.get(block.weight);
    if (same === undefined) byWeight.set(block.weight, [block]);
    else same.push(block);
  }
  for (const weight of parts.keys()) if (!byWeight.has(weight)) byWeight.set(weight, []);
  return [...byWeight]
    .sort(([a], [b]) => b - a)
    .map(([weight, same]) => ({
      profile,
      weight,
      blocks: same,
      most: same.length + (parts.get(weight) ?? 0),
    }));
}
