/**
 * The part of the independent look at a plan that is about the rows of Stock themselves: what a board costs with
 * its yield, and that nothing is cut where a board can't be used. Only types and tolerances are imported.
 */
import type { JobPlan } from './job-plan.ts';
import type { StockUse } from './opened-stock.ts';
import type { StockItem } from './job.ts';
import { CHECK_SLACK_CENTS, CHECK_SLACK_INCHES } from './tolerance.ts';

export function checkStock(plan: JobPlan): string[] {
  const { unit } = plan.job.shop;
  const uses = plan.groups.flatMap(({ stockUse, profiles }) =>
    stockUse.map((use) => ({ use, thick: thicknessOf(use.item, profiles), unit })),
  );
  return [...uses.flatMap(checkPrice), ...checkDefects(plan), ...checkStretches(plan.job.stock)];
}

/** Inches; a class is of an inch and more. */
function thicknessOf(
  { thicknessClass }: StockItem,
  profiles: JobPlan['groups'][number]['profiles'],
): number {
  const [profile] = profiles;
  const isClassed = thicknessClass !== '' || (profile?.thicknessClass ?? '') !== '';
  return isClassed ? 1 : Number(profile?.blankThickness ?? 1);
}

/** Price by length, piece or board feet of the whole board; over its yield, or by the clear length that it pays for. */
function checkPrice({
  use,
  thick,
  unit,
}: {
  readonly use: StockUse;
  readonly thick: number;
  readonly unit: 'in' | 'mm';
}): string[] {
  const { item, priceCents, boardFeet, fromRack, bought } = use;
  const { stretch, yieldPercent = 100 } = item;
  const whole = Number(stretch?.boardLength ?? item.length);
  const feetOfOne = ((boardFeet ?? Number.NaN) / (fromRack + bought)) * (yieldPercent / 100);
  const wholeFeet = (feetOfOne * whole) / Number(item.length);
  const units = {
    piece: 1,
    foot: whole / 12,
    metre: (whole * 25.4) / 1000,
    'board foot': (unit === 'mm' ? Math.max(1, 1 / thick) : 1) * wholeFeet,
    'cubic metre': (unit === 'mm' ? 1 : Math.min(1, thick)) * wholeFeet * 144 * 0.0254 ** 3,
  }[item.per];
  // Of a board whose board feet aren't known it has no price by them.
  if (Number.isNaN(units)) return [];
  const cents = (item.price * 100 * units) / (yieldPercent / 100);
  const share = stretch === undefined ? 1 : Number(stretch.bearsTo.sub(stretch.bearsFrom));
  // A stretch's cents are those up to its end less those before it.
  const slack = (stretch === undefined ? 0.5 : 1.5) + CHECK_SLACK_CENTS;
  return Math.abs(priceCents - cents * share) <= slack
    ? []
    : [`A ${item.for} stock row costs ${priceCents} cents where ${cents * share} are worked out.`];
}

/** Every piece lies on the board from its marked end on, a kerf behind the one before, and over no defect. */
function checkDefects({ profiles, job: { shop } }: JobPlan): string[] {
  const [trim, kerf] = [Number(shop.endTrim), Number(shop.crosscutKerf)];
  const wrong: string[] = [];
  for (const stick of profiles.flatMap(({ sticks }) => sticks)) {
    const { stretch } = stick.item;
    // What is cut was cut by the shop's trim and kerf as they were then.
    if (stretch === undefined || stick.isCut === true) continue;
    const defects = stretch.defects.map(({ from, to }) => [Number(from), Number(to)] as const);
    let at = Number(stretch.from) + trim;
    for (const { id, length } of stick.pieces) {
      const end = at + Number(length);
      const isOver = defects.some(
        ([from, to]) => end > from + CHECK_SLACK_INCHES && at < to - CHECK_SLACK_INCHES,
      );
      if (isOver) wrong.push(`${id} lies over a defect of the board of ${stick.id}.`);
      if (end > Number(stretch.boardLength) - trim + CHECK_SLACK_INCHES) {
        wrong.push(`${id} reaches past the end of the board of ${stick.id}.`);
      }
      at = end + kerf;
    }
    if (Math.abs(Number(stick.length.sub(stretch.to.sub(stretch.from)))) > CHECK_SLACK_INCHES) {
      wrong.push(`${stick.id} is not as long as its clear stretch.`);
    }
  }
  return wrong;
}

/** Those of one board lie apart, a cut at least between two, and bear its price once. */
function checkStretches(stock: readonly StockItem[]): string[] {
  const wrong: string[] = [];
  const boards = new Map<StockItem['where'], StockItem[]>();
  for (const item of stock) {
    if (item.stretch === undefined) continue;
    boards.set(item.where, [...(boards.get(item.where) ?? []), item]);
  }
  for (const items of boards.values()) {
    let [end, borne] = [0, 0];
    for (const { for: name, stretch, have, buyMost } of items) {
      if (stretch === undefined) continue;
      if (Number(stretch.from) < end) wrong.push(`Two clear stretches of a ${name} board meet.`);
      if (Math.abs(Number(stretch.bearsFrom) - borne) > CHECK_SLACK_INCHES) {
        wrong.push(`A clear stretch of a ${name} board bears a part of its price twice, or none.`);
      }
      if (have !== 1 || buyMost !== 0)
        wrong.push(`A ${name} board with defects is had more than once.`);
      [end, borne] = [Number(stretch.to), Number(stretch.bearsTo)];
    }
    if (Math.abs(borne - 1) > CHECK_SLACK_INCHES) {
      wrong.push(`The clear stretches of a ${items[0]?.for ?? ''} board don't pay for all of it.`);
    }
  }
  return wrong;
}
