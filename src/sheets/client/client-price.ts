/** The price at a glance: by room, tax, what is to be paid, and how long it holds. */
import { type JobPlan, isPriced } from '../../planning/job-plan.ts';
import { daySerial } from '../../core/units/calendar-day.ts';
import { cents, depositCents } from '../../planning/money.ts';
import { ROUNDING_CENTS } from '../../planning/price-job.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { roundingFormula, toMinimumFormula } from '../price-formulas.ts';
import { PRICE_LINES, type PriceLine } from '../words/price-lines.ts';
import type { ClientAnchors } from './client-anchors.ts';
import { markOf, type Stamp } from '../stamp.ts';
import { DATE, PRICE } from './client-columns.ts';
import { changedFormula, sumsOf } from './client-lines.ts';
import type { ClientRoom } from './client-rooms.ts';
import {
  ALL_ROOMS,
  AS_QUOTED,
  MARK_LABEL,
  NUMBER_LABEL,
  sayHolds,
  TO_PAY,
  TO_PAY_AGAIN,
  TO_PAY_WITH_OPTIONS,
} from './client-words.ts';

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
  for (const { room, pieces, priceCents: ofRoom } of sums) {
    draft.put(
      PRICE.row({
        name: cell(room.room, 'row'),
        pieces: sum(() => anchors.at('pieces', room), pieces, 'rowWhole'),
        amount: sum(() => anchors.at('price', room), money(ofRoom), 'rowDecimal'),
      }),
    );
  }
  const rows = [first, draft.next - 1] as const;
  const pieces = total(sums.map((one) => one.pieces));
  const all = draft.put(
    PRICE.row({
      name: cell(ALL_ROOMS, 'totalLabel'),
      pieces: PRICE.sumCell('pieces', rows, pieces, 'totalWhole'),
      amount: sum(
        `ROUND(${PRICE.sum('amount', ...rows)},2)`,
        money(plan.totals.linesCents),
        'total',
      ),
    }),
  );
  const price = addPriceLines(draft, plan, all, anchors);
  const taxed = addTaxed(draft, plan, { all, price }, anchors);
  const rate = PRICE.at('pieces', draft.next);
  const tax = draft.put(
    PRICE.row({
      name: cell('Tax, %'),
      pieces: cell(shop.taxOn === 'none' ? 0 : shop.tax, 'number'),
      amount: sum(`ROUND(${taxed}*${rate}/100,2)`, money(taxCents), 'money'),
    }),
  );
  const toPay = `ROUND(${price}+${PRICE.at('amount', tax)},2)`;
  const owed = money(priceCents + taxCents);
  const paid = draft.put(
    PRICE.row({
      name: cell(TO_PAY, 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(toPay, owed, 'total'),
    }),
  );
  anchors.place('price of all', price);
  anchors.place('pieces of all', PRICE.at('pieces', all));
  anchors.place('to pay', PRICE.at('amount', paid));
  addDeposit(draft, plan, PRICE.at('amount', paid));
  addAsQuoted(draft, plan, anchors);
  addDate(draft, plan, stamp);
}

/**
 * What comes on the rooms' price: what the shop asks for at all has a row, and so have options that may be
 * taken up, whose prices are rounded already. With no piece asked for, none of the shop's is charged.
 *
 * @returns the cell of the price without tax: that of all rooms, where nothing comes on it
 */
function addPriceLines(
  draft: SheetDraft,
  { job, totals, options }: JobPlan,
  all: number,
  anchors: ClientAnchors,
): string {
  const { minimumCharge, delivery, priceRounding } = job.shop;
  const rooms = PRICE.at('amount', all);
  const unlessNone = (formula: string): string => `IF(${PRICE.at('pieces', all)}=0,0,${formula})`;
  const cells = [rooms];
  const put = (line: PriceLine, formula: string, cents: number): void => {
    const amount = sum(formula, money(cents), 'money');
    const row = PRICE.row({ name: cell(PRICE_LINES[line]), pieces: cell(null), amount });
    cells.push(PRICE.at('amount', draft.put(row)));
  };
  if (totals.jobWorkCents > 0) {
    put('jobWork', unlessNone(String(money(totals.jobWorkCents))), totals.jobWorkCents);
  }
  if (minimumCharge > 0) {
    const least = toMinimumFormula(cells.join('+'), String(money(cents(minimumCharge * 100))));
    put('toMinimum', unlessNone(least), totals.toMinimumCents);
  }
  if (delivery > 0) {
    const asked = String(money(cents(delivery * 100)));
    put('delivery', unlessNone(asked), totals.deliveryCents);
  }
  if (priceRounding !== 'cent') {
    const step = String(money(ROUNDING_CENTS[priceRounding]));
    put('rounding', roundingFormula(cells.join('+'), step), totals.roundingCents);
  }
  if (options.some(isPriced)) {
    const row = PRICE.row({
      name: cell(PRICE_LINES.options),
      pieces: sum(() => anchors.at('options').taken, 0, 'whole'),
      amount: sum(() => anchors.at('options').price, 0, 'money'),
    });
    cells.push(PRICE.at('amount', draft.put(row)));
  }
  if (cells.length === 1) return rooms;
  const price = draft.put(
    PRICE.row({
      name: cell('Price', 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(`ROUND(${cells.join('+')},2)`, money(totals.priceCents), 'total'),
    }),
  );
  return PRICE.at('amount', price);
}

/** The cell, or the number, that tax is on; material goes with the rooms' price. */
function addTaxed(
  draft: SheetDraft,
  { job, totals, options }: JobPlan,
  { all, price }: { readonly all: number; readonly price: string },
  anchors: ClientAnchors,
): string {
  const { taxOn } = job.shop;
  if (taxOn === 'all') return price;
  if (taxOn === 'none' || totals.linesCents === 0) return '0';
  const [taxable, lines] = [money(totals.taxableCents), money(totals.linesCents)];
  const share = `${PRICE.at('amount', all)}*${taxable}/${lines}`;
  const ofOptions = (): string =>
    options.some(isPriced) ? `+${anchors.at('options').taxable}` : '';
  const amount = sum(() => `ROUND(${share}${ofOptions()},2)`, taxable, 'money');
  const name = cell('Of which material, taxed');
  return PRICE.at('amount', draft.put(PRICE.row({ name, pieces: cell(null), amount })));
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

/** Takes the place of a blank row: nothing is to be seen there while every quantity is as quoted. */
function addAsQuoted(
  draft: SheetDraft,
  { totals, options }: JobPlan,
  anchors: ClientAnchors,
): void {
  const row = draft.next;
  const changed = (): string =>
    options.some(isPriced)
      ? `(${changedFormula(anchors)}+${anchors.at('options').taken})`
      : changedFormula(anchors);
  const name = PRICE.fixed('name', row);
  const unlessSame = (value: number): string => `IF(${name}="","",${value})`;
  draft.put(
    PRICE.row({
      name: sum(() => `IF(${changed()}=0,"","${AS_QUOTED}"&${changed()})`, '', 'fact'),
      pieces: sum(unlessSame(totals.pieces), '', 'whole'),
      amount: sum(unlessSame(money(totals.priceCents + totals.taxCents)), '', 'money'),
    }),
  );
  draft.highlight(PRICE.area(row, row), `${name}<>""`, 'caution');
}

/** The date is Job's or that of the stamp, to be typed over; without either it is left to be typed. */
function addDate(draft: SheetDraft, { job }: JobPlan, stamp: Stamp | undefined): void {
  const { titleBlock, shop } = job;
  const days = shop.priceHoldsDays;
  const day = titleBlock.date ?? stamp?.day;
  const serial = day === undefined ? null : daySerial(day);
  if (stamp !== undefined) {
    const label = titleBlock.number === '' ? NUMBER_LABEL : MARK_LABEL;
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
export function repeatPrice(
  draft: SheetDraft,
  { totals, options }: JobPlan,
  anchors: ClientAnchors,
): void {
  const name = options.some(isPriced) ? TO_PAY_WITH_OPTIONS : TO_PAY_AGAIN;
  const amount = money(totals.priceCents + totals.taxCents);
  draft.put(
    PRICE.row({
      name: cell(name, 'totalLabel'),
      pieces: cell(null, 'totalLabel'),
      amount: sum(anchors.at('to pay'), amount, 'total'),
    }),
  );
  draft.blank();
}
