/** From a job to its plan: pieces, set-ups, sticks, board feet, hours, money. */
import Fraction from 'fraction.js';
import { fault, placeFault, rewordFault, type Caution, type Fault } from '../core/faults/fault.ts';
import { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions, StickAnswer } from '../cutting/problem.ts';
import { readSticks, readStockUse } from './cut-sticks.ts';
import { spareId, spareLength, stateProblem } from './group-problem.ts';
import { nameKey, sameName, type Job, type Profile, type StockItem } from './job.ts';
import { hoursOf, type JobPlan, type ProfilePlan, type RoomLine, type Totals } from './job-plan.ts';
import { cents, priceProfile, shareCents } from './money.ts';
import type { Piece } from './piece.ts';
import { listPieces } from './pieces/list-pieces.ts';
import { planSetUp, type SetUp } from './plan-setup.ts';
import { findStock, type StockUnit } from './stock-units.ts';
import { tallyProfile } from './tally.ts';

export interface JobPlanning {
  /** Present when the job can be made as asked. */
  readonly plan?: JobPlan;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

export interface PlanJobOptions extends PlanSticksOptions {
  /** Called before each profile is planned, and once after the last: so many of so many done. */
  readonly onProfile?: (done: number, of: number, profile: string) => void;
}

/**
 * Plans a job: one problem of sticks a profile, in the order of Profiles, each taking what is left
 * of the rack. Every fault of every part is collected; with any, there is no plan.
 */
export async function planJob(job: Job, options: PlanJobOptions = {}): Promise<JobPlanning> {
  const listed = listPieces(job);
  const faults: Fault[] = [...listed.faults, ...checkMatches(listed.pieces)];
  const cautions: Caution[] = [...listed.cautions, ...spareCautions(job)];
  const profiles: ProfilePlan[] = [];
  const used = new Map<StockItem, number>();
  for (const [index, profile] of job.profiles.entries()) {
    options.onProfile?.(index, job.profiles.length, profile.name);
    const live = listed.pieces.filter((one) => !one.done && sameName(one.profile, profile.name));
    if (live.length === 0) continue;
    const setUp = planSetUp(profile, job.shop);
    const stock = findStock(profile, job);
    faults.push(...(setUp?.faults ?? []), ...stock.faults);
    cautions.push(...(setUp?.cautions ?? []), ...stock.cautions);
    if (stock.units.length === 0) continue;
    const planned = await planGroup(job, profile, live, stock.units, used, setUp?.setUp, options);
    faults.push(...planned.faults);
    if (planned.plan === undefined) continue;
    profiles.push(planned.plan);
    for (const { item, fromRack, bought } of planned.plan.stockUse) {
      used.set(item, (used.get(item) ?? 0) + fromRack + bought);
    }
  }
  options.onProfile?.(job.profiles.length, job.profiles.length, '');
  const reword = (one: Fault): Fault => rewordFault(one, job.shop.unit);
  const found = { faults: faults.map(reword), cautions: cautions.map(reword) };
  if (faults.length > 0) return found;
  const rooms = roomLines(listed.pieces, profiles);
  const totals = sumUp(job, listed.pieces, profiles);
  const plan: JobPlan = {
    job,
    pieces: listed.pieces,
    profiles,
    rooms,
    totals,
    cautions: found.cautions,
  };
  return { plan, ...found };
}

async function planGroup(
  job: Job,
  profile: Profile,
  live: readonly Piece[],
  units: readonly StockUnit[],
  used: ReadonlyMap<StockItem, number>,
  setUp: SetUp | undefined,
  options: PlanSticksOptions,
): Promise<{ plan?: ProfilePlan; faults: readonly Fault[] }> {
  const stated = stateProblem(profile, live, units, used, job.shop);
  if ('fault' in stated) return { faults: [placeFault(stated.fault, profile.where)] };
  const { problem } = stated;
  const planned = await planSticks(problem, options);
  if (!planned.ok) {
    return { faults: planned.faults.map((one) => placeFault(one, profile.where)) };
  }
  const answer = planned.value;
  const pieces = new Map(live.map((piece) => [piece.id, piece]));
  if (answer.plan.unserved.length > 0) {
    return { faults: unservedFaults(profile, answer, pieces, units) };
  }
  const sticks = readSticks(profile, problem, answer, units, used, pieces);
  const stockUse = readStockUse(problem, answer, units);
  const tally = tallyProfile(profile, live, sticks, setUp, job.shop);
  const money = priceProfile(stockUse, sticks, tally.hours, job.shop);
  const plan = { profile, problem, answer, sticks, stockUse, tally, money };
  return { plan: setUp === undefined ? plan : { ...plan, setUp }, faults: [] };
}

/** What could not be placed is named piece by piece, at its own row. */
function unservedFaults(
  profile: Profile,
  answer: StickAnswer,
  pieces: ReadonlyMap<string, Piece>,
  units: readonly StockUnit[],
): Fault[] {
  const longest = Math.max(...units.map(({ item }) => Number(item.length)));
  return answer.plan.unserved.map(({ demandId, why }) => {
    const piece = pieces.get(demandId);
    const given = piece === undefined ? spareId(profile) : { inches: Number(piece.cutLength) };
    const more = { limit: { inches: longest }, details: { why } };
    const one = fault('cutting.unserved', demandId, given, more);
    return placeFault(one, piece?.where ?? profile.where);
  });
}

/** A set-up spare shorter than the shop's least blank is planned as long as that. */
function spareCautions({ shop, profiles }: Job): Caution[] {
  const spare = spareLength(shop);
  const none = spare === undefined || profiles.every((one) => one.make === 'buy');
  if (none || !shop.setUpSpare.lt(shop.leastBlankLength)) return [];
  const limit = { inches: Number(spare) };
  return [
    fault('job.spare-below-least', 'Set-up spare', { inches: Number(shop.setUpSpare) }, { limit }),
  ];
}

/** Pieces of a matched group come from one stick, so they are of one profile. */
function checkMatches(pieces: readonly Piece[]): Fault[] {
  const profileOf = new Map<string, string>();
  const faults: Fault[] = [];
  for (const piece of pieces) {
    if (piece.match === '' || piece.done) continue;
    const key = nameKey(piece.match);
    const first = profileOf.get(key) ?? piece.profile;
    profileOf.set(key, first);
    if (first === piece.profile) continue;
    const details = { other: first };
    const one = fault('job.match-of-two-profiles', piece.id, piece.match, { details });
    faults.push(placeFault(one, piece.where));
  }
  return faults;
}

/** The price of a profile is shared among its rooms by net length, to the cent. */
function roomLines(pieces: readonly Piece[], profiles: readonly ProfilePlan[]): RoomLine[] {
  const rooms = [...new Set(pieces.map((piece) => piece.room))];
  const lines = profiles.flatMap(({ profile, money }) => {
    const parts = rooms.flatMap((room) => {
      const here = pieces.filter(
        (one) => !one.done && one.room === room && one.profile === profile.name,
      );
      if (here.length === 0) return [];
      const lengthNet = here.reduce((sum, one) => sum.add(one.cutLength), new Fraction(0));
      return [{ room, profile: profile.name, pieces: here.length, lengthNet }];
    });
    const shares = shareCents(
      money.priceCents,
      parts.map((part) => Number(part.lengthNet)),
    );
    return parts.map((part, index): RoomLine => ({ ...part, priceCents: shares[index] ?? 0 }));
  });
  return rooms.flatMap((room) => lines.filter((line) => line.room === room));
}

function sumUp(job: Job, pieces: readonly Piece[], profiles: readonly ProfilePlan[]): Totals {
  const sum = (value: (plan: ProfilePlan) => number): number =>
    profiles.reduce((all, plan) => all + value(plan), 0);
  const exact = (value: (plan: ProfilePlan) => Fraction): Fraction =>
    profiles.reduce((all, plan) => all.add(value(plan)), new Fraction(0));
  const priceCents = sum(({ money }) => money.priceCents);
  return {
    pieces: sum(({ tally }) => tally.pieces),
    done: pieces.filter((piece) => piece.done).length,
    sticks: sum(({ tally }) => tally.sticks),
    lengthNet: exact(({ tally }) => tally.lengthNet),
    lengthBought: exact(({ tally }) => tally.lengthBought),
    boardFeetNet: sum(({ tally }) => tally.boardFeetNet ?? 0),
    boardFeetWithAllowance: sum(({ tally }) => tally.boardFeetWithAllowance ?? 0),
    passes: sum(({ tally }) => tally.passes),
    hours: sum(({ tally }) => hoursOf(tally.hours)),
    costCents: sum(({ money }) => money.costCents),
    priceCents,
    taxCents: cents((priceCents * job.shop.tax) / 100),
    currency: job.shop.currency,
  };
}
