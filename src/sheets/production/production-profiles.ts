/** The two tables by profile on the production sheet: what is to make, and the money. */
import {
  benchHoursOf,
  hoursOf,
  machineHoursOf,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import { quoteSheet } from '../cell-range.ts';
import { money, SHEET_NAMES, sumOf, total, type PlanCells } from '../plan-cells.ts';
import { numberIn, printTotal } from '../print-length.ts';
import type { ProductionCells, TotalName } from './production-cells.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../sheet-draft.ts';

const MADE = { cove: 'cove, cut here', 'crown cove': 'crown cove, cut here', buy: 'bought' };
const NOTHING = 'Nothing is left to make.';

/** Counts, lengths, board feet, passes and hours, a row a profile. */
export function addMakeTable(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { unit } = plan.job.shop;
  const { profiles } = plan;
  draft.spread('What to make, by profile', 'section');
  draft.add(
    cell('Profile', 'heading'),
    cell('Made or bought', 'heading'),
    cell('Pieces', 'headingRight'),
    cell('Sticks', 'headingRight'),
    cell('Net length', 'headingRight'),
    cell(`Net length (${unit})`, 'headingRight'),
    cell('Board feet, net', 'headingRight'),
    cell('Board feet with allowance', 'headingRight'),
    cell('Passes', 'headingRight'),
    cell('Machine hours', 'headingRight'),
    cell('Bench hours', 'headingRight'),
    cell('Hours', 'headingRight'),
  );
  const first = draft.next;
  profiles.forEach((one, index) => addMakeRow(draft, plan, one, index, cells, own));
  if (profiles.length === 0) draft.add(cell(NOTHING, 'row'));
  const last = draft.next - 1;
  const row = draft.next;
  const columns: readonly (readonly [string, TotalName, number, 'whole' | 'decimal' | 'length'])[] =
    [
      ['C', 'pieces', total(profiles.map(({ tally }) => tally.pieces)), 'whole'],
      ['D', 'sticks', total(profiles.map(({ tally }) => tally.sticks)), 'whole'],
      [
        'F',
        'lengthNet',
        total(profiles.map(({ tally }) => numberIn(tally.lengthNet, unit))),
        'length',
      ],
      ['G', 'boardFeetNet', total(profiles.map(({ tally }) => tally.boardFeetNet ?? 0)), 'decimal'],
      [
        'H',
        'boardFeetWithAllowance',
        total(profiles.map(({ tally }) => tally.boardFeetWithAllowance ?? 0)),
        'decimal',
      ],
      ['I', 'passes', total(profiles.map(({ tally }) => tally.passes)), 'whole'],
      [
        'J',
        'machineHours',
        total(profiles.map(({ tally }) => machineHoursOf(tally.hours))),
        'decimal',
      ],
      ['K', 'benchHours', total(profiles.map(({ tally }) => benchHoursOf(tally.hours))), 'decimal'],
      ['L', 'hours', total(profiles.map(({ tally }) => hoursOf(tally.hours))), 'decimal'],
    ];
  const style = { whole: 'totalWhole', decimal: 'total', length: 'totalNumber' } as const;
  const totals = columns.map(([column, name, value, kind]): readonly [string, DraftCell] => {
    own.totals.set(name, `${column}${row}`);
    return [column, sum(sumOf(column, first, last), value, style[kind])];
  });
  const byColumn = new Map(totals);
  draft.add(
    cell('Together', 'totalLabel'),
    ...['B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J', 'K', 'L'].map(
      (column) => byColumn.get(column) ?? cell(null, 'totalLabel'),
    ),
  );
  draft.blank();
}

function addMakeRow(
  draft: SheetDraft,
  plan: JobPlan,
  { profile, tally }: ProfilePlan,
  index: number,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { unit } = plan.job.shop;
  const row = draft.next;
  own.hours[index] = `L${row}`;
  const range = (column: string): string => {
    const [first, last] = own.pieces;
    return `${column}$${first}:${column}$${last}`;
  };
  draft.add(
    cell(profile.name, 'rowStrong'),
    cell(MADE[profile.make], 'row'),
    sum(
      () => `SUMPRODUCT(EXACT(${range('B')},A${row})*ISNUMBER(${range('D')}))`,
      tally.pieces,
      'rowWhole',
    ),
    sum(() => cells.sticks[index] ?? '0', tally.sticks, 'rowWhole'),
    cell(printTotal(tally.lengthNet, unit), 'rowRight'),
    sum(
      () => `SUMPRODUCT(EXACT(${range('B')},A${row})*1,${range('D')})`,
      numberIn(tally.lengthNet, unit),
      'rowNumber',
    ),
    cell(tally.boardFeetNet ?? 'not known', 'rowDecimal'),
    cell(tally.boardFeetWithAllowance ?? 'not known', 'rowDecimal'),
    cell(tally.passes, 'rowWhole'),
    cell(machineHoursOf(tally.hours), 'rowDecimal'),
    cell(benchHoursOf(tally.hours), 'rowDecimal'),
    sum(`J${row}+K${row}`, hoursOf(tally.hours), 'rowDecimal'),
  );
}

/** Lumber, offcut credit, labor, overhead, cost and price, a row a profile; then tax. */
export function addMoneyTable(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { profiles, totals } = plan;
  const { rates } = own;
  draft.spread(`Money, by profile (${totals.currency})`, 'section');
  draft.add(
    cell('Profile', 'heading'),
    ...['Lumber', 'Offcut credit', 'Labor', 'Overhead', 'Cost', 'Price'].map((text) =>
      cell(text, 'headingRight'),
    ),
  );
  const first = draft.next;
  profiles.forEach(({ profile, money: lines }, index) => {
    const row = draft.next;
    cells.lumber[index] = `${quoteSheet(SHEET_NAMES.production)}!B${row}`;
    draft.add(
      cell(profile.name, 'rowStrong'),
      sum(() => own.lumber[index] ?? '0', money(lines.lumberCents), 'rowDecimal'),
      cell(0 - money(lines.offcutCreditCents), 'rowDecimal'),
      sum(
        `ROUND(${own.hours[index] ?? '0'}*${rates.hourlyRate},2)`,
        money(lines.laborCents),
        'rowDecimal',
      ),
      sum(
        `ROUND(SUM(B${row}:D${row})*${rates.overhead}/100,2)`,
        money(lines.overheadCents),
        'rowDecimal',
      ),
      sum(`SUM(B${row}:E${row})`, money(lines.costCents), 'rowDecimal'),
      sum(`ROUND(F${row}/(1-${rates.margin}/100),2)`, money(lines.priceCents), 'rowDecimal'),
    );
  });
  if (profiles.length === 0) draft.add(cell(NOTHING, 'row'));
  const last = draft.next - 1;
  const row = draft.next;
  const added = (name: keyof ProfilePlan['money']): number =>
    money(total(profiles.map((one) => one.money[name])));
  const column = (letter: string, value: number): DraftCell =>
    sum(sumOf(letter, first, last), value, 'total');
  draft.add(
    cell('Together', 'totalLabel'),
    column('B', added('lumberCents')),
    column('C', 0 - added('offcutCreditCents')),
    column('D', added('laborCents')),
    column('E', added('overheadCents')),
    column('F', added('costCents')),
    column('G', added('priceCents')),
  );
  own.totals.set('lumber', `B${row}`);
  own.totals.set('cost', `F${row}`);
  own.totals.set('price', `G${row}`);
  const none = [1, 2, 3, 4, 5].map(() => null);
  const price = money(totals.priceCents);
  const tax = money(totals.taxCents);
  draft.add(cell('Tax'), ...none, sum(`ROUND(G${row}*${rates.tax}/100,2)`, tax, 'money'));
  const all = draft.add(
    cell('Price with tax', 'totalLabel'),
    ...none.map(() => cell(null, 'totalLabel')),
    sum(`G${row}+G${row + 1}`, price + tax, 'total'),
  );
  own.totals.set('priceWithTax', `G${all}`);
  draft.blank();
}
