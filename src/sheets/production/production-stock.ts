/** What to pull from the rack and what to buy, on the production sheet. */
import {
  plansOf,
  type CuttingGroup,
  type JobPlan,
  type StockUse,
} from '../../planning/job-plan.ts';
import { money, sumOf, total } from '../plan-cells.ts';
import { sayStock } from '../words/say-stock.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { ProductionCells } from './production-cells.ts';

/**
 * A row for each row of Stock that a group of profiles uses, its cost by formula, and the sum of all;
 * then what each profile bears of lumber that several have in common.
 */
export function addStockTable(draft: SheetDraft, plan: JobPlan, own: ProductionCells): void {
  const { currency } = plan.totals;
  draft.spread('Lumber: what to pull from the rack, and what to buy', 'section');
  const heads = draft.add(
    cell(null, 'heading'),
    cell('For', 'heading'),
    cell('Stock of', 'heading'),
    cell('What', 'heading'),
    cell(null, 'heading'),
    cell(null, 'heading'),
    cell('From the rack', 'headingRight'),
    cell('To buy', 'headingRight'),
    cell(`Each (${currency})`, 'headingRight'),
    cell(`Cost (${currency})`, 'headingRight'),
    cell('Board feet', 'headingRight'),
    cell('Pulled', 'heading'),
    cell('Bought', 'heading'),
  );
  draft.merge(heads, 3, 5);
  const first = draft.next;
  const costs = plan.groups.map((group) => addGroup(draft, plan, group));
  if (plan.groups.length === 0) draft.add(null, cell('Nothing is needed.', 'row'));
  const last = draft.next - 1;
  const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
  const added = (value: (use: StockUse) => number): number => total(uses.map(value));
  const none = cell(null, 'totalLabel');
  const row = draft.add(
    none,
    cell('Together', 'totalLabel'),
    ...Array.from({ length: 4 }, () => none),
    sum(
      sumOf('G', first, last),
      added((use) => use.fromRack),
      'totalWhole',
    ),
    sum(
      sumOf('H', first, last),
      added((use) => use.bought),
      'totalWhole',
    ),
    none,
    sum(sumOf('J', first, last), money(added((use) => use.costCents)), 'total'),
    sum(
      sumOf('K', first, last),
      added((use) => use.boardFeet ?? 0),
      'total',
    ),
    none,
    none,
  );
  own.totals.set('fromRack', `G${row}`);
  own.totals.set('toBuy', `H${row}`);
  addShares(draft, plan, costs, own);
  draft.blank();
}

/** Its rows; gives the sum of their costs as a formula. */
function addGroup(draft: SheetDraft, plan: JobPlan, { name, stockUse }: CuttingGroup): string {
  const first = draft.next;
  for (const use of stockUse) {
    const at = draft.next;
    const row = draft.add(
      cell(null, 'row'),
      cell(name, 'row'),
      cell(use.item.for, 'row'),
      cell(sayStock(use.item, plan.job.shop), 'row'),
      null,
      null,
      cell(use.fromRack, 'rowWhole'),
      cell(use.bought, 'rowWhole'),
      cell(money(use.priceCents), 'rowDecimal'),
      sum(`(G${at}+H${at})*I${at}`, money(use.costCents), 'rowDecimal'),
      cell(use.boardFeet ?? 'not known', 'rowDecimal'),
      cell(null, use.fromRack > 0 ? 'tick' : 'row'),
      cell(null, use.bought > 0 ? 'tick' : 'row'),
    );
    draft.merge(row, 3, 5);
  }
  return sumOf('J', first, draft.next - 1);
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
      own.lumber[index] = plans.length === 1 ? cost : `J${draft.next}`;
      if (plans.length === 1) return;
      const isLast = place === plans.length - 1;
      const rest = `${cost}-${sumOf('J', first, draft.next - 1)}`;
      const share = money(lines.lumberCents);
      const row = draft.add(
        cell(null, 'row'),
        cell(profile.name, 'row'),
        ...Array.from({ length: 7 }, () => cell(null, 'row')),
        isLast ? sum(rest, share, 'rowDecimal') : cell(share, 'rowDecimal'),
      );
      draft.merge(row, 1, 8);
    });
  });
}
