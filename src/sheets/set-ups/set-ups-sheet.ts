/** The set-ups: one page for each cove profile, everything that its cut needs beside the saw. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { addCrownAlone } from './crown-corners.ts';
import type { SheetDescription } from '../description.ts';
import { SHEET_NAMES } from '../plan-cells.ts';
import { printExact } from '../print-length.ts';
import { SET_UP_COLUMNS } from './set-up-columns.ts';
import { placeDrawings } from './set-up-drawings.ts';
import { addSetUp } from './set-up-page.ts';
import { SheetDraft } from '../sheet-draft.ts';
import { MANUAL_CAUTION, standingCautions } from '../standing-cautions.ts';

export function describeSetUps(plan: JobPlan): SheetDescription {
  const { shop } = plan.job;
  const draft = new SheetDraft(SHEET_NAMES.setUps, SET_UP_COLUMNS, true);
  const cautions = standingCautions(printExact(shop.leastBlankLength, shop.unit));
  const made = plan.profiles.filter((one) => one.setUp !== undefined);
  const sprung = plan.profiles.filter(
    ({ profile, setUp }) => setUp === undefined && profile.spring !== undefined,
  );
  const addCautions = (lines: readonly string[]): void => {
    draft.spread('Every time', 'section');
    lines.forEach((line, index) => draft.spread(`${index + 1}. ${line}`, 'wrapped'));
  };
  for (const one of made) {
    if (one.setUp === undefined) continue;
    draft.breakPage();
    const rows = addSetUp(draft, plan, one, one.setUp);
    // The manual's word stands at the top of the page, before any number.
    addCautions(cautions.filter((line) => line !== MANUAL_CAUTION));
    placeDrawings(draft, rows, one.profile, one.setUp, shop);
  }
  if (made.length === 0) {
    draft.spread('Set-ups', 'title');
    draft.spread('No cove is to be cut for this job, so there is nothing to set up.', 'wrapped');
    draft.blank();
    addCautions(cautions);
  }
  for (const one of sprung) {
    draft.breakPage();
    addCrownAlone(draft, plan, one);
  }
  return draft.finish({ paper: shop.paper, orientation: 'portrait', footer: 'Set-ups' });
}
