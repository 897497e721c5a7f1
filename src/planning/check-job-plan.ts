/**
 * An independent look at a whole plan. It shares no code with the planner: but for its other parts,
 * check-lumber.ts, check-stock.ts, check-allowance.ts, check-work.ts, check-money.ts, check-cut.ts, check-options.ts and check-runs.ts, only types, tolerances and what makes two names the same
 * are imported. Everything is added up again from the pieces and the sticks, in plain inches.
 */
import { sayArgument } from '../core/faults/argument.ts';
import { checkAllowance } from './check-allowance.ts';
import { checkCutStick, checkRecuts } from './check-cut.ts';
import { checkLumber } from './check-lumber.ts';
import { checkMoney } from './check-money.ts';
import { checkOptions } from './check-options.ts';
import { checkRuns } from './check-runs.ts';
import { checkStock } from './check-stock.ts';
import { checkWork } from './check-work.ts';
import { nameKey } from './job.ts';
import type { CutStick, JobPlan, ProfilePlan } from './job-plan.ts';
import type { Piece } from './piece.ts';
import { CHECK_SLACK_INCHES } from './tolerance.ts';

/** What is wrong with a plan, a sentence each; none when it stands. */
export function checkJobPlan(plan: JobPlan): string[] {
  return [
    ...checkPieces(plan),
    ...checkRuns(plan),
    ...plan.profiles.flatMap((one) => one.sticks.flatMap((stick) => checkStick(plan, one, stick))),
    ...checkLumber(plan),
    ...checkStock(plan),
    ...checkMatches(plan),
    ...checkRecuts(plan),
    ...checkAllowance(plan),
    ...checkWork(plan),
    ...checkMoney(plan),
    ...checkTotals(plan),
    ...checkOptions(plan, checkJobPlan),
  ];
}

/** Every piece that isn't done is cut once, whole or in parts that add up; done ones never. */
function checkPieces(plan: JobPlan): string[] {
  const wrong: string[] = [];
  const precision = Number(plan.job.shop.lengthPrecision);
  const ids = new Set<string>();
  const cuts = new Map<string, { length: number; whole: boolean }[]>();
  for (const { sticks, profile } of plan.profiles) {
    for (const stick of sticks) {
      for (const { id, length, part, piece, unneeded, isCut } of stick.pieces) {
        if (isCut === true && stick.isCut !== true) wrong.push(`${id} is cut from an uncut stick.`);
        if (unneeded !== undefined) {
          if (isCut !== true || piece !== undefined) {
            wrong.push(`${id} is left over of ${stick.id} and not cut.`);
          }
          continue;
        }
        const list = cuts.get(id) ?? [];
        list.push({ length: Number(length), whole: part === undefined });
        cuts.set(id, list);
        if (piece !== undefined && piece.profile !== profile.name) {
          wrong.push(`${id} is cut from the stock of ${profile.name}, not of ${piece.profile}.`);
        }
      }
    }
  }
  for (const piece of plan.pieces) {
    if (ids.has(piece.id)) wrong.push(`${piece.id} is the id of two pieces.`);
    ids.add(piece.id);
    const steps = Number(piece.cutLength) / precision;
    if (!(steps > 0) || Math.abs(steps - Math.round(steps)) > CHECK_SLACK_INCHES) {
      wrong.push(`${piece.id} is not a whole number of the shop's precision long.`);
    }
    wrong.push(...checkCuts(piece, cuts.get(piece.id) ?? [], plan));
  }
  for (const id of cuts.keys()) {
    const spare = plan.profiles.some(({ profile }) => id === `${profile.name} / set-up spare`);
    if (!ids.has(id) && !spare) wrong.push(`${id} is cut but not asked for.`);
  }
  for (const { profile, setUp } of plan.profiles) {
    const wanted = setUp !== undefined && Number(plan.job.shop.setUpSpare) > 0 ? 1 : 0;
    const spares = cuts.get(`${profile.name} / set-up spare`) ?? [];
    const planned = spares.length;
    for (const spare of spares) {
      if (spare.length >= Number(plan.job.shop.leastBlankLength) - CHECK_SLACK_INCHES) continue;
      wrong.push(`The set-up spare of ${profile.name} is shorter than the shop's least blank.`);
    }
    if (planned !== wanted) wrong.push(`${profile.name} has ${planned} set-up spares.`);
  }
  wrong.push(...plan.profiles.flatMap((one) => checkRest(plan, one)));
  return wrong;
}

/** Where the spare is crosscut off first, what is left is coved: too short a blank is told of. */
function checkRest(plan: JobPlan, { profile, setUp, sticks }: ProfilePlan): string[] {
  if (setUp === undefined) return [];
  const [trim, kerf, least] = [
    plan.job.shop.endTrim,
    plan.job.shop.crosscutKerf,
    plan.job.shop.leastBlankLength,
  ].map(Number) as [number, number, number];
  const told = plan.cautions.some(
    ({ code, argument }) =>
      code === 'job.spare-leaves-short' && sayArgument(argument) === profile.name,
  );
  const short = sticks.some(({ length, pieces }) => {
    const spare = pieces.find(({ id }) => id === `${profile.name} / set-up spare`);
    if (spare === undefined || pieces.length < 2) return false;
    return Number(length) - trim - Number(spare.length) - kerf < least - CHECK_SLACK_INCHES;
  });
  return short === told
    ? []
    : [`The rest beside the spare of ${profile.name} is not told of right.`];
}

function checkCuts(
  piece: Piece,
  cuts: readonly { length: number; whole: boolean }[],
  plan: JobPlan,
): string[] {
  if (piece.done) return cuts.length === 0 ? [] : [`${piece.id} is done and planned again.`];
  const wanted = Number(piece.cutLength);
  const [first] = cuts;
  if (first === undefined) return [`${piece.id} is never cut.`];
  if (first.whole) {
    if (cuts.length > 1) return [`${piece.id} is cut ${cuts.length} times.`];
    return Math.abs(first.length - wanted) < CHECK_SLACK_INCHES
      ? []
      : [`${piece.id} is cut to another length.`];
  }
  if (piece.onePiece) return [`${piece.id} must be one piece and is spliced.`];
  const profile = plan.job.profiles.find((one) => one.name === piece.profile);
  const angle = (plan.job.shop.spliceAngle * Math.PI) / 180;
  const overlap = Number(profile?.blankThickness ?? Number.NaN) * Math.tan(angle);
  const precision = Number(plan.job.shop.lengthPrecision);
  for (const { length } of cuts) {
    const steps = length / precision;
    if (Math.abs(steps - Math.round(steps)) < CHECK_SLACK_INCHES) continue;
    return [`A part of ${piece.id} is not a whole number of the shop's precision long.`];
  }
  const sum = cuts.reduce((all, cut) => all + cut.length, 0);
  const least = wanted + (cuts.length - 1) * overlap;
  const slack = (cuts.length - 1) * Number(plan.job.shop.lengthPrecision) + CHECK_SLACK_INCHES;
  const adds = sum >= least - CHECK_SLACK_INCHES && sum <= least + slack;
  return adds ? [] : [`The parts of ${piece.id} with their overlaps do not make its length.`];
}

function checkStick(plan: JobPlan, { profile }: ProfilePlan, stick: CutStick): string[] {
  const { shop } = plan.job;
  const kerf = Number(shop.crosscutKerf);
  const pieces = stick.pieces.reduce((sum, cut) => sum + Number(cut.length), 0);
  const room = Number(stick.length) - 2 * Number(shop.endTrim);
  const used = pieces + kerf * (stick.pieces.length - 1);
  const wrong: string[] = [];
  if (stick.isCut === true) return checkCutStick(stick);
  if (stick.pieces.length === 0) wrong.push(`${stick.id} is used for nothing.`);
  if (used > room + CHECK_SLACK_INCHES) wrong.push(`${stick.id} is too short for its pieces.`);
  const left = Math.max(0, room - used - kerf);
  if (Math.abs(Number(stick.offcut) - left) > CHECK_SLACK_INCHES) {
    wrong.push(`${stick.id} leaves another offcut than it says.`);
  }
  if (
    stick.offcutKept !== (left > 0 && left >= Number(shop.keepOffcutsOver) - CHECK_SLACK_INCHES)
  ) {
    wrong.push(`The offcut of ${stick.id} is not kept or wasted as the shop has it.`);
  }
  if (profile.make !== 'buy' && Number(stick.length) < Number(shop.leastBlankLength)) {
    wrong.push(`${stick.id} is shorter than the shop's least blank.`);
  }
  return wrong;
}

/** One of which a part is cut already can't come from that stick any more. */
function checkMatches(plan: JobPlan): string[] {
  const stickOf = new Map<string, string>();
  const wrong: string[] = [];
  for (const { sticks } of plan.profiles) {
    for (const stick of sticks) {
      for (const { piece } of stick.pieces) {
        if (piece === undefined || piece.match === '' || stick.isCut === true) continue;
        const key = nameKey(piece.match);
        const first = stickOf.get(key) ?? stick.id;
        stickOf.set(key, first);
        if (first !== stick.id) wrong.push(`The matched group ${piece.match} is on two sticks.`);
      }
    }
  }
  return wrong;
}

function checkTotals(plan: JobPlan): string[] {
  const { totals } = plan;
  const live = plan.pieces.filter((piece) => !piece.done);
  const sticks = plan.profiles.flatMap((one) => one.sticks);
  const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
  const expected: readonly (readonly [string, number, number])[] = [
    ['pieces', totals.pieces, live.length],
    ['done pieces', totals.done, plan.pieces.length - live.length],
    ['sticks', totals.sticks, sticks.length],
    ['cut sticks', totals.sticksCut, sticks.filter(({ isCut }) => isCut === true).length],
    ['net length', Number(totals.lengthNet), sum(live.map((piece) => Number(piece.cutLength)))],
    [
      'bought length',
      Number(totals.lengthBought),
      sum(sticks.map((stick) => Number(stick.length))),
    ],
    [
      'passes',
      totals.passes,
      sum(
        plan.profiles.map(
          ({ sticks: own, setUp }) => own.length * (setUp?.passHeights.length ?? 0),
        ),
      ),
    ],
    ['pieces by room', totals.pieces, sum(plan.rooms.map((line) => line.pieces))],
  ];
  return expected
    .filter(([, said, counted]) => !(Math.abs(said - counted) < CHECK_SLACK_INCHES))
    .map(
      ([name, said, counted]) => `The total of ${name} says ${said} where ${counted} is counted.`,
    );
}
