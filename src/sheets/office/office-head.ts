/** The head of the office sheet: what the job comes to, and the shop's rates, which may be changed there. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { totalsBy } from '../../planning/price-bases.ts';
import { ROUNDING_CENTS } from '../../planning/price-job.ts';
import type { ColumnName } from '../grammar/columns.ts';
import { money } from '../grammar/figures.ts';
import {
  cell,
  sum,
  type DraftCell,
  type SheetDraft,
  type SheetRow,
} from '../grammar/sheet-draft.ts';
import { onSheet, type PlanAnchors, type RateName } from '../plan-anchors.ts';
import type { OfficeAnchors } from './office-anchors.ts';
import { HEAD } from './office-columns.ts';
import { HEADS } from './office-words.ts';

/** A line of one of the lists: a label and its cell, or a heading alone. */
type Line = readonly [label: string, value: DraftCell];
type Rate = readonly [name: RateName, label: string, value: DraftCell];

/** The lists: where their labels stand, and what belongs to them. */
const PLACES = [
  ['total', 'totalValue'],
  ['rate', 'rateValue'],
  ['price', 'priceValue'],
] as const;

export function addHead(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const top = draft.next;
  const rates = ratesOf(plan);
  const ofJob = pricesOf(plan);
  place(rates, 'rateValue', top, onThisSheet);
  place(ofJob, 'priceValue', top, onThisSheet);
  const lists: readonly (readonly Line[])[] = [
    totalsOf(plan, acrossSheets, onThisSheet),
    headed(HEADS.rates, rates),
    headed(HEADS.price, ofJob),
  ];
  const most = Math.max(...lists.map((lines) => lines.length));
  for (let at = 0; at < most; at++) draft.put(headRow(lists.map((lines) => lines[at])));
  draft.blank();
  lendRates([...rates, ...ofJob], acrossSheets, onThisSheet);
}

function headed(heading: string, rates: readonly Rate[]): Line[] {
  return [[heading, null], ...rates.map(([, label, value]): Line => [label, value])];
}

/** @param top The row of the list's heading. */
function place(
  rates: readonly Rate[],
  column: 'rateValue' | 'priceValue',
  top: number,
  onThisSheet: OfficeAnchors,
): void {
  rates.forEach(([name], at) => {
    onThisSheet.place(name, HEAD.fixed(column, top + 1 + at));
  });
}

/** The rates that other sheets' formulas go by. */
function lendRates(
  rates: readonly Rate[],
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const cells = rates.map(([name]) => [name, onSheet('office', onThisSheet.at(name))] as const);
  acrossSheets.place('ratesOnOffice', Object.fromEntries(cells) as Record<RateName, string>);
}

/** A line of each list, or none where a list has ended. */
function headRow(lines: readonly (Line | undefined)[]): SheetRow {
  const cells: Partial<Record<ColumnName<typeof HEAD>, DraftCell>> = {};
  const joins: (readonly [from: number, to: number])[] = [];
  lines.forEach((line, list) => {
    const places = PLACES[list];
    if (line === undefined || places === undefined) return;
    const [labelName, valueName] = places;
    const [label, value] = line;
    cells[labelName] = cell(label, value === null ? 'section' : 'fact');
    cells[valueName] = value;
    // A heading alone spreads over its values too.
    if (value === null) joins.push([HEAD.start(labelName), HEAD.end(valueName)]);
    else joins.push(HEAD.join(labelName));
  });
  return { ...HEAD.loose(cells), joins };
}

function totalsOf(plan: JobPlan, acrossSheets: PlanAnchors, onThisSheet: OfficeAnchors): Line[] {
  const { totals } = plan;
  const { currency } = totals;
  const late = (name: 'cost' | 'price' | 'priceWithTax' | 'moreByPlan') => (): string =>
    onThisSheet.at(`total ${name}`);
  const hours = (): string => acrossSheets.at('totalOnProduction', 'hours');
  const withTax = money(totals.priceCents) + money(totals.taxCents);
  const [planned, allowed] = [totalsBy(plan, 'plan'), totalsBy(plan, 'allowance')];
  const more = (planned.priceCents - allowed.priceCents) / 100;
  return [
    [HEADS.totals, null],
    [`Cost (${currency})`, sum(late('cost'), money(totals.costCents), 'money')],
    [`Price (${currency})`, sum(late('price'), money(totals.priceCents), 'total')],
    [`Price with tax (${currency})`, sum(late('priceWithTax'), withTax, 'money')],
    ['Hours', sum(hours, totals.hours, 'decimal')],
    ...(plan.profiles.length > 0
      ? [[`More by the plan (${currency})`, sum(late('moreByPlan'), more, 'money')] as const]
      : []),
  ];
}

function ratesOf({ job: { shop } }: JobPlan): Rate[] {
  return [
    ['hourlyRate', `Hourly rate (${shop.currency})`, cell(shop.hourlyRate, 'money')],
    ['overhead', 'Overhead, % of the rest', cell(shop.overhead, 'number')],
    ['contingency', 'Contingency, % of cost', cell(shop.contingency, 'number')],
    ['materialMarkup', 'Markup on material, %', cell(shop.materialMarkup, 'number')],
    ['laborMarkup', 'Markup on labor, %', cell(shop.laborMarkup, 'number')],
    ['margin', 'Margin, % of price', cell(shop.margin, 'number')],
  ];
}

/** What makes the price of the whole job. */
function pricesOf({ job: { shop } }: JobPlan): Rate[] {
  const step = money(ROUNDING_CENTS[shop.priceRounding]);
  return [
    ['minimumCharge', `Minimum charge (${shop.currency})`, cell(shop.minimumCharge, 'money')],
    ['delivery', `Delivery (${shop.currency})`, cell(shop.delivery, 'money')],
    ['rounding', `Price up to the next (${shop.currency})`, cell(step, 'money')],
    ['tax', 'Tax, %', cell(shop.tax, 'number')],
    ['taxOn', 'Tax on: all, material, none', cell(shop.taxOn, 'whole')],
  ];
}
