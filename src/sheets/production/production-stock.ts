/** What to pull from the rack and what to buy, on the production sheet. */
import {
  plansOf,
  type CuttingGroup,
  type JobPlan,
  type StockUse,
} from '../../planning/job-plan.ts';
import { money, sumOf, total } from '../plan-cells.ts';
import type { ProductionCells } from './production-cells.ts';
import { sayStock } from '../say-stock.ts';
import { cell, sum, type SheetDraft } from '../sheet-draft.ts';

/**
 * A row for each row of Stock that a group of profiles uses, its cost by formula, and the sum of all;
 * then what each profile bears of lumber that several have in common.
 */
export function addStockTable(draft: SheetDraft, plan: JobPlan, own: ProductionCells): void {
  const { currency } = plan.totals;
  draft.spread('What to pull from the rack, and what to buy', 'section');
  const heads = draft.add(
    cell('For', 'heading'),
    cell('Stock of', 'heading'),
    cell('What', 'heading'),
    cell(null, 'heading'),
    cell('From the rack', 'headingRight'),
    cell('To buy', 'headingRight'),
    cell(`Each (${currency})`, 'headingRight'),
    cell(`Cost (${currency})`, 'headingRight'),
    cell('Board feet', 'headingRight'),
  );
  draft.merge(heads, 2, 3);
  const first = draft.next;
  const costs = plan.groups.map((group) => addGroup(draft, plan, group));
  if (plan.groups.length === 0) draft.add(cell('Nothing is needed.', 'row'));
  const last = draft.next - 1;
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  const added = (value: (use: StockUse) => number): number => total(uses.map(value));
  draft.add(
    cell('Together', 'totalLabel'),
    cell(null, 'totalLabel'),
    cell(null, 'totalLabel'),
    cell(null, 'totalLabel'),
    sum(
      sumOf('E', first, last),
      added((use) => use.fromRack),
      'totalWhole',
    ),
    sum(
      sumOf('F', first, last),
      added((use) => use.bought),
      'totalWhole',
    ),
    cell(null, 'totalLabel'),
    sum(sumOf('H', first, last), money(added((use) => use.costCents)), 'total'),
    sum(
      sumOf('I', first, last),
      added((use) => use.boardFeet ?? 0),
      'total',
    ),
  );
  addShares(draft, plan, costs, own);
}

/** Its rows; gives the sum of their costs as a formula. */
function addGroup(draft: SheetDraft, plan: JobPlan, { name, stockUse }: CuttingGroup): string {
  const first = draft.next;
  for (const use of stockUse) {
    const at = draft.next;
    const row = draft.add(
      cell(name, 'row'),
      cell(use.item.for, 'row'),
      cell(sayStock(use.item, plan.job.shop.unit), 'row'),
      null,
      cell(use.fromRack, 'rowWhole'),
      cell(use.bought, 'rowWhole'),
      cell(money(use.priceCents), 'rowDecimal'),
      sum(`(E${at}+F${at})*G${at}`, money(use.costCents), 'rowDecimal'),
      cell(use.boardFeet ?? 'not known', 'rowDecimal'),
    );
    draft.merge(row, 2, 3);
  }
  return sumOf('H', first, draft.next - 1);
}

/** A profile alone bears all of its group; of several the last bears what the others leave, so that they add up. */
function addShares(
  draft: SheetDraft,
  plan: JobPlan,
  costs: readonly string[],
  own: ProductionCells,
): void {
  const isShared = plan.groups.some(({ profiles }) => profiles.length > 1);
  if (isShared) {
    draft.blank();
    draft.spread('Shares of the lumber that profiles have in common', 'section');
    draft.spread(
      'What a row of boards costs goes by the widths of the strips that are cut from; what sticks cost, by their number.',
      'note',
    );
  }
  plan.groups.forEach((group, at) => {
    const cost = costs[at] ?? '0';
    const plans = plansOf(plan, group);
    const first = draft.next;
    plans.forEach((planned, place) => {
      const { profile, money: lines } = planned;
      const index = plan.profiles.indexOf(planned);
      own.lumber[index] = plans.length === 1 ? cost : `H${draft.next}`;
      if (plans.length === 1) return;
      const isLast = place === plans.length - 1;
      const rest = `${cost}-${sumOf('H', first, draft.next - 1)}`;
      const share = money(lines.lumberCents);
      draft.add(
        cell(profile.name, 'row'),
        ...Array.from({ length: 6 }, () => cell(null, 'row')),
        isLast ? sum(rest, share, 'rowDecimal') : cell(share, 'rowDecimal'),
      );
    });
  });
}
