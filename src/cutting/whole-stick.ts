import type { StickProblem, StickSupply } from './problem.ts';
import type { Block } from './quick/cut-list.ts';

/** A stick or strip with what is cut from it, before sticks are numbered. */
export interface WholeStick {
  readonly profile: string;
  readonly supply: StickSupply;
  /** The place among the supply's rips that its board is ripped by; 0 where there are none. */
  readonly rip: number;
  readonly blocks: readonly Block[];
}

export function weightOf({ blocks }: Pick<WholeStick, 'blocks'>): number {
  return blocks.reduce((sum, { weight }) => sum + weight, 0);
}

/** What the pieces of a stick, each with a kerf, may sum to. */
export function capacityOf(problem: StickProblem, supply: StickSupply): number {
  return supply.length - 2 * problem.endTrim + problem.kerf;
}

/** Strips of a blank that one board ripped in one way gives. */
export function stripsOf(supply: StickSupply, rip: number, blank: string): number {
  if (supply.rips === undefined) return supply.strips;
  return supply.rips[rip]?.find((one) => one.blank === blank)?.count ?? 0;
}
