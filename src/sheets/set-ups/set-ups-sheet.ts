/** The set-ups: one page for each cove profile, everything that its cut needs beside the saw. */
import type { CoveProfile } from '../../planning/job.ts';
import { isCovePlan, type JobPlan, type SetUpJob } from '../../planning/job-plan.ts';
import type { SetUp } from '../../planning/plan-setup.ts';
import type { Shop } from '../../planning/shop.ts';
import type { SheetDescription } from '../grammar/description.ts';
import type { SheetDraft } from '../grammar/sheet-draft.ts';
import { addBought } from './crown-corners.ts';
import { newSetUpDraft } from './set-up-columns.ts';
import { addSetUpPages, addStanding } from './set-up-pages.ts';

export function describeSetUps(plan: JobPlan): SheetDescription {
  const draft = newSetUpDraft();
  const made = plan.profiles.filter(isCovePlan);
  const bought = plan.profiles.filter(
    ({ profile: { spring, slope }, setUp }) =>
      setUp === undefined && (spring !== undefined || slope !== undefined),
  );
  for (const one of made) addSetUpPages(draft, plan, one);
  if (made.length === 0) {
    draft.spread('Set-ups', 'title');
    draft.spread('No cove is to be cut for this job, so there is nothing to set up.', 'wrapped');
    draft.blank();
    addStanding(draft, plan, [], 'roomy');
  }
  for (const one of bought) {
    draft.breakPage();
    addBought(draft, plan, one);
  }
  return finish(draft, plan);
}

/** The page of one cove that is of no job. */
export function describeLoneSetUp(
  profile: CoveProfile,
  setUp: SetUp,
  shop: Shop,
): SheetDescription {
  const draft = newSetUpDraft();
  const job = { job: { shop }, pieces: [], cautions: [] };
  addSetUpPages(draft, job, { profile, setUp, sticks: [] });
  return finish(draft, job);
}

function finish(draft: SheetDraft, { job }: SetUpJob): SheetDescription {
  return draft.finish({ paper: job.shop.paper, orientation: 'portrait', footer: 'Set-ups' });
}
