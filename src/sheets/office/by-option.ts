/** Option by option: what the job with it comes to more than the job as it is planned. */
import { type JobPlan, isPriced } from '../../planning/job-plan.ts';
import { money } from '../grammar/figures.ts';
import { cell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { OPTIONS_ALONE, sayOption } from '../words/say-option.ts';
import { OPTIONS } from './office-columns.ts';
import { SECTIONS, TAKEN_UP } from './office-words.ts';

/** Nothing where Options has none. Figures of other plans: no formula of this workbook comes to them. */
export function addOptions(draft: SheetDraft, plan: JobPlan): void {
  if (plan.options.length === 0) return;
  draft.spread(SECTIONS.options, 'section');
  draft.spread(OPTIONS_ALONE, 'note');
  draft.put(OPTIONS.headings(plan.job.shop));
  for (const one of plan.options) {
    const option = cell(`${one.option.name}: ${sayOption(plan, one)}`, 'row');
    if (!isPriced(one)) {
      draft.put(OPTIONS.sparseRow({ option, price: cell(TAKEN_UP, 'rowRight') }));
      continue;
    }
    const { priceCents, taxCents, costCents, hours } = one.more;
    draft.put(
      OPTIONS.row({
        option,
        price: cell(money(priceCents), 'rowDecimal'),
        tax: cell(money(taxCents), 'rowDecimal'),
        cost: cell(money(costCents), 'rowDecimal'),
        hours: cell(hours, 'rowDecimal'),
      }),
    );
  }
  draft.blank();
}
