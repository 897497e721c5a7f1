/** A plan for machines: lengths in inches, angles in degrees, unrounded; money in the shop's currency. */
import { BOARD_FEET_PER_CUBIC_METRE } from '../core/lumber/board-feet.ts';
import { offCenterAsAsked } from '../core/cove/deepest-line.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { toDegrees } from '../core/units/angle.ts';
import { plannedPercent } from './allowed-lumber.ts';
import { groupToJson } from './group-json.ts';
import type { Costing, JobPlan, ProfilePlan, PlannedOption, Tally } from './job-plan.ts';
import { benchHoursOf, hoursOf, machineHoursOf } from './work/hours.ts';
import { piecesToJson } from './piece-json.ts';
import { totalsBy } from './price-bases.ts';
import type { SetUp } from './plan-setup.ts';
import type { PriceBasis } from './settings/money-settings.ts';
import { TITLE_ROWS, type TitleBlock, type TitleKey } from './title-block.ts';
import type { WorkLine } from './work/work-row.ts';
import { isNotIncluded, type WorkRow } from './work/work-row.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
export const PLAN_JSON_VERSION = 3;

/** The plan as one object of plain data, every number finite. */
export function planToJson(plan: JobPlan) {
  const { totals } = plan;
  return {
    version: PLAN_JSON_VERSION,
    units: { length: 'in', angle: 'deg', volume: 'board foot', shop: plan.job.shop.unit },
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
      metric: metricOf(totals),
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
    range: rangeToJson(plan),
    prices: pricesOf(plan),
    rooms: roomsOf(plan),
    pieces: piecesToJson(plan),
    profiles: plan.profiles.map((one) => ({
      ...profileOf(one),
      planned: costingToJson(one.byPlan),
      allowed: allowedOf(one, plan),
    })),
    cutAways: plan.cutAways.map((one) => ({ ...one, taken: Number(one.taken) })),
    work: plan.job.work.map(workOf),
    jobWork: plan.jobWork.lines.map(workLineOf),
    groups: plan.groups.map((group) => groupToJson(plan, group)),
    options: plan.options.map(optionOf),
    cautions: faultsToJson(plan.cautions),
    faults: [] as const,
  };
}

/** The same lengths and volumes in metres and m³. */
function metricOf({
  lengthNet,
  lengthBought,
  ...feet
}: Pick<Tally, 'lengthNet' | 'lengthBought'> &
  Partial<Record<'boardFeetNet' | 'boardFeetWithAllowance' | 'boardFeetBought', number>>) {
  const volume = (boardFeet: number | undefined): number | null =>
    boardFeet === undefined ? null : boardFeet / BOARD_FEET_PER_CUBIC_METRE;
  return {
    metresNet: Number(lengthNet) * 0.0254,
    metresBought: Number(lengthBought) * 0.0254,
    cubicMetresNet: volume(feet.boardFeetNet),
    cubicMetresWithAllowance: volume(feet.boardFeetWithAllowance),
    cubicMetresBought: volume(feet.boardFeetBought),
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

/** Between which figures the price is likely to end; null where nothing has a low or a high. */
function rangeToJson({ range }: JobPlan) {
  if (range === undefined) return null;
  const rounded = (value: number): number => Math.round(value * 100) / 100;
  return {
    low: rounded(range.low),
    likely: rounded(range.likely),
    middle: rounded(range.middle),
    high: rounded(range.high),
    holds: range.holds,
    drivers: range.drivers,
    bars: range.bars,
  };
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

/** By the offcut allowance, whatever the price goes by. */
function allowedOf(planned: ProfilePlan, { job }: JobPlan) {
  const { byAllowance } = planned;
  const { lumber } = byAllowance;
  const { per, net, allowancePercent, inches, sticks, eachCents } = lumber;
  return {
    ...{ per, net, allowancePercent },
    allowanceOf: job.shop.allowanceOf,
    plannedPercent: plannedPercent(lumber, planned, job.shop) ?? null,
    priceEach: eachCents / 100,
    ...{ length: inches, sticks },
    ...costingToJson(byAllowance),
  };
}

function costingToJson({ work, hours, money: lines }: Costing) {
  return {
    lumber: money(lines.lumberCents),
    offcutCredit: money(lines.offcutCreditCents),
    hours: hoursOf(hours),
    work: work.map(workLineOf),
    labor: money(lines.laborCents),
    cost: money(lines.costCents),
    price: money(lines.priceCents),
  };
}

/** The job's price by the plan's sticks and by the allowance; the one that the shop asks is among the totals too. */
function pricesOf(plan: JobPlan) {
  const of = (basis: PriceBasis) => {
    const { hours, ...by } = totalsBy(plan, basis);
    return {
      lumber: money(by.lumberCents),
      offcutCredit: money(by.offcutCreditCents),
      hours,
      labor: money(by.laborCents),
      cost: money(by.costCents),
      price: money(by.priceCents),
      tax: money(by.taxCents),
    };
  };
  return { basis: plan.job.shop.priceBasis, byPlan: of('plan'), byAllowance: of('allowance') };
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

/** Hours and work as planned; money as the price goes. */
function profileOf({ profile, setUp, tally, byPlan, money: lines }: ProfilePlan) {
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
    metric: metricOf(tally),
    passes: tally.passes,
    joints: tally.joints,
    hours: {
      ...tally.hours,
      machine: machineHoursOf(tally.hours),
      bench: benchHoursOf(tally.hours),
      total: hoursOf(tally.hours),
    },
    work: byPlan.work.map(workLineOf),
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
