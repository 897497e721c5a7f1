/** The price by the plan's sticks and by the offcut allowance, molding by molding and of the job. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { plannedPercent } from '../../planning/allowed-lumber.ts';
import { planOverAllowance, totalsBy } from '../../planning/price-bases.ts';
import type { AllowedLumber } from '../../planning/stock-units.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import type { PriceBasis } from '../../planning/settings/money-settings.ts';
import { money } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import {
  allowanceFormula,
  priceFormula,
  roundingFormula,
  toMinimumFormula,
} from '../price-formulas.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { LONG_UNIT, numberIn } from '../words/print-length.ts';
import { PRICE_LINES } from '../words/price-lines.ts';
import { sayStock } from '../words/say-stock.ts';
import type { OfficeAnchors } from './office-anchors.ts';
import { ALLOWED, BASES, SPENT } from './office-columns.ts';
import { laborFormula } from './office-terms.ts';
import {
  ALLOWED_NOTE,
  BASIS_NOTES,
  SECTIONS,
  SPENT_NOTE,
  TOGETHER,
  WHOLE_JOB,
} from './office-words.ts';

/** A column each: by the allowance, as planned. */
type Column = 'allowed' | 'planned';
const BASIS_OF: Readonly<Record<Column, PriceBasis>> = { allowed: 'allowance', planned: 'plan' };

/** Where a profile's lumber and labor stand, by the one and the other. */
type Spent = Readonly<Record<'lumber' | 'labor', Readonly<Record<Column, string>>>>;

export function addBases(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const { profiles, job } = plan;
  if (profiles.length === 0) return;
  draft.spread(SECTIONS.bases, 'section');
  draft.spread(BASIS_NOTES[job.shop.priceBasis], 'wrapped');
  draft.spread(ALLOWED_NOTE, 'note');
  draft.put(ALLOWED.headings(job.shop));
  const lumber = profiles.map((planned) => addLumber(draft, plan, planned, acrossSheets));
  draft.blank();
  draft.spread(SECTIONS.spent, 'section');
  draft.spread(SPENT_NOTE, 'note');
  draft.put(SPENT.headings(job.shop));
  const spent = profiles.map((planned, at) =>
    addSpent(draft, plan, planned, lumber[at] ?? '', acrossSheets),
  );
  draft.blank();
  addPrices(draft, plan, spent, acrossSheets, onThisSheet);
  draft.blank();
}

/** What lumber is priced by in a shop of this unit: how it is said, and how many feet or board feet it holds. */
function allowedUnit(
  per: AllowedLumber['per'],
  unit: LengthUnit,
): { readonly name: string; readonly holds: number } {
  if (per === 'board foot') return { name: VOLUME[unit].mark, holds: VOLUME[unit].holds };
  return { name: unit === 'mm' ? 'm' : 'feet', holds: perUnitIn(unit, 'foot').holds };
}

/** Gives the cell of what it costs. */
function addLumber(
  draft: SheetDraft,
  { job: { shop } }: JobPlan,
  planned: ProfilePlan,
  acrossSheets: PlanAnchors,
): string {
  const { lumber } = planned.byAllowance;
  const { name, holds } = allowedUnit(lumber.per, shop.unit);
  const row = draft.next;
  const at = (column: 'net' | 'allowance' | 'each'): string => ALLOWED.at(column, row);
  const net = (): string =>
    lumber.per === 'foot'
      ? `${acrossSheets.at('netLengthOnProduction', planned)}/${LONG_UNIT[shop.unit].holds}`
      : acrossSheets.at('boardFeetOnProduction', planned);
  const volume = VOLUME[shop.unit].styles.row;
  const bought = allowanceFormula(at('net'), at('allowance'), shop.allowanceOf);
  draft.put(
    ALLOWED.row({
      molding: cell(planned.profile.name, 'rowStrong'),
      stock: cell(sayStock(lumber.unit.item, shop), 'row'),
      net: sum(net, lumber.net / holds, lumber.per === 'foot' ? 'rowDecimal' : volume),
      per: cell(name, 'row'),
      allowance: sum(
        () => acrossSheets.at('allowanceOnProduction', planned),
        lumber.allowancePercent,
        'rowNumber',
      ),
      planned: cell(plannedPercent(lumber, planned, shop) ?? 'not known', 'rowDecimal'),
      each: cell(
        (lumber.eachCents * holds) / 100,
        // A cubic metre costs so much that four decimals have no room.
        holds > 1 && lumber.per === 'board foot' ? 'rowDecimal' : 'rowNumber',
      ),
      cost: sum(`ROUND(${bought}*${at('each')},2)`, money(lumber.cents), 'rowDecimal'),
    }),
  );
  return ALLOWED.fixed('cost', row);
}

/** What work by the allowance is counted by, and what lumber and labor come to. */
function addSpent(
  draft: SheetDraft,
  { job: { shop } }: JobPlan,
  planned: ProfilePlan,
  lumber: string,
  acrossSheets: PlanAnchors,
): Spent {
  const { byAllowance, byPlan } = planned;
  const { inches, sticks, unit: stock } = byAllowance.lumber;
  const row = draft.next;
  const net = (): string => acrossSheets.at('netLengthOnProduction', planned);
  const percent = (): string => acrossSheets.at('allowanceOnProduction', planned);
  const at = (column: 'length' | 'stick'): string => SPENT.at(column, row);
  const credit = money(byPlan.money.offcutCreditCents);
  const labor = (column: Column): (() => string) => {
    const { work } = column === 'allowed' ? byAllowance : byPlan;
    return BASIS_OF[column] === shop.priceBasis
      ? () => acrossSheets.at('moneyOnOffice', planned).labor
      : () => `ROUND(${laborFormula(work, acrossSheets)},2)`;
  };
  draft.put(
    SPENT.row({
      molding: cell(planned.profile.name, 'rowStrong'),
      length: sum(
        () => allowanceFormula(net(), percent(), shop.allowanceOf),
        numberIn(inches, shop.unit),
        shop.unit === 'mm' ? 'rowTenth' : 'rowDecimal',
      ),
      stick: cell(numberIn(stock.item.length, shop.unit), 'rowNumber'),
      sticks: sum(`-INT(-ROUND(${at('length')}/${at('stick')},6))`, sticks, 'rowWhole'),
      laborAllowed: sum(labor('allowed'), money(byAllowance.money.laborCents), 'rowDecimal'),
      laborPlanned: sum(labor('planned'), money(byPlan.money.laborCents), 'rowDecimal'),
      lumberAllowed: sum(lumber, money(byAllowance.money.lumberCents), 'rowDecimal'),
      lumberPlanned: sum(
        () => `${acrossSheets.at('lumberOnOffice', planned)}-${credit}`,
        money(byPlan.money.lumberCents) - credit,
        'rowDecimal',
      ),
    }),
  );
  acrossSheets.place(
    'allowedOnOffice',
    {
      lumber: onSheet('office', lumber),
      length: onSheet('office', SPENT.fixed('length', row)),
      sticks: onSheet('office', SPENT.fixed('sticks', row)),
    },
    planned,
  );
  const cells = (one: 'labor' | 'lumber') => ({
    allowed: SPENT.at(`${one}Allowed`, row),
    planned: SPENT.at(`${one}Planned`, row),
  });
  return { labor: cells('labor'), lumber: cells('lumber') };
}

function addPrices(
  draft: SheetDraft,
  plan: JobPlan,
  spent: readonly Spent[],
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const { profiles, jobWork, job } = plan;
  const { shop } = job;
  draft.put(BASES.headings(shop));
  const first = draft.next;
  const put = (
    name: string,
    price: (column: Column) => { formula: string | (() => string); cents: number },
    style: StyleName = 'rowDecimal',
  ): number => {
    const row = draft.next;
    const isTotal = style === 'total';
    const [allowed, planned] = [price('allowed'), price('planned')];
    const [one, other] = [BASES.at('allowed', row), BASES.at('planned', row)];
    const percent = planOverAllowance(planned.cents, allowed.cents);
    const more = (planned.cents - allowed.cents) / 100;
    const cells = {
      molding: cell(name, isTotal ? 'totalLabel' : 'rowStrong'),
      allowed: sum(allowed.formula, money(allowed.cents), style),
      planned: sum(planned.formula, money(planned.cents), style),
      more: sum(`ROUND(${other}-${one},2)`, more, style),
      morePercent: sum(`IF(${one}=0,"",(${other}/${one}-1)*100)`, percent ?? '', style),
    };
    draft.put(isTotal ? BASES.loose(cells, cell(null, 'totalLabel')) : BASES.row(cells));
    return row;
  };
  profiles.forEach((planned, at) => {
    const own = spent[at];
    if (own === undefined) throw new RangeError(`${planned.profile.name} has no lumber.`);
    put(planned.profile.name, (column) => ({
      formula:
        BASIS_OF[column] === shop.priceBasis
          ? () => acrossSheets.at('moneyOnOffice', planned).price
          : () =>
              priceFormula(own.lumber[column], own.labor[column], acrossSheets.at('ratesOnOffice')),
      cents: (column === 'allowed' ? planned.byAllowance : planned.byPlan).money.priceCents,
    }));
  });
  if (jobWork.money !== undefined) {
    const { priceCents: cents } = jobWork.money;
    put(WHOLE_JOB, () => ({ formula: () => acrossSheets.at('jobPriceOnOffice'), cents }));
  }
  const last = draft.next - 1;
  const totals = { allowed: totalsBy(plan, 'allowance'), planned: totalsBy(plan, 'plan') };
  const lines = put(
    TOGETHER,
    (column) => ({
      formula: BASES.sum(column, first, last),
      cents: totals[column].linesCents + totals[column].jobWorkCents,
    }),
    'total',
  );
  const rates = () => acrossSheets.at('ratesOnOffice');
  const toLeast = put(PRICE_LINES.toMinimum, (column) => ({
    formula: () => toMinimumFormula(BASES.at(column, lines), rates().minimumCharge),
    cents: totals[column].toMinimumCents,
  }));
  const delivered = put(PRICE_LINES.delivery, (column) => ({
    formula: () => `ROUND(${rates().delivery},2)`,
    cents: totals[column].deliveryCents,
  }));
  const exact = (column: Column): string =>
    [lines, toLeast, delivered].map((row) => BASES.at(column, row)).join('+');
  const rounded = put(PRICE_LINES.rounding, (column) => ({
    formula: () => roundingFormula(exact(column), rates().rounding),
    cents: totals[column].roundingCents,
  }));
  const ofJob = put(
    SECTIONS.jobPrice,
    (column) => ({
      formula: `ROUND(${exact(column)}+${BASES.at(column, rounded)},2)`,
      cents: totals[column].priceCents,
    }),
    'total',
  );
  onThisSheet.place('total moreByPlan', BASES.at('more', ofJob));
}
