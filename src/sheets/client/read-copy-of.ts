/** Of several plans of a copy's number the one that it was made of. */
import { ok, type Outcome } from '../../core/faults/fault.ts';
import type { PlanToKeep } from '../../planning/kept/keep-plan.ts';
import type { CopyFile } from './copy-sheet.ts';
import { readCopy } from './read-copy.ts';
import type { ReturnedCopy } from '../../planning/compare/returned-copy.ts';

export interface CopyRead<From> {
  readonly from: From;
  readonly returned: ReturnedCopy;
}

/**
 * Inputs that were planned twice have one number and perhaps two prices: the copy is of the plan from which
 * it differs least, the first of such.
 *
 * @param plans one at least
 * @returns faults: as readCopy has them
 */
export function readCopyOf<From extends PlanToKeep>(
  plans: readonly From[],
  copy: CopyFile,
  fileName: string,
): Outcome<CopyRead<From>> {
  let least: CopyRead<From> | undefined;
  let refused: Outcome<never> | undefined;
  for (const from of plans) {
    const read = readCopy(from.plan, from, copy, fileName);
    if (!read.ok) {
      refused ??= read;
    } else if (least === undefined || read.value.findings.length < least.returned.findings.length) {
      least = { from, returned: read.value };
    }
  }
  if (least !== undefined && refused === undefined) return ok(least);
  if (refused === undefined) throw new RangeError('There is no plan to read the copy by.');
  return refused;
}
