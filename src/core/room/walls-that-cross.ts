/** Walls that run through each other, which no room's do. */
import type { PlanWall, Point } from './room-plan.ts';

/** What two walls must share, or reach past each other, to cross in earnest: less is a tape's. */
const LEAST_CROSSING_INCHES = 1 / 16;

/**
 * The first pair of walls, from 0, of which one runs through the other or lies on it; neighbors only meet
 * at their corner, and the last wall with the first where the room is closed.
 * @param gap by which the room misses its start, in inches: walls that cross by no more may do so for that alone.
 */
export function findCrossing(
  plan: readonly PlanWall[],
  isClosed: boolean,
  gap: number,
): readonly [one: number, other: number] | undefined {
  const least = Math.max(gap, LEAST_CROSSING_INCHES);
  for (let one = 0; one < plan.length; one++) {
    for (let other = one + 2; other < plan.length; other++) {
      if (isClosed && one === 0 && other === plan.length - 1) continue;
      const [first, second] = [plan[one], plan[other]];
      if (first && second && cross(first, second, least)) return [one, other];
    }
  }
  return undefined;
}

function cross(one: PlanWall, other: PlanWall, least: number): boolean {
  return (
    (isPastBoth(one, other, least) && isPastBoth(other, one, least)) || liesOn(one, other, least)
  );
}

/** Whether the ends of a wall lie on either side of another's line, each by so much. */
function isPastBoth(wall: PlanWall, line: PlanWall, least: number): boolean {
  const [from, to] = [beside(line, wall.from), beside(line, wall.to)];
  return Math.min(from, to) < -least && Math.max(from, to) > least;
}

/** Whether a wall lies along another, over a length of its own. */
function liesOn(one: PlanWall, other: PlanWall, least: number): boolean {
  if (
    Math.max(Math.abs(beside(one, other.from)), Math.abs(beside(one, other.to))) >
    LEAST_CROSSING_INCHES
  ) {
    return false;
  }
  const [from, to] = [along(one, other.from), along(one, other.to)];
  const shared = Math.min(Math.max(from, to), along(one, one.to)) - Math.max(Math.min(from, to), 0);
  return shared > least;
}

/** How far a point lies to the right of a wall's line, as one goes along it. */
function beside({ from, heading }: PlanWall, { x, y }: Point): number {
  return (y - from.y) * Math.cos(heading) - (x - from.x) * Math.sin(heading);
}

function along({ from, heading }: PlanWall, { x, y }: Point): number {
  return (x - from.x) * Math.cos(heading) + (y - from.y) * Math.sin(heading);
}
