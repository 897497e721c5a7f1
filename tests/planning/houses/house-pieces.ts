/**
 * What a house takes, piece by piece, from where things are: stretches of wall with gaps where something
 * is in the way, rectangles round openings, polygons beside polygons. Nothing of planning is used here.
 */
import { type House, type Molding, type OddWindow, type Opening, type WallRun } from './house.ts';
import { beside, meet, minus, plus, turned, type Line, type Point } from './plane-geometry.ts';
import { shortAndLong, standsOut, type Stretch } from './wall-points.ts';

export interface Due {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  readonly kind: 'run' | 'return';
  /** Before it is rounded up. */
  readonly length: number;
  readonly ends: readonly [string, string];
  readonly points: readonly [string, string];
}

export interface DueCut {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  readonly opening: string;
  readonly taken: number;
}

/** An opening as one sees it from one room. */
interface Seen {
  readonly opening: Opening;
  readonly room: number;
  readonly wall: number;
  readonly at: number;
  readonly isAtKnown: boolean;
  readonly isFar: boolean;
  readonly name: string;
}

const POINTS: Readonly<Record<string, string>> = {
  square: 'square end',
  cope: 'tip of the cope at the wall',
  return: 'long point of the return miter',
  'inside miter': 'long point at the wall',
  'outside miter': 'long point at the face',
};

export function piecesOfHouse(house: House): { pieces: Due[]; cuts: DueCut[] } {
  const seen = seenFromRooms(house);
  const onWalls = house.runs.map((run) => cutOnWall(house, run, seen));
  return {
    pieces: [
      ...onWalls.flatMap(({ pieces }) => pieces),
      ...house.oddWindows.flatMap((one) => roundOddWindow(house, one)),
      ...house.openings.flatMap((one) => roundOpening(house, one, seen)),
    ],
    cuts: onWalls.flatMap(({ cuts }) => cuts),
  };
}

function seenFromRooms({ openings }: House): Seen[] {
  const all = openings.flatMap((opening): Omit<Seen, 'name'>[] => [
    { ...opening, opening, isFar: false },
    ...(opening.other === undefined ? [] : [{ ...opening.other, opening, isFar: true }]),
  ]);
  return all.map((one, at) => {
    const alike = all
      .slice(0, at)
      .filter(
        ({ room, wall, opening }) =>
          room === one.room && wall === one.wall && opening.kind === one.opening.kind,
      );
    const number = alike.length === 0 ? '' : ` ${alike.length + 1}`;
    return { ...one, name: `${one.opening.kind}${number}` };
  });
}

/** What stands round an opening on one side, across the wall and up from the floor. */
interface Round {
  readonly across: Stretch;
  /** The opening and its casing, stool and apron, each from its lower to its upper edge. */
  readonly heights: readonly Stretch[];
}

function roundOf({ opening, at, isFar }: Seen): Round {
  const { width, height, sill, casing, stool, apron } = opening;
  const isCased = casing !== undefined && (!isFar || opening.sides === 2);
  const edge = isCased ? (opening.reveal ?? opening.usual.reveal) + casing.width : 0;
  const heights: Stretch[] = [[sill, sill + height + edge]];
  const isAllRound = opening.kind === 'window' && stool === undefined && apron === undefined;
  if (isAllRound) heights.push([sill - edge, sill]);
  const under = isFar || stool === undefined ? sill : sill - stool.thick;
  if (under < sill) heights.push([under, sill]);
  if (!isFar && apron !== undefined) heights.push([under - apron.width, under]);
  return { across: [at - edge, at + width + edge], heights };
}

/** Whether a molding on the wall has its lower edge in what stands round the opening. */
function isInTheWay(seen: Seen, molding: Molding): boolean {
  const { opening } = seen;
  if (molding.spring !== undefined || molding.isCove === true) return false;
  if (molding.height === undefined) return opening.kind !== 'window';
  if (opening.kind === 'window' && !opening.isSillKnown) return false;
  const justOver = molding.height + 1e-7;
  return roundOf(seen).heights.some(([from, to]) => justOver > from && justOver < to);
}

function cutOnWall(
  house: House,
  run: WallRun,
  all: readonly Seen[],
): { pieces: Due[]; cuts: DueCut[] } {
  const room = house.rooms[run.room]!;
  const { name } = room.walls[run.wall]!;
  const { long, wallLength } = shortAndLong(room, run);
  const names = { room: room.name, run: name, profile: run.molding.name };
  const inTheWay = all.filter(
    (one) => one.room === run.room && one.wall === run.wall && isInTheWay(one, run.molding),
  );
  const isKnown = inTheWay.every(({ isAtKnown }) => isAtKnown);
  const extra = run.measured === 'wall' ? 2 * house.endAllowance : 0;
  const due = (length: number, left: string, right: string): Due[] => [
    {
      ...names,
      kind: 'run',
      length: length + extra,
      ends: [left, right],
      points: [POINTS[left]!, POINTS[right]!],
    },
    ...[left, right].flatMap((end, side): Due[] => {
      if (end !== 'return') return [];
      const ends =
        side === 0
          ? (['square', 'outside miter'] as const)
          : (['outside miter', 'square'] as const);
      const points = ends.map((one) => POINTS[one]!) as [string, string];
      return [{ ...names, kind: 'return', length: standsOut(run.molding), ends, points }];
    }),
  ];
  const gaps = inTheWay.map((one) => ({ one, gap: roundOf(one).across }));
  if (!isKnown) {
    const cuts = gaps.map(({ one, gap }) => ({
      ...names,
      opening: one.name,
      taken: gap[1] - gap[0],
    }));
    const rest = cuts.reduce((left, { taken }) => left - taken, long[1] - long[0]);
    return { pieces: due(rest, run.left, run.right), cuts };
  }
  const sorted = [...gaps].sort((a, b) => a.gap[0] - b.gap[0]);
  const cuts = sorted.map(({ one, gap }) => ({
    ...names,
    opening: one.name,
    taken: Math.min(gap[1], wallLength[1]) - Math.max(gap[0], 0),
  }));
  const pieces: Due[] = [];
  let from = long[0];
  let left: string = run.left;
  for (const { gap } of sorted) {
    if (gap[0] > 0) pieces.push(...due(gap[0] - from, left, 'square'));
    [from, left] = [gap[1], 'square'];
  }
  if (long[1] > from) pieces.push(...due(long[1] - from, left, run.right));
  return { pieces, cuts };
}

/** The corners of a rectangle round the opening; its sides are the casing's outer edges. */
function roundOpening(house: House, opening: Opening, all: readonly Seen[]): Due[] {
  const { casing, stool, apron, width, height, sides, kind } = opening;
  const [near, far] = all.filter((one) => one.opening === opening) as [Seen, Seen?];
  const isAllRound = kind === 'window' && stool === undefined && apron === undefined;
  const reveal = opening.reveal ?? opening.usual.reveal;
  const edge = casing === undefined ? 0 : reveal + casing.width;
  const outside = {
    left: -edge,
    right: width + edge,
    top: height + edge,
    foot: isAllRound ? -edge : 0,
  };
  const outer = 'outside miter';
  const foot = isAllRound ? outer : 'square';
  const add = (
    seen: Seen,
    part: string,
    molding: Molding | undefined,
    length: number,
    ends: readonly [string, string],
  ): Due[] => {
    if (molding === undefined) return [];
    const room = house.rooms[seen.room]!;
    const points = ends.map((end) =>
      end === outer ? 'long point at the outer edge' : POINTS[end]!,
    ) as [string, string];
    const run = `${nameAsTyped(room.walls[seen.wall]!.name)} ${seen.name}, ${part}`;
    return [{ room: room.name, run, profile: molding.name, kind: 'run', length, ends, points }];
  };
  const cased = Array.from({ length: sides }, (_, side) => {
    const seen = side === 0 ? near : (far ?? near);
    const on = sides === 1 ? '' : ` side ${side + 1}`;
    const high = outside.top - outside.foot;
    const wide = outside.right - outside.left;
    return [
      ...add(seen, `left leg${on}`, casing, high, [foot, outer]),
      ...add(seen, `right leg${on}`, casing, high, [outer, foot]),
      ...add(seen, `head${on}`, casing, wide, [outer, outer]),
      ...(isAllRound ? add(seen, `foot${on}`, casing, wide, [outer, outer]) : []),
    ];
  });
  const wide = outside.right - outside.left;
  const horns = 2 * (opening.horn ?? opening.usual.horn);
  return [
    ...cased.flat(),
    ...add(near, 'apron', apron, wide, ['square', 'square']),
    ...add(near, 'stool', stool, wide + horns, ['square', 'square']),
  ];
}

/** Names are compared without regard to case: openings shout now and then. */
export function nameAsTyped(name: string): string {
  return name.toLowerCase();
}

/** The casing's outer edges lie beside the window's sides; each is as long as from corner to corner of theirs. */
function roundOddWindow(house: House, window: OddWindow): Due[] {
  const { sides, measured, name } = window;
  const room = house.rooms[window.room]!.name;
  const out =
    measured === 'long point'
      ? 0
      : house.casing.width + (measured === 'opening' ? (window.reveal ?? window.usual.reveal) : 0);
  let at: Point = [0, 0];
  let along: Point = [1, 0];
  const lines = sides.map(({ length, right }): Line => {
    const line = { through: at, along };
    at = plus(at, along, length);
    along = turned(along, -(180 - right));
    return line;
  });
  const edges = lines.map((line) => beside(line, out));
  const outer: readonly [string, string] = ['outside miter', 'outside miter'];
  return edges.map((edge, side) => {
    const before = edges[(side + edges.length - 1) % edges.length]!;
    const after = edges[(side + 1) % edges.length]!;
    const length = Math.hypot(...minus(meet(edge, after), meet(edge, before)));
    const isLong = measured === 'long point';
    const point = isLong ? POINTS['outside miter']! : 'long point at the outer edge';
    return {
      room,
      run: name,
      profile: house.casing.name,
      kind: 'run',
      length,
      ends: outer,
      points: [point, point],
    };
  });
}
