/** Passes, hours and money by profile, then the price of the job and tax. */
import type { JobPlan, Money, ProfilePlan, Totals } from '../../planning/job-plan.ts';
import { hoursOf } from '../../planning/work/hours.ts';
import type { WorkLine } from '../../planning/work/work-row.ts';
import { money, total } from '../grammar/figures.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { onSheet, type PlanAnchors, type RateName } from '../plan-anchors.ts';
import { roundingFormula, toMinimumFormula } from '../price-formulas.ts';
import { PRICE_LINES } from '../words/price-lines.ts';
import { hoursOnLabor, moneyBeside } from '../hours-on-labor.ts';
import type { OfficeAnchors, TotalName } from './office-anchors.ts';
import { MONEY } from './office-columns.ts';
import { BY_ALLOWANCE_NOTE, NONE, SECTIONS, WHOLE_JOB } from './office-words.ts';

/** Lumber, offcut credit, labor, overhead, cost, contingency, markup and price, a row a profile; then the job's price and tax. */
export function addMoney(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const { profiles } = plan;
  draft.spread(SECTIONS.money, 'section');
  const isByAllowance = plan.job.shop.priceBasis === 'allowance';
  if (isByAllowance) draft.spread(BY_ALLOWANCE_NOTE, 'note');
  draft.put(MONEY.headings(plan.job.shop));
  const first = draft.next;
  profiles.forEach((planned) => {
    const row = draft.next;
    onThisSheet.place('moneyRow', row, planned);
    const lumber = onSheet('office', MONEY.at('lumber', row));
    if (!isByAllowance) acrossSheets.place('lumberOnOffice', lumber, planned);
    const at = (column: 'offcutCredit' | 'labor' | 'price'): string =>
      onSheet('office', MONEY.fixed(column, row));
    acrossSheets.place(
      'moneyOnOffice',
      { lumber, offcutCredit: at('offcutCredit'), labor: at('labor'), price: at('price') },
      planned,
    );
    draft.put(profileRow(plan, planned, row, acrossSheets, onThisSheet));
  });
  addJobWork(draft, plan, acrossSheets, onThisSheet);
  if (profiles.length === 0) draft.put(MONEY.loose({ profile: cell(NONE.money, 'row') }));
  addTotals(draft, plan, first, onThisSheet);
  const price = onThisSheet.at('total price');
  acrossSheets.place('priceOnOffice', onSheet('office', price));
  draft.blank();
}

function profileRow(
  { job: { shop } }: JobPlan,
  planned: ProfilePlan,
  row: number,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): SheetRow {
  const { profile, tally, work, money: lines } = planned;
  const isByAllowance = shop.priceBasis === 'allowance';
  // Hours here are as planned; those by the allowance stand on Labor alone.
  const hours = (): string =>
    isByAllowance ? `(${hoursOnLabor(work, acrossSheets)})` : MONEY.at('hours', row);
  return MONEY.row({
    profile: cell(profile.name, 'rowStrong'),
    hours: sum(
      () => acrossSheets.at('hoursOnProduction', planned),
      hoursOf(tally.hours),
      'rowDecimal',
    ),
    lumber: sum(
      () =>
        isByAllowance
          ? acrossSheets.at('allowedOnOffice', planned).lumber
          : onThisSheet.at('lumberBorne', planned),
      money(lines.lumberCents),
      'rowDecimal',
    ),
    offcutCredit: cell(0 - money(lines.offcutCreditCents), 'rowDecimal'),
    ...fromLabor(row, hours, work, lines, acrossSheets, onThisSheet),
  });
}

/** Work for the whole job: a row without a number, where there is any. */
function addJobWork(
  draft: SheetDraft,
  { jobWork: { lines, hours, money: paid } }: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  if (paid === undefined) {
    onThisSheet.place('jobPrice', '0');
    acrossSheets.place('jobPriceOnOffice', '0');
    return;
  }
  const row = draft.next;
  draft.put(
    MONEY.sparseRow({
      profile: cell(WHOLE_JOB, 'rowStrong'),
      hours: sum(() => acrossSheets.at('jobHoursOnProduction'), hours, 'rowDecimal'),
      ...fromLabor(row, () => MONEY.at('hours', row), lines, paid, acrossSheets, onThisSheet),
    }),
  );
  onThisSheet.place('jobPrice', MONEY.at('price', row));
  acrossSheets.place('jobPriceOnOffice', onSheet('office', MONEY.at('price', row)));
}

/**
 * Labor and all that comes of it, in a row whose lumber stands.
 *
 * @param hours Those that are paid, in a formula.
 */
function fromLabor(
  row: number,
  hours: () => string,
  work: readonly WorkLine[],
  lines: Money,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
) {
  const spent = MONEY.sumOfRow(['lumber', 'offcutCredit', 'labor'], row);
  const overhead = `${spent}*${onThisSheet.at('overhead')}/100`;
  const cost = MONEY.sumOfRow(['lumber', 'offcutCredit', 'labor', 'overhead'], row);
  const contingency = `${MONEY.at('cost', row)}*${onThisSheet.at('contingency')}/100`;
  const material = MONEY.sumOfRow(['lumber', 'offcutCredit'], row);
  const markup = `(${material}*${onThisSheet.at('materialMarkup')}+${MONEY.at('labor', row)}*${onThisSheet.at('laborMarkup')})/100`;
  const beforeMargin = MONEY.sumOfRow(['cost', 'contingency', 'markup'], row);
  const price = `${beforeMargin}/(1-${onThisSheet.at('margin')}/100)`;
  const inCents = (formula: string, cents: number): DraftCell =>
    sum(`ROUND(${formula},2)`, money(cents), 'rowDecimal');
  const paid = (): string =>
    `${hours()}*${onThisSheet.at('hourlyRate')}${moneyBeside(work, acrossSheets)}`;
  return {
    labor: sum(() => `ROUND(${paid()},2)`, money(lines.laborCents), 'rowDecimal'),
    overhead: inCents(overhead, lines.overheadCents),
    cost: sum(cost, money(lines.costCents), 'rowDecimal'),
    contingency: inCents(contingency, lines.contingencyCents),
    markup: inCents(markup, lines.markupCents),
    price: inCents(price, lines.priceCents),
  };
}

type Added =
  | 'hours'
  | 'lumber'
  | 'offcutCredit'
  | 'labor'
  | 'overhead'
  | 'cost'
  | 'contingency'
  | 'markup'
  | 'price';

function addTotals(
  draft: SheetDraft,
  { profiles, jobWork, totals }: JobPlan,
  first: number,
  onThisSheet: OfficeAnchors,
): void {
  const row = draft.next;
  const added = (
    column: Added,
    value: number,
    name?: TotalName,
    style: StyleName = 'total',
  ): DraftCell => {
    if (name !== undefined) onThisSheet.place(`total ${name}`, MONEY.at(column, row));
    return MONEY.sumCell(column, [first, row - 1], value, style);
  };
  const all = (value: (one: ProfilePlan) => number): number => total(profiles.map(value));
  const paid = (name: keyof ProfilePlan['money']): number =>
    money(all((one) => one.money[name]) + (jobWork.money?.[name] ?? 0));
  const label = cell(null, 'totalLabel');
  const together = {
    profile: cell('Together', 'totalLabel'),
    hours: added('hours', all(({ tally }) => hoursOf(tally.hours)) + jobWork.hours),
    lumber: added('lumber', paid('lumberCents')),
    offcutCredit: added('offcutCredit', 0 - paid('offcutCreditCents')),
    labor: added('labor', paid('laborCents')),
    overhead: added('overhead', paid('overheadCents')),
    cost: added('cost', paid('costCents'), 'cost'),
    contingency: added('contingency', paid('contingencyCents')),
    markup: added('markup', paid('markupCents')),
    price: added('price', paid('priceCents'), 'lines'),
  };
  draft.put(MONEY.loose(together, label));
  addPrice(draft, row, totals, profiles.length > 0, onThisSheet);
}

/** From the moldings' price, in the row of sums, to what is to be paid. */
function addPrice(
  draft: SheetDraft,
  sums: number,
  totals: Totals,
  isCharged: boolean,
  onThisSheet: OfficeAnchors,
): void {
  const rate = (name: RateName): string => onThisSheet.at(name);
  // The moldings and the work for the whole job.
  const lines = MONEY.at('price', sums);
  const put = (label: string, formula: string, cents: number): string => {
    const price = isCharged ? sum(formula, money(cents), 'money') : cell(money(cents), 'money');
    return MONEY.at('price', draft.put(MONEY.loose({ profile: cell(label), price })));
  };
  const putTotal = (name: TotalName, label: string, formula: string, cents: number): string => {
    const cells = {
      profile: cell(label, 'totalLabel'),
      price: sum(formula, money(cents), 'total'),
    };
    const at = MONEY.at('price', draft.put(MONEY.loose(cells, cell(null, 'totalLabel'))));
    onThisSheet.place(`total ${name}`, at);
    return at;
  };
  const { toMinimum, delivery, rounding } = PRICE_LINES;
  const least = toMinimumFormula(lines, rate('minimumCharge'));
  const toLeast = put(toMinimum, least, totals.toMinimumCents);
  const delivered = put(delivery, `ROUND(${rate('delivery')},2)`, totals.deliveryCents);
  const exact = `${lines}+${toLeast}+${delivered}`;
  const rounds = put(rounding, roundingFormula(exact, rate('rounding')), totals.roundingCents);
  const all = `ROUND(${exact}+${rounds},2)`;
  const price = putTotal('price', 'Price', all, totals.priceCents);
  const material = MONEY.sumOfRow(['lumber', 'offcutCredit'], sums);
  const markedUp = `${material}*(1+${rate('materialMarkup')}/100)/(1-${rate('margin')}/100)`;
  const onWhat = rate('taxOn');
  // Another word in that cell ends in an error to be seen, not in a price without tax.
  const taxed = `IF(${onWhat}="all",${price},IF(${onWhat}="material",ROUND(${markedUp},2),IF(${onWhat}="none",0,"all, material or none?")))`;
  const taxable = put('Of which taxed', taxed, totals.taxableCents);
  const tax = put('Tax', `ROUND(${taxable}*${rate('tax')}/100,2)`, totals.taxCents);
  const cents = totals.priceCents + totals.taxCents;
  putTotal('priceWithTax', 'Price with tax', `${price}+${tax}`, cents);
}
