/** Passes, hours and money by profile, then tax. */
import { hoursOf, type JobPlan, type ProfilePlan } from '../../planning/job-plan.ts';
import { quoteSheet } from '../../core/cells/cell-range.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from '../plan-cells.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { rateCell, type ProductionCells, type TotalName } from './production-cells.ts';

/** Lumber, offcut credit, labor, overhead, cost and price, a row a profile; then tax. */
export function addMoney(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { profiles, totals } = plan;
  draft.spread(`By profile: passes, hours and money (${totals.currency})`, 'section');
  draft.add(
    cell('No.', 'headingRight'),
    cell('Profile', 'heading'),
    cell(null, 'heading'),
    ...['Passes', 'Hours', 'Lumber', 'Offcut credit', 'Labor', 'Overhead', 'Cost', 'Price'].map(
      (text) => cell(text, 'headingRight'),
    ),
  );
  draft.merge(draft.next - 1, 1, 2);
  const first = draft.next;
  profiles.forEach((one, index) => addRow(draft, one, index, cells, own));
  if (profiles.length === 0) draft.add(null, cell('Nothing is left to pay for.', 'row'));
  addTotals(draft, plan, first, own);
  draft.blank();
}

function addRow(
  draft: SheetDraft,
  { profile, tally, money: lines }: ProfilePlan,
  index: number,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const row = draft.next;
  const rate = (name: Parameters<typeof rateCell>[1]): string => rateCell(own, name);
  own.moneyRows[index] = row;
  cells.lumber[index] = `${quoteSheet(SHEET_NAMES.production)}!F${row}`;
  draft.merge(row, 1, 2);
  draft.add(
    cell(index + 1, 'rowWhole'),
    cell(profile.name, 'rowStrong'),
    null,
    profile.make === 'buy'
      ? cell(null, 'rowWhole')
      : sum(() => own.passes[index] ?? '0', tally.passes, 'rowWhole'),
    sum(() => (own.hours[index] ?? []).join('+') || '0', hoursOf(tally.hours), 'rowDecimal'),
    sum(() => own.lumber[index] ?? '0', money(lines.lumberCents), 'rowDecimal'),
    cell(0 - money(lines.offcutCreditCents), 'rowDecimal'),
    sum(`ROUND(E${row}*${rate('hourlyRate')},2)`, money(lines.laborCents), 'rowDecimal'),
    sum(
      `ROUND(SUM(F${row}:H${row})*${rate('overhead')}/100,2)`,
      money(lines.overheadCents),
      'rowDecimal',
    ),
    sum(`SUM(F${row}:I${row})`, money(lines.costCents), 'rowDecimal'),
    sum(`ROUND(J${row}/(1-${rate('margin')}/100),2)`, money(lines.priceCents), 'rowDecimal'),
  );
}

function addTotals(
  draft: SheetDraft,
  { profiles, totals }: JobPlan,
  first: number,
  own: ProductionCells,
): void {
  const last = draft.next - 1;
  const row = draft.next;
  const added = (
    letter: string,
    value: (one: ProfilePlan) => number,
    name?: TotalName,
    style: 'total' | 'totalWhole' = 'total',
  ): DraftCell => {
    if (name !== undefined) own.totals.set(name, `${letter}${row}`);
    return sum(sumOf(letter, first, last), total(profiles.map(value)), style);
  };
  const cents = (name: keyof ProfilePlan['money']) => (one: ProfilePlan) => one.money[name];
  const paid = (name: keyof ProfilePlan['money']): number =>
    money(total(profiles.map(cents(name))));
  const sums = (letter: string, value: number, name?: TotalName): DraftCell => {
    if (name !== undefined) own.totals.set(name, `${letter}${row}`);
    return sum(sumOf(letter, first, last), value, 'total');
  };
  draft.add(
    cell(null, 'totalLabel'),
    cell('Together', 'totalLabel'),
    cell(null, 'totalLabel'),
    added('D', ({ tally }) => tally.passes, 'passes', 'totalWhole'),
    added('E', ({ tally }) => hoursOf(tally.hours), 'hours'),
    sums('F', paid('lumberCents'), 'lumber'),
    sums('G', 0 - paid('offcutCreditCents')),
    sums('H', paid('laborCents')),
    sums('I', paid('overheadCents')),
    sums('J', paid('costCents'), 'cost'),
    sums('K', paid('priceCents'), 'price'),
  );
  const price = money(totals.priceCents);
  const tax = money(totals.taxCents);
  const none = Array.from({ length: 8 }, () => null);
  const taxRate = rateCell(own, 'tax');
  draft.add(null, cell('Tax'), ...none, sum(`ROUND(K${row}*${taxRate}/100,2)`, tax, 'money'));
  const all = draft.add(
    cell(null, 'totalLabel'),
    cell('Price with tax', 'totalLabel'),
    ...none.map(() => cell(null, 'totalLabel')),
    sum(`K${row}+K${row + 1}`, price + tax, 'total'),
  );
  own.totals.set('priceWithTax', `K${all}`);
}
