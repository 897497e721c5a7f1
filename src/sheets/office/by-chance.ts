/** Between which figures the price is likely to end, and what moves it: where Work or Shop say a low or a high. */
import type { PriceRange } from '../../core/bid/price-range.ts';
import type { Drawing } from '../../drawings/drawing.ts';
import { drawPriceBars, drawPriceDrivers } from '../../drawings/price-range.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { Shop } from '../../planning/shop.ts';
import { POINTS_PER_MM } from '../grammar/page-size.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { sayAmount, sayRange } from '../words/say-bid.ts';
import { DRIVERS, PRICE_BARS, TERMS } from './office-columns.ts';
import { RANGE_LINES, RANGE_NOTE, RANGE_SAYS, SECTIONS } from './office-words.ts';

/** A little less than the columns, whose widths programs round. */
const CHART_MM = 178;
/** Programs round each row to pixels of their own. */
const ROUNDING_POINTS = 6;

/** Numbers, and no formulas: they are drawn when the job is planned. Gives the rows at which parts begin. */
export function addRange(draft: SheetDraft, { range, job: { shop } }: JobPlan): number[] {
  if (range === undefined) return [];
  const starts = [draft.next];
  addBand(draft, range, shop);
  starts.push(draft.next);
  addDrivers(draft, range, shop);
  starts.push(draft.next);
  addBars(draft, range, shop);
  return starts;
}

function addBand(draft: SheetDraft, range: PriceRange, shop: Shop): void {
  draft.spread(SECTIONS.range, 'section');
  draft.spread(RANGE_NOTE, 'note');
  draft.spread(sayRange(range, shop), 'wrapped');
  for (const name of ['low', 'likely', 'middle', 'high'] as const) {
    draft.put(
      TERMS.row({
        label: cell(RANGE_LINES[name], 'fact'),
        figure: cell(toCents(range[name]), 'money'),
        says: cell(RANGE_SAYS[name], 'quietLabel'),
      }),
    );
  }
  addChart(draft, drawPriceBars({ ...range, ...look(shop) }));
}

/** The drivers as bars, and the same numbers in cells. */
function addDrivers(draft: SheetDraft, { drivers: all, likely }: PriceRange, shop: Shop): void {
  const drivers = all.filter(({ share }) => share > 0);
  if (drivers.length === 0) return;
  addChart(draft, drawPriceDrivers({ drivers, likely, ...look(shop) }));
  draft.put(DRIVERS.headings(shop));
  for (const { name, atLow, atHigh, share } of drivers) {
    draft.put(
      DRIVERS.row({
        name: cell(name, 'rowStrong'),
        atLow: cell(toCents(atLow), 'rowDecimal'),
        atHigh: cell(toCents(atHigh), 'rowDecimal'),
        swing: cell(toCents(atHigh - atLow), 'rowDecimal'),
        share: cell(Math.round(100 * share), 'rowWhole'),
      }),
    );
  }
  draft.blank();
}

function addBars(draft: SheetDraft, { bars }: PriceRange, shop: Shop): void {
  draft.put(PRICE_BARS.headings(shop));
  for (const { from, to, draws } of bars) {
    draft.put(
      PRICE_BARS.row({
        from: cell(from, 'rowDecimal'),
        to: cell(to, 'rowDecimal'),
        draws: cell(draws, 'rowWhole'),
      }),
    );
  }
}

function addChart(draft: SheetDraft, drawing: Drawing): void {
  const row = draft.add();
  draft.setHeight(row, drawing.height * POINTS_PER_MM + ROUNDING_POINTS);
  draft.draw(row, 0, drawing);
}

function look(shop: Shop) {
  return { width: CHART_MM, say: (money: number): string => sayAmount(money, shop) };
}

function toCents(money: number): number {
  return Math.round(money * 100) / 100;
}
