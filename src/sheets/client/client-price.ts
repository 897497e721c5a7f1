/** The price at a glance: by room, tax, what is to be paid, and how long it holds. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { money, sumOf, total } from '../plan-cells.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { sumsOf } from './client-lines.ts';
import type { ClientRoom } from './client-rooms.ts';
import { sayHolds } from './client-words.ts';

/** Rows from 1; amounts stand in F, the date in B. */
export interface PriceRows {
  readonly total: number;
  readonly toPay: number;
}

/**
 * Adds a row for each room, then the sums, each rounded so that no tax is reckoned from a stray hair.
 *
 * @param rooms Those in the price.
 * @param sumRow Where the sum of the room at a place stands, once it does.
 */
export function addPrice(
  draft: SheetDraft,
  plan: JobPlan,
  rooms: readonly ClientRoom[],
  sumRow: (at: number) => number,
): PriceRows {
  const { shop } = plan.job;
  const { currency, priceCents, taxCents } = plan.totals;
  const sums = rooms.map((room) => sumsOf(room, shop.unit));
  addJoined(
    draft,
    cell('Room', 'heading'),
    cell('Pieces', 'headingRight'),
    cell(`Price (${currency})`, 'headingRight'),
  );
  const first = draft.next;
  rooms.forEach(({ room }, at) => {
    const { pieces = 0, priceCents = 0 } = sums[at] ?? {};
    addJoined(
      draft,
      cell(room, 'row'),
      sum(() => `C${sumRow(at)}`, pieces, 'rowWhole'),
      sum(() => `F${sumRow(at)}`, money(priceCents), 'rowDecimal'),
    );
  });
  const last = draft.next - 1;
  const row = addJoined(
    draft,
    cell('All rooms', 'totalLabel'),
    sum(sumOf('E', first, last), total(sums.map(({ pieces }) => pieces)), 'totalWhole'),
    sum(`ROUND(${sumOf('F', first, last)},2)`, money(priceCents), 'total'),
  );
  const tax = addJoined(
    draft,
    cell('Tax, %'),
    cell(shop.tax, 'number'),
    sum(`ROUND(F${row}*E${row + 1}/100,2)`, money(taxCents), 'money'),
  );
  const toPay = addJoined(
    draft,
    cell('To pay', 'totalLabel'),
    cell(null, 'totalLabel'),
    sum(`ROUND(F${row}+F${tax},2)`, money(priceCents + taxCents), 'total'),
  );
  draft.blank();
  addDate(draft, shop.priceHoldsDays);
  return { total: row, toPay };
}

/** A row whose first cell, of A to D, has room for a name; then E and F. */
function addJoined(draft: SheetDraft, name: DraftCell, next: DraftCell, last: DraftCell): number {
  const row = draft.add(name, null, null, null, next, last);
  draft.merge(row, 0, 3);
  return row;
}

/** The date is left to be typed: the file knows no clock. */
function addDate(draft: SheetDraft, days: number): void {
  const date = draft.add(cell('Date', 'label'), cell(null, 'inputDate'));
  draft.add(
    cell('This price holds until', 'label'),
    sum(`IF(ISNUMBER(B${date}),B${date}+${days},"fill in the date")`, 'fill in the date', 'date'),
  );
  draft.spread(sayHolds(days), 'note');
  draft.blank();
}

/** What is to be paid once more, where the last room ends. */
export function repeatPrice(draft: SheetDraft, { totals }: JobPlan, { toPay }: PriceRows): void {
  const amount = money(totals.priceCents + totals.taxCents);
  addJoined(
    draft,
    cell('To pay, all rooms and tax', 'totalLabel'),
    cell(null, 'totalLabel'),
    sum(`F${toPay}`, amount, 'total'),
  );
  draft.blank();
}
