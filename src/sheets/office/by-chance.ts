/** Between which figures the price is likely to end, and what moves it: where Work says Low and High. */
import type { JobPlan } from '../../planning/job-plan.ts';
import { rangeOfPrice } from '../../planning/range-of-price.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { sayDrivers, sayRange } from '../words/say-bid.ts';
import { sayWork } from '../words/say-work.ts';
import { DRIVERS, TERMS } from './office-columns.ts';
import { RANGE_LINES, RANGE_NOTE, RANGE_SAYS, SECTIONS } from './office-words.ts';

/** Numbers, and no formulas: they are drawn when the job is planned. */
export function addRange(draft: SheetDraft, plan: JobPlan): void {
  const range = rangeOfPrice(plan, sayWork);
  if (range === undefined) return;
  const { shop } = plan.job;
  draft.spread(SECTIONS.range, 'section');
  draft.spread(RANGE_NOTE, 'note');
  draft.spread(sayRange(range, shop), 'wrapped');
  for (const name of ['low', 'likely', 'middle', 'high'] as const) {
    draft.put(
      TERMS.row({
        label: cell(RANGE_LINES[name], 'fact'),
        figure: cell(Math.round(range[name] * 100) / 100, 'money'),
        says: cell(RANGE_SAYS[name], 'quietLabel'),
      }),
    );
  }
  draft.put(DRIVERS.headings());
  for (const { label, value, note } of sayDrivers(range.drivers, shop)) {
    draft.put(
      DRIVERS.row({
        name: cell(label, 'rowStrong'),
        value: cell(value, 'row'),
        note: cell(note ?? '', 'row'),
      }),
    );
  }
}
