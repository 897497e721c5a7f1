import { creditCap } from '../problem/offcut-credit.ts';
import { blanksOf, profilesOf } from '../problem/profiles.ts';
import { capacityOf, countOf, ripsFor } from '../problem/supplies.ts';
import type { OffcutCredit, StickProblem, StickProfile, StickSupply } from '../problem/problem.ts';
import type { Block } from '../quick/cut-list.ts';

/** Blocks of one profile and weight: they are interchangeable. */
export interface Item {
  readonly profile: number;
  /** The length with its kerfs, in the planner's units. */
  readonly weight: number;
  readonly blocks: readonly Block[];
  /** How many there can be: its blocks, and the parts that splices might be cut into. */
  readonly most: number;
}

/** Spliced demands of one profile and length, and the ways to cut one of them into parts. */
export interface SpliceChoice {
  readonly profile: number;
  /** Their places in the problem. */
  readonly demands: readonly number[];
  readonly row: number;
  readonly ways: readonly SpliceWay[];
}

export interface SpliceWay {
  /** The parts' lengths, in order. */
  readonly parts: readonly number[];
  /** The item of each part. */
  readonly items: readonly number[];
}

/** A place for pieces: a stick of one supply, or any strip of one blank and length. */
export interface Slot {
  readonly blank: string;
  /** What the pieces, each with a kerf, may sum to. */
  readonly capacity: number;
  /** Of a stick that is bought by itself; 0 for a strip, whose board is paid for. */
  readonly priceCents: number;
  /** The supply of a stick, by its place in `supplies`; -1 for a strip. */
  readonly supply: number;
  /** What an offcut of it is credited at most, see `creditCap`; strips that differ in it are other slots. */
  readonly capCents: number;
  /** The row that strips are counted in, or -1. */
  readonly stripRow: number;
}

export interface MasterSupply {
  readonly supply: StickSupply;
  /** Infinity where any number may be bought. */
  readonly count: number;
  /** The row that its count is kept in, or -1. */
  readonly row: number;
  /** Its rips that are boards', as strips of slots. */
  readonly rips: readonly { readonly rip: number; readonly strips: readonly RipStrips[] }[];
}

export interface RipStrips {
  readonly slot: number;
  readonly count: number;
}

export interface SplicedLength {
  readonly length: number;
  readonly units: number;
  readonly count: number;
}

/** A problem as rows that are to be covered: what the linear program and the pricing work on. */
export interface Instance {
  readonly problem: StickProblem;
  readonly profiles: readonly StickProfile[];
  readonly items: readonly Item[];
  readonly slots: readonly Slot[];
  readonly supplies: readonly MasterSupply[];
  /** The slots that a profile's pieces can lie in. */
  readonly slotsOf: readonly (readonly number[])[];
  /**
   * For each profile the units that its spliced pieces take up at least, where they are poured in at
   * will (for a bound); 0 where the parts are items. Its row follows the items' rows.
   */
  readonly poured: readonly number[];
  /** Of each profile the lengths that are poured in, each once, with the units that one takes up. */
  readonly spliced: readonly (readonly SplicedLength[])[];
  /** Poured units stand in their rows divided by it, so that figures in the program are of one size. */
  readonly pouredScale: number;
  /** What splices are chosen from, along with the plan. */
  readonly choices: readonly SpliceChoice[];
  /** The least of each row: items, poured lengths, strips, splices, then supplies (less their count). */
  readonly rowLeast: Float64Array;
  /** Rows of supplies that run out: the last ones. */
  readonly supplyRows: number;
}

/** Spliced demands of one profile and length with the part lengths that come into question. */
export interface AskedSplice {
  readonly profile: number;
  readonly demands: readonly number[];
  readonly ways: readonly (readonly number[])[];
}

/**
 * @param splices the demands whose parts are chosen along with the plan; their parts are in no list
 *
 * @param lists the blocks of each profile, in the order of the profiles; those that are to be cut
 * @param spliced for each profile the spliced lengths that are poured in instead of their parts
 */
export function makeInstance(
  problem: StickProblem,
  lists: readonly (readonly Block[])[],
  spliced: readonly (readonly SplicedLength[])[],
  splices: readonly AskedSplice[] = [],
): Instance {
  const profiles = profilesOf(problem);
  const poured = spliced.map((lengths) =>
    lengths.reduce((sum, { units, count }) => sum + units * count, 0),
  );
  const items = lists.flatMap((blocks, profile) =>
    itemsOf(blocks, profile, partsOf(problem, splices, profile)),
  );
  const stripBase = items.length + profiles.length;
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
  let row = spliceBase + choices.length;
  const supplies = drafts.map((draft) => ({
    ...draft,
    row: Number.isFinite(draft.count) ? row++ : -1,
  }));
  const rowLeast = new Float64Array(row);
  items.forEach((item, at) => (rowLeast[at] = item.blocks.length));
  const pouredScale = slots.reduce((most, { capacity }) => Math.max(most, capacity), 1);
  poured.forEach((units, at) => (rowLeast[items.length + at] = units / pouredScale));
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
    poured,
    spliced,
    pouredScale,
    choices,
    rowLeast,
    supplyRows: supplies.filter(({ row: own }) => own >= 0).length,
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
      items: parts.map((part) => place.get(`${profile} ${part + problem.kerf}`) ?? -1),
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

/** The credit of a profile by its place. */
export function creditOf(instance: Instance, profile: number): OffcutCredit | undefined {
  return instance.profiles[profile]?.offcutCredit;
}
