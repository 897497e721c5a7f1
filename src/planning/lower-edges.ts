/** Which edge of a cove's blank may be the lower one, on the wall. */
import type { WallEdge } from '../core/crown/bevel-wood.ts';
import { LIMIT_SLACK_INCHES } from '../core/units/tolerance.ts';
import type { SetUp } from './plan-setup.ts';

/** Those edges of a crown whose back bevels leave wood enough; `undefined` alone where it doesn't matter. */
export function lowerEdges(
  { setting, flats, bevelWood }: SetUp,
  leastFlat: number,
): readonly (WallEdge | undefined)[] {
  if (setting.tilt === 0 && Math.abs(flats.near - flats.far) < LIMIT_SLACK_INCHES) {
    return [undefined];
  }
  return (['near', 'far'] as const).filter(
    (edge) => bevelWood === undefined || bevelWood[edge] >= leastFlat - LIMIT_SLACK_INCHES,
  );
}
