/** Lines of work as Labor has them, in formulas of other sheets. */
import type { WorkLine } from '../planning/work/work-row.ts';
import type { PlanAnchors } from './plan-anchors.ts';

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
