/** The order for the lumber yard, with the money to be spent there, and a tally of what comes. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { listYardOrder, type YardLine } from '../../planning/yard-order.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, SheetDraft } from '../grammar/sheet-draft.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { LONG_UNIT, numberIn, printExact } from '../words/print-length.ts';
import { sayGrades } from '../words/say-grades.ts';
import { sayStock } from '../words/say-stock.ts';
import { addInvoice, addTally } from './receiving.ts';
import { GRID, ORDER, PRINTED } from './yard-columns.ts';
import { BY_YIELD, LONGEST, SECTIONS, WHAT_FOR } from './yard-words.ts';

/** A whole number of boards that a division leaves a hair above itself is that number. */
const DIVISION_SLACK = 1e-9;

/** @returns undefined where nothing is bought */
export function draftYard(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } | undefined {
  const order = listYardOrder(plan);
  if (order.length === 0) return undefined;
  const { shop } = plan.job;
  const draft = new SheetDraft(SHEET_NAMES.yard, GRID, true, PRINTED);
  draft.spread(SHEET_NAMES.yard, 'title');
  draft.spread(WHAT_FOR, 'note');
  draft.blank();
  addOrder(draft, plan, order, acrossSheets);
  const boards = order.filter(({ item }) => item.kind === 'board');
  if (boards.length > 0) {
    const came = draft.next;
    const tally = addTally(draft, shop, boards);
    const invoice = draft.next;
    addInvoice(draft, shop, tally);
    const room = roomForRows(shop.paper, GRID.slice(0, PRINTED), 'landscape');
    layPages(draft, [1, came, invoice], room);
  }
  return {
    finish: () =>
      draft.finish({ paper: shop.paper, orientation: 'landscape', footer: SHEET_NAMES.yard }),
  };
}

function addOrder(
  draft: SheetDraft,
  plan: JobPlan,
  order: readonly YardLine[],
  acrossSheets: PlanAnchors,
): void {
  const { shop } = plan.job;
  const isMetric = shop.unit === 'mm';
  draft.spread(SECTIONS.buy, 'section');
  draft.put(ORDER.headings(shop));
  const first = draft.next;
  for (const line of order) {
    const row = draft.next;
    const [pieces, each] = [ORDER.at('pieces', row), ORDER.at('each', row)];
    const left = line.toBuy;
    const long = numberIn(line.item.length, shop.unit) / LONG_UNIT[shop.unit].holds;
    const feet = line.boardFeet;
    const volume = feet === undefined ? null : volumeIn(feet, shop.unit);
    const other = isMetric ? undefined : line.boardFeetBySurface;
    draft.put(
      ORDER.row({
        got: cell(null, left > 0 ? 'tick' : 'row'),
        of: cell(line.item.for, 'rowStrong'),
        what: cell(sayStock(line.item, shop), 'row'),
        pieces: sum(() => leftToBuy(line, acrossSheets), left, 'rowWhole'),
        lineal: sum(`${pieces}*${long}`, left * long, 'rowDecimal'),
        volume: cell(volume, VOLUME[shop.unit].styles.row),
        other: cell(other ?? null, 'rowDecimal'),
        longest: cell(printExact(line.longest, shop), 'rowRight'),
        each: cell(money(line.priceCents), 'rowDecimal'),
        spend: sum(`ROUND(${pieces}*${each},2)`, money(left * line.priceCents), 'rowDecimal'),
      }),
    );
  }
  const rows = [first, draft.next - 1] as const;
  const left = order.map((line) => line.toBuy);
  const spend = total(order.map((line) => line.toBuy * line.priceCents));
  const together = {
    of: cell('Together', 'totalLabel'),
    pieces: ORDER.sumCell('pieces', rows, total(left), 'totalWhole'),
    spend: sum(ORDER.sum('spend', ...rows), money(spend), 'total'),
  };
  draft.put(ORDER.loose(together, cell(null, 'totalLabel')));
  draft.spread(LONGEST, 'note');
  if (order.some(({ item }) => item.kind === 'board')) {
    if (order.some(({ item }) => item.yieldPercent !== undefined)) draft.spread(BY_YIELD, 'note');
    draft.spread(sayGrades(shop), 'note');
  }
}

/** What Production says is bought, less what is cut already; over the yield, rounded up. */
function leftToBuy({ item, cut }: YardLine, acrossSheets: PlanAnchors): string {
  const bought = acrossSheets.at('allToBuyOnProduction', item);
  const left = cut === 0 ? bought : `${bought}-${cut}`;
  if (item.yieldPercent === undefined) return left;
  // Up to the next whole one.
  return `-INT(-((${left})/${item.yieldPercent}*100-${DIVISION_SLACK}))`;
}
