/** What to pull from the rack and what to buy, on the production sheet. */
import { plansOf, type CuttingGroup, type JobPlan } from '../../planning/job-plan.ts';
import type { StockUse } from '../../planning/opened-stock.ts';
import { countCutStock, listCutStock, type CutStock } from '../../planning/cut/cut-stock.ts';
import type { StockItem } from '../../planning/job.ts';
import { TICK } from '../words/tick-marks.ts';
import type { CellDescription } from '../grammar/description.ts';
import { total } from '../grammar/figures.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { sayStock, sayToOrder } from '../words/say-stock.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { LUMBER } from './production-columns.ts';
import { NOTHING, SECTIONS, SOLD_BY_LENGTH, UNKNOWN } from './production-words.ts';

/** A row for each row of Stock that a group of profiles uses, and the sum of all. */
export function addStockTable(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  draft.spread(SECTIONS.lumber, 'section');
  draft.put(LUMBER.headings(plan.job.shop));
  const first = draft.next;
  const rowsOf = new Map<StockItem, readonly number[]>();
  for (const group of plan.groups) {
    addGroup(draft, plan, group, rowsOf, acrossSheets, onThisSheet);
  }
  placeCounts(rowsOf, acrossSheets);
  if (plan.groups.length === 0) draft.put(LUMBER.loose({ for: cell(NOTHING.need, 'row') }));
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  const rows = [first, draft.next - 1] as const;
  const all = (value: (use: StockUse) => number): number => total(uses.map(value));
  const { unit } = plan.job.shop;
  const volume = VOLUME[unit].styles;
  const boardFeet = all((use) => volumeIn(use.boardFeet ?? 0, unit));
  const together = {
    for: cell('Together', 'totalLabel'),
    fromRack: LUMBER.sumCell(
      'fromRack',
      rows,
      all((use) => use.fromRack),
      'totalWhole',
    ),
    toBuy: LUMBER.sumCell(
      'toBuy',
      rows,
      all((use) => use.bought),
      'totalWhole',
    ),
    boardFeet: LUMBER.sumCell('boardFeet', rows, boardFeet, volume.total),
  };
  const row = draft.put(LUMBER.loose(together, cell(null, 'totalLabel')));
  onThisSheet.place('total boardFeetOfStock', LUMBER.at('boardFeet', row));
  onThisSheet.place('total fromRack', LUMBER.at('fromRack', row));
  onThisSheet.place('total toBuy', LUMBER.at('toBuy', row));
  draft.blank();
}

/** What all groups together pull and buy of each row of Stock. */
function placeCounts(
  rowsOf: ReadonlyMap<StockItem, readonly number[]>,
  acrossSheets: PlanAnchors,
): void {
  for (const [item, rows] of rowsOf) {
    const cellsOf = (column: 'fromRack' | 'toBuy'): readonly string[] =>
      rows.map((row) => onSheet('production', LUMBER.fixed(column, row)));
    acrossSheets.place('fromRackOnProduction', cellsOf('fromRack').join('-'), item);
    acrossSheets.place('toBuyOnProduction', cellsOf('toBuy').join('-'), item);
    acrossSheets.place('allToBuyOnProduction', cellsOf('toBuy').join('+'), item);
  }
}

/** Its rows; a profile that is alone in its group bears all of their board feet. */
function addGroup(
  draft: SheetDraft,
  plan: JobPlan,
  group: CuttingGroup,
  rowsOf: Map<StockItem, readonly number[]>,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  const { name, stockUse, profiles } = group;
  const first = draft.next;
  const cut = listCutStock(plansOf(plan, group));
  const missing = profiles.some(({ make }) => make !== 'buy') ? UNKNOWN : SOLD_BY_LENGTH;
  for (const use of stockUse) {
    const row = draft.next;
    const counts = (['fromRack', 'toBuy'] as const).map((column) => LUMBER.fixed(column, row));
    const all = counts.map((one) => onSheet('production', one)).join('+');
    acrossSheets.place('countOnProduction', all, use);
    rowsOf.set(use.item, [...(rowsOf.get(use.item) ?? []), row]);
    draft.put(
      LUMBER.row({
        blank: cell(null, 'row'),
        for: cell(name, 'row'),
        stockOf: cell(use.item.for, 'row'),
        what: cell(
          `${sayStock(use.item, plan.job.shop)}${sayOrder(plan, use, cut)}${sayCutStock(use, cut)}`,
          'row',
        ),
        fromRack: cell(use.fromRack, 'rowWhole'),
        toBuy: cell(use.bought, 'rowWhole'),
        boardFeet: cell(
          use.boardFeet === undefined ? missing : volumeIn(use.boardFeet, plan.job.shop.unit),
          VOLUME[plan.job.shop.unit].styles.row,
        ),
        pulled: box(use.fromRack, countCutStock(cut, use.item, 'rack')),
        bought: box(use.bought, countCutStock(cut, use.item, 'buy')),
      }),
    );
  }
  const [alone, ...others] = plansOf(plan, group);
  if (alone === undefined || others.length > 0) return;
  onThisSheet.place('boardFeetBorne', LUMBER.sum('boardFeet', first, draft.next - 1), alone);
}

/** A box where there is something to pull or buy, ticked where all of it is cut already. */
function box(all: number, cut: number): CellDescription {
  return cell(all > 0 && cut === all ? TICK : null, all > 0 ? 'tick' : 'row');
}

/** By what is still to buy, as the sheet Yard has it. */
function sayOrder({ job }: JobPlan, { item, bought }: StockUse, cut: CutStock): string {
  return sayToOrder(item, bought - countCutStock(cut, item, 'buy'), job.shop);
}

/** `; cut already: 2 from the rack, 1 bought`: these are among the counts, and nobody takes them again. */
function sayCutStock({ item }: StockUse, cut: CutStock): string {
  const [rack, bought] = [countCutStock(cut, item, 'rack'), countCutStock(cut, item, 'buy')];
  const parts = [
    ...(rack === 0 ? [] : [`${rack} from the rack`]),
    ...(bought === 0 ? [] : [`${bought} bought`]),
  ];
  return parts.length === 0 ? '' : `; cut already: ${parts.join(', ')}`;
}
