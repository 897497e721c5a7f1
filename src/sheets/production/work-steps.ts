/** Steps of the order of work that Work asks for beside the usual ones: a line of the labor sheet each. */
import type { ProfilePlan } from '../../planning/job-plan.ts';
import { sumOf } from '../../planning/work/work-lines.ts';
import { perUnitIn } from '../../planning/work/per-units.ts';
import type { WorkLine } from '../../planning/work/work-row.ts';
import type { WorkPer } from '../../planning/work/work-row.ts';
import { sum } from '../grammar/sheet-draft.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import type { OrderFacts, Step } from './order-step.ts';

/** Work on boards and blanks comes before any cove is cut. */
const BEFORE_COVES: ReadonlySet<WorkPer> = new Set(['board', 'board foot', 'foot a rip']);

export function listEarlyWork(facts: OrderFacts): Step[] {
  return workSteps(facts, (per) => BEFORE_COVES.has(per));
}

/** On pieces, then for the whole job. */
export function listLateWork(facts: OrderFacts): Step[] {
  return [
    ...workSteps(facts, (per) => !BEFORE_COVES.has(per)),
    ...facts.plan.jobWork.lines.map((line) => workStep(facts, line)),
  ];
}

function workSteps({ plan, ...rest }: OrderFacts, isMeant: (per: WorkPer) => boolean): Step[] {
  return plan.profiles.flatMap((planned) =>
    planned.byPlan.work
      .filter((line) => sumOf(line) === 'other' && isMeant(line.row.per))
      .map((line) => workStep({ plan, ...rest }, line, planned)),
  );
}

function workStep({ acrossSheets, plan }: OrderFacts, line: WorkLine, planned?: ProfilePlan): Step {
  const { row, hours } = line;
  const { word, holds } = perUnitIn(plan.job.shop.unit, row.per);
  const count = line.count / holds;
  return {
    work: planned === undefined ? row.work : `${row.work}: ${planned.profile.name}`,
    how: 'as Work has it',
    count: () => sum(() => acrossSheets.at('countOnLabor', line), count, 'rowDecimal'),
    of: word,
    hours: () => ({ formula: () => acrossSheets.at('hoursOnLabor', line), value: hours }),
    see: SHEET_NAMES.labor,
    ...(planned === undefined ? {} : { planned }),
  };
}
