/** A plan for machines: lengths in inches, angles in degrees, unrounded; money in the shop's currency. */
import { offCenterAsAsked } from '../core/cove/deepest-line.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { toDegrees } from '../core/units/angle.ts';
import { allowedLumber } from './allowed-lumber.ts';
import { groupToJson } from './group-json.ts';
import {
  benchHoursOf,
  hoursOf,
  machineHoursOf,
  type JobPlan,
  type PlannedOption,
  type ProfilePlan,
} from './job-plan.ts';
import type { Joint } from './joint-places.ts';
import { listJoints } from './joints.ts';
import type { SetUp } from './plan-setup.ts';
import { TITLE_ROWS, type TitleBlock, type TitleKey } from './title-block.ts';
import type { Piece } from './piece.ts';
import type { WorkLine } from './work/work-row.ts';
import { isNotIncluded, type WorkRow } from './work/work-row.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
export const PLAN_JSON_VERSION = 3;

/** The plan as one object of plain data, every number finite. */
export function planToJson(plan: JobPlan) {
  const { totals } = plan;
  return {
    version: PLAN_JSON_VERSION,
    job: titleToJson(plan.job.titleBlock),
    totals: {
      pieces: totals.pieces,
      done: totals.done,
      sticks: totals.sticks,
      sticksCut: totals.sticksCut,
      lengthNet: Number(totals.lengthNet),
      lengthBought: Number(totals.lengthBought),
      boardFeetNet: totals.boardFeetNet,
      boardFeetWithAllowance: totals.boardFeetWithAllowance,
      boardFeetBought: totals.boardFeetBought ?? null,
      passes: totals.passes,
      joints: totals.joints,
      jointCost: money(totals.jointCostCents),
      hours: totals.hours,
      cost: money(totals.costCents),
      contingency: money(totals.contingencyCents),
      markup: money(totals.markupCents),
      moldings: money(totals.linesCents),
      jobWork: money(totals.jobWorkCents),
      toMinimum: money(totals.toMinimumCents),
      delivery: money(totals.deliveryCents),
      rounding: money(totals.roundingCents),
      price: money(totals.priceCents),
      taxable: money(totals.taxableCents),
      tax: money(totals.taxCents),
      currency: totals.currency,
    },
    rooms: roomsOf(plan),
    pieces: piecesOf(plan),
    profiles: plan.profiles.map((one) => ({ ...profileOf(one), allowed: allowedOf(one, plan) })),
    cutAways: plan.cutAways.map((one) => ({ ...one, taken: Number(one.taken) })),
    work: plan.job.work.map(workOf),
    jobWork: plan.jobWork.lines.map(workLineOf),
    groups: plan.groups.map((group) => groupToJson(plan, group)),
    options: plan.options.map(optionOf),
    cautions: faultsToJson(plan.cautions),
    faults: [] as const,
  };
}

/** What it costs more than the plan; null where it is in it. */
function optionOf({ option: { name, note, changes }, more }: PlannedOption) {
  const amount = (cents: number | undefined): number | null =>
    cents === undefined ? null : money(cents);
  return {
    option: name,
    note,
    taken: more === undefined,
    changes: changes.map(({ room, profile, instead }) => {
      return { room, profile, instead: instead ?? null };
    }),
    price: amount(more?.priceCents),
    tax: amount(more?.taxCents),
    cost: amount(more?.costCents),
    hours: more?.hours ?? null,
  };
}

/** What Job says; null for what it doesn't. */
function titleToJson(title: TitleBlock) {
  const keys = Object.keys(TITLE_ROWS) as TitleKey[];
  const said = (value: string | number | undefined): string | number | null =>
    value === undefined || value === '' ? null : value;
  return Object.fromEntries(keys.map((key) => [key, said(title[key])]));
}

function money(cents: number): number {
  return cents / 100;
}

function roomsOf(plan: JobPlan) {
  const names = [...new Set(plan.rooms.map((line) => line.room))];
  return names.map((room) => {
    const lines = plan.rooms.filter((line) => line.room === room);
    return {
      room,
      pieces: lines.reduce((sum, line) => sum + line.pieces, 0),
      lengthNet: lines.reduce((sum, line) => sum + Number(line.lengthNet), 0),
      price: money(lines.reduce((sum, line) => sum + line.priceCents, 0)),
      profiles: lines.map((line) => ({
        profile: line.profile,
        pieces: line.pieces,
        lengthNet: Number(line.lengthNet),
        price: money(line.priceCents),
      })),
    };
  });
}

/** What its lumber would cost by the offcut allowance, beside what it costs as planned. */
function allowedOf(planned: ProfilePlan, { job }: JobPlan) {
  const allowed = allowedLumber(planned, job);
  if (allowed === undefined) return null;
  const { per, net, allowancePercent, plannedPercent, eachCents, cents } = allowed;
  return {
    ...{ per, net, allowancePercent },
    plannedPercent: plannedPercent ?? null,
    priceEach: eachCents / 100,
    lumber: money(cents),
  };
}

/** A row of Work, or a usual one that nobody typed. */
function workOf(row: WorkRow) {
  const { for: whom } = row;
  return {
    work: row.work,
    per: row.per,
    minutes: row.minutes,
    money: row.money,
    for: whom === undefined ? null : 'make' in whom ? whom.make : whom.profile,
    included: !isNotIncluded(row),
    typed: row.typed !== undefined,
  };
}

function workLineOf({ row, count, factor, hours, money: beside }: WorkLine) {
  return { work: row.work, per: row.per, count, factor, hours, money: beside };
}

function profileOf({ profile, setUp, tally, work, money: lines }: ProfilePlan) {
  return {
    profile: profile.name,
    make: profile.make,
    species: profile.species,
    setup: setUp === undefined ? null : setUpOf(setUp),
    pieces: tally.pieces,
    sticks: tally.sticks,
    lengthNet: Number(tally.lengthNet),
    lengthBought: Number(tally.lengthBought),
    boardFeetNet: tally.boardFeetNet ?? null,
    boardFeetWithAllowance: tally.boardFeetWithAllowance ?? null,
    boardFeetBought: tally.boardFeetBought ?? null,
    passes: tally.passes,
    joints: tally.joints,
    hours: {
      ...tally.hours,
      machine: machineHoursOf(tally.hours),
      bench: benchHoursOf(tally.hours),
      total: hoursOf(tally.hours),
    },
    work: work.map(workLineOf),
    pounds: tally.pounds ?? null,
    lumber: money(lines.lumberCents),
    offcutCredit: money(lines.offcutCreditCents),
    labor: money(lines.laborCents),
    overhead: money(lines.overheadCents),
    cost: money(lines.costCents),
    contingency: money(lines.contingencyCents),
    markup: money(lines.markupCents),
    price: money(lines.priceCents),
  };
}

function setUpOf(setUp: SetUp) {
  const { setting, cut, scale, rails } = setUp;
  return {
    approachDeg: toDegrees(setting.approach),
    approachFromFrontDeg: 90 - toDegrees(setting.approach),
    tiltDeg: toDegrees(setting.tilt),
    height: setting.height,
    bladeDiameter: setUp.blade.diameter,
    kerf: setUp.blade.kerf,
    passCount: setUp.passHeights.length,
    passHeights: setUp.passHeights,
    width: cut.width,
    offCenter: offCenterAsAsked(cut, setUp.cove),
    deepestLine: cut.offCenter,
    bladeMiddle: cut.bladeMiddle,
    web: setUp.web,
    flats: setUp.flats,
    arcLength: setUp.arcLength,
    leastRadius: setUp.leastRadius,
    rails: rails ?? null,
    onTheScales: {
      approachDeg: toDegrees(scale.rounded.approach),
      approachFromFrontDeg: 90 - toDegrees(scale.rounded.approach),
      tiltDeg: toDegrees(scale.rounded.tilt),
      width: scale.cut.width,
      offCenter: scale.offCenter,
      deepestLine: scale.cut.offCenter,
      bladeMiddle: scale.cut.bladeMiddle,
    },
  };
}

function piecesOf(plan: JobPlan) {
  const joints = listJoints(plan);
  return plan.pieces.map((piece) => pieceOf(piece, joints.get(piece.id) ?? []));
}

function pieceOf(piece: Piece, joints: readonly Joint[]) {
  const end = (side: Piece['left']) => ({
    end: side.kind,
    cornerDeg: side.cornerDeg,
    point: side.point,
  });
  return {
    id: piece.id,
    mark: piece.mark,
    room: piece.room,
    run: piece.run,
    profile: piece.profile,
    length: Number(piece.cutLength),
    left: end(piece.left),
    right: end(piece.right),
    done: piece.done,
    /** What the length has more than its wall, to be sprung in between two. */
    sprungIn: Number(piece.sprungIn ?? 0),
    /** From left to right; places are those of the laps' middles, from the wall's left corner. */
    joints: joints.map(({ at, stud, front }) => ({
      at: at === undefined ? null : Number(at),
      stud: stud ?? null,
      front,
    })),
    madeFrom: madeFrom(piece),
  };
}

/** Null where Runs alone has the run. */
function madeFrom({ made, left, right }: Piece) {
  if (made === undefined) return null;
  const { wall, trim, order, isTakenOver = false } = made;
  const joined = { left, right };
  return {
    wall,
    trim,
    /** The how-many-eth it goes up in its room, of its row of Trim; one part has one turn. */
    order: order?.left ?? null,
    /** Whether a row of Runs stands in its place. */
    isTakenOver,
    /** Ends at which it is joined to its neighbor before both go up. */
    joined: (['left', 'right'] as const).filter((end) => joined[end].kind === 'outside miter'),
  };
}
