import { beforeAll, describe, expect, test } from '@jest/globals';
import Module, { type ManifoldToplevel } from 'manifold-3d';
import { checkRoom } from '../../src/core/room/check-room.ts';
import type { Room } from '../../src/core/room/wall.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import type { Drawing, PathShape, Point } from '../../src/drawings/drawing.ts';
import { drawRoom } from '../../src/drawings/room.ts';
import type { RoomRun } from '../../src/drawings/room-view.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { drawCorners, KINDS, roomOf, wallsAlong } from '../core/room/make-rooms.ts';
import { areaOf, areasIn, misplacedIn, textsIn } from './drawn-coves.ts';

const DEN = roomOf([148.5, 90], [120, 90], [148.5, 90], [120, 90]);
const view = (room: Room) => ({ room, ...INCHES_AND_POINT });

function linesIn({ shapes }: Drawing, tone: string, width: number): PathShape[] {
  return shapes
    .filter((shape) => shape.kind === 'path')
    .filter(({ stroke }) => stroke?.tone === tone && stroke.width === width);
}
const lengthOf = ({ points }: PathShape): number => {
  const [from, to] = points as [Point, Point];
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
};
const texts = (drawing: Drawing): string[] => textsIn(drawing).map(({ text }) => text);

const WALL = 0.5;
const SUSPECT = 1;

let library: ManifoldToplevel;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

describe('A room from above', () => {
  test('has its walls to scale, one after the other, the first on top and to the right', () => {
    const drawing = drawRoom(view(DEN));
    const walls = linesIn(drawing, 'ink', WALL);
    expect(walls).toHaveLength(4);
    const scale = lengthOf(walls[0]!) / 148.5;
    [148.5, 120, 148.5, 120].forEach((length, at) =>
      expect(lengthOf(walls[at]!)).toBeCloseTo(length * scale, 9),
    );
    const [[left, top], [right, level]] = walls[0]!.points as [Point, Point];
    expect(right).toBeGreaterThan(left);
    expect(level).toBeCloseTo(top, 9);
    expect(Math.min(...walls.flatMap(({ points }) => points.map(([, y]) => y)))).toBeCloseTo(
      top,
      9,
    );
    expect(texts(drawing)).toEqual(['1: 148 1/2"', '2: 120"', '3: 148 1/2"', '4: 120"']);
  });

  test('leaves walls open where openings are, and tells a window from a door', () => {
    const drawing = drawRoom({
      ...view(DEN),
      openings: [
        { wall: 0, kind: 'window', from: 40, to: 100 },
        { wall: 1, kind: 'door', from: 12, to: 44 },
      ],
    });
    const walls = linesIn(drawing, 'ink', WALL);
    const scale = lengthOf(walls.at(-1)!) / 120;
    const lengths = walls.map((one) => Math.round((lengthOf(one) / scale) * 100) / 100);
    expect(lengths).toEqual([40, 48.5, 12, 76, 148.5, 120]);
    const panes = linesIn(drawing, 'ink', 0.15);
    expect(panes.map((one) => Math.round(lengthOf(one) / scale))).toEqual([60, 60]);
    expect(drawing.alt).toContain(
      'Wall 1: 148 1/2" with a window from 40" to 100" from its left corner, then a corner of 90° inside.',
    );
    expect(drawing.alt).toContain('Wall 2: 120" with a door from 12" to 44" from its left corner');
  });

  test('marks the lengths that may be wrong by more than their color, and says how far it is open', () => {
    const room = roomOf([126, 90], [96, 90], [120, 90], [96, 90]);
    const suspects = checkRoom(room).suspects!.mayBe;
    const drawing = drawRoom({ ...view(room), suspects });
    const marked = linesIn(drawing, 'feed', SUSPECT);
    expect(marked).toHaveLength(2);
    expect(marked.every(({ stroke }) => stroke?.dash !== undefined)).toBe(true);
    expect(lengthOf(marked[0]!) / lengthOf(marked[1]!)).toBeCloseTo(126 / 120, 9);
    const gap = linesIn(drawing, 'feed', 0.25);
    expect(gap).toHaveLength(1);
    expect(lengthOf(gap[0]!) / lengthOf(marked[0]!)).toBeCloseTo(6 / 126, 9);
    expect(texts(drawing)).toContain('broken line, may be wrong: wall 1, 3');
    expect(texts(drawing)).toContain('open by 6" where it should close');
    expect(drawing.alt).toContain('The last wall ends 6" from where the first begins.');
    expect(drawing.alt).toContain(
      'Marked, since it may be wrong: the length of wall 1, the length of wall 3.',
    );
  });

  test('rings a corner that may be wrong, and letters what a gauge read there', () => {
    const room = roomOf([120, 90], [96, 87], [120, 90], [96, 90]);
    const drawing = drawRoom({ ...view(room), suspects: checkRoom(room).suspects!.mayBe });
    const walls = linesIn(drawing, 'ink', WALL);
    const rings = drawing.shapes.filter((shape) => shape.kind === 'circle');
    expect(rings).toHaveLength(1);
    expect(rings[0]!.center).toEqual(walls[1]!.points[1]);
    expect(texts(drawing)).toContain('87°');
    expect(texts(drawing)).toContain('ring, may be wrong: corner at the right of wall 2');
  });

  test('of walls that end shows no floor and no gap', () => {
    const drawing = drawRoom(view(roomOf([24, 90, 'outside'], [60, 90], [84, 90, 'end'])));
    expect(areasIn(drawing, 'removed')).toEqual([]);
    expect(linesIn(drawing, 'feed', 0.25)).toEqual([]);
    expect(drawing.alt).toContain('Wall 3: 84", which ends there.');
    expect(drawRoom(view(roomOf([84, 90, 'end']))).title).toBe('Room Den from above, one wall');
  });

  test('is lettered in millimetres where the shop measures so', () => {
    const drawing = drawRoom({ room: DEN, unit: 'mm', decimalSign: ',' });
    expect(texts(drawing)).toContain('1: 3771,9 mm');
  });

  test.each(KINDS)('has the area of its polygon, and no text over another: %s', (kind) => {
    const next = seededNumbers(812);
    for (let drawn = 0; drawn < count(60); drawn++) {
      const corners = drawCorners(kind, next, library);
      const room = { name: 'Den', walls: wallsAlong(corners) };
      const drawing = drawRoom({ ...view(room), width: 65 + 120 * next() });
      expect(misplacedIn(drawing)).toEqual([]);
      const walls = linesIn(drawing, 'ink', WALL);
      expect(walls).toHaveLength(corners.length);
      const scale = lengthOf(walls[0]!) / room.walls[0]!.length;
      const floor = areasIn(drawing, 'removed')[0]!;
      expect(areaOf(floor.points) / scale ** 2).toBeCloseTo(areaOf(corners), 3);
      // Every length is said once: beside its wall, or under the drawing.
      const all = texts(drawing).join(', ').replaceAll('\u00A0', ' ');
      room.walls.forEach(({ name }) => expect(all).toMatch(new RegExp(`(?:^|[ ,])${name}: `, 'u')));
    }
  });
});

/** All round a room, ring by ring: marks tell ring and wall. */
const ringsOf = ({ walls }: Room, rings: number): RoomRun[] =>
  Array.from({ length: rings }, (_, ring) =>
    walls.map(({ length }, wall): RoomRun => ({
      wall,
      from: 0,
      to: length,
      ring,
      mark: `${wall + 1}${'ABCDEFGH'[ring]}`,
      left: wall % 2 === 0 ? 'square' : 'cope',
      right: 'square',
      ...(wall === 0 ? {} : { goesOn: 'right' as const }),
    })),
  ).flat();

describe('Trim in a room from above', () => {
  test('stands off its wall ring by ring, short of the corners, and cut where it is parted', () => {
    const whole = { left: 'square', right: 'square' } as const;
    const runs: RoomRun[] = [
      { wall: 0, from: 0, to: 148.5, ring: 0, mark: '1A', ...whole },
      { wall: 0, from: 0, to: 148.5, ring: 1, mark: '1B', ...whole },
      { wall: 2, from: 40, to: 100, ring: 0, mark: '2A', left: 'cope', right: 'return' },
    ];
    const drawing = drawRoom({ ...view(DEN), runs });
    const [wall] = linesIn(drawing, 'ink', WALL);
    const scale = lengthOf(wall!) / 148.5;
    const lines = linesIn(drawing, 'measure', 0.25);
    expect(lines).toHaveLength(3);
    // From a square corner as far along both walls as off them, 3 and 7.4 mm, and 1.7 mm of air; 0.9 at an opening.
    const lengths = [148.5 * scale - 2 * 4.7, 148.5 * scale - 2 * 9.1, 60 * scale - 2 * 0.9];
    lengths.forEach((length, at) => expect(lengthOf(lines[at]!)).toBeCloseTo(length, 9));
    const level = wall!.points[0]![1];
    expect(lines.slice(0, 2).map(({ points }) => points[0]![1] - level)).toEqual([
      expect.closeTo(3, 9),
      expect.closeTo(7.4, 9),
    ]);
    expect(texts(drawing)).toEqual(expect.arrayContaining(['1A', '1B', '2A']));
    expect(drawing.alt).toContain('2A on wall 3, cope, return.');
  });

  test('has an arrow the way that fitting goes on, along the wall as one faces it', () => {
    const run = { wall: 2, from: 0, to: 148.5, ring: 0, left: 'cope', right: 'square' } as const;
    for (const goesOn of ['left', 'right'] as const) {
      const drawing = drawRoom({ ...view(DEN), runs: [{ ...run, mark: '2A', goesOn }] });
      const [head, ...others] = areasIn(drawing, 'measure');
      expect(others).toEqual([]);
      const [tip, ...tail] = head!.points;
      // The wall below in the drawing runs from right to left.
      const way = Math.sign(tip![0] - tail[0]![0]);
      expect(way).toBe(goesOn === 'left' ? 1 : -1);
    }
  });

  test.each(KINDS)('stays in the room, nearer to its wall than to another: %s', (kind) => {
    const next = seededNumbers(813);
    for (let drawn = 0; drawn < count(40); drawn++) {
      const room = { name: 'Den', walls: wallsAlong(drawCorners(kind, next, library)) };
      const runs = ringsOf(room, 1 + Math.floor(next() * 6));
      const drawing = drawRoom({ ...view(room), runs, width: 100 + 60 * next() });
      expect(misplacedIn(drawing)).toEqual([]);
      const floor = areasIn(drawing, 'removed')[0]!.points;
      for (const { points } of linesIn(drawing, 'measure', 0.25)) {
        const off = Math.min(...points.map((point) => distanceToEdge(point, floor)));
        points.forEach((point) => expect(isWithin(point, floor)).toBe(true));
        expect(off).toBeGreaterThan(2.8);
      }
      // Each mark is written, in the room or under it.
      const all = texts(drawing).join(' ').split(/[ ,]+/u);
      expect(runs.filter(({ mark }) => !all.includes(mark))).toEqual([]);
    }
  });
});

function isWithin([x, y]: Point, corners: readonly Point[]): boolean {
  const crossed = corners.filter((from, at) => {
    const to = corners[(at + 1) % corners.length]!;
    const isPast = from[1] > y !== to[1] > y;
    return isPast && x < from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
  });
  return crossed.length % 2 === 1;
}

/** By many points along each side: nothing of the drawing's own arithmetic. */
function distanceToEdge([x, y]: Point, corners: readonly Point[]): number {
  const steps = 400;
  const distances = corners.flatMap((from, at) => {
    const to = corners[(at + 1) % corners.length]!;
    return Array.from({ length: steps + 1 }, (_, step) => {
      const share = step / steps;
      return Math.hypot(
        from[0] + share * (to[0] - from[0]) - x,
        from[1] + share * (to[1] - from[1]) - y,
      );
    });
  });
  return Math.min(...distances);
}
