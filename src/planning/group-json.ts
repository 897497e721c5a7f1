/** A group of profiles for machines: its problem, answer and bound, its boards, its sticks. */
import type { ExactInches } from '../core/units/length.ts';
import type { StickBound, StickProblem } from '../cutting/problem/problem.ts';
import { countCutStock, listCutStock, type CutStock } from './cut/cut-stock.ts';
import { countToBuy } from './grade-yield.ts';
import { behind } from './group-problem.ts';
import type { StockItem } from './job.ts';
import { plansOf, type CutStick, type CuttingGroup, type JobPlan } from './job-plan.ts';
import type { RippedBoard, StockUse } from './opened-stock.ts';

/** Lengths in inches, money in the shop's currency; what is not known is null. */
export function groupToJson(plan: JobPlan, group: CuttingGroup) {
  const { problem, answer, cut } = group;
  const profiles = problem.profiles ?? [];
  const opened = listCutStock(plansOf(plan, group));
  return {
    name: group.name,
    profiles: profiles.map(({ id, blank, offcutCredit: credit }) => ({
      profile: id,
      blank,
      offcutCreditPerInch: money((credit?.centsPerUnit ?? 0) * problem.unitsPerInch),
      offcutCreditMost: money(credit?.mostCents ?? 0),
    })),
    // What the bound is a limit of is net: cost and labor, less credit.
    cost: money(answer.plan.costCents),
    credit: money(answer.plan.creditCents),
    labor: money(answer.plan.laborCents),
    net: money(answer.plan.costCents + answer.plan.laborCents - answer.plan.creditCents),
    bound: money(answer.bound.costCents),
    status: answer.status,
    // What is cut already is beside what was planned, whose cost and bound stand above.
    cut:
      cut === undefined
        ? null
        : {
            sticks: cut.sticks,
            cost: money(cut.lumberCents),
            credit: money(cut.offcutCreditCents),
            labor: money(cut.laborCents),
          },
    layouts: group.layouts,
    boardFeetBought: group.boardFeetBought ?? null,
    boardFeetUsed: group.boardFeetUsed ?? null,
    kerf: problem.kerf / problem.unitsPerInch,
    endTrim: problem.endTrim / problem.unitsPerInch,
    supplies: suppliesOf(problem),
    ...boundOf(problem, answer.bound),
    stock: group.stockUse.map((use) => stockOf(use, opened)),
    boards: group.boards.map(boardOf),
    sticks: plansOf(plan, group).flatMap(({ profile, sticks }) =>
      sticks.map((stick) => stickOf(profile.name, stick)),
    ),
  };
}

function money(cents: number): number {
  return cents / 100;
}

function suppliesOf({ supplies, unitsPerInch }: StickProblem) {
  return supplies.map((supply) => ({
    length: supply.length / unitsPerInch,
    price: money(supply.priceCents),
    strips: supply.strips,
    rips: supply.rips ?? [],
    have: supply.have,
    buyMost: supply.buyMost,
  }));
}

/** A supply is its place in the list of supplies. Splice rates are left out where nothing is spliced. */
function boundOf(
  { unitsPerInch, supplies }: StickProblem,
  { duals, credits, spliceRates, tried }: StickBound,
) {
  const rates = spliceRates?.map(({ profile, centsPerUnit }) => ({
    profile,
    moneyPerInch: money(centsPerUnit * unitsPerInch),
  }));
  const places = new Map(supplies.map(({ id }, place) => [id, place]));
  return {
    duals: duals.map(({ length, profile, cents, spliced, match }) => ({
      profile,
      length: length / unitsPerInch,
      money: money(cents),
      ...(spliced === undefined ? {} : { spliced }),
      ...(match === undefined ? {} : { match }),
    })),
    // The duals alone come to this; the rest of the bound is from trying all that they leave room for.
    ...(tried === undefined ? {} : { tried: { prices: money(tried.pricesCents) } }),
    credits: credits.map(({ supplyId, cents }) => ({
      supply: behind(places, supplyId, `supply ${supplyId}`),
      money: money(cents),
    })),
    ...(rates === undefined ? {} : { spliceRates: rates }),
  };
}

function stockOf({ item, ...use }: StockUse, opened: CutStock) {
  return {
    for: item.for,
    kind: item.kind,
    length: Number(item.length),
    width: item.width === undefined ? null : Number(item.width),
    grade: item.grade ?? null,
    yieldPercent: item.yieldPercent ?? null,
    stretch: stretchOf(item),
    fromRack: use.fromRack,
    bought: use.bought,
    toOrder: countToBuy(item, use.bought),
    cutFromRack: countCutStock(opened, item, 'rack'),
    cutBought: countCutStock(opened, item, 'buy'),
    unusedBlanks: use.unusedBlanks,
    cost: money(use.costCents),
    boardFeet: use.boardFeet ?? null,
  };
}

/** In inches from the board's marked end; null where the whole board is clear. */
function stretchOf({ stretch }: StockItem) {
  if (stretch === undefined) return null;
  const { from, to, boardLength, defects } = stretch;
  return {
    from: Number(from),
    to: Number(to),
    boardLength: Number(boardLength),
    defects: defects.map((one) => ({ from: Number(one.from), to: Number(one.to) })),
  };
}

function boardOf({ item, unit, fromRack, strips }: RippedBoard) {
  return {
    for: item.for,
    length: Number(item.length),
    width: item.width === undefined ? null : Number(item.width),
    grade: item.grade ?? null,
    stretch: stretchOf(item),
    board: unit,
    fromRack,
    strips: strips.map(({ width, profile }) => ({
      width: Number(width),
      profile: profile ?? null,
    })),
  };
}

function stickOf(profile: string, stick: CutStick) {
  const number = (length: ExactInches): number => Number(length);
  return {
    id: stick.id,
    profile,
    for: stick.item.for,
    length: number(stick.length),
    fromRack: stick.fromRack,
    stretch: stretchOf(stick.item),
    board: stick.unit,
    strip: stick.strip,
    cut: stick.isCut === true,
    pieces: stick.pieces.map(({ id, piece, part, length, isCut, unneeded, recutTo }) => ({
      id,
      room: piece?.room ?? null,
      run: piece?.run ?? null,
      part: part ?? null,
      length: number(length),
      cut: isCut === true,
      leftOver: unneeded !== undefined,
      recutTo: recutTo?.id ?? null,
    })),
    offcut: number(stick.offcut),
    offcutKept: stick.offcutKept,
  };
}
