/**
 * Which one measure of a room that doesn't close is wrong. A room misses by three numbers: the angle, and
 * the two coordinates of its end. A length that is wrong moves the end along its wall; a corner that is
 * wrong turns all that follows about itself. So each leaves a miss of its own kind.
 *
 * Derived: with honest errors of tape and gauge the three numbers have the covariance S = Σ (move of a
 * measure)(move)ᵀ · (its variance). A measure is the likelier to be the one at fault the less of the miss
 * r is left, as rᵀ S⁻¹ r, once it is changed by what leaves the least: weighted least squares.
 */
import { degrees, radians, toRadians, type Radians } from '../units/angle.ts';
import { computeClosure } from './closure.ts';
import { layOutWalls, type PlanWall, type Point } from './room-plan.ts';
import { turnAngle, type Turn, type Wall } from './wall.ts';

interface SuspectOf {
  /** The wall, from 0: its length, or the corner at its right-hand end. */
  readonly wall: number;
  /** What the miss comes to after the change, in squares of honest errors: the less, the likelier. */
  readonly left: number;
  /** Whether the room closes once this alone is changed. */
  readonly closes: boolean;
}

export interface LengthSuspect extends SuspectOf {
  readonly is: 'length';
  /** Inches, longer above 0. */
  readonly change: number;
  readonly wouldBe: number;
}

export interface CornerSuspect extends SuspectOf {
  readonly is: 'corner';
  /** Of the heading's turn to the right. */
  readonly change: Radians;
  readonly wouldBe: Radians;
  readonly turnWouldBe: Exclude<Turn, 'end'>;
}

export type Suspect = LengthSuspect | CornerSuspect;

export interface Suspects {
  /** What can't be told apart, the likeliest first; none where each would have to be less than nothing. Parallel walls stand together. */
  readonly mayBe: readonly Suspect[];
  /** The best length and the best corner, however unlikely; absent where no change of one could serve. */
  readonly length?: LengthSuspect;
  readonly corner?: CornerSuspect;
}

/** The angle, and the end's two coordinates: how far a room misses, or what a measure moves. */
type Miss = readonly [angle: number, x: number, y: number];

/** An honest tape is off by up to 1/4 in and an honest gauge by 1/2°, anything between as often. */
const LENGTH_VARIANCE = 0.25 ** 2 / 3;
const CORNER_VARIANCE = toRadians(degrees(0.5)) ** 2 / 3;
/** Square inches: walls in one line, hardly longer than nothing, move their end to the side by less. */
const LEAST_VARIANCE = 1e-9;

/** Suspects are told apart by so much of what is left: honest errors make the wrong one the better that rarely. */
const TOLD_APART_FROM = 6;

const RANKS_PER_UNIT = 1e6;
const STEPS_OF_A_CORNER = 8;
/** A corner that would be straighter than this is none. */
const LEAST_TURN = toRadians(degrees(0.5));

/**
 * How far a closed room of sound walls (`checkWalls`) misses, in squares of what honest errors of tape and
 * gauge leave: as three of them squared where they are all that is wrong.
 */
export function weighMiss(walls: readonly Wall[]): number {
  const { angleMiss, end } = computeClosure(walls);
  const missed = weighing(layOutWalls(walls), end)([angleMiss, end.x, end.y]);
  return dot(missed, missed);
}

/**
 * Suspects of a closed room of sound walls (`checkWalls`) that isn't accepted, or is in doubt. A length may come out as any above 0, a corner as any other, inside or outside.
 */
export function listSuspects(walls: readonly Wall[]): Suspects {
  const plan = layOutWalls(walls);
  const { angleMiss, end } = computeClosure(walls);
  const weigh = weighing(plan, end);
  const found: Suspect[] = walls.flatMap((_, at) => {
    const length = suspectLength(walls, plan, at, [angleMiss, end.x, end.y], weigh);
    const corner = suspectCorner(walls, plan, at, angleMiss, end, weigh);
    return [...(length === undefined ? [] : [length]), ...(corner === undefined ? [] : [corner])];
  });
  const inOrder = found.sort((one, other) => rank(one) - rank(other));
  const length = inOrder.find((one) => one.is === 'length');
  const corner = inOrder.find((one) => one.is === 'corner');
  const least = inOrder[0]?.left ?? 0;
  return {
    mayBe: inOrder.filter((one) => one.left <= least + TOLD_APART_FROM),
    ...(length === undefined ? {} : { length }),
    ...(corner === undefined ? {} : { corner }),
  };
}

/** Parallel walls leave alike but for rounding: they keep the order of the room. */
function rank({ left }: Suspect): number {
  return Math.round(left * RANKS_PER_UNIT);
}

function suspectLength(
  walls: readonly Wall[],
  plan: readonly PlanWall[],
  at: number,
  miss: Miss,
  weigh: (miss: Miss) => Miss,
): LengthSuspect | undefined {
  const [wall, placed] = [walls[at], plan[at]];
  if (wall === undefined || placed === undefined) return undefined;
  const missed = weigh(miss);
  const moved = weigh([0, Math.cos(placed.heading), Math.sin(placed.heading)]);
  const change = -dot(missed, moved) / dot(moved, moved);
  const wouldBe = wall.length + change;
  if (wouldBe <= 0) return undefined;
  const left = addMoved(missed, moved, change);
  const closes = closesWith(walls, at, { ...wall, length: wouldBe });
  return { is: 'length', wall: at, change, wouldBe, left: dot(left, left), closes };
}

/** The change that leaves least is sought from the one that closes the angle, by Gauss and Newton. */
function suspectCorner(
  walls: readonly Wall[],
  plan: readonly PlanWall[],
  at: number,
  angleMiss: Radians,
  end: Point,
  weigh: (miss: Miss) => Miss,
): CornerSuspect | undefined {
  const [wall, placed] = [walls[at], plan[at]];
  if (wall === undefined || placed === undefined) return undefined;
  const pivot = placed.to;
  const arm = { x: end.x - pivot.x, y: end.y - pivot.y };
  const turnedBy = (change: number): { missed: Miss; moved: Miss } => {
    const [cosine, sine] = [Math.cos(change), Math.sin(change)];
    const x = arm.x * cosine - arm.y * sine;
    const y = arm.x * sine + arm.y * cosine;
    return {
      missed: weigh([angleMiss + change, pivot.x + x, pivot.y + y]),
      moved: weigh([1, -y, x]),
    };
  };
  let change = -Number(angleMiss);
  for (let step = 0; step < STEPS_OF_A_CORNER; step++) {
    const { missed, moved } = turnedBy(change);
    change -= dot(missed, moved) / dot(moved, moved);
  }
  const turn = turnAngle(wall) + change;
  if (Math.abs(turn) >= Math.PI || Math.abs(turn) < LEAST_TURN) return undefined;
  const wouldBe = radians(Math.PI - Math.abs(turn));
  const turnWouldBe = turn > 0 ? 'inside' : 'outside';
  const { missed } = turnedBy(change);
  const closes = closesWith(walls, at, { ...wall, cornerAtRight: wouldBe, turn: turnWouldBe });
  return {
    is: 'corner',
    wall: at,
    change: radians(change),
    wouldBe,
    turnWouldBe,
    left: dot(missed, missed),
    closes,
  };
}

function closesWith(walls: readonly Wall[], at: number, changed: Wall): boolean {
  return computeClosure(walls.map((wall, index) => (index === at ? changed : wall))).isAccepted;
}

/** Brings a miss to units of honest errors, each as wide as the others: by the root of S, as Cholesky has it. */
function weighing(plan: readonly PlanWall[], end: Point): (miss: Miss) => Miss {
  let [aa, xa, ya, xx, yx, yy] = [0, 0, 0, 0, 0, 0];
  const add = ([angle, x, y]: Miss, variance: number): void => {
    aa += angle * angle * variance;
    xa += x * angle * variance;
    ya += y * angle * variance;
    xx += x * x * variance;
    yx += y * x * variance;
    yy += y * y * variance;
  };
  for (const { heading, to } of plan) {
    add([0, Math.cos(heading), Math.sin(heading)], LENGTH_VARIANCE);
    add([1, to.y - end.y, end.x - to.x], CORNER_VARIANCE);
  }
  const rootA = Math.sqrt(aa);
  const [xOfA, yOfA] = [xa / rootA, ya / rootA];
  const rootX = Math.sqrt(Math.max(xx - xOfA ** 2, LEAST_VARIANCE));
  const yOfX = (yx - xOfA * yOfA) / rootX;
  const rootY = Math.sqrt(Math.max(yy - yOfA ** 2 - yOfX ** 2, LEAST_VARIANCE));
  return ([angle, x, y]) => {
    const a = angle / rootA;
    const b = (x - xOfA * a) / rootX;
    return [a, b, (y - yOfA * a - yOfX * b) / rootY];
  };
}

const dot = (one: Miss, other: Miss): number =>
  one[0] * other[0] + one[1] * other[1] + one[2] * other[2];

const addMoved = (miss: Miss, moved: Miss, by: number): Miss => [
  miss[0] + moved[0] * by,
  miss[1] + moved[1] * by,
  miss[2] + moved[2] * by,
];
