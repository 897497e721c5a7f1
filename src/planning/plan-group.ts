/** One group of profiles from its problem to its sticks, boards and money. */
import { fault, placeFault, type Caution, type Fault } from '../core/faults/fault.ts';
import type { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions, StickAnswer, StickPlan } from '../cutting/problem/problem.ts';
import {
  countLayouts,
  readBoards,
  readSticks,
  readStockUse,
  sumBoardFeet,
  type AnsweredGroup,
} from './cut-sticks.ts';
import type { PreparedGroup } from './group-profiles.ts';
import { nameGroup, spareId, stateProblem, type UsedStock } from './group-problem.ts';
import type { Job, ShopCells } from './job.ts';
import type { CuttingGroup } from './job-plan.ts';
import { creditProfile, shareBoardFeet, shareLumber } from './money.ts';
import type { ProfileCut } from './plan-profile.ts';
import { spoiledFitCautions } from './spoiled-fits.ts';

export interface GroupPlanning {
  /** Both or neither. */
  readonly group?: CuttingGroup;
  readonly cuts?: readonly ProfileCut[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * @param plan the stick planner, here or in a worker
 * @param costOf what a group's cuts come to in the job, in cents; of plans between which only rounding
 *   decides, the one is taken that costs least there. Absent: the planner's own
 */
export async function planGroup(
  prepared: PreparedGroup,
  used: UsedStock,
  { shop, shopCells }: Pick<Job, 'shop' | 'shopCells'>,
  plan: typeof planSticks,
  options: PlanSticksOptions,
  costOf?: (cuts: readonly ProfileCut[]) => number,
): Promise<GroupPlanning> {
  const { where } = prepared[0].profile;
  const stating = stateProblem(prepared, used, shop);
  if ('fault' in stating) return { faults: [placeFault(stating.fault, where)], cautions: [] };
  const { stated } = stating;
  const { cautions } = stated;
  const planned = await plan(stated.problem, options);
  if (!planned.ok) {
    return { faults: planned.faults.map((one) => placeFault(one, where)), cautions };
  }
  const answer = planned.value;
  if (answer.plan.unserved.length > 0) {
    return { faults: unservedFaults(prepared, answer, shopCells), cautions };
  }
  const read = (one: StickPlan): ReturnType<typeof readGroup> =>
    readGroup(prepared, { ...stated, answer: withPlan(answer, one), used });
  let best = read(answer.plan);
  for (const one of costOf === undefined ? [] : (answer.near ?? [])) {
    const other = read(one);
    if ((costOf?.(other.cuts) ?? 0) < (costOf?.(best.cuts) ?? 0)) best = other;
  }
  const { lumberCents, offcutCreditCents } = best.group;
  const net = lumberCents - offcutCreditCents;
  const spoiled =
    costOf === undefined ? [] : await spoiledFitCautions(prepared, used, shop, plan, options, net);
  return { ...best, faults: [], cautions: [...cautions, ...spoiled] };
}

/** The answer with another of its plans; proven where that one comes to the bound too. */
function withPlan({ bound, status, plan: own }: StickAnswer, plan: StickPlan): StickAnswer {
  if (plan === own) return { plan, bound, status };
  const isLeast = plan.costCents + plan.laborCents - plan.creditCents === bound.costCents;
  return { plan, bound, status: isLeast ? 'proven' : status === 'proven' ? 'gap' : status };
}

function readGroup(
  prepared: PreparedGroup,
  answered: AnsweredGroup,
): { group: CuttingGroup; cuts: readonly ProfileCut[] } {
  const { problem, answer } = answered;
  const profiles = prepared.map(({ profile }) => profile);
  const lumber = shareLumber(profiles, answered);
  const boardFeet = shareBoardFeet(profiles, answered);
  return {
    group: {
      name: nameGroup(prepared),
      profiles,
      problem,
      answer,
      stockUse: readStockUse(answered),
      boards: readBoards(answered),
      layouts: countLayouts(answer),
      ...sumBoardFeet(answered),
      lumberCents: answer.plan.costCents,
      offcutCreditCents: answer.plan.creditCents,
    },
    cuts: prepared.map(({ profile, pieces }): ProfileCut => {
      const byId = new Map(pieces.map((piece) => [piece.id, piece]));
      const boardFeetBought = boardFeet.get(profile.name);
      return {
        profile,
        pieces,
        sticks: readSticks(profile, answered, byId),
        lumberCents: lumber.get(profile.name) ?? 0,
        offcutCreditCents: creditProfile(profile, answered),
        ...(boardFeetBought === undefined ? {} : { boardFeetBought }),
      };
    }),
  };
}

/** What could not be placed is named piece by piece, at its own row; a spare at the setting that asks for it. */
function unservedFaults(
  prepared: PreparedGroup,
  { plan }: StickAnswer,
  shopCells: ShopCells,
): Fault[] {
  const whole = prepared.flatMap(({ profile, pieces, units }) => {
    const limit = { inches: Math.max(...units.map(({ item }) => Number(item.length))) };
    const spare = {
      id: spareId(profile),
      where: shopCells.setUpSpare ?? profile.where,
      given: spareId(profile),
    };
    const ofPieces = pieces.map(({ id, where, cutLength }) => {
      return { id, where, given: { inches: Number(cutLength) } };
    });
    return [...ofPieces, spare].map((one) => ({ ...one, limit }));
  });
  const byId = new Map(whole.map((one) => [one.id, one]));
  return plan.unserved.map(({ demandId, why }) => {
    const one = byId.get(demandId);
    if (one === undefined) throw new RangeError(`No piece stands behind ${demandId}.`);
    const { given, limit, where } = one;
    return placeFault(
      fault('cutting.unserved', demandId, given, { limit, details: { why } }),
      where,
    );
  });
}
