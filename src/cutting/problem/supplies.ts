/** What a supply gives, as the planner and the checks of its input reckon it. */
import type { StickProblem, StickSupply } from './problem.ts';

/** How many can be had; Infinity where any number may be bought. */
export function countOf({ have, buyMost }: StickSupply): number {
  return buyMost === null ? Infinity : have + buyMost;
}

/** The longest piece that a stick gives: what lies between its end trims, in the planner's units. */
export function usableLength({ endTrim }: StickProblem, { length }: StickSupply): number {
  return length - 2 * endTrim;
}

/**
 * What the pieces of a stick, each with a kerf, may sum to, in the planner's units: one kerf more
 * than lies between the end trims, for the last piece needs none.
 */
export function capacityOf(problem: StickProblem, supply: StickSupply): number {
  return usableLength(problem, supply) + problem.kerf;
}

/** Strips of a blank that one board gives, ripped in the way at place `rip`. */
export function stripsOf(supply: StickSupply, rip: number, blank: string): number {
  if (supply.rips === undefined) return supply.strips;
  return supply.rips[rip]?.find((one) => one.blank === blank)?.count ?? 0;
}

/** Whether any way to rip the stick or board gives strips of a blank. */
export function servesBlank(supply: StickSupply, blank: string): boolean {
  return (supply.rips ?? [[]]).some((_, rip) => stripsOf(supply, rip, blank) > 0);
}

/** The ways to rip a supply, by their places: of each the strips whose blanks are asked for. */
export function ripsFor(
  { rips, strips }: StickSupply,
  blanks: ReadonlySet<string>,
): readonly {
  readonly rip: number;
  readonly strips: readonly { readonly blank: string; readonly count: number }[];
}[] {
  if (rips === undefined) {
    return [...blanks].map((blank) => ({ rip: 0, strips: [{ blank, count: strips }] }));
  }
  return rips.map((given, rip) => ({
    rip,
    strips: given.filter(({ blank }) => blanks.has(blank)),
  }));
}
