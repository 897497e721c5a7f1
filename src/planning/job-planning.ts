/** What planning a job is handed, and what comes of it. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import type { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions } from '../cutting/problem/problem.ts';
import type { CutAlready } from './cut/cut-already.ts';
import type { JobPlan } from './job-plan.ts';

export interface JobPlanning {
  /** Present when the job can be made as asked. */
  readonly plan?: JobPlan;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** A budget in milliseconds is for the whole job; one in steps for each group. Both begin after the quick plans. */
export interface PlanJobOptions extends PlanSticksOptions {
  /** Called with (done, total, next profile) before each group and once at the end. */
  readonly onGroup?: (done: number, of: number, group: string) => void;
  /** Plans the sticks of a group, in a worker for instance. Absent: here. */
  readonly planSticks?: typeof planSticks;
  /** How long to look for cheaper plans, for the whole job; takes `now`. Absent: as `budget` says. */
  readonly seconds?: number;
  /** Sticks that are cut already: they stay as they are, and only the rest is planned. */
  readonly cut?: readonly CutAlready[];
  /** The plan that they were cut by: what it had of the rest is where the search begins. */
  readonly earlier?: JobPlan;
}
