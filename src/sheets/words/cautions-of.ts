/** A plan's cautions, by who must know them. */
import type { Fault, FaultCode } from '../../core/faults/fault.ts';
import type { JobPlan } from '../../planning/job-plan.ts';

/** These name rates and prices, which no sheet on the shop's wall tells. */
const OF_OFFICE: readonly FaultCode[] = ['job.usual-values', 'job.trim-spoils-fit'];

export function cautionsOf({ cautions }: JobPlan, who: 'shop' | 'office'): readonly Fault[] {
  return cautions.filter(({ code }) => OF_OFFICE.includes(code) === (who === 'office'));
}
