/** What openings take out of the runs on their walls, on the production sheet. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { lengthStyles } from '../grammar/length-styles.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { numberIn, printExact } from '../words/print-length.ts';
import { CUT_AWAYS_TITLE } from '../words/say-cut-aways.ts';
import { CUT_AWAYS } from './production-columns.ts';
import { CUT_AWAYS_NOTE } from './production-words.ts';

/** A row for each opening and run, in the order of the runs. */
export function addCutAways(draft: SheetDraft, { cutAways, job }: JobPlan): void {
  const { shop } = job;
  draft.spread(CUT_AWAYS_TITLE, 'section');
  draft.spread(CUT_AWAYS_NOTE, 'note');
  draft.put(CUT_AWAYS.headings(shop));
  const style = lengthStyles(
    cutAways.map(({ taken }) => taken),
    shop.unit,
  ).row;
  for (const { room, wall, profile, opening, taken } of cutAways) {
    draft.put(
      CUT_AWAYS.row({
        blank: cell(null, 'row'),
        room: cell(room, 'row'),
        wall: cell(wall, 'row'),
        profile: cell(profile, 'row'),
        opening: cell(opening, 'row'),
        takenText: cell(printExact(taken, shop), 'rowRight'),
        taken: cell(numberIn(taken, shop.unit), style),
      }),
    );
  }
  draft.blank();
}
