import { entryAt } from '../entry-at.ts';
import { laborCents } from '../problem/strip-labor.ts';
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

export interface InstanceSupply {
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

/** A spliced length whose parts are relaxed: they may be of any length, and lie in any slot. */
export interface RelaxedSplice {
  readonly length: number;
  /** What the fewest parts of one take up, their overlaps and kerfs with them. */
  readonly units: number;
  readonly count: number;
}

/** A problem as rows that are to be covered: what the linear program and the pricing work on. */
export interface Instance {
  readonly problem: StickProblem;
  readonly profiles: readonly StickProfile[];
  readonly items: readonly Item[];
  readonly slots: readonly Slot[];
  readonly supplies: readonly InstanceSupply[];
  /** The slots that a profile's pieces can lie in. */
  readonly slotsOf: readonly (readonly number[])[];
  /** Of each profile the spliced lengths that are relaxed, each once; none where their parts are items. */
  readonly relaxedSplices: readonly (readonly RelaxedSplice[])[];
  /** Of each profile the units that its relaxed splices take up together at least. */
  readonly relaxedUnits: readonly number[];
  /** Relaxed units stand in their rows divided by it, so that figures in the program are of one size. */
  readonly relaxedScale: number;
  /** What splices are chosen from, along with the plan. */
  readonly choices: readonly SpliceChoice[];
  /**
   * The least of each row. First stand the rows of items, one each, then those of the profiles'
   * relaxed units, of strips, of splices, and last those of supplies that run out (less their count).
   */
  readonly rowLeast: Float64Array;
  /** The first row of a supply that runs out; how many rows there are where none does. */
  readonly firstSupplyRow: number;
}

/** The row that the relaxed units of a profile are counted in. The row of an item is its place. */
export function rowOfRelaxed({ items }: Pick<Instance, 'items'>, profile: number): number {
  return items.length + profile;
}

/** The rows of items and of relaxed units are the first ones: what is to be cut. */
export function demandRows({ items, profiles }: Pick<Instance, 'items' | 'profiles'>): number {
  return items.length + profiles.length;
}

/** The supply that a slot is a stick of; undefined where it is a strip of boards. */
export function supplyOf(instance: Instance, { supply }: Slot): InstanceSupply | undefined {
  return supply < 0 ? undefined : entryAt(instance.supplies, supply);
}

/** What a strip in a slot costs in labor when a profile's pieces, by its place, are cut from it. */
export function laborIn(
  { problem, profiles }: Pick<Instance, 'problem' | 'profiles'>,
  profile: number,
  { capacity }: Slot,
): number {
  return laborCents(
    entryAt(profiles, profile).labor,
    capacity - problem.kerf + 2 * problem.endTrim,
  );
}

/** The most that a slot's strip costs in labor, whichever profile is cut from it. */
export function mostLaborIn(instance: Pick<Instance, 'problem' | 'profiles'>, slot: Slot): number {
  return instance.profiles.reduce(
    (most, { blank }, profile) =>
      blank === slot.blank ? Math.max(most, laborIn(instance, profile, slot)) : most,
    0,
  );
}

/** The credit of a profile by its place. */
export function creditOf(instance: Instance, profile: number): OffcutCredit | undefined {
  return entryAt(instance.profiles, profile).offcutCredit;
}
