/** The client's copy: what is included, room by room, and its price; no cost, labor or stock. */
import type { JobPlan, RoomLine } from '../../planning/job-plan.ts';
import type { LengthUnit } from '../../core/faults/quantity.ts';
import { quoteSheet } from '../cell-range.ts';
import type { SheetDescription } from '../description.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from '../plan-cells.ts';
import { numberIn, printTotal } from '../print-length.ts';
import { cell, sum, SheetDraft } from '../sheet-draft.ts';
import { JUDGMENT_CAUTION } from '../standing-cautions.ts';

const COLUMNS = [
  { width: 28 },
  { width: 28 },
  { width: 9 },
  { width: 14 },
  { width: 11 },
  { width: 14 },
];

const COVERED = [
  'The price covers the moldings listed above: wood, making or buying them, and cutting each piece to length with its ends shaped as measured.',
  'It does not cover fitting, paint or finish, delivery, or taking old trim down, unless that is agreed in writing.',
  'Lengths are those measured. What is found different on site is measured and priced anew.',
];

export function describeClient(plan: JobPlan, cells: PlanCells): SheetDescription {
  const { shop } = plan.job;
  const { currency } = plan.totals;
  const draft = new SheetDraft(SHEET_NAMES.client, COLUMNS);
  draft.spread('Moldings, room by room', 'title');
  draft.spread('What is included, and its price', 'subtitle');
  draft.blank();
  const heads = draft.add(
    cell('Room', 'heading'),
    cell('Molding', 'heading'),
    cell('Pieces', 'headingRight'),
    cell('Total length', 'headingRight'),
    cell(shop.unit, 'headingRight'),
    cell(`Price (${currency})`, 'headingRight'),
  );
  const first = draft.next;
  for (const line of plan.rooms) addLine(draft, line, shop.unit);
  if (plan.rooms.length === 0) draft.add(cell('Everything listed is done already.', 'row'));
  const last = draft.next - 1;
  const { rooms } = plan;
  const price = total(rooms.map((line) => money(line.priceCents)));
  const row = draft.add(
    cell('Together', 'totalLabel'),
    cell(null, 'totalLabel'),
    sum(sumOf('C', first, last), total(rooms.map((line) => line.pieces)), 'totalWhole'),
    cell(null, 'totalLabel'),
    sum(sumOf('E', first, last), total(lengths(rooms, shop.unit)), 'totalNumber'),
    sum(sumOf('F', first, last), price, 'total'),
  );
  cells.priceOnClient = `${quoteSheet(SHEET_NAMES.client)}!F${row}`;
  const tax = money(plan.totals.taxCents);
  const rate = draft.add(
    cell('Tax, %'),
    cell(shop.tax, 'number'),
    null,
    null,
    null,
    sum(`ROUND(F${row}*B${row + 1}/100,2)`, tax, 'money'),
  );
  const none = [cell(null, 'totalLabel'), cell(null, 'totalLabel'), cell(null, 'totalLabel')];
  draft.add(
    cell('To pay', 'totalLabel'),
    ...none,
    cell(null, 'totalLabel'),
    sum(`F${row}+F${rate}`, price + tax, 'total'),
  );
  draft.blank();
  draft.spread('What the price covers', 'section');
  for (const line of COVERED) draft.spread(line, 'wrapped');
  draft.blank();
  draft.add(cell('Date', 'label'), cell(null, 'tick'));
  draft.add(cell('This price holds until', 'label'), cell(null, 'tick'));
  draft.spread('Where no date is written here, ask before you order.', 'subtitle');
  draft.blank();
  draft.spread(JUDGMENT_CAUTION, 'note');
  return draft.finish({
    paper: shop.paper,
    orientation: 'portrait',
    titleRows: [heads, heads],
    footer: 'Moldings, room by room',
  });
}

function addLine(draft: SheetDraft, line: RoomLine, unit: LengthUnit): void {
  draft.add(
    cell(line.room, 'row'),
    cell(line.profile, 'row'),
    cell(line.pieces, 'rowWhole'),
    cell(printTotal(line.lengthNet, unit), 'rowRight'),
    cell(numberIn(line.lengthNet, unit), 'rowNumber'),
    cell(money(line.priceCents), 'rowDecimal'),
  );
}

function lengths(rooms: readonly RoomLine[], unit: LengthUnit): number[] {
  return rooms.map((line) => numberIn(line.lengthNet, unit));
}
