/**
 * The production sheet: what to make, in which order, from what, for which rooms. It hangs on the wall: no
 * rate, cost or price is on it; these are on Office.
 */
import { sayFault } from '../../core/faults/fault.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { onSheet, SHEET_NAMES, type PlanAnchors, PRODUCTION_TOTALS } from '../plan-anchors.ts';
import type { Stamp } from '../stamp.ts';
import { cautionsOf } from '../words/cautions-of.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { newProductionAnchors } from './production-anchors.ts';
import { GRID, PRINTED } from './production-columns.ts';
import { addCutAways } from './production-cut-aways.ts';
import { addHeader } from './production-header.ts';
import { addOrder } from './production-order.ts';
import { addProfiles } from './production-profiles.ts';
import { addRooms } from './production-rooms.ts';
import { addStockTable } from './production-stock.ts';
import { SECTIONS } from './production-words.ts';

export interface ProductionDraft {
  readonly finish: () => SheetDescription;
}

/** The rooms come last: their table alone may take many pages, and its headings are repeated on them. */
export function draftProduction(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  stamp?: Stamp,
): ProductionDraft {
  const { paper } = plan.job.shop;
  const draft = new SheetDraft(SHEET_NAMES.production, GRID, true, PRINTED);
  const onThisSheet = newProductionAnchors();
  const blocks: number[] = [];
  const begin = (): void => {
    blocks.push(draft.next);
  };
  begin();
  addHeader(draft, plan, acrossSheets, onThisSheet, stamp);
  begin();
  addProfiles(draft, plan, acrossSheets, onThisSheet);
  begin();
  addOrder(draft, plan, acrossSheets, onThisSheet);
  begin();
  addStockTable(draft, plan, acrossSheets, onThisSheet);
  if (plan.cutAways.length > 0) {
    begin();
    addCutAways(draft, plan);
  }
  if (cautionsOf(plan, 'shop').length > 0) {
    begin();
    addCautions(draft, plan);
  }
  begin();
  const { heads, rooms } = addRooms(draft, plan, acrossSheets, onThisSheet);
  for (const name of PRODUCTION_TOTALS) {
    const at = onSheet('production', onThisSheet.at(`total ${name}`));
    acrossSheets.place('totalOnProduction', at, name);
  }
  // The first room stays with the headings.
  blocks.push(...rooms.slice(1));
  const room = roomForRows(paper, GRID.slice(0, PRINTED), 'landscape');
  layPages(draft, blocks, room, heads);
  return {
    finish: () =>
      draft.finish({
        paper,
        orientation: 'landscape',
        titleRows: [heads, heads],
        footer: SHEET_NAMES.production,
      }),
  };
}

function addCautions(draft: SheetDraft, plan: JobPlan): void {
  draft.spread(SECTIONS.cautions, 'section');
  for (const one of cautionsOf(plan, 'shop')) draft.spread(sayFault(one), 'caution');
  draft.blank();
}
