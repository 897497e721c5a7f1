/** From a job to its plan: pieces, set-ups, sticks, board feet, hours, money. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, rewordFault, type Caution, type Fault } from '../core/faults/fault.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { planSticks } from '../cutting/plan-sticks.ts';
import type { CarriedStick } from './cut/carry-over.ts';
import { nameGroup } from './group-problem.ts';
import { groupProfiles, type PreparedGroup } from './group-profiles.ts';
import type { Job, StockItem } from './job.ts';
import type { CuttingGroup, JobPlan, ProfilePlan } from './job-plan.ts';
import type { JobPlanning, PlanJobOptions } from './job-planning.ts';
import { jointOffStudCautions, shortPartCautions } from './joints.ts';
import { planOptions } from './options/plan-options.ts';
import { planGroup } from './plan-group.ts';
import { planProfiles, type ProfileCut } from './plan-profile.ts';
import { prepareJob } from './prepare-job.ts';
import { loneSpareCautions } from './trial-spares.ts';
import { rangeOfPrice } from './range-of-price.ts';
import { shareTime } from './share-time.ts';
import type { Shop } from './shop.ts';
import { shortRestCautions } from './short-rests.ts';
import { roomLines, sumUp } from './sum-up.ts';
import { cautionHours } from './work/caution-hours.ts';
import { planJobWork } from './work/job-work.ts';

/**
 * Plans a job, and once more for each option that isn't taken up: with each by itself, at the same effort.
 * Every fault of every part is collected; with any, there is no plan.
 *
 * @throws RangeError where there is a budget of time and no clock
 */
export async function planJob(job: Job, options: PlanJobOptions = {}): Promise<JobPlanning> {
  return planOptions(job, options, planAsItStands);
}

/**
 * Plans a job without a look at its options: profiles that share stock are one problem of sticks, in the
 * order of Profiles, each group taking what is left of the rack. What is cut already counts in every total: its sticks are paid
 * for, its hours worked.
 */
async function planAsItStands(job: Job, options: PlanJobOptions): Promise<JobPlanning> {
  const prepared = prepareJob(job, options.cut);
  const { listed, pieces, carried } = prepared;
  const faults = [...prepared.faults];
  const cautions = [...prepared.cautions];
  const costOf = (cuts: readonly ProfileCut[]): number =>
    planProfiles(cuts, prepared.setUps, job).reduce(
      (sum, { byPlan }) => sum + byPlan.money.costCents,
      0,
    );
  const planned = await planGroups(
    groupProfiles(prepared.profiles, job.shop.kerf),
    job,
    faults.length > 0 ? undefined : costOf,
    options,
    carried.sticks,
  );
  faults.push(...planned.faults);
  cautions.push(
    ...planned.cautions,
    ...shortRestCautions(planned.cuts, job.shop),
    ...shortPartCautions(planned.cuts, job.shop),
    ...jointOffStudCautions(planned.cuts, job.shop),
    ...loneSpareCautions(planned.cuts, planned.groups, job.shop),
  );
  const reword = (one: Fault): Fault => rewordFault(one, job.shop.unit, job.shop.decimalSign);
  const found = { faults: faults.map(reword), cautions: cautions.map(reword) };
  if (faults.length > 0) return found;
  const { groups } = planned;
  const cutOf = new Map(planned.cuts.map((one) => [one.profile, one]));
  const cuts = job.profiles.flatMap((profile) => cutOf.get(profile) ?? []);
  const profiles = planProfiles(cuts, prepared.setUps, job);
  const bornByNone = cutForNobody(profiles, job.shop);
  if (bornByNone.length > 0) return { ...found, faults: bornByNone.map(reword) };
  const rooms = roomLines(pieces, profiles);
  const jobWork = planJobWork(job, rooms);
  const made: Omit<JobPlan, 'range'> = {
    job,
    pieces,
    cutAways: listed.cutAways,
    profiles,
    groups,
    rooms,
    jobWork,
    totals: sumUp(job, pieces, profiles, jobWork),
    options: [],
    cut: options.cut ?? [],
    cautions: found.cautions,
  };
  const all = [...found.cautions, ...cautionHours(made).map(reword)];
  const range = rangeOfPrice(made);
  const plan = { ...made, ...(range === undefined ? {} : { range }), cautions: all };
  return { plan, faults: found.faults, cautions: all };
}

/** Moldings that are cut, and that no run asks for any more: what they cost has no room to stand in. */
function cutForNobody(profiles: readonly ProfilePlan[], shop: Shop): Fault[] {
  return profiles
    .filter(({ tally, money }) => tally.pieces === 0 && money.priceCents !== 0)
    .map(({ profile, sticks, money }) => {
      const cost = sayMoney(money.priceCents, shop.currency, shop.decimalSign);
      const details = { cost };
      const one = fault('job.cut-for-nobody', own(profile.name), sticks.length, { details });
      return placeFault(one, profile.where);
    });
}

/**
 * Each group's quick plan is made whole, whatever the budget; what it may take beyond that only makes
 * it cheaper. So a canceled job still has all its plans, a little later.
 *
 * @param costOf What cuts come to; absent where there are faults already and the groups are planned only
 *   to find the others.
 */
async function planGroups(
  prepared: readonly PreparedGroup[],
  job: Job,
  costOf: ((cuts: readonly ProfileCut[]) => number) | undefined,
  { onGroup, planSticks: plan = planSticks, seconds, earlier, ...options }: PlanJobOptions,
  carried: readonly CarriedStick[],
): Promise<{
  groups: CuttingGroup[];
  cuts: ProfileCut[];
  faults: Fault[];
  cautions: Caution[];
}> {
  const groups: CuttingGroup[] = [];
  const cuts: ProfileCut[] = [];
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const opened = new Map<StockItem, number>();
  const used = { cut: numbersCut(carried), opened };
  const pieces = prepared.map((group) => group.reduce((sum, one) => sum + one.toPlan.length, 0));
  const milliseconds = seconds === undefined ? undefined : seconds * 1000;
  const shares = shareTime(milliseconds, pieces, options);
  for (const [place, group] of prepared.entries()) {
    onGroup?.(place, prepared.length, nameGroup(group));
    const isQuick =
      costOf === undefined || faults.length > 0 || isNeededLater(group, prepared.slice(place + 1));
    const share = shares.begin(place);
    const budget = isQuick ? { budget: { steps: 0 } } : share.budget;
    const planning = { ...options, ...budget };
    const planned = await planGroup(group, used, job, plan, planning, costOf, earlier);
    share.end();
    faults.push(...planned.faults);
    cautions.push(...planned.cautions);
    if (planned.group === undefined) continue;
    groups.push(planned.group);
    cuts.push(...(planned.cuts ?? []));
    for (const [item, count] of planned.opened ?? []) {
      opened.set(item, (opened.get(item) ?? 0) + count);
    }
  }
  onGroup?.(prepared.length, prepared.length, '');
  return { groups, cuts, faults, cautions };
}

/** The numbers of the sticks and boards that are cut, row by row of Stock. */
function numbersCut(carried: readonly CarriedStick[]): ReadonlyMap<StockItem, ReadonlySet<number>> {
  const numbers = new Map<StockItem, Set<number>>();
  for (const { stick } of carried) {
    const ofItem = numbers.get(stick.item) ?? new Set<number>();
    numbers.set(stick.item, ofItem.add(stick.unit));
  }
  return numbers;
}

/**
 * Whether a later group is cut from a row that runs out: then this one keeps to its quick plan, so
 * that what is left to the later one doesn't hang on the budget. That is rare: what shares such a row
 * is one group, but for a row without Class that costs two profiles two prices.
 */
function isNeededLater(group: PreparedGroup, later: readonly PreparedGroup[]): boolean {
  const items = new Set(group.flatMap(({ units }) => units.map(({ item }) => item)));
  return later.some((other) =>
    other.some(({ units }) => units.some(({ item }) => item.buyMost !== null && items.has(item))),
  );
}
