/** Passes, hours and money by profile, then tax. */
import { hoursOf, type JobPlan, type ProfilePlan } from '../../planning/job-plan.ts';
import { money, total } from '../grammar/figures.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import type { ProductionAnchors, TotalName } from './production-anchors.ts';
import { MONEY } from './production-columns.ts';
import { NOTHING, SECTIONS } from './production-words.ts';

/** Lumber, offcut credit, labor, overhead, cost and price, a row a profile; then tax. */
export function addMoney(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  const { profiles, totals } = plan;
  draft.spread(`${SECTIONS.money} (${totals.currency})`, 'section');
  draft.put(MONEY.headings(plan.job.shop));
  const first = draft.next;
  profiles.forEach((planned, index) => {
    const row = draft.next;
    onThisSheet.place('moneyRow', row, planned);
    const lumber = onSheet('production', MONEY.at('lumber', row));
    acrossSheets.place('lumberOnProduction', lumber, planned);
    draft.put(profileRow(planned, index + 1, row, onThisSheet));
  });
  if (profiles.length === 0) draft.put(MONEY.loose({ profile: cell(NOTHING.pay, 'row') }));
  addTotals(draft, plan, first, onThisSheet);
  const price = onThisSheet.at('total price');
  acrossSheets.place('priceOnProduction', onSheet('production', price));
  draft.blank();
}

function profileRow(
  planned: ProfilePlan,
  number: number,
  row: number,
  onThisSheet: ProductionAnchors,
): SheetRow {
  const { profile, tally, money: lines } = planned;
  const labor = `${MONEY.at('hours', row)}*${onThisSheet.at('hourlyRate')}`;
  const spent = MONEY.sumOfRow(['lumber', 'offcutCredit', 'labor'], row);
  const overhead = `${spent}*${onThisSheet.at('overhead')}/100`;
  const cost = MONEY.sumOfRow(['lumber', 'offcutCredit', 'labor', 'overhead'], row);
  const price = `${MONEY.at('cost', row)}/(1-${onThisSheet.at('margin')}/100)`;
  const inCents = (formula: string, cents: number): DraftCell =>
    sum(`ROUND(${formula},2)`, money(cents), 'rowDecimal');
  return MONEY.row({
    number: cell(number, 'rowWhole'),
    profile: cell(profile.name, 'rowStrong'),
    passes:
      profile.make === 'buy'
        ? cell(null, 'rowWhole')
        : sum(() => onThisSheet.at('passesInOrder', planned), tally.passes, 'rowWhole'),
    hours: sum(() => onThisSheet.at('hoursInOrder', planned), hoursOf(tally.hours), 'rowDecimal'),
    lumber: sum(
      () => onThisSheet.at('lumberBorne', planned),
      money(lines.lumberCents),
      'rowDecimal',
    ),
    offcutCredit: cell(0 - money(lines.offcutCreditCents), 'rowDecimal'),
    labor: inCents(labor, lines.laborCents),
    overhead: inCents(overhead, lines.overheadCents),
    cost: sum(cost, money(lines.costCents), 'rowDecimal'),
    price: inCents(price, lines.priceCents),
  });
}

function addTotals(
  draft: SheetDraft,
  { profiles, totals }: JobPlan,
  first: number,
  onThisSheet: ProductionAnchors,
): void {
  const row = draft.next;
  const added = (
    column:
      'passes' | 'hours' | 'lumber' | 'offcutCredit' | 'labor' | 'overhead' | 'cost' | 'price',
    value: number,
    name?: TotalName,
    style: StyleName = 'total',
  ): DraftCell => {
    if (name !== undefined) onThisSheet.place(`total ${name}`, MONEY.at(column, row));
    return MONEY.sumCell(column, [first, row - 1], value, style);
  };
  const all = (value: (one: ProfilePlan) => number): number => total(profiles.map(value));
  const paid = (name: keyof ProfilePlan['money']): number => money(all((one) => one.money[name]));
  const label = cell(null, 'totalLabel');
  const together = {
    profile: cell('Together', 'totalLabel'),
    passes: added(
      'passes',
      all(({ tally }) => tally.passes),
      'passes',
      'totalWhole',
    ),
    hours: added(
      'hours',
      all(({ tally }) => hoursOf(tally.hours)),
      'hours',
    ),
    lumber: added('lumber', paid('lumberCents'), 'lumber'),
    offcutCredit: added('offcutCredit', 0 - paid('offcutCreditCents')),
    labor: added('labor', paid('laborCents')),
    overhead: added('overhead', paid('overheadCents')),
    cost: added('cost', paid('costCents'), 'cost'),
    price: added('price', paid('priceCents'), 'price'),
  };
  draft.put(MONEY.loose(together, label));
  const [price, tax] = [money(totals.priceCents), money(totals.taxCents)];
  const priceCell = MONEY.at('price', row);
  const taxed = sum(`ROUND(${priceCell}*${onThisSheet.at('tax')}/100,2)`, tax, 'money');
  const taxRow = draft.put(MONEY.loose({ profile: cell('Tax'), price: taxed }));
  const withTax = sum(`${priceCell}+${MONEY.at('price', taxRow)}`, price + tax, 'total');
  const last = { profile: cell('Price with tax', 'totalLabel'), price: withTax };
  const lastRow = draft.put(MONEY.loose(last, label));
  onThisSheet.place('total priceWithTax', MONEY.at('price', lastRow));
}
