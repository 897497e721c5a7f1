/** Hours of the order of work, and money beside them, as the lines of the labor sheet have them. */
import type { ProfilePlan } from '../../planning/job-plan.ts';
import type { Hours } from '../../planning/work/hours.ts';
import { sumOf } from '../../planning/work/work-lines.ts';
import type { WorkLine } from '../../planning/work/work-row.ts';
import { total } from '../grammar/figures.ts';
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

/** The hours of lines as Labor has them, in a formula; 0 where there are none. */
export function hoursOnLabor(lines: readonly WorkLine[], acrossSheets: PlanAnchors): string {
  if (lines.length === 0) return '0';
  return lines.map((line) => acrossSheets.at('hoursOnLabor', line)).join('+');
}

/** What the lines cost beside their hours, to be added to a formula: empty where nothing. */
export function moneyBeside(work: readonly WorkLine[], acrossSheets: PlanAnchors): string {
  return work
    .filter(({ money }) => money > 0)
    .map((line) => `+${acrossSheets.at('moneyOnLabor', line)}`)
    .join('');
}
