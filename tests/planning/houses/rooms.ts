/** Rooms as polygons: corners in order to the right as one faces the walls from inside. */
import type { Chance } from './chance.ts';
import { dot, minus, plus, turned, unit, type Line, type Point } from './plane-geometry.ts';

export interface Wall {
  readonly name: string;
  /** From its left corner as one faces it, along it: the room is on the right. */
  readonly line: Line;
  readonly length: number;
}

export interface Corner {
  readonly at: Point;
  /** In a corner of the room, or around one. */
  readonly isInside: boolean;
  /** What a gauge reads between the two wall faces. */
  readonly degrees: number;
}

export interface Room {
  readonly name: string;
  /** Corner n is where wall n begins. */
  readonly corners: readonly Corner[];
  readonly walls: readonly Wall[];
}

const NAMES = ['Hall', 'Study', 'Kitchen', 'Bedroom / east', 'Loft'];

export function roomByChance(chance: Chance, index: number, mark: number): Room {
  const points = chance.is(0.75) ? boxByChance(chance, mark) : shapeByChance(chance, mark);
  const turn = chance.is(0.5) ? 0 : chance.whole(0, 359);
  const around = points.map((one) => turned(one, turn));
  const next = (at: number): Point => around[(at + 1) % around.length]!;
  const before = (at: number): Point => around[(at + around.length - 1) % around.length]!;
  return {
    name: NAMES[index]!,
    corners: around.map((at, place) => {
      const come = unit(minus(at, before(place)));
      const go = unit(minus(next(place), at));
      // To the right is clockwise.
      const right = come[1] * go[0] - come[0] * go[1];
      const angle = (Math.atan2(Math.abs(right), dot(come, go)) * 180) / Math.PI;
      return { at, isInside: right > 0, degrees: Number((180 - angle).toFixed(9)) };
    }),
    walls: around.map((from, place) => {
      const along = minus(next(place), from);
      return {
        name: place === 0 ? 'North' : `wall ${place + 1}`,
        line: { through: from, along: unit(along) },
        length: Math.hypot(...along),
      };
    }),
  };
}

/** A rectangle whose corners may be cut off or notched (so an L), and whose walls may have a breast or a bay. */
function boxByChance(chance: Chance, mark: number): Point[] {
  const sizes = [0, 1].map(() => chance.tape(150, 330, mark));
  const points: Point[] = [];
  let corner: Point = [0, 0];
  for (let side = 0; side < 4; side++) {
    const along = turned([1, 0], -90 * side).map(Math.round) as unknown as Point;
    const inward = turned(along, -90).map(Math.round) as unknown as Point;
    const end = plus(corner, along, sizes[side % 2]);
    if (chance.is(0.3)) points.push(...bump(chance, corner, along, inward, mark));
    points.push(...corners(chance, end, along, inward, mark));
    corner = end;
  }
  return points;
}

/** In the middle of a wall, square or splayed, into the room or out of it. */
function bump(
  chance: Chance,
  corner: Point,
  along: Point,
  inward: Point,
  mark: number,
): readonly Point[] {
  const start = plus(corner, along, chance.tape(40, 44, mark));
  const deep = chance.tape(8, 16, mark) * (chance.is(0.5) ? 1 : -1);
  const splay = chance.one([0, 1, Math.tan(Math.PI / 6)]) * Math.abs(deep);
  const wide = chance.tape(20, 34, mark);
  const at = (far: number, depth: number): Point => plus(plus(start, along, far), inward, depth);
  return [start, at(splay, deep), at(splay + wide, deep), at(2 * splay + wide, 0)];
}

function corners(
  chance: Chance,
  end: Point,
  along: Point,
  inward: Point,
  mark: number,
): readonly Point[] {
  const short = chance.tape(12, 36, mark);
  const long = chance.tape(12, 36, mark);
  const cutOff = (one: number, other: number): Point[] => [
    plus(end, along, -one),
    plus(end, inward, other),
  ];
  switch (chance.one(['square', 'square', 'square', '45', '30', 'notch'] as const)) {
    case 'square':
      return [end];
    case '45':
      return cutOff(short, short);
    case '30':
      return cutOff(short, short * Math.sqrt(3));
    case 'notch':
      return [
        plus(end, along, -short),
        plus(plus(end, along, -short), inward, long),
        plus(end, inward, long),
      ];
  }
}

/** A triangle, or as many equal walls as an octagon has, or fewer. */
function shapeByChance(chance: Chance, mark: number): Point[] {
  const size = chance.tape(70, 160, mark);
  if (chance.is(0.4)) {
    const high = size * 2 * chance.one([1, Math.sqrt(3), 1 / Math.sqrt(3)]);
    return [
      [0, 0],
      [0, high],
      [size * 2, 0],
    ];
  }
  const walls = chance.whole(3, 9);
  const points: Point[] = [[0, 0]];
  for (let at = 1; at < walls; at++) {
    points.push(plus(points[at - 1]!, turned([1, 0], (-360 / walls) * (at - 1)), size));
  }
  return points;
}
