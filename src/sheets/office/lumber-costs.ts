/** What the lumber of the plan costs, and what each profile bears of it. */
import { plansOf, type JobPlan, type ProfilePlan } from '../../planning/job-plan.ts';
import { money, total } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { sayStock } from '../words/say-stock.ts';
import type { OfficeAnchors } from './office-anchors.ts';
import { LUMBER, SHARES } from './office-columns.ts';
import { NONE, SECTIONS, SHARES_NOTE, TOGETHER } from './office-words.ts';

/**
 * A row for each row of Stock that a group of profiles uses, its cost by formula, and the sum of all;
 * then what each profile bears of lumber that several have in common.
 */
export function addLumber(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const { groups, job } = plan;
  draft.spread(SECTIONS.lumber, 'section');
  draft.put(LUMBER.headings(job.shop));
  const first = draft.next;
  const costs = groups.map(({ name, stockUse }) => {
    const top = draft.next;
    for (const use of stockUse) {
      const row = draft.next;
      const [count, each] = [LUMBER.at('count', row), LUMBER.at('each', row)];
      draft.put(
        LUMBER.row({
          for: cell(name, 'row'),
          stockOf: cell(use.item.for, 'row'),
          what: cell(sayStock(use.item, job.shop), 'row'),
          count: sum(
            () => acrossSheets.at('countOnProduction', use),
            use.fromRack + use.bought,
            'rowWhole',
          ),
          each: cell(money(use.priceCents), 'rowDecimal'),
          cost: sum(`${count}*${each}`, money(use.costCents), 'rowDecimal'),
        }),
      );
    }
    return LUMBER.sum('cost', top, draft.next - 1);
  });
  if (groups.length === 0) draft.put(LUMBER.sparseRow({ for: cell(NONE.lumber, 'row') }));
  const uses = groups.flatMap(({ stockUse }) => stockUse);
  const all = total(uses.map(({ fromRack, bought }) => fromRack + bought));
  const rows = [first, draft.next - 1] as const;
  const together = {
    for: cell(TOGETHER, 'totalLabel'),
    count: LUMBER.sumCell('count', rows, all, 'totalWhole'),
    cost: LUMBER.sumCell('cost', rows, money(total(uses.map((use) => use.costCents))), 'total'),
  };
  draft.put(LUMBER.loose(together, cell(null, 'totalLabel')));
  addShares(draft, plan, costs, acrossSheets, onThisSheet);
  draft.blank();
}

/** A profile alone bears all of its group; of several the last bears what the others leave, so that they add up. */
function addShares(
  draft: SheetDraft,
  plan: JobPlan,
  costs: readonly string[],
  acrossSheets: PlanAnchors,
  onThisSheet: OfficeAnchors,
): void {
  const isShared = plan.groups.some(({ profiles }) => profiles.length > 1);
  // By the allowance the rows of money have other lumber: what is borne as planned has rows of its own.
  const isAllowed = plan.job.shop.priceBasis === 'allowance';
  if (isShared || (isAllowed && plan.groups.length > 0)) {
    draft.blank();
    draft.spread(isAllowed ? SECTIONS.borne : SECTIONS.shares, 'section');
    draft.spread(SHARES_NOTE, 'note');
  }
  plan.groups.forEach((group, at) => {
    const cost = costs[at];
    if (cost === undefined) throw new RangeError(`The stock of ${group.name} has no cost.`);
    const plans = plansOf(plan, group);
    const [alone] = plans;
    const isAlone = alone !== undefined && plans.length === 1;
    if (isAlone && !isAllowed) onThisSheet.place('lumberBorne', cost, alone);
    else addGroupShares(draft, plans, cost, onThisSheet);
    for (const planned of isAllowed ? plans : []) {
      const at = onSheet('office', onThisSheet.at('lumberBorne', planned));
      acrossSheets.place('lumberOnOffice', at, planned);
    }
  });
}

function addGroupShares(
  draft: SheetDraft,
  plans: readonly ProfilePlan[],
  cost: string,
  onThisSheet: OfficeAnchors,
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
