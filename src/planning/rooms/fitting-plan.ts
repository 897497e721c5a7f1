/**
 * How trim goes up round a room: which piece first, and what each end is. Pieces that meet at an outside
 * corner are joined before they go up, and count as one. At an inside corner the piece that goes up later is
 * coped to the one that hangs already. Common practice [C].
 */
import type { Turn } from '../../core/room/wall.ts';
import type { EndKind } from '../job.ts';
import type { FittingOrder } from '../on-wall.ts';
import type { TrimRow } from '../room-rows.ts';

/** A wall, in order to the right. */
export interface WallToFit {
  readonly hasTrim: boolean;
  /** Whether openings part it: what is left and what is right of them goes up by itself. */
  readonly isParted: boolean;
  /** Of a parted one, whether anything is left at its corner. */
  readonly reachesLeft: boolean;
  readonly reachesRight: boolean;
  /** How many parts stand between two openings. */
  readonly between: number;
  readonly turn: Turn;
  /** Inches. */
  readonly length: number;
}

export interface FittedWall {
  readonly left: EndKind;
  readonly right: EndKind;
  readonly order?: FittingOrder;
}

/** The trim of a wall, or of a parted one what is left or right of its openings, or between two. */
interface Part {
  readonly wall: number;
  readonly is: 'whole' | 'left' | 'between' | 'right';
  left: EndKind;
  right: EndKind;
  order: number;
}

/** Parts that go up as one, in order to the right. */
type Unit = readonly Part[];

/** Units that meet at inside corners; all round the room in a ring. */
interface Stretch {
  readonly units: readonly Unit[];
  readonly isRing: boolean;
}

type Meeting = 'joined' | 'inside' | 'apart';

/** Which parts of a wall reach its corners. */
const ENDS_AT_LEFT: ReadonlySet<Part['is']> = new Set(['whole', 'left']);
const ENDS_AT_RIGHT: ReadonlySet<Part['is']> = new Set(['whole', 'right']);

/**
 * From the first piece to the right as far as the trim goes on, then from the first to the left. Only
 * where it goes on all round is the last piece coped at both ends, and there it is whatever the first is.
 * Where it is broken, each stretch has its own first piece, on `first` or else on its longest wall. A part
 * between two openings meets no other and is a stretch of its own: it goes up when fitting comes by.
 *
 * An end that meets nothing is square, but for the end at an outside corner whose other wall has no trim:
 * that returns to the wall.
 *
 * @param first the wall, from 0, whose piece goes up first.
 * @returns a plan for each wall; undefined where it has no trim.
 */
export function planFitting(
  walls: readonly WallToFit[],
  insideCorners: TrimRow['insideCorners'],
  first: number | undefined,
): (FittedWall | undefined)[] {
  const parts = listParts(walls);
  const stretches = listStretches(parts, walls);
  const isFirst = ({ units }: Stretch): boolean => units.flat().some(({ wall }) => wall === first);
  let order = 0;
  for (const stretch of [...stretches].sort((a, b) => Number(isFirst(b)) - Number(isFirst(a)))) {
    const { units, isRing } = stretch;
    const start = startOf(units, walls, first);
    const right = units.slice(start);
    const left = units.slice(0, start);
    for (const unit of [...right, ...(isRing ? left : left.reverse())]) {
      order += 1;
      for (const part of unit) part.order = order;
    }
    meetInside(stretch, insideCorners);
  }
  return gather(parts, walls);
}

function listParts(walls: readonly WallToFit[]): Part[] {
  return walls.flatMap((wall, at) => {
    if (!wall.hasTrim) return [];
    const turnBefore = walls[(at + walls.length - 1) % walls.length]?.turn;
    const left = loose(turnBefore);
    const right = loose(wall.turn);
    if (!wall.isParted) return [{ wall: at, is: 'whole', left, right, order: 0 } as const];
    const parts: Part[] = [];
    if (wall.reachesLeft) parts.push({ wall: at, is: 'left', left, right: 'square', order: 0 });
    for (let part = 0; part < wall.between; part++) {
      parts.push({ wall: at, is: 'between', left: 'square', right: 'square', order: 0 });
    }
    if (wall.reachesRight) parts.push({ wall: at, is: 'right', left: 'square', right, order: 0 });
    return parts;
  });
}

/** An end that meets nothing. */
function loose(turn: Turn | undefined): EndKind {
  return turn === 'outside' ? 'return' : 'square';
}

function meetingOf(one: Part, next: Part, walls: readonly WallToFit[]): Meeting {
  const isNext = next.wall === (one.wall + 1) % walls.length;
  const turn = walls[one.wall]?.turn;
  const isAtCorner = ENDS_AT_RIGHT.has(one.is) && ENDS_AT_LEFT.has(next.is);
  if (!isNext || !isAtCorner || turn === 'end') return 'apart';
  return turn === 'outside' ? 'joined' : 'inside';
}

/** Joins what is joined, and parts the round where nothing meets; a ring begins behind an inside corner. */
function listStretches(parts: readonly Part[], walls: readonly WallToFit[]): Stretch[] {
  const meetings = parts.map((part, at) => {
    const next = parts[(at + 1) % parts.length];
    return next === undefined ? 'apart' : meetingOf(part, next, walls);
  });
  const isRing = parts.length > 0 && !meetings.includes('apart');
  const last = meetings.indexOf(isRing ? 'inside' : 'apart');
  const stretches: Unit[][] = [];
  let units: Unit[] = [];
  let unit: Part[] = [];
  for (let step = 1; step <= parts.length; step++) {
    const at = (last + step + parts.length) % parts.length;
    const [part, meeting] = [parts[at], meetings[at]];
    if (part === undefined) continue;
    const before = unit[unit.length - 1];
    if (before !== undefined) join(before, part);
    unit.push(part);
    if (meeting === 'joined' && step < parts.length) continue;
    units.push(unit);
    unit = [];
    if (meeting === 'inside' && step < parts.length) continue;
    stretches.push(units);
    units = [];
  }
  return stretches.map((one) => ({ units: one, isRing }));
}

function join(one: Part, next: Part): void {
  one.right = 'outside miter';
  next.left = 'outside miter';
}

function startOf(
  units: readonly Unit[],
  walls: readonly WallToFit[],
  first: number | undefined,
): number {
  const asked = units.findIndex((unit) => unit.some(({ wall }) => wall === first));
  if (asked >= 0) return asked;
  const lengths = units.map((unit) =>
    Math.max(...unit.map(({ wall, is }) => (is === 'whole' ? (walls[wall]?.length ?? 0) : 0))),
  );
  return lengths.indexOf(Math.max(...lengths));
}

/** Whichever goes up later is coped to the other. */
function meetInside({ units, isRing }: Stretch, insideCorners: TrimRow['insideCorners']): void {
  units.forEach((unit, at) => {
    const isLast = at === units.length - 1;
    const next = isLast ? (isRing ? units[0] : undefined) : units[at + 1];
    const [one, other] = [unit[unit.length - 1], next?.[0]];
    if (one === undefined || other === undefined) return;
    const isMiter = insideCorners === 'miter';
    const isLater = other.order >= one.order;
    one.right = isMiter ? 'inside miter' : isLater ? 'square' : 'cope';
    other.left = isMiter ? 'inside miter' : isLater ? 'cope' : 'square';
  });
}

function gather(parts: readonly Part[], walls: readonly WallToFit[]): (FittedWall | undefined)[] {
  const ofWall = walls.map((): Part[] => []);
  for (const part of parts) ofWall[part.wall]?.push(part);
  return walls.map(({ hasTrim }, at) => {
    if (!hasTrim) return undefined;
    const here = ofWall[at] ?? [];
    const [one, other] = [here[0], here[here.length - 1]];
    if (one === undefined || other === undefined) return { left: 'square', right: 'square' };
    const left = ENDS_AT_LEFT.has(one.is) ? one.left : 'square';
    const right = ENDS_AT_RIGHT.has(other.is) ? other.right : 'square';
    const between = here.filter(({ is }) => is === 'between').map(({ order }) => order);
    const order = { left: one.order, right: other.order };
    return { left, right, order: between.length === 0 ? order : { ...order, between } };
  });
}
