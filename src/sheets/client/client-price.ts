/** The price at a glance: by room, tax, what is to be paid, and how long it holds. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { daySerial } from '../../core/units/calendar-day.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { ClientAnchors } from './client-anchors.ts';
import { markOf, type Stamp } from '../stamp.ts';
import { DATE, PRICE } from './client-columns.ts';
import { sumsOf } from './client-lines.ts';
import type { ClientRoom } from './client-rooms.ts';
import { sayHolds } from './client-words.ts';

/**
 * Adds a row for each room, then the sums. Each is rounded to the cent, so that the tax is computed from
 * the figure shown.
 *
 * @param rooms Those in the price.
 */
export function addPrice(
  draft: SheetDraft,
  plan: JobPlan,
  rooms: readonly ClientRoom[],
  anchors: ClientAnchors,
  stamp?: Stamp,
): void {
  const { shop } = plan.job;
  const { priceCents, taxCents } = plan.totals;
  const sums = rooms.map((room) => ({ room, ...sumsOf(room, shop.unit) }));
  draft.put(PRICE.headings(shop));
  const first = draft.next;
  for (const { room, pieces, priceCents: cents } of sums) {
    draft.put(
      PRICE.row({
        name: cell(room.room, 'row'),
        pieces: sum(() => anchors.at('pieces', room), pieces, 'rowWhole'),
        amount: sum(() => anchors.at('price', room), money(cents), 'rowDecimal'),
      }),
    );
  }
  const rows = [first, draft.next - 1] as const;
  const pieces = total(sums.map((one) => one.pieces));
  const all = draft.put(
    PRICE.row({
      name: cell('All rooms', 'totalLabel'),
      pieces: PRICE.sumCell('pieces', rows, pieces, 'totalWhole'),
      amount: sum(`ROUND(${PRICE.sum('amount', ...rows)},2)`, money(priceCents), 'total'),
    }),
  );
  const price = PRICE.at('amount', all);
  const rate = PRICE.at('pieces', draft.next);
  const tax = draft.put(
    PRICE.row({
      name: cell('Tax, %'),
      pieces: cell(shop.tax, 'number'),
      amount: sum(`ROUND(${price}*${rate}/100,2)`, money(taxCents), 'money'),
    }),
  );
  const toPay = `ROUND(${price}+${PRICE.at('amount', tax)},2)`;
  const paid = draft.put(
    PRICE.row({
      name: cell('To pay', 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(toPay, money(priceCents + taxCents), 'total'),
    }),
  );
  anchors.place('price of all', price);
  anchors.place('pieces of all', PRICE.at('pieces', all));
  anchors.place('to pay', PRICE.at('amount', paid));
  draft.blank();
  addDate(draft, shop.priceHoldsDays, stamp);
}

/** The date is that of the stamp, to be typed over; without one it is left to be typed. */
function addDate(draft: SheetDraft, days: number, stamp: Stamp | undefined): void {
  const serial = stamp === undefined ? null : daySerial(stamp.day);
  if (stamp !== undefined) {
    draft.put(DATE.row({ label: cell('Number', 'label'), date: cell(markOf(stamp), 'label') }));
  }
  const row = draft.put(
    DATE.row({ label: cell('Date', 'label'), date: cell(serial, 'inputDate') }),
  );
  const date = DATE.at('date', row);
  const holds = `IF(ISNUMBER(${date}),${date}+${days},"fill in the date")`;
  draft.put(
    DATE.row({
      label: cell('This price holds until', 'label'),
      date: sum(holds, serial === null ? 'fill in the date' : serial + days, 'date'),
    }),
  );
  draft.spread(sayHolds(days), 'note');
  draft.blank();
}

/** What is to be paid once more, where the last room ends. */
export function repeatPrice(draft: SheetDraft, { totals }: JobPlan, anchors: ClientAnchors): void {
  const amount = money(totals.priceCents + totals.taxCents);
  draft.put(
    PRICE.row({
      name: cell('To pay, all rooms and tax', 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(anchors.at('to pay'), amount, 'total'),
    }),
  );
  draft.blank();
}
