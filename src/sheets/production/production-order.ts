/** The order of work: what is done after what, how much of it, how long it takes, a box to tick. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import { cell, sum, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import { onSheet, type PlanAnchors } from '../plan-anchors.ts';
import { JUDGMENT_CAUTION, MANUAL_CAUTION } from '../words/standing-cautions.ts';
import { sayTicked, tickedFormula } from '../words/tick-marks.ts';
import { listCoveSteps } from './cove-steps.ts';
import { listCrosscutSteps } from './crosscut-steps.ts';
import { listLumberSteps } from './lumber-steps.ts';
import { listEarlyWork } from './work-steps.ts';
import type { OrderFacts, Step } from './order-step.ts';
import type { ProductionAnchors } from './production-anchors.ts';
import { ORDER } from './production-columns.ts';
import { NOTHING, SECTIONS, WHY_THIS_ORDER } from './production-words.ts';

export function addOrder(
  draft: SheetDraft,
  plan: JobPlan,
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  const facts: OrderFacts = { plan, acrossSheets, onThisSheet };
  const coves = listCoveSteps(facts);
  const steps = [
    ...listLumberSteps(facts),
    ...listEarlyWork(facts),
    ...coves,
    ...listCrosscutSteps(facts),
  ];
  draft.spread(SECTIONS.order, 'section');
  if (coves.length > 0) {
    draft.spread(MANUAL_CAUTION, 'caution');
    draft.spread(`${WHY_THIS_ORDER} ${JUDGMENT_CAUTION}`, 'note');
  }
  draft.put(ORDER.headings(plan.job.shop));
  const first = draft.next;
  const rows = steps.map((step, at) => draft.put(stepRow(step, at + 1, draft.next)));
  if (steps.length === 0) {
    draft.put(ORDER.sparseRow({ work: cell(NOTHING.do, 'row') }));
  }
  placeSteps(steps, rows, acrossSheets, onThisSheet);
  const hours = steps.reduce((all, step) => all + (step.hours?.(0).value ?? 0), 0);
  const row = draft.next;
  const added = ORDER.sumCell('hours', [first, row - 1], hours, 'total');
  const ticked = sum(
    tickedFormula(ORDER.range('done', first, Math.max(first, row - 1)), steps.length, ' done'),
    sayTicked(0, steps.length, ' done'),
    'totalLabel',
  );
  const together = { work: cell('Together', 'totalLabel'), how: ticked, hours: added };
  draft.put(ORDER.loose(together, cell(null, 'totalLabel')));
  onThisSheet.place('total hoursInOrder', ORDER.at('hours', row));
  draft.blank();
}

function stepRow(step: Step, number: number, row: number) {
  const figure = (one: Step['hours'], style: 'rowDecimal' | 'rowWhole'): DraftCell => {
    const made = one?.(row);
    return made === undefined ? cell(null, style) : sum(made.formula, made.value, style);
  };
  return ORDER.row({
    step: cell(number, 'rowWhole'),
    work: cell(step.work, 'rowStrong'),
    how: cell(step.how, 'row'),
    each: step.each ?? cell(null, 'rowWhole'),
    count: step.count(row),
    of: cell(step.of, 'row'),
    cuts: figure(step.cuts, 'rowWhole'),
    hours: figure(step.hours, 'rowDecimal'),
    see: cell(step.see, 'row'),
    done: cell(null, 'tick'),
  });
}

/** Where each profile's passes and hours stand; its hours stand on several rows. */
function placeSteps(
  steps: readonly Step[],
  rows: readonly number[],
  acrossSheets: PlanAnchors,
  onThisSheet: ProductionAnchors,
): void {
  const hours = new Map<ProfilePlan, string[]>();
  steps.forEach(({ planned, isCove = false, isSmoothing, isCrosscut }, at) => {
    const row = rows[at];
    if (planned === undefined || row === undefined) return;
    if (isCove) onThisSheet.place('passesInOrder', ORDER.at('cuts', row), planned);
    const lend = (
      name: 'passesOnProduction' | 'squareFeetOnProduction' | 'crosscutsOnProduction',
      column: 'cuts' | 'count',
    ): void => {
      acrossSheets.place(name, onSheet('production', ORDER.fixed(column, row)), planned);
    };
    if (isCove) lend('passesOnProduction', 'cuts');
    if (isSmoothing === true) lend('squareFeetOnProduction', 'count');
    if (isCrosscut === true) lend('crosscutsOnProduction', 'cuts');
    hours.set(planned, [...(hours.get(planned) ?? []), ORDER.at('hours', row)]);
  });
  for (const [planned, cells] of hours) {
    onThisSheet.place('hoursInOrder', cells.join('+'), planned);
  }
}
