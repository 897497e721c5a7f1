/** One group of profiles from its problem to its sticks, boards and money. */
import { own } from '../core/faults/argument.ts';
import { fault, ok, placeFault, type Caution, type Fault } from '../core/faults/fault.ts';
import type { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions, StickAnswer, StickPlan } from '../cutting/problem/problem.ts';
import { laborCents } from '../cutting/problem/strip-labor.ts';
import { startFrom } from './cut/start-from.ts';
import { newlyOpened, takeSticks, type AnsweredGroup, type TakenStick } from './cut-sticks.ts';
import type { PreparedGroup } from './group-profiles.ts';
import { nameGroup, partId, spareId, stateProblem, type StatedGroup } from './group-problem.ts';
import type { Job, Profile, StockItem } from './job.ts';
import type { CutPart, CuttingGroup, JobPlan } from './job-plan.ts';
import { creditSticks, shareBoardFeet, shareLumber } from './money.ts';
import { countLayouts, openedRows, readBoards, readStockUse, sumBoardFeet } from './opened-rows.ts';
import type { ProfileCut } from './plan-profile.ts';
import type { ShopCells } from './shop.ts';
import { spoiledFitCautions } from './spoiled-fits.ts';
import type { UsedStock } from './used-stock.ts';

export interface GroupPlanning {
  /** All three or none. */
  readonly group?: CuttingGroup;
  readonly cuts?: readonly ProfileCut[];
  /** How many of each row of Stock it opens that weren't open before. */
  readonly opened?: ReadonlyMap<StockItem, number>;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/**
 * @param plan the stick planner, here or in a worker
 * @param costOf what a group's cuts come to in the job, in cents; of plans between which only rounding
 *   decides, the one is taken that costs least there. Absent: the planner's own
 * @param earlier a plan from before: where the rest can be cut as it had it, it costs no more than that
 */
export async function planGroup(
  prepared: PreparedGroup,
  used: UsedStock,
  { shop, shopCells }: Pick<Job, 'shop' | 'shopCells'>,
  plan: typeof planSticks,
  options: PlanSticksOptions,
  costOf?: (cuts: readonly ProfileCut[]) => number,
  earlier?: JobPlan,
): Promise<GroupPlanning> {
  const { where } = prepared[0].profile;
  const stating = stateProblem(prepared, used, shop);
  if ('fault' in stating) return { faults: [placeFault(stating.fault, where)], cautions: [] };
  const { stated } = stating;
  const { cautions } = stated;
  const gone = cutFromNothing(prepared);
  if (gone.length > 0) return { faults: gone, cautions };
  const planned =
    stated.problem.demands.length === 0
      ? ok(NOTHING_LEFT)
      : await plan(stated.problem, withStart(options, prepared, stated, earlier));
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
  const { costCents, creditCents } = best.group.answer.plan;
  const net = costCents - creditCents;
  const spoiled =
    costOf === undefined ? [] : await spoiledFitCautions(prepared, used, shop, plan, options, net);
  return { ...best, faults: [], cautions: [...cautions, ...spoiled] };
}

/** Everything is cut. */
const NOTHING_LEFT: StickAnswer = {
  plan: { sticks: [], unserved: [], costCents: 0, creditCents: 0, laborCents: 0 },
  bound: { costCents: 0, duals: [], credits: [] },
  status: 'proven',
};

/** Sticks that are cut, of rows of Stock that don't serve their profile any more. */
function cutFromNothing(prepared: PreparedGroup): Fault[] {
  return prepared.flatMap(({ profile, cut, units }) =>
    cut.flatMap(({ stick: { id, item } }) => {
      if (units.some((unit) => unit.item === item)) return [];
      const given = { inches: Number(item.length) };
      const one = fault('job.cut-stock-unfit', own(id), given, {
        details: { profile: profile.name },
      });
      return [placeFault(one, item.where)];
    }),
  );
}

/** The stick planner begins with what an earlier plan had of the pieces that are still to be cut. */
function withStart(
  options: PlanSticksOptions,
  prepared: PreparedGroup,
  stated: StatedGroup,
  earlier: JobPlan | undefined,
): PlanSticksOptions {
  const start = startFrom(earlier, prepared, stated);
  return start === undefined ? options : { ...options, start };
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
): Required<Pick<GroupPlanning, 'group' | 'cuts' | 'opened'>> {
  const { problem, answer } = answered;
  const profiles = prepared.map(({ profile }) => profile);
  const sticks = takeSticks(prepared, answered);
  const rows = openedRows(answered, sticks);
  const lumber = shareLumber(profiles, rows);
  const boardFeet = shareBoardFeet(profiles, rows);
  const cut = cutPart(answered, sticks);
  const ofProfile = (profile: Profile): TakenStick[] =>
    sticks.filter((one) => one.profile === profile);
  return {
    opened: newlyOpened(answered),
    group: {
      name: nameGroup(prepared),
      profiles,
      problem,
      answer,
      ...(cut === undefined ? {} : { cut }),
      stockUse: readStockUse(rows),
      boards: readBoards(rows),
      layouts: countLayouts(sticks),
      ...sumBoardFeet(rows, sticks),
      lumberCents: answer.plan.costCents + (cut?.lumberCents ?? 0),
      offcutCreditCents: answer.plan.creditCents + (cut?.offcutCreditCents ?? 0),
    },
    cuts: prepared.map(({ profile, pieces }): ProfileCut => {
      const boardFeetBought = boardFeet.get(profile.name);
      const own = ofProfile(profile);
      return {
        profile,
        pieces,
        sticks: own.map(({ stick }) => stick),
        lumberCents: lumber.get(profile.name) ?? 0,
        offcutCreditCents: creditSticks(answered, own),
        ...(boardFeetBought === undefined ? {} : { boardFeetBought }),
      };
    }),
  };
}

/** What the sticks that are cut come to; undefined where none is. */
function cutPart(group: AnsweredGroup, sticks: readonly TakenStick[]): CutPart | undefined {
  const cut = sticks.filter(({ stick }) => stick.isCut === true);
  if (cut.length === 0) return undefined;
  const { problem } = group;
  const labors = new Map(problem.profiles?.map(({ id, labor }) => [id, labor]));
  return {
    sticks: cut.length,
    lumberCents: openedRows(group, cut).reduce(
      (sum, { supply, units }) => sum + supply.priceCents * units.size,
      0,
    ),
    offcutCreditCents: creditSticks(group, cut),
    laborCents: cut.reduce(
      (sum, { profile, stick }) =>
        sum + laborCents(labors.get(profile.name), Number(stick.length.mul(problem.unitsPerInch))),
      0,
    ),
  };
}

/** What could not be placed is named piece by piece, at its own row; a spare at the setting that asks for it. */
function unservedFaults(
  prepared: PreparedGroup,
  { plan }: StickAnswer,
  shopCells: ShopCells,
): Fault[] {
  const whole = prepared.flatMap(({ profile, toPlan, partsLeft, units }) => {
    const limit = { inches: Math.max(...units.map(({ item }) => Number(item.length))) };
    const spare = {
      id: spareId(profile),
      where: shopCells.setUpSpare ?? profile.where,
      given: spareId(profile),
    };
    const ofPieces = toPlan.map(({ id, where, cutLength }) => {
      return { id, where, given: { inches: Number(cutLength) } };
    });
    const ofParts = partsLeft.map(({ piece: { id, where }, part, length }) => {
      return { id: partId(id, part), where, given: { inches: Number(length) } };
    });
    return [...ofPieces, ...ofParts, spare].map((one) => ({ ...one, limit }));
  });
  const byId = new Map(whole.map((one) => [one.id, one]));
  return plan.unserved.map(({ demandId, why }) => {
    const one = byId.get(demandId);
    if (one === undefined) throw new RangeError(`No piece stands behind ${demandId}.`);
    const { given, limit, where } = one;
    return placeFault(
      fault('cutting.unserved', own(demandId), given, { limit, details: { why } }),
      where,
    );
  });
}
