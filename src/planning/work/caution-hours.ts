/** What is to be said of a job's Hours, by its plan. */
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { sayScope } from '../input/read-hours.ts';
import { tableArgument } from '../input/raw-table.ts';
import type { JobPlan } from '../job-plan.ts';
import { learnFromHours } from './learn-from-hours.ts';

export function cautionHours(plan: JobPlan): Caution[] {
  if (plan.job.hours.length === 0) return [];
  const { hours, ofNothing } = learnFromHours([plan]);
  const { done } = plan.totals;
  return [
    ...(done > 0 ? [fault('job.hours-of-done', tableArgument('Hours'), done)] : []),
    ...ofNothing.map((one) => {
      const details = { work: sayScope(one) };
      const said = fault('job.hours-of-nothing', 'hours', toHundredth(one.hours), { details });
      return placeFault(said, one.where);
    }),
    ...hours
      .filter(({ isOdd }) => isOdd)
      .map((one) => {
        const details = { work: sayScope(one), hours: toHundredth(one.atLearned) };
        const said = fault('job.hours-odd', 'hours', toHundredth(one.hours), { details });
        return placeFault(said, one.where);
      }),
  ];
}

function toHundredth(hours: number): number {
  return Math.round(hours * 100) / 100;
}

const CODES: ReadonlySet<string> = new Set([
  'job.hours-of-done',
  'job.hours-of-nothing',
  'job.hours-odd',
]);

export function isOfHours({ code }: Caution): boolean {
  return CODES.has(code);
}
