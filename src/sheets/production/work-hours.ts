/** Hours of the order of work, as the lines of the labor sheet have them. */
import type { ProfilePlan } from '../../planning/job-plan.ts';
import type { Hours } from '../../planning/work/hours.ts';
import { sumOf } from '../../planning/work/work-lines.ts';
import { total } from '../grammar/figures.ts';
import { hoursOnLabor } from '../hours-on-labor.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import type { Step } from './order-step.ts';

/** What a profile's lines of some sums of hours come to, for a step; nothing where there are none. */
export function hoursOf(
  { byPlan }: Pick<ProfilePlan, 'byPlan'>,
  sums: readonly (keyof Hours)[],
  acrossSheets: PlanAnchors,
): Pick<Step, 'hours'> {
  const lines = byPlan.work.filter((line) => sums.includes(sumOf(line)));
  if (lines.length === 0) return {};
  const formula = (): string => hoursOnLabor(lines, acrossSheets);
  return { hours: () => ({ formula, value: total(lines.map(({ hours }) => hours)) }) };
}
