/** The arguments of the functions about passes, and the heights that they make. */
import { planPasses, USUAL_PASSES } from '../core/cove/passes.ts';
import { failed, ok, type Outcome } from '../core/faults/fault.ts';
import type { LengthArgument, Values } from './argument.ts';
import { DEPTH, nameAsHere } from './cove-arguments.ts';

export const PASSES = {
  depth: DEPTH,
  firstPass: { name: 'firstPass', kind: 'length', least: 'above 0', blank: USUAL_PASSES.first },
  step: { name: 'step', kind: 'length', least: 'above 0', blank: USUAL_PASSES.step },
  lastPass: { name: 'lastPass', kind: 'length', least: 'from 0', blank: USUAL_PASSES.last },
} as const satisfies Readonly<Record<string, LengthArgument>>;

/** Heights of the passes, inches; the last is the depth. Faults as core/cove/passes.ts gives them. */
export function heightsOf(given: Values<typeof PASSES>): Outcome<readonly number[]> {
  const { depth, firstPass: first, step, lastPass: last } = given;
  const { heights, faults } = planPasses(depth, { first, step, last });
  return faults.length > 0 ? failed(...faults.map(nameAsHere)) : ok(heights);
}
