import { beforeAll, describe, expect, test } from '@jest/globals';
import Module, { type ManifoldToplevel } from 'manifold-3d';
import { checkRoom } from '../../src/core/room/check-room.ts';
import type { Room } from '../../src/core/room/wall.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import type { Drawing, PathShape, Point } from '../../src/drawings/drawing.ts';
import { drawRoom } from '../../src/drawings/room.ts';
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
