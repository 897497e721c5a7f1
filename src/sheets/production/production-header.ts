/** The head of the production sheet: totals, the shop's rates, and what must agree between sheets. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { money, type PlanCells } from '../plan-cells.ts';
import { count, numberIn, printExact } from '../words/print-length.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import {
  totalCell,
  type ProductionCells,
  type RateName,
  type TotalName,
} from './production-cells.ts';

const METRES_PER_FOOT = 0.3048;
/** Finer than any figure shown, coarser than what adding in another order changes. */
const AGREES_WITHIN = '0.0005';

/** A line of one of the three columns: a label and its cell, or a heading alone. */
type Line = readonly [label: string, value: DraftCell];

/** Columns from 0 of the three: the label's first and last, and the value's first and last. */
const PLACES = [
  [0, 1, 2, 3],
  [5, 6, 7, 7],
  [9, 11, 12, 12],
] as const;

export function addHeader(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const { shop } = plan.job;
  const rooms = new Set(plan.pieces.map((piece) => piece.room)).size;
  const unit = shop.unit === 'mm' ? 'millimetres' : 'inches';
  draft.spread('Production', 'title');
  draft.spread(
    `${count(rooms, 'room')}, ${count(plan.profiles.length, 'profile')} to make or buy. Lengths in ${unit}, to the next ${printExact(shop.lengthPrecision, shop)}, from end to end as Pieces says. Change a rate, and hours and prices follow.`,
    'note',
  );
  draft.blank();
  const columns = [
    totalsOf(plan, cells, own),
    ratesOf(plan, own, draft.next),
    agreements(cells, own),
  ];
  const most = Math.max(...columns.map((lines) => lines.length));
  const first = draft.next;
  for (let at = 0; at < most; at++) {
    const row: DraftCell[] = Array.from({ length: 13 }, () => null);
    columns.forEach((lines, column) => {
      const line = lines[at];
      const [labelFrom, labelTo, valueFrom, valueTo] = PLACES[column] ?? PLACES[0];
      if (line === undefined) return;
      const [label, value] = line;
      row[labelFrom] = cell(label, value === null ? 'section' : 'fact');
      row[valueFrom] = value;
      const next = draft.next;
      if (value === null) draft.merge(next, labelFrom, valueTo);
      else {
        draft.merge(next, labelFrom, labelTo);
        draft.merge(next, valueFrom, valueTo);
      }
    });
    draft.add(...row);
  }
  draft.highlight(`M${first + 1}:M${draft.next - 1}`, `M${first + 1}="differs"`, 'caution');
  draft.blank();
}

function totalsOf(plan: JobPlan, cells: PlanCells, own: ProductionCells): Line[] {
  const { totals, profiles, pieces, job } = plan;
  const { unit } = job.shop;
  const late = (name: TotalName) => (): string => totalCell(own, name);
  const net = lengthStyles(
    pieces.map(({ cutLength }) => cutLength),
    unit,
  );
  const sticks = profiles.flatMap((one) => one.sticks.map(({ length }) => length));
  const bought = lengthStyles(sticks, unit);
  return [
    ['In all', null],
    ['Pieces to cut', sum(late('pieces'), totals.pieces, 'whole')],
    ['Pieces done already', cell(totals.done, 'whole')],
    ['Sticks and blanks', sum(late('sticks'), totals.sticks, 'whole')],
    [`Net length (${unit})`, sum(late('lengthNet'), numberIn(totals.lengthNet, unit), net.plain)],
    [
      `Length used of sticks (${unit})`,
      sum(() => cells.boughtOnCutting, numberIn(totals.lengthBought, unit), bought.plain),
    ],
    ['Board feet, net', sum(late('boardFeetNet'), totals.boardFeetNet, 'decimal')],
    [
      'Board feet with allowance',
      sum(late('boardFeetWithAllowance'), totals.boardFeetWithAllowance, 'decimal'),
    ],
    ['Passes over the blade', sum(late('passes'), totals.passes, 'whole')],
    ['Hours', sum(late('hours'), totals.hours, 'decimal')],
    [`Cost (${totals.currency})`, sum(late('cost'), money(totals.costCents), 'money')],
    [`Price (${totals.currency})`, sum(late('price'), money(totals.priceCents), 'money')],
    [
      `Price with tax (${totals.currency})`,
      sum(late('priceWithTax'), money(totals.priceCents) + money(totals.taxCents), 'total'),
    ],
  ];
}

/** @param top The row on which the column begins. */
function ratesOf(plan: JobPlan, own: ProductionCells, top: number): Line[] {
  const { shop } = plan.job;
  const isMetric = shop.unit === 'mm';
  const feed = isMetric ? shop.feed * METRES_PER_FOOT : shop.feed;
  const rates: readonly (readonly [RateName, string, DraftCell])[] = [
    ['hourlyRate', `Hourly rate (${shop.currency})`, cell(shop.hourlyRate, 'money')],
    ['overhead', 'Overhead, % of the rest', cell(shop.overhead, 'number')],
    ['margin', 'Margin, % of price', cell(shop.margin, 'number')],
    ['tax', 'Tax, % of price', cell(shop.tax, 'number')],
    ['setUpMinutes', 'Set-up of each cove (min)', cell(shop.setUpMinutes, 'number')],
    ['feed', `Feed over the blade (${isMetric ? 'm' : 'ft'}/min)`, cell(feed, 'number')],
    ['handling', 'Carrying round, each pass (s)', cell(shop.handlingPerPass, 'number')],
    ['smoothing', 'Smoothing (min/sq ft)', cell(shop.smoothingMinutes, 'number')],
    ['crosscut', 'Each crosscut (s)', cell(shop.crosscutSeconds, 'number')],
  ];
  rates.forEach(([name], at) => own.rates.set(name, `$H$${top + 1 + at}`));
  return [['Rates of the shop', null], ...rates.map(([, label, value]): Line => [label, value])];
}

function agreements(cells: PlanCells, own: ProductionCells): Line[] {
  const total = (name: TotalName) => (): string => totalCell(own, name);
  const agrees = (label: string, one: () => string, other: () => string): Line => [
    label,
    sum(
      () => `IF(ABS(${one()}-${other()})<${AGREES_WITHIN},"agrees","differs")`,
      'agrees',
      'center',
    ),
  ];
  const byRoom = (label: string, one: TotalName, other: TotalName): Line =>
    agrees(`${label} by room and by profile`, total(one), total(other));
  return [
    ['What must agree', null],
    agrees(
      'Pieces here and on Pieces',
      total('piecesByRoom'),
      () => `COUNT(${cells.lengthsOnPieces})`,
    ),
    agrees(
      'Length here and on Pieces',
      total('lengthByRoom'),
      () => `SUM(${cells.lengthsOnPieces})`,
    ),
    byRoom('Pieces', 'piecesByRoom', 'pieces'),
    byRoom('Board feet', 'boardFeetByRoom', 'boardFeetNet'),
    byRoom('Passes', 'passesByRoom', 'passes'),
    byRoom('Hours', 'hoursByRoom', 'hours'),
    agrees('Hours in order of work and by profile', total('hoursInOrder'), total('hours')),
    byRoom('Price', 'priceByRoom', 'price'),
    agrees('Stick lengths here and on Cutting', total('lengthBought'), () => cells.boughtOnCutting),
    agrees('Lumber here and on Cutting', total('lumber'), () => cells.lumberOnCutting),
    agrees('Price here and on Client', total('price'), () => cells.priceOnClient),
  ];
}
