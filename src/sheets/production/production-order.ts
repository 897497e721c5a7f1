/** The order of work: what is done after what, how much of it, how long it takes, a box to tick. */
import type { JobPlan } from '../../planning/job-plan.ts';
import type { PlanCells } from '../plan-cells.ts';
import { sumOf } from '../plan-cells.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { JUDGMENT_CAUTION, MANUAL_CAUTION } from '../words/standing-cautions.ts';
import { listCoveSteps, WHY_THIS_ORDER } from './cove-steps.ts';
import { listCrosscutSteps } from './crosscut-steps.ts';
import { listLumberSteps } from './lumber-steps.ts';
import type { OrderFacts, Step } from './order-step.ts';
import type { ProductionCells } from './production-cells.ts';

export function addOrder(
  draft: SheetDraft,
  plan: JobPlan,
  cells: PlanCells,
  own: ProductionCells,
): void {
  const facts: OrderFacts = { plan, cells, own };
  const coves = listCoveSteps(facts);
  const steps = [...listLumberSteps(facts), ...coves, ...listCrosscutSteps(facts)];
  draft.spread('Order of work', 'section');
  if (coves.length > 0) {
    draft.spread(MANUAL_CAUTION, 'caution');
    draft.spread(`${WHY_THIS_ORDER} ${JUDGMENT_CAUTION}`, 'note');
  }
  const heads = draft.add(
    cell('Step', 'headingRight'),
    cell('Work', 'heading'),
    cell(null, 'heading'),
    cell('How', 'heading'),
    cell(null, 'heading'),
    cell(null, 'heading'),
    cell(`Passes each; outline (${plan.job.shop.unit})`, 'headingRight'),
    cell('How many', 'headingRight'),
    cell('of what', 'heading'),
    cell('Passes or cuts', 'headingRight'),
    cell('Hours', 'headingRight'),
    cell('See', 'heading'),
    cell('Done', 'heading'),
  );
  mergeWords(draft, heads);
  const first = draft.next;
  steps.forEach((step, at) => addStep(draft, step, at + 1));
  if (steps.length === 0) {
    mergeWords(draft, draft.add(null, cell('Nothing is left to do.', 'row')));
  }
  const hours = steps.reduce((all, step) => all + (step.hours?.(0).value ?? 0), 0);
  const none = cell(null, 'totalLabel');
  const row = draft.add(
    none,
    cell('Together', 'totalLabel'),
    ...Array.from({ length: 8 }, () => none),
    sum(sumOf('K', first, draft.next - 1), hours, 'total'),
    none,
    none,
  );
  own.totals.set('hoursInOrder', `K${row}`);
  draft.blank();
}

function addStep(draft: SheetDraft, step: Step, number: number): void {
  const row = draft.next;
  step.placed?.(row);
  const figure = (one: Step['hours'], style: 'rowDecimal' | 'rowWhole'): DraftCell => {
    const made = one?.(row);
    return made === undefined ? cell(null, style) : sum(made.formula, made.value, style);
  };
  draft.add(
    cell(number, 'rowWhole'),
    cell(step.work, 'rowStrong'),
    null,
    cell(step.how, 'row'),
    null,
    null,
    step.each ?? cell(null, 'rowWhole'),
    step.count(row),
    cell(step.of, 'row'),
    figure(step.cuts, 'rowWhole'),
    figure(step.hours, 'rowDecimal'),
    cell(step.see, 'row'),
    cell(null, 'tick'),
  );
  mergeWords(draft, row);
}

function mergeWords(draft: SheetDraft, row: number): void {
  draft.merge(row, 1, 2);
  draft.merge(row, 3, 5);
}
