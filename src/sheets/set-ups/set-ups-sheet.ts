/** The set-ups: one page for each cove profile, everything that its cut needs beside the saw. */
import { isCovePlan, type JobPlan } from '../../planning/job-plan.ts';
import type { SheetDescription } from '../grammar/description.ts';
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
  const { paper } = plan.job.shop;
  return draft.finish({ paper, orientation: 'portrait', footer: 'Set-ups' });
}
