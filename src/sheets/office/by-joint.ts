/** Molding by molding: what the joints of spliced pieces come to, and each of them. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { costingBy } from '../../planning/price-bases.ts';
import { jointLines, priceOfWork } from '../../planning/unit-prices.ts';
import { money } from '../grammar/figures.ts';
import { cell, sum, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import { JOINTS } from './office-columns.ts';
import { laborFormula, type Terms } from './office-terms.ts';
import { JOINTS_NOTE, NONE, SECTIONS } from './office-words.ts';

export function addJoints(
  draft: SheetDraft,
  plan: JobPlan,
  terms: Terms,
  acrossSheets: PlanAnchors,
): void {
  const joined = plan.profiles.filter((one) => jointsOf(one, plan) > 0);
  draft.spread(SECTIONS.joints, 'section');
  draft.spread(JOINTS_NOTE, 'note');
  draft.put(JOINTS.headings(plan.job.shop));
  for (const planned of joined) addProfile(draft, plan, planned, terms, acrossSheets);
  if (joined.length === 0) draft.put(JOINTS.sparseRow({ profile: cell(NONE.joints, 'row') }));
  draft.blank();
}

/** Those of the price. */
function jointsOf(planned: ProfilePlan, { job: { shop } }: JobPlan): number {
  return costingBy(planned, shop.priceBasis).counts.joint;
}

function addProfile(
  draft: SheetDraft,
  plan: JobPlan,
  planned: ProfilePlan,
  terms: Terms,
  acrossSheets: PlanAnchors,
): void {
  const { shop } = plan.job;
  const { profile } = planned;
  const joints = jointsOf(planned, plan);
  const lines = jointLines(planned);
  const row = draft.next;
  const price = money(priceOfWork(lines, shop));
  draft.put(
    JOINTS.row({
      profile: cell(profile.name, 'rowStrong'),
      joints: cell(joints, 'rowWhole'),
      price: sum(
        () => `ROUND((${laborFormula(lines, acrossSheets)})*${terms.labor},2)`,
        price,
        'rowDecimal',
      ),
      each: sum(
        `${JOINTS.at('price', row)}/${JOINTS.at('joints', row)}`,
        price / joints,
        'rowDecimal',
      ),
    }),
  );
}
