/** What to pull from the rack and what to buy, on the production sheet. */
import type { JobPlan, StockUse } from '../planning/job-plan.ts';
import { money, sumOf, total } from './plan-cells.ts';
import type { ProductionCells } from './production-cells.ts';
import { sayStock } from './say-stock.ts';
import { cell, sum, type SheetDraft } from './sheet-draft.ts';

/** A row for each row of Stock that a profile uses, its cost by formula, and the sum of all. */
export function addStockTable(draft: SheetDraft, plan: JobPlan, own: ProductionCells): void {
  const { currency } = plan.totals;
  const { unit } = plan.job.shop;
  draft.spread('What to pull from the rack, and what to buy', 'section');
  const heads = draft.add(
    cell('For the profile', 'heading'),
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
  plan.profiles.forEach(({ profile, stockUse }, index) => {
    const top = draft.next;
    for (const use of stockUse) {
      const row = draft.add(
        cell(profile.name, 'row'),
        cell(use.item.for, 'row'),
        cell(sayStock(use.item, unit), 'row'),
        null,
        cell(use.fromRack, 'rowWhole'),
        cell(use.bought, 'rowWhole'),
        cell(money(use.priceCents), 'rowDecimal'),
        sum(`(E${draft.next}+F${draft.next})*G${draft.next}`, money(use.costCents), 'rowDecimal'),
        cell(use.boardFeet ?? 'not known', 'rowDecimal'),
      );
      draft.merge(row, 2, 3);
    }
    own.lumber[index] = sumOf('H', top, draft.next - 1);
  });
  if (plan.profiles.length === 0) draft.add(cell('Nothing is needed.', 'row'));
  const last = draft.next - 1;
  const uses = plan.profiles.flatMap(({ stockUse }) => stockUse);
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
}
