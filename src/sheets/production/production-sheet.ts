/** The production sheet: what to make, from what, in which order, and what it comes to. */
import { sayFault } from '../../core/faults/fault.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { SheetDescription } from '../description.ts';
import { money, SHEET_NAMES, type PlanCells } from '../plan-cells.ts';
import { count, numberIn, printExact } from '../print-length.ts';
import {
  newProductionCells,
  totalCell,
  type ProductionCells,
  type TotalName,
} from './production-cells.ts';
import { addPieces } from './production-pieces.ts';
import { addMakeTable, addMoneyTable } from './production-profiles.ts';
import { addStockTable } from './production-stock.ts';
import { cell, sum, SheetDraft, type DraftCell } from '../sheet-draft.ts';

const ROWS_ON_A_PAGE = 38;

/** One grid for all tables of the sheet; the piece list sets the widths. */
const COLUMNS = [30, 16, 12, 11, 17, 15, 17, 15, 15, 18, 9, 9].map((width) => ({ width }));

export interface ProductionDraft {
  readonly finish: () => SheetDescription;
}

export function draftProduction(plan: JobPlan, cells: PlanCells): ProductionDraft {
  const draft = new SheetDraft(SHEET_NAMES.production, COLUMNS);
  const own = newProductionCells();
  addHeader(draft, plan, cells, own);
  addMakeTable(draft, plan, cells, own);
  addMoneyTable(draft, plan, cells, own);
  // The stock table begins a page of its own where the first one would break it apart.
  const rows = draft.next + plan.groups.reduce((all, one) => all + one.stockUse.length, 0);
  if (rows > ROWS_ON_A_PAGE) draft.breakPage();
  addStockTable(draft, plan, own);
  addCautions(draft, plan);
  draft.breakPage();
  const heads = addPieces(draft, plan, own);
  const { paper } = plan.job.shop;
  return {
    finish: () =>
      draft.finish({
        paper,
        orientation: 'landscape',
        titleRows: [heads, heads],
        footer: 'Production',
      }),
  };
}

/** Totals at the left, the shop's rates and what must agree at the right. */
function addHeader(draft: SheetDraft, plan: JobPlan, cells: PlanCells, own: ProductionCells): void {
  const { totals } = plan;
  const { shop } = plan.job;
  const rooms = new Set(plan.pieces.map((piece) => piece.room)).size;
  const unit = shop.unit === 'mm' ? 'millimetres' : 'inches';
  draft.spread('Production', 'title');
  draft.spread(
    `${count(rooms, 'room')}, ${count(plan.profiles.length, 'profile')} to make or buy; lengths in ${unit}, to the next ${printExact(shop.lengthPrecision, shop.unit)}, from end to end as the list of pieces says`,
    'subtitle',
  );
  draft.blank();
  const at = draft.next;
  const late = (name: TotalName) => (): string => totalCell(own, name);
  const priceWithTax = money(totals.priceCents + totals.taxCents);
  const left: readonly (readonly [string, DraftCell])[] = [
    ['Pieces to cut', sum(late('pieces'), totals.pieces, 'whole')],
    ['Pieces done already', cell(totals.done, 'whole')],
    ['Sticks and blanks', sum(late('sticks'), totals.sticks, 'whole')],
    [
      `Net length (${shop.unit})`,
      sum(late('lengthNet'), numberIn(totals.lengthNet, shop.unit), 'number'),
    ],
    [
      `Length used of sticks (${shop.unit})`,
      sum(() => cells.boughtOnCutting, numberIn(totals.lengthBought, shop.unit), 'number'),
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
    [`Price with tax (${totals.currency})`, sum(late('priceWithTax'), priceWithTax, 'total')],
  ];
  const agrees = (one: () => string, other: () => string): DraftCell =>
    sum(() => `IF(ABS(${one()}-${other()})<0.005,"agrees","differs")`, 'agrees', 'center');
  own.rates = {
    hourlyRate: `F${at + 1}`,
    overhead: `F${at + 2}`,
    margin: `F${at + 3}`,
    tax: `F${at + 4}`,
  };
  const right: readonly (readonly [string, DraftCell] | null)[] = [
    ['Rates of the shop', null],
    [`Hourly rate (${totals.currency})`, cell(shop.hourlyRate, 'money')],
    ['Overhead, %', cell(shop.overhead, 'number')],
    ['Margin, % of price', cell(shop.margin, 'number')],
    ['Tax, %', cell(shop.tax, 'number')],
    null,
    ['Between the sheets', null],
    ['Lumber here and on Cutting', agrees(late('lumber'), () => cells.lumberOnCutting)],
    ['Price here and on Client', agrees(late('price'), () => cells.priceOnClient)],
  ];
  left.forEach(([label, value], index) => {
    const side = right[index] ?? null;
    const beside = side === null ? [] : [null, cell(side[0], 'label'), null, side[1]];
    const row = draft.add(cell(label, 'label'), value, ...beside);
    if (side !== null) draft.merge(row, 3, 4);
  });
  draft.blank();
}

function addCautions(draft: SheetDraft, plan: JobPlan): void {
  if (plan.cautions.length === 0) return;
  draft.blank();
  draft.spread('Cautions', 'section');
  for (const one of plan.cautions) draft.spread(sayFault(one), 'caution');
}
