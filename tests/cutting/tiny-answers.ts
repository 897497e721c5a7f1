/** What an answer must be, the true least cost being known. */
import { expect } from '@jest/globals';
import type { StickAnswer, StickPlan, StickProblem } from '../../src/cutting/problem/problem.ts';

/** Plan ≥ optimum ≥ bound, and no gap where it is called proven; all in cents, credits taken off. */
export function expectAround(
  problem: StickProblem,
  { plan, bound, status }: StickAnswer,
  optimum: number,
): void {
  const said = JSON.stringify(problem);
  const net = plan.costCents + plan.laborCents - plan.creditCents;
  expect([said, net >= optimum, optimum >= bound.costCents]).toEqual([said, true, true]);
  if (status === 'proven') expect([said, net]).toEqual([said, optimum]);
}

/** The demands that a plan serves: bit i stands for demand i. */
export function servedSet(problem: StickProblem, plan: StickPlan): number {
  const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
  return problem.demands.reduce((set, { id }, at) => (unserved.has(id) ? set : set | (1 << at)), 0);
}

/** Whether all that is asked for can be cut, by the least costs of every set. */
export function isServable(problem: StickProblem, costs: Float64Array): boolean {
  return (costs[2 ** problem.demands.length - 1] ?? Infinity) < Infinity;
}
