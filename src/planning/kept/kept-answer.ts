/** The stick planner's answer in few characters: supplies, profiles and pieces by their places in the problem. */
import { checkBound } from '../../cutting/check/check-bound.ts';
import { checkPlan } from '../../cutting/check/check-plan.ts';
import type {
  PlannedPiece,
  PlannedStick,
  StickAnswer,
  StickProblem,
} from '../../cutting/problem/problem.ts';

/** A whole piece is its place; a part is its place, its length and its number, from 0. */
type KeptPiece = number | readonly [demand: number, length: number, part: number];
type KeptStick = readonly [
  supply: number,
  profile: number,
  unit: number,
  rip: number,
  strip: number,
  ...KeptPiece[],
];

export interface KeptAnswer {
  readonly sticks: readonly KeptStick[];
  readonly costs: readonly [cost: number, credit: number, labor: number];
  readonly bound: StickAnswer['bound'];
  readonly status: StickAnswer['status'];
}

const STATUSES: ReadonlySet<string> = new Set(['proven', 'gap', 'unfinished']);

/** @param answer one that leaves nothing over */
export function writeAnswer(
  problem: StickProblem,
  { plan, bound, status }: StickAnswer,
): KeptAnswer {
  const placesOf = (list: readonly { readonly id: string }[]): ReadonlyMap<string, number> =>
    new Map(list.map(({ id }, at) => [id, at]));
  const supplies = placesOf(problem.supplies);
  const profiles = placesOf(problem.profiles ?? []);
  const demands = placesOf(problem.demands);
  const keepPiece = ({ demandId, length, part }: PlannedPiece): KeptPiece => {
    const at = demands.get(demandId) ?? -1;
    return part === undefined ? at : [at, length, part];
  };
  return {
    sticks: plan.sticks.map(({ supplyId, profile, unit, rip, strip, pieces }) => [
      supplies.get(supplyId) ?? -1,
      profiles.get(profile) ?? -1,
      unit,
      rip,
      strip,
      ...pieces.map(keepPiece),
    ]),
    costs: [plan.costCents, plan.creditCents, plan.laborCents],
    bound,
    status,
  };
}

/**
 * The answer again. It is looked over as a stranger's is: the plan stands by itself or not, the bound
 * is worked out anew from its prices, and `proven` only stays where the two meet.
 *
 * @returns undefined where it is no sound answer to the problem
 */
export function readAnswer(problem: StickProblem, kept: KeptAnswer): StickAnswer | undefined {
  const { bound, status } = kept;
  const [costCents, creditCents, laborCents] = kept.costs;
  const sticks = kept.sticks.map((stick) => readStick(problem, stick));
  if (!sticks.every((stick) => stick !== undefined)) return undefined;
  const plan = { sticks, unserved: [], costCents, creditCents, laborCents };
  if (checkPlan(problem, plan).length > 0) return undefined;
  if (checkBound(problem, plan, bound, true).length > 0) return undefined;
  const isLeast = costCents + laborCents - creditCents === bound.costCents;
  if (!STATUSES.has(status) || (status === 'proven') !== isLeast) return undefined;
  return { plan, bound, status };
}

function readStick(
  { supplies, profiles = [], demands, kerf, endTrim }: StickProblem,
  [supplyAt, profileAt, unit, rip, strip, ...kept]: KeptStick,
): PlannedStick | undefined {
  const supply = supplies[supplyAt];
  const profile = profiles[profileAt];
  if (supply === undefined || profile === undefined) return undefined;
  const pieces = kept.flatMap((piece): PlannedPiece[] => {
    const [at, length, part] = typeof piece === 'number' ? [piece] : piece;
    const demand = demands[at];
    if (demand === undefined) return [];
    const own = { demandId: demand.id, length: length ?? demand.length };
    return [part === undefined ? own : { ...own, part }];
  });
  if (pieces.length < kept.length) return undefined;
  const used = pieces.reduce((sum, piece) => sum + piece.length + kerf, 0);
  const offcut = Math.max(0, supply.length - 2 * endTrim - used);
  return { supplyId: supply.id, profile: profile.id, unit, rip, strip, pieces, offcut };
}
