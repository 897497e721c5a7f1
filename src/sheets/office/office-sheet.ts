/** The office sheet: all money of the job, its rates, and what a person quotes from, by length, opening, room and joint. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { sayFault } from '../../core/faults/fault.ts';
import { addVerdict } from '../agreement.ts';
import type { SheetDescription } from '../grammar/description.ts';
import { layPages } from '../grammar/lay-pages.ts';
import { roomForRows } from '../grammar/page-size.ts';
import { SheetDraft } from '../grammar/sheet-draft.ts';
import { SHEET_NAMES, type PlanAnchors } from '../plan-anchors.ts';
import { addBases } from './by-basis.ts';
import { addRange } from './by-chance.ts';
import { addLearned } from './by-hours.ts';
import { addJoints } from './by-joint.ts';
import { addLengths } from './by-length.ts';
import { addOpenings } from './by-opening.ts';
import { addOptions } from './by-option.ts';
import { addLines, addRooms } from './by-room.ts';
import { addLumber } from './lumber-costs.ts';
import { newOfficeAnchors } from './office-anchors.ts';
import { addChecks } from './office-checks.ts';
import { GRID } from './office-columns.ts';
import { addHead } from './office-head.ts';
import { addTerms } from './office-terms.ts';
import { SUBTITLE } from './office-words.ts';
import { addMoney } from './price-by-profile.ts';
import { cautionsOf } from '../words/cautions-of.ts';

export function draftOffice(
  plan: JobPlan,
  acrossSheets: PlanAnchors,
): { readonly finish: () => SheetDescription } {
  const draft = new SheetDraft(SHEET_NAMES.office, GRID, true);
  draft.spread(SHEET_NAMES.office, 'title');
  addVerdict(draft, () => acrossSheets.at('verdictOnProduction'), [0, GRID.length - 1]);
  draft.spread(SUBTITLE, 'note');
  draft.blank();
  const onThisSheet = newOfficeAnchors();
  addHead(draft, plan, acrossSheets, onThisSheet);
  addMoney(draft, plan, acrossSheets, onThisSheet);
  const blocks = [1, draft.next];
  addLumber(draft, plan, acrossSheets, onThisSheet);
  blocks.push(draft.next);
  const terms = addTerms(draft, plan.job.shop, acrossSheets);
  addBases(draft, plan, acrossSheets, onThisSheet);
  if (plan.profiles.length > 0) blocks.push(draft.next);
  const rows = addLengths(draft, plan, terms, acrossSheets);
  for (const add of [
    () => addOpenings(draft, plan, rows),
    () => addLines(draft, plan, acrossSheets, onThisSheet),
    () => addRooms(draft, plan, acrossSheets, onThisSheet),
    () => addJoints(draft, plan, terms, acrossSheets),
    () => addOptions(draft, plan),
    () => addChecks(draft, plan, acrossSheets, onThisSheet),
    () => addLearned(draft, plan),
  ]) {
    blocks.push(draft.next);
    add();
  }
  blocks.push(...addRange(draft, plan));
  for (const one of cautionsOf(plan, 'office')) draft.spread(sayFault(one), 'caution');
  const { paper } = plan.job.shop;
  layPages(draft, blocks, roomForRows(paper, GRID, 'landscape'));
  return {
    finish: () => draft.finish({ paper, orientation: 'landscape', footer: SHEET_NAMES.office }),
  };
}
