/** What to pull from the rack and what to buy, on the production sheet. */
import {
  plansOf,
  type CuttingGroup,
  type JobPlan,
  type ProfilePlan,
} from '../../planning/job-plan.ts';
import type { StockUse } from '../../planning/opened-stock.ts';
import { countCutStock, listCutStock, type CutStock } from '../../planning/cut/cut-stock.ts';
import type { StockItem } from '../../planning/job.ts';
import { TICK } from '../words/tick-marks.ts';
import type { CellDescription } from '../grammar/description.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { VOLUME, volumeIn } from '../words/lumber-volume.ts';
import { sayStock, sayToOrder } from '../words/say-stock.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { LUMBER, SHARES } from './production-columns.ts';
import { NOTHING, SECTIONS, SHARES_NOTE, SOLD_BY_LENGTH, UNKNOWN } from './production-words.ts';

/**
 * A row for each row of Stock that a group of profiles uses, its cost by formula, and the sum of all;
 * then what each profile bears of lumber that several have in common.
 */
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
  const sums = plan.groups.map((group) => addGroup(draft, plan, group, rowsOf));
  placeCounts(rowsOf, acrossSheets);
  if (plan.groups.length === 0) draft.put(LUMBER.loose({ for: cell(NOTHING.need, 'row') }));
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  const rows = [first, draft.next - 1] as const;
  const all = (value: (use: StockUse) => number): number => total(uses.map(value));
  const cost = money(all((use) => use.costCents));
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
    cost: LUMBER.sumCell('cost', rows, cost, 'total'),
    boardFeet: LUMBER.sumCell('boardFeet', rows, boardFeet, volume.total),
  };
  const row = draft.put(LUMBER.loose(together, cell(null, 'totalLabel')));
  onThisSheet.place('total boardFeetOfStock', LUMBER.at('boardFeet', row));
  onThisSheet.place('total fromRack', LUMBER.at('fromRack', row));
  onThisSheet.place('total toBuy', LUMBER.at('toBuy', row));
  if (isByAllowance(plan)) onThisSheet.place('total lumber', LUMBER.at('cost', row));
  addShares(draft, plan, sums, acrossSheets, onThisSheet);
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

/** Sums over the rows of a group, as formulas. */
interface GroupSums {
  readonly cost: string;
  readonly boardFeet: string;
}

/** Its rows; gives their sums. */
function addGroup(
  draft: SheetDraft,
  plan: JobPlan,
  group: CuttingGroup,
  rowsOf: Map<StockItem, readonly number[]>,
): GroupSums {
  const { name, stockUse, profiles } = group;
  const first = draft.next;
  const cut = listCutStock(plansOf(plan, group));
  const missing = profiles.some(({ make }) => make !== 'buy') ? UNKNOWN : SOLD_BY_LENGTH;
  for (const use of stockUse) {
    const row = draft.next;
    const pulled = LUMBER.at('fromRack', row);
    rowsOf.set(use.item, [...(rowsOf.get(use.item) ?? []), row]);
    const cost = `(${pulled}+${LUMBER.at('toBuy', row)})*${LUMBER.at('each', row)}`;
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
        each: cell(money(use.priceCents), 'rowDecimal'),
        cost: sum(cost, money(use.costCents), 'rowDecimal'),
        boardFeet: cell(
          use.boardFeet === undefined ? missing : volumeIn(use.boardFeet, plan.job.shop.unit),
          VOLUME[plan.job.shop.unit].styles.row,
        ),
        pulled: box(use.fromRack, countCutStock(cut, use.item, 'rack')),
        bought: box(use.bought, countCutStock(cut, use.item, 'buy')),
      }),
    );
  }
  const sumOf = (column: 'cost' | 'boardFeet'): string => LUMBER.sum(column, first, draft.next - 1);
  return { cost: sumOf('cost'), boardFeet: sumOf('boardFeet') };
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

/** Then the rows of money have other lumber: what is borne as planned has rows of its own, of each profile. */
function isByAllowance({ job }: JobPlan): boolean {
  return job.shop.priceBasis === 'allowance';
}

/** A profile alone bears all of its group; of several the last bears what the others leave, so that they add up. */
function addShares(
  draft: SheetDraft,
  plan: JobPlan,
  sums: readonly GroupSums[],
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  const isShared = plan.groups.some(({ profiles }) => profiles.length > 1);
  const isAllowed = isByAllowance(plan);
  if (isShared || (isAllowed && plan.groups.length > 0)) {
    draft.blank();
    draft.spread(isAllowed ? SECTIONS.borne : SECTIONS.shares, 'section');
    draft.spread(SHARES_NOTE, 'note');
  }
  plan.groups.forEach((group, at) => {
    const own = sums[at];
    if (own === undefined) throw new RangeError(`The stock of ${group.name} has no cost.`);
    const plans = plansOf(plan, group);
    const [alone] = plans;
    const isAlone = alone !== undefined && plans.length === 1;
    if (isAlone) onThisSheet.place('boardFeetBorne', own.boardFeet, alone);
    if (isAlone && !isAllowed) onThisSheet.place('lumberBorne', own.cost, alone);
    else addGroupShares(draft, plans, own.cost, onThisSheet);
    for (const planned of isAllowed ? plans : []) {
      const at = onSheet('production', onThisSheet.at('lumberBorne', planned));
      acrossSheets.place('lumberOnProduction', at, planned);
    }
  });
}

function addGroupShares(
  draft: SheetDraft,
  plans: readonly ProfilePlan[],
  cost: string,
  onThisSheet: ProductionAnchors,
): void {
  const first = draft.next;
  plans.forEach((planned, place) => {
    const { profile, byPlan } = planned;
    const isLast = place === plans.length - 1;
    const left = `${cost}-${SHARES.sum('share', first, draft.next - 1)}`;
    const share = money(byPlan.money.lumberCents);
    const none = cell(null, 'row');
    const cells = {
      profile: cell(profile.name, 'row'),
      share: isLast ? sum(left, share, 'rowDecimal') : cell(share, 'rowDecimal'),
    };
    const row = draft.put({ ...SHARES.loose(cells, none), joins: SHARES.joins() });
    onThisSheet.place('lumberBorne', SHARES.at('share', row), planned);
  });
}
