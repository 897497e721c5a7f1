/** The part of the independent look at a plan that is about what is cut already. Only types and tolerances are imported. */
import type { CutPart, CuttingGroup, CutStick, JobPlan, ProfilePlan } from './job-plan.ts';
import type { StockItem } from './job.ts';
import { CHECK_SLACK_INCHES } from './tolerance.ts';

/** What is cut was cut by the shop as it was then: it gives no more than the stick had, and nothing twice. */
export function checkCutStick(stick: CutStick): string[] {
  const pieces = stick.pieces.reduce((sum, cut) => sum + Number(cut.length), 0);
  const wrong: string[] = [];
  if (!stick.pieces.some(({ isCut }) => isCut)) wrong.push(`${stick.id} is cut for nothing.`);
  if (pieces + Number(stick.offcut) > Number(stick.length) + CHECK_SLACK_INCHES) {
    wrong.push(`${stick.id} is too short for what is cut of it.`);
  }
  return wrong;
}

/** What is left over is offered for a shorter piece that is still to be cut, and no piece is offered two. */
export function checkRecuts({ profiles }: JobPlan): string[] {
  const cuts = profiles.flatMap(({ sticks }) => sticks.flatMap(({ pieces }) => pieces));
  const open = new Set(cuts.flatMap(({ piece, isCut }) => (isCut === true ? [] : (piece ?? []))));
  const wrong: string[] = [];
  for (const { id, length, recutTo, unneeded } of cuts) {
    if (recutTo === undefined) continue;
    if (unneeded === undefined || !open.delete(recutTo) || length.lt(recutTo.cutLength)) {
      wrong.push(`${id} can't be recut to ${recutTo.id}.`);
    }
  }
  return wrong;
}

/** What is cut is paid for once a stick or board, and is no part of what was planned. */
export function checkCutPart(
  group: CuttingGroup,
  plans: readonly ProfilePlan[],
  cut: CutPart,
): string[] {
  const sticks = plans.flatMap((one) => one.sticks);
  const own = sticks.filter(({ isCut }) => isCut === true);
  const boards = new Map<StockItem, Set<number>>();
  for (const { item, unit } of own) boards.set(item, (boards.get(item) ?? new Set()).add(unit));
  const prices = new Map<StockItem, Set<number>>();
  for (const { item, priceCents } of group.stockUse) {
    prices.set(item, (prices.get(item) ?? new Set()).add(priceCents));
  }
  let lumber = 0;
  for (const [item, units] of boards) {
    const [price = 0, ...others] = prices.get(item) ?? [];
    // One row at two prices can't be told apart here.
    if (units.size > 0 && others.length > 0) return [];
    lumber += price * units.size;
  }
  const wrong = [];
  if (lumber !== cut.lumberCents) wrong.push(`What is cut of ${group.name} costs something else.`);
  if (own.length !== cut.sticks) wrong.push(`${group.name} says another count of cut sticks.`);
  if (own.length + group.answer.plan.sticks.length !== sticks.length) {
    wrong.push(`${group.name} has sticks that are neither cut nor planned.`);
  }
  return wrong;
}
