/**
 * The part of the independent look at a plan that counts lumber: boards and what they are ripped
 * into, stock, credit and money. Only types and tolerances are imported; all is worked out again in plain inches.
 */
import { checkCutPart } from './check-cut.ts';
import type { CuttingGroup, JobPlan, ProfilePlan } from './job-plan.ts';
import type { RippedBoard, StockUse } from './opened-stock.ts';
import type { StockItem } from './job.ts';
import { CHECK_SLACK_BOARD_FEET, CHECK_SLACK_CENTS, CHECK_SLACK_INCHES } from './tolerance.ts';

/** What is wrong with the lumber of a plan, a sentence each. */
export function checkLumber(plan: JobPlan): string[] {
  return [
    ...checkGroups(plan),
    ...plan.groups.flatMap((group) => [
      ...group.boards.flatMap((board) => checkBoard(plan, group, board)),
      ...checkBlanks(plan, group),
      ...checkStockUse(plan, group),
      ...checkGroupMoney(plan, group),
      ...checkShares(plan, group),
      ...checkCredit(plan, group),
    ]),
    ...checkStockCounts(plan),
  ];
}

function plansIn(plan: JobPlan, group: CuttingGroup): readonly ProfilePlan[] {
  return plan.profiles.filter(({ profile }) => group.profiles.includes(profile));
}

/** Every planned profile is in one group, and every group's profile is planned. */
function checkGroups(plan: JobPlan): string[] {
  const wrong = plan.profiles.flatMap(({ profile: { name } }) => {
    const times = plan.groups.filter(({ profiles }) => profiles.some((one) => one.name === name));
    return times.length === 1 ? [] : [`${name} is in ${times.length} groups.`];
  });
  for (const group of plan.groups) {
    if (plansIn(plan, group).length !== group.profiles.length) {
      wrong.push(`${group.name} has a profile that is not planned.`);
    }
  }
  return wrong;
}

/** Its blanks lie side by side with a kerf between each two, each as wide as its profile asks. */
function checkBoard(plan: JobPlan, group: CuttingGroup, board: RippedBoard): string[] {
  const name = `Board ${board.unit} of ${board.item.for}`;
  const wrong: string[] = [];
  const kerf = Number(plan.job.shop.kerf);
  const widths = board.strips.reduce((sum, { width }) => sum + Number(width), 0);
  const needed = widths + kerf * (board.strips.length - 1);
  if (needed > Number(board.item.width ?? 0) + CHECK_SLACK_INCHES) {
    wrong.push(`${name} is too narrow for its blanks.`);
  }
  if (board.fromRack !== board.unit <= board.item.have) {
    wrong.push(`${name} is not from the rack or bought as it says.`);
  }
  board.strips.forEach(({ width, profile }, at) => {
    if (profile === undefined) return;
    const { blankWidth } = group.profiles.find((one) => one.name === profile) ?? {};
    if (
      blankWidth === undefined ||
      Math.abs(Number(width) - Number(blankWidth)) > CHECK_SLACK_INCHES
    ) {
      wrong.push(`Blank ${at + 1} of ${name} is not as wide as ${profile} asks.`);
    }
  });
  return wrong;
}

/** Each stick from a board is one of its blanks, and each blank that is said to be used is one stick. */
function checkBlanks(plan: JobPlan, group: CuttingGroup): string[] {
  const wrong: string[] = [];
  const rows = new Map(plan.job.stock.map((item, at) => [item, at]));
  const keyOf = (item: StockItem, unit: number): string => `${rows.get(item) ?? '?'} ${unit}`;
  const boards = new Map(group.boards.map((one) => [keyOf(one.item, one.unit), one]));
  if (boards.size < group.boards.length) wrong.push(`${group.name} opens a board twice.`);
  let used = 0;
  for (const { profile, sticks } of plansIn(plan, group)) {
    for (const stick of sticks) {
      const { item, unit, strip, strips } = stick;
      if (item.kind !== 'board') {
        const { width } = item;
        const isNarrow =
          width !== undefined && profile.make !== 'buy' && profile.blankWidth.gt(width);
        if (isNarrow) wrong.push(`${stick.id} comes from a stick too narrow for it.`);
        if (strip !== 1 || strips !== 1) wrong.push(`${stick.id} is a blank of a stick.`);
        continue;
      }
      used += 1;
      const board = boards.get(keyOf(item, unit));
      if (board === undefined) wrong.push(`${stick.id} comes from a board that is not opened.`);
      else if (
        board.strips.length !== strips ||
        board.strips[strip - 1]?.profile !== profile.name
      ) {
        wrong.push(`${stick.id} is not a blank of its board.`);
      }
    }
  }
  const said = group.boards.flatMap(({ strips }) => strips.filter((one) => one.profile));
  if (said.length !== used) wrong.push(`${group.name} has blanks that no stick is cut from.`);
  return wrong;
}

/** What is pulled and bought of each row is what the group's sticks come from. */
function checkStockUse(plan: JobPlan, group: CuttingGroup): string[] {
  const wrong: string[] = [];
  const sticks = plansIn(plan, group).flatMap((one) => one.sticks);
  const items = new Set(sticks.map(({ item }) => item));
  for (const item of items) {
    const own = sticks.filter((stick) => stick.item === item);
    const uses = group.stockUse.filter((use) => use.item === item);
    const sum = (value: (use: StockUse) => number): number =>
      uses.reduce((all, use) => all + value(use), 0);
    const units = new Map(own.map(({ unit, strips }) => [unit, strips]));
    const blanks = [...units.values()].reduce((all, strips) => all + strips, 0);
    if (sum(({ fromRack, bought }) => fromRack + bought) !== units.size) {
      wrong.push(`${group.name} takes another count of a stock row than it says.`);
    }
    if (sum((use) => use.unusedBlanks) !== blanks - own.length) {
      wrong.push(`${group.name} has other blanks left over than it says.`);
    }
    const fromRack = new Set(own.filter((one) => one.fromRack).map(({ unit }) => unit));
    if (fromRack.size !== sum((use) => use.fromRack)) {
      wrong.push(`${group.name} marks other boards as from the rack than it takes.`);
    }
  }
  const rows = new Set(group.stockUse.map(({ item }) => item));
  if (rows.size !== items.size) wrong.push(`${group.name} leaves out a stock row.`);
  return wrong;
}

/** No more is used of a row of Stock than is had and may be bought, by all groups together. */
function checkStockCounts(plan: JobPlan): string[] {
  const wrong: string[] = [];
  const blanks = new Set<string>();
  const rows = new Map(plan.job.stock.map((item, at) => [item, at]));
  const sticks = plan.profiles.flatMap((one) => one.sticks);
  for (const stick of sticks) {
    const key = `${rows.get(stick.item) ?? '?'} ${stick.unit} ${stick.strip}`;
    if (blanks.has(key)) wrong.push(`${stick.id} is a blank that is used twice.`);
    blanks.add(key);
  }
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  for (const item of plan.job.stock) {
    const own = uses.filter((use) => use.item === item);
    const rack = own.reduce((sum, use) => sum + use.fromRack, 0);
    const count = own.reduce((sum, use) => sum + use.bought, rack);
    // What is cut was had, whatever Stock says now; bought ones among it leave the rack as it is.
    const cut = new Set(
      sticks.filter((stick) => stick.item === item && stick.isCut === true).map(({ unit }) => unit),
    );
    const cutBought = [...cut].filter((unit) => unit > item.have).length;
    const most =
      item.buyMost === null
        ? Infinity
        : Math.max(item.have, cut.size - cutBought) + Math.max(item.buyMost, cutBought);
    if (count > most) wrong.push(`More of a ${item.for} stock row is used than can be had.`);
    if (rack !== Math.min(count - cutBought, item.have)) {
      wrong.push(`The rack of ${item.for} is not used before more is bought.`);
    }
  }
  return wrong;
}

function checkGroupMoney(plan: JobPlan, group: CuttingGroup): string[] {
  const { name, answer, stockUse, lumberCents, offcutCreditCents } = group;
  const cut = group.cut ?? { sticks: 0, lumberCents: 0, offcutCreditCents: 0, laborCents: 0 };
  const wrong: string[] = [];
  const plans = plansIn(plan, group);
  const sum = (value: (one: ProfilePlan) => number): number =>
    plans.reduce((all, one) => all + value(one), 0);
  const paid = stockUse.reduce((all, use) => all + (use.fromRack + use.bought) * use.priceCents, 0);
  const lines = stockUse.reduce((all, use) => all + use.costCents, 0);
  if (paid !== lumberCents || lines !== paid || answer.plan.costCents + cut.lumberCents !== paid) {
    wrong.push(`The lumber of ${name} does not add up.`);
  }
  if (sum(({ byPlan }) => byPlan.money.lumberCents) !== lumberCents) {
    wrong.push(`The shares of lumber of ${name} do not add up.`);
  }
  const credit = sum(({ byPlan }) => byPlan.money.offcutCreditCents);
  if (credit !== offcutCreditCents || answer.plan.creditCents + cut.offcutCreditCents !== credit) {
    wrong.push(`The offcut credit of ${name} does not add up.`);
  }
  const rest = lumberCents - cut.lumberCents - (offcutCreditCents - cut.offcutCreditCents);
  if (answer.bound.costCents > rest + answer.plan.laborCents) {
    wrong.push(`${name} costs less than its bound.`);
  }
  wrong.push(...checkCutPart(group, plansIn(plan, group), cut));
  const { boardFeetBought: bought, boardFeetUsed: used } = group;
  const feet = stockUse.map(({ boardFeet }) => boardFeet ?? Number.NaN);
  const opened = feet.reduce((all, one) => all + one, 0);
  const known = bought !== undefined && used !== undefined;
  if (
    known
      ? !(
          Math.abs(bought - opened) < CHECK_SLACK_BOARD_FEET &&
          used < bought + CHECK_SLACK_BOARD_FEET
        )
      : opened >= 0
  ) {
    wrong.push(`The board feet of ${name} do not add up.`);
  }
  return wrong;
}

/** Each profile pays by the width of its strips of a row's boards, or by its sticks; to a cent a row. */
function checkShares(plan: JobPlan, group: CuttingGroup): string[] {
  const plans = plansIn(plan, group);
  const rows = new Set(group.stockUse.map(({ item }) => item));
  const due = new Map(plans.map((one) => [one, 0]));
  for (const { item, costCents } of group.stockUse) {
    // One row at two prices can't be told apart here: then only the sum is checked, above.
    if (group.stockUse.length !== rows.size) return [];
    const widths = plans.map(({ profile, sticks }) => {
      const width = item.kind === 'board' ? Number(profile.blankWidth ?? 1) : 1;
      return width * sticks.filter((stick) => stick.item === item).length;
    });
    const all = widths.reduce((sum, width) => sum + width, 0);
    plans.forEach((one, at) => {
      due.set(one, (due.get(one) ?? 0) + (costCents * (widths[at] ?? 0)) / all);
    });
  }
  return plans.flatMap((one) => {
    const off = Math.abs(one.byPlan.money.lumberCents - (due.get(one) ?? 0));
    return off <= rows.size
      ? []
      : [`${one.profile.name} does not pay for lumber by the strips that it takes.`];
  });
}

/** What offcuts are worth follows from the shop's percent, the cheapest stock of each profile and their own sticks. */
function checkCredit(plan: JobPlan, { problem, profiles, name, stockUse }: CuttingGroup): string[] {
  const wrong: string[] = [];
  const percent = plan.job.shop.offcutCredit;
  for (const profile of profiles) {
    const stated = problem.profiles?.find(({ id }) => id === profile.name);
    const own = plan.profiles.find((one) => one.profile === profile);
    if (stated === undefined || own === undefined) {
      wrong.push(`${profile.name} is not in the problem of ${name}.`);
      continue;
    }
    let perInch = Infinity;
    let perStrip = Infinity;
    for (const { priceCents, length, rips = [], stripWorthCents } of problem.supplies) {
      // Of blanks that are ripped and paid for the price says nothing.
      if (stripWorthCents !== undefined) continue;
      const counts = rips.flat().filter(({ blank }) => blank === stated.blank);
      const strips = Math.max(0, ...counts.map(({ count }) => count));
      if (strips === 0) continue;
      perStrip = Math.min(perStrip, priceCents / strips);
      perInch = Math.min(perInch, (priceCents / strips / length) * problem.unitsPerInch);
    }
    const most = Math.floor(perStrip / 2);
    const worth = own.sticks
      .filter(({ offcutKept }) => offcutKept && percent > 0)
      .map(({ offcut, item, strips }) => {
        // Half of its own strip too; one row at two prices can't be told apart here.
        const prices = stockUse.filter((use) => use.item === item).map((use) => use.priceCents);
        const ownMost = Math.floor(Math.max(...prices) / strips / 2);
        return Math.min(most, ownMost, Number(offcut) * perInch * (percent / 100));
      });
    const credit = own.byPlan.money.offcutCreditCents;
    // Each is rounded down to the cent, and may be a little off a whole one.
    const highest = worth.reduce((sum, cents) => sum + Math.floor(cents + CHECK_SLACK_CENTS), 0);
    const lowest = worth.reduce((sum, cents) => sum + Math.floor(cents - CHECK_SLACK_CENTS), 0);
    if (credit > highest || credit < Math.max(0, lowest)) {
      wrong.push(`The offcut credit of ${profile.name} is not what its kept offcuts are worth.`);
    }
  }
  return wrong;
}
