/** A small job of three pieces that is planned again after some of it was cut. */
import { expect } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { NO_TICKS, type Ticks } from '../../src/planning/cut/cut-already.ts';
import { cutFromPlan } from '../../src/planning/cut/cut-from-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type { Job } from '../../src/planning/job.ts';
import type { JobPlanning, PlanJobOptions } from '../../src/planning/job-planning.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { jobOf, type Tables } from './make-job.ts';

export const SHOP = 'Setting,Value\nend allowance,0\nend trim,0\ncrosscut kerf,0\nhourly rate,0';
export const STOCK = "For,Kind,Length,Price,Per,Have,Buy\nBase,stick,10',20,piece,0,yes";
export const runs = (...lengths: readonly string[]): string =>
  [
    'Room,Run,Profile,Length',
    ...lengths.map((length, at) => `Hall,${'abcdef'[at]},Base,${length}`),
  ].join('\n');
/** Three pieces of 60 in from sticks of 120 in: two from the first, one from the second. */
export const THREE: Tables = { shop: SHOP, stock: STOCK, runs: runs('60', '60', '60') };
/** The same, but that no two of them are alike. */
export const UNLIKE: Tables = { ...THREE, runs: runs('60 1/8', '59 7/8', '59') };

export function ticked(...sticks: readonly string[]): Ticks {
  return { ...NO_TICKS, sticks: new Set(sticks) };
}

/** The rest of a job is planned anew, after ticks on the sheets of an earlier plan. */
export async function replan(
  earlier: JobPlan,
  job: Job,
  ticks: Ticks,
  options: PlanJobOptions = {},
): Promise<JobPlanning> {
  const cut = cutFromPlan(earlier, ticks);
  return planJob(job, { ...options, cut, earlier });
}

export async function replanned(earlier: JobPlan, tables: Tables, ticks: Ticks): Promise<JobPlan> {
  const { plan, faults } = await replan(earlier, jobOf(tables), ticks);
  if (plan === undefined) throw new Error(faults.map(({ message }) => message).join('\n'));
  expect(checkJobPlan(plan)).toEqual([]);
  return plan;
}

export function codes({ cautions }: Pick<JobPlan, 'cautions'>): string[] {
  return cautions.map(({ code }) => code).filter((code) => code.startsWith('job.cut-'));
}
