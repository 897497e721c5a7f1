/** Whether walls that go round a room come back to where they began. */
import { radians, toRadians, degrees, type Radians } from '../units/angle.ts';
import { layOutWalls, type Point } from './room-plan.ts';
import { turnAngle, type Wall } from './wall.ts';

export interface Closure {
  /** Sum of the turns less a full turn: above 0 where the corners turn too far to the right. */
  readonly angleMiss: Radians;
  readonly angleAllowed: Radians;
  /** From the start to where the last wall ends. */
  readonly end: Point;
  /** Between the two, in inches. */
  readonly gap: number;
  readonly gapAllowed: number;
  /** Both are within what is allowed. */
  readonly isAccepted: boolean;
}

// Chosen so that an honest tape and gauge are refused in 2 to 3 of 100 rooms (tests/core/room/closure.test.ts).
const ANGLE_OF_A_ROOT_CORNER = toRadians(degrees(0.75));
const MOST_ANGLE = toRadians(degrees(2.5));
const GAP_OF_A_ROOT_WALL_INCHES = 0.25;
const GAUGE_SINE = Math.sin(toRadians(degrees(0.5)));

/**
 * The miss of a closed room of sound walls (`checkWalls`), in angle and in length, and whether it is
 * accepted: the angle to 3/4° · √n, at most 2 1/2°, and the gap to √n · 1/4 in + sin 1/2° · √(Σ d²), n the
 * number of walls and d each corner's distance from the start. A rule of ours: errors of a tape add up as
 * a root, and an angle misread at a corner moves the end by as much · d.
 */
export function computeClosure(walls: readonly Wall[]): Closure {
  const plan = layOutWalls(walls);
  const end = plan[plan.length - 1]?.to ?? { x: 0, y: 0 };
  // The last corner is the start itself, wherever the gap leaves it.
  const farness = plan.slice(0, -1).reduce((sum, { to }) => sum + to.x ** 2 + to.y ** 2, 0);
  const root = Math.sqrt(walls.length);
  const turned = walls.reduce((sum, wall) => sum + turnAngle(wall), 0);
  const angleMiss = radians(turned - 2 * Math.PI);
  const angleAllowed = radians(Math.min(ANGLE_OF_A_ROOT_CORNER * root, MOST_ANGLE));
  const gap = Math.hypot(end.x, end.y);
  const gapAllowed = GAP_OF_A_ROOT_WALL_INCHES * root + GAUGE_SINE * Math.sqrt(farness);
  const isAccepted = Math.abs(angleMiss) <= angleAllowed && gap <= gapAllowed;
  return { angleMiss, angleAllowed, end, gap, gapAllowed, isAccepted };
}
