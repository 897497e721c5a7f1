/** The parts of spliced pieces. */
import type { CutStick } from '../planning/job-plan.ts';

/** Into how many parts each spliced piece is cut. */
export function countParts(sticks: readonly CutStick[]): ReadonlyMap<string, number> {
  const parts = new Map<string, number>();
  for (const { pieces } of sticks) {
    for (const { id, part } of pieces) {
      if (part !== undefined) parts.set(id, (parts.get(id) ?? 0) + 1);
    }
  }
  return parts;
}
