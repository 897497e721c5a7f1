/** What each molding's lumber comes to by the offcut allowance, beside what it costs as planned. */
import { allowedLumber, type AllowedLumber } from '../../planning/allowed-lumber.ts';
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { sayStock } from '../words/say-stock.ts';
import { FOOT } from './count-formulas.ts';
import { ALLOWED } from './labor-columns.ts';
import { ALLOWED_NOTE, SECTIONS } from './labor-words.ts';

interface AllowedRow {
  readonly planned: ProfilePlan;
  readonly allowed: AllowedLumber;
}

export function addAllowed(draft: SheetDraft, plan: JobPlan, acrossSheets: PlanAnchors): void {
  const rows = plan.profiles.flatMap((planned): AllowedRow[] => {
    const allowed = allowedLumber(planned, plan.job);
    return allowed === undefined ? [] : [{ planned, allowed }];
  });
  if (rows.length === 0) return;
  draft.spread(SECTIONS.allowed, 'section');
  draft.spread(ALLOWED_NOTE, 'note');
  draft.put(ALLOWED.headings(plan.job.shop));
  const first = draft.next;
  rows.forEach((row, at) => addRow(draft, row, at + 1, plan, acrossSheets));
  const last = draft.next - 1;
  const allowed = total(rows.map((row) => money(row.allowed.cents)));
  const planned = total(rows.map((row) => money(netOf(row))));
  const row = draft.next;
  draft.put(
    ALLOWED.loose(
      {
        molding: cell('Together', 'totalLabel'),
        allowed: ALLOWED.sumCell('allowed', [first, last], allowed, 'total'),
        asPlanned: ALLOWED.sumCell('asPlanned', [first, last], planned, 'total'),
        ...moreCells(row, allowed, planned, 'total'),
      },
      cell(null, 'totalLabel'),
    ),
  );
  draft.blank();
}

function netOf({ planned }: AllowedRow): number {
  return planned.money.lumberCents - planned.money.offcutCreditCents;
}

function moreCells(row: number, allowed: number, planned: number, style: 'total' | 'rowDecimal') {
  const [one, other] = [ALLOWED.at('allowed', row), ALLOWED.at('asPlanned', row)];
  const percent = allowed === 0 ? 0 : (planned / allowed - 1) * 100;
  return {
    more: sum(`ROUND(${other}-${one},2)`, Math.round((planned - allowed) * 100) / 100, style),
    morePercent: sum(`IF(${one}=0,0,(${other}/${one}-1)*100)`, percent, style),
  };
}

function addRow(
  draft: SheetDraft,
  row: AllowedRow,
  number: number,
  { job }: JobPlan,
  acrossSheets: PlanAnchors,
): void {
  const { planned, allowed } = row;
  const at = draft.next;
  const figure = (column: 'net' | 'allowance' | 'each'): string => ALLOWED.at(column, at);
  const feet = (): string =>
    `${acrossSheets.at('netLengthOnProduction', planned)}/${FOOT[job.shop.unit]}`;
  const credit = money(planned.money.offcutCreditCents);
  const lumber = (): string => `${acrossSheets.at('lumberOnProduction', planned)}-${credit}`;
  draft.put(
    ALLOWED.row({
      number: cell(number, 'rowWhole'),
      molding: cell(planned.profile.name, 'rowStrong'),
      stock: cell(sayStock(allowed.unit.item, job.shop), 'row'),
      net:
        allowed.per === 'foot'
          ? sum(feet, allowed.net, 'rowDecimal')
          : cell(allowed.net, 'rowDecimal'),
      per: cell(allowed.per === 'foot' ? 'feet' : 'board feet', 'row'),
      allowance: cell(allowed.allowancePercent, 'rowNumber'),
      planned: cell(allowed.plannedPercent ?? 'not known', 'rowDecimal'),
      each: cell(allowed.eachCents / 100, 'rowNumber'),
      allowed: sum(
        `ROUND(${figure('net')}*(1+${figure('allowance')}/100)*${figure('each')},2)`,
        money(allowed.cents),
        'rowDecimal',
      ),
      asPlanned: sum(lumber, money(netOf(row)), 'rowDecimal'),
      ...moreCells(at, money(allowed.cents), money(netOf(row)), 'rowDecimal'),
    }),
  );
}
