import { checkPlan } from './check/check-plan.ts';
import type { Offer } from './incumbent.ts';
import type { PlannedStick, StickPlan, StickProblem } from './problem/problem.ts';
import type { Block } from './quick/cut-list.ts';
import type { WholeStick } from './whole-stick.ts';

/**
 * A plan from earlier as an offer beside the quick one.
 *
 * @param quick whose lists it is to be served from
 * @returns undefined where it is no whole plan of the problem, or splices other pieces than the quick one
 */
export function startOffer(
  problem: StickProblem,
  start: StickPlan | undefined,
  quick: Offer,
): Offer | undefined {
  if (start === undefined || start.unserved.length > 0 || checkPlan(problem, start).length > 0) {
    return undefined;
  }
  const places = new Map(problem.demands.map(({ id }, at) => [id, at]));
  const placeOf = (id: string): number => places.get(id) ?? -1;
  const parts = start.sticks.flatMap(({ pieces }) =>
    pieces.flatMap(({ demandId, part }) => (part === undefined ? [] : placeOf(demandId))),
  );
  if (
    !areEqual(
      new Set(parts),
      quick.lists.flatMap(({ spliced }) => [...spliced]),
    )
  ) {
    return undefined;
  }
  const blocks = new Map(
    quick.lists
      .flatMap((list) => list.blocks)
      .filter(({ pieces }) => pieces.every(({ part }) => part === undefined))
      .flatMap((block) => block.demands.map((at) => [at, block] as const)),
  );
  const supplies = new Map(problem.supplies.map((supply) => [supply.id, supply]));
  const sticks: WholeStick[] = [];
  for (const stick of start.sticks) {
    const supply = supplies.get(stick.supplyId);
    const whole = blocksOf(problem, stick, blocks, placeOf);
    if (supply === undefined || whole === undefined) return undefined;
    sticks.push({ profile: stick.profile, supply, rip: stick.rip, blocks: whole });
  }
  return { sticks, unserved: new Map(), lists: quick.lists };
}

/** A matched group is one block; a part is one by itself. */
function blocksOf(
  { kerf }: StickProblem,
  { pieces }: PlannedStick,
  blocks: ReadonlyMap<number, Block>,
  placeOf: (id: string) => number,
): readonly Block[] | undefined {
  const found = new Set<Block>();
  for (const piece of pieces) {
    const at = placeOf(piece.demandId);
    const block =
      piece.part === undefined
        ? blocks.get(at)
        : { weight: piece.length + kerf, pieces: [piece], demands: [at] };
    if (block === undefined) return undefined;
    found.add(block);
  }
  return [...found];
}

function areEqual(one: ReadonlySet<number>, others: readonly number[]): boolean {
  return one.size === others.length && others.every((at) => one.has(at));
}
