/** What the job's Hours say of the minutes under Work: shown, and in no price. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { learnFromHours } from '../../planning/work/learn-from-hours.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { sayLearned } from '../words/say-bid.ts';
import { sayHome, sayHours, sayHoursOf, sayKind } from '../words/say-hours.ts';
import { HOURS, RATES } from './office-columns.ts';
import { HOURS_NOTE, NONE, SECTIONS } from './office-words.ts';

/** Numbers, and no formulas: they are worked out when the sheets are written. */
export function addLearned(draft: SheetDraft, plan: JobPlan): void {
  const { job } = plan;
  if (job.hours.length === 0) return;
  const learned = learnFromHours([plan]);
  draft.spread(SECTIONS.hours, 'section');
  draft.spread(HOURS_NOTE, 'note');
  draft.put(HOURS.headings());
  for (const one of learned.hours) {
    draft.put(
      HOURS.row({
        name: cell(sayHoursOf(one), 'rowStrong'),
        hours: cell(sayHours(one, job.shop.decimalSign), 'row'),
      }),
    );
  }
  for (const one of learned.ofNothing) {
    draft.put(
      HOURS.row({ name: cell(sayHoursOf(one), 'rowStrong'), hours: cell(NONE.hours, 'row') }),
    );
  }
  draft.put(RATES.headings());
  for (const one of learned.works) {
    const { label, value, note } = sayLearned(sayKind(one), one.rate, job.shop.decimalSign);
    draft.put(
      RATES.row({
        name: cell(label, 'rowStrong'),
        value: cell(value, 'rowRight'),
        note: cell(note ?? '', 'row'),
        home: cell(sayHome(one, job), 'row'),
      }),
    );
  }
  draft.blank();
}
