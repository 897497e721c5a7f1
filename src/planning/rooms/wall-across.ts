/** The wall that one faces who comes in by a door. */
import { pointAlong, type PlanWall } from '../../core/room/room-plan.ts';

/** A door stands clear of its own wall's line by more than arithmetic may be off. */
const LEAST_AWAY_INCHES = 1e-6;

/**
 * The first wall, from 0, straight across from a point of another; undefined where none is (in a room
 * that stays open, say).
 * @param along how far the point is from its wall's left end, inches.
 */
export function findWallAcross(
  plan: readonly PlanWall[],
  wall: number,
  along: number,
): number | undefined {
  const from = plan[wall];
  if (from === undefined) return undefined;
  const { x, y } = pointAlong(from, along);
  const [east, south] = [-Math.sin(from.heading), Math.cos(from.heading)];
  let nearest = Infinity;
  let found: number | undefined;
  for (const [at, other] of plan.entries()) {
    const [wide, deep] = [other.to.x - other.from.x, other.to.y - other.from.y];
    const [toX, toY] = [other.from.x - x, other.from.y - y];
    const cross = east * deep - south * wide;
    if (at === wall || cross === 0) continue;
    const away = (toX * deep - toY * wide) / cross;
    const share = (toX * south - toY * east) / cross;
    if (share < 0 || share > 1 || away < LEAST_AWAY_INCHES || away >= nearest) continue;
    nearest = away;
    found = at;
  }
  return found;
}
