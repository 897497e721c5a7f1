/** The price at a glance: by room, tax, what is to be paid, and how long it holds. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { daySerial } from '../../core/units/calendar-day.ts';
import { depositCents } from '../../planning/money.ts';
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
  const owed = money(priceCents + taxCents);
  const paid = draft.put(
    PRICE.row({
      name: cell('To pay', 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(toPay, owed, 'total'),
    }),
  );
  anchors.place('price of all', price);
  anchors.place('pieces of all', PRICE.at('pieces', all));
  anchors.place('to pay', PRICE.at('amount', paid));
  addDeposit(draft, plan, PRICE.at('amount', paid));
  draft.blank();
  addDate(draft, plan, stamp);
}

/** What Job asks for at the order, and what is left then; its percent may be typed over. */
function addDeposit(draft: SheetDraft, { job, totals }: JobPlan, toPay: string): void {
  const { deposit } = job.titleBlock;
  if (deposit === undefined) return;
  const asked = depositCents(totals, deposit);
  const row = draft.put(
    PRICE.row({
      name: cell('Deposit, % of it at the order'),
      pieces: cell(deposit, 'number'),
      amount: sum(`ROUND(${toPay}*${PRICE.at('pieces', draft.next)}/100,2)`, money(asked), 'money'),
    }),
  );
  draft.put(
    PRICE.row({
      name: cell('Left to pay'),
      pieces: cell(null),
      amount: sum(
        `ROUND(${toPay}-${PRICE.at('amount', row)},2)`,
        money(totals.priceCents + totals.taxCents - asked),
        'money',
      ),
    }),
  );
}

/** The date is Job's or that of the stamp, to be typed over; without either it is left to be typed. */
function addDate(draft: SheetDraft, { job }: JobPlan, stamp: Stamp | undefined): void {
  const { titleBlock, shop } = job;
  const days = shop.priceHoldsDays;
  const day = titleBlock.date ?? stamp?.day;
  const serial = day === undefined ? null : daySerial(day);
  if (stamp !== undefined) {
    const label = titleBlock.number === '' ? 'Number' : 'Mark of the plan';
    draft.put(DATE.row({ label: cell(label, 'label'), date: cell(markOf(stamp), 'label') }));
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
