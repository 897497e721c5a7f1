/** What is said of a room that no walls make: each fault at the cell that must change. */
import { describe, expect, test } from '@jest/globals';
import Module from 'manifold-3d';
import { own } from '../../../src/core/faults/argument.ts';
import { rewordFault } from '../../../src/core/faults/fault.ts';
import { checkRoom } from '../../../src/core/room/check-room.ts';
import { computeCornerByTape, markOutInches } from '../../../src/core/room/corner-by-tape.ts';
import { MOST_WALLS, type Room } from '../../../src/core/room/wall.ts';
import { toDegrees } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';
import { drawCorners, KINDS, measured, roomOf, wallsAlong } from './make-rooms.ts';

const said = (room: Room): unknown[] =>
  checkRoom(room).faults.map(({ fault, wall, cell }) => [wall, cell, fault.message]);

describe('a room that closes', () => {
  test('has no faults, its plan, and the gap that is left', () => {
    const { faults, plan, closure, suspects } = checkRoom(
      roomOf([120, 90], [96, 90], [120.25, 90], [96, 90]),
    );
    expect(faults).toEqual([]);
    expect(plan).toHaveLength(4);
    expect(closure?.gap).toBeCloseTo(0.25, 9);
    expect(suspects).toBeUndefined();
  });

  test('has no walls that cross, however tape and gauge are off', async () => {
    const library = await Module();
    library.setup();
    const next = seededNumbers(33);
    for (let drawn = 0; drawn < count(2_000); drawn++) {
      const corners = drawCorners(KINDS[drawn % KINDS.length]!, next, library);
      const { faults } = checkRoom({ name: 'Den', walls: measured(wallsAlong(corners), next) });
      expect(faults.filter(({ fault }) => fault.code === 'room.walls-cross')).toEqual([]);
    }
  });

  test('may end anywhere, where it has an end', () => {
    const { faults, closure } = checkRoom(roomOf([30, 90], [84, 90], [30, 90, 'end']));
    expect(faults).toEqual([]);
    expect(closure).toBeUndefined();
    expect(said(roomOf([144, 90, 'end']))).toEqual([]);
  });
});

describe('a room that does not close', () => {
  test('names both walls of a rectangle, since either may be the wrong one', () => {
    expect(said(roomOf([126, 90], [96, 90], [120, 90], [96, 90]))).toEqual([
      [
        0,
        'length',
        "Room Den doesn't close: going round it ends 6 in from where it began (up to 2 7/16 in is allowed). One of these, which its sizes can't tell apart: wall 1 would have to be 120 in, 6 in shorter; or wall 3 would have to be 126 in, 6 in longer.",
      ],
    ]);
  });

  test('names the corner that a gauge misread', () => {
    expect(said(roomOf([120, 90], [96, 87], [120, 90], [96, 90]))).toEqual([
      [
        1,
        'corner',
        "Room Den doesn't close: its corners turn 363° in all, 3° off 360° (up to 1.5° is allowed), and going round it ends 8 1/16 in from where it began (up to 2 3/8 in is allowed). Most likely the corner at the right of wall 2 would have to be 90°, 3° more.",
      ],
    ]);
  });

  test('names the wall of a bay that no other is parallel to', () => {
    const slant = 36 * Math.SQRT2;
    const walls = roomOf(
      [132 + slant, 90],
      [120, 90],
      [30, 135, 'outside'],
      [36, 135],
      [72, 135],
      [48, 135, 'outside'],
      [30, 90],
      [120, 90],
    );
    const [first] = said(walls) as [[number, string, string]];
    expect(first.slice(0, 2)).toEqual([5, 'length']);
    expect(first[2]).toContain('Most likely wall 6 would have to be 36 in, 12 in shorter.');
  });

  test('names the turn that was typed the other way round', () => {
    const [first] = said(roomOf([120, 90], [200, 90], [60, 90], [80, 90], [60, 90], [120, 90])) as [
      [number, string, string],
    ];
    expect(first.slice(0, 2)).toEqual([3, 'turn']);
    expect(first[2]).toContain(
      'Most likely the corner at the right of wall 4 would have to be 90°, outside, not inside.',
    );
  });

  test('is said to have more than one wrong, where no single change closes it', () => {
    const [first] = said(roomOf([120, 90], [96, 70], [220, 90], [96, 90])) as [
      [number, string, string],
    ];
    expect(first[2]).toContain('No single length or corner closes it, so more than one is wrong.');
  });

  test('is told in millimetres where the shop measures so', () => {
    const [first] = checkRoom(roomOf([126, 90], [96, 90], [120, 90], [96, 90])).faults;
    expect(rewordFault(first!.fault, 'mm').message).toContain(
      'wall 1 would have to be 3048 mm, 152.4 mm shorter; or wall 3 would have to be 3200.4 mm',
    );
  });

  test('names four parallel walls with their change, and the others by name', () => {
    const steps = [1, 2, 3, 4].flatMap(
      () =>
        [
          [24, 90],
          [20, 90, 'outside'],
        ] as const,
    );
    const [first] = said(roomOf([132, 90], [100, 90], ...steps, [24, 90], [20, 90])) as [
      [number, string, string],
    ];
    expect(first[2]).toContain(
      'tell apart: wall 1 would have to be 120 in, 12 in shorter; or wall 3',
    );
    expect(first[2]).toMatch(
      /or wall 7 would have to be 36 in, 12 in longer; or wall 9, wall 11 something like it\.$/u,
    );
  });
});

describe('what no room has', () => {
  test.each<[string, Room, number, string, string]>([
    ['no walls', roomOf(), 0, 'length', 'Room Den has no walls. List them in order to the right.'],
    [
      'two walls',
      roomOf([120, 90], [96, 90]),
      1,
      'turn',
      "Room Den has 2 walls; walls that go all round are 3 at least. List those that lack, or write end under Turn of the last, where it doesn't come back to the first.",
    ],
    [
      'a corner of 0',
      roomOf([120, 0], [96, 90], [120, 90], [96, 90]),
      0,
      'corner',
      'Corner of Wall 1 in Den is 0°; a gauge between two walls reads more than 0° and less than 180°. Where it lies round an outside corner, write what it reads there, and outside under Turn.',
    ],
    [
      'a corner of 180',
      roomOf([120, 90], [96, 180], [120, 90], [96, 90]),
      1,
      'corner',
      'Corner of Wall 2 in Den is 180°; a gauge between two walls reads more than 0° and less than 180°. Where it lies round an outside corner, write what it reads there, and outside under Turn.',
    ],
    [
      'a corner that is no number',
      roomOf([120, 90], [96, 90], [120, NaN], [96, 90]),
      2,
      'corner',
      'Corner of Wall 3 in Den is “NaN”; a gauge between two walls reads more than 0° and less than 180°. Where it lies round an outside corner, write what it reads there, and outside under Turn.',
    ],
    [
      'a wall of no length',
      roomOf([120, 90], [0, 90], [120, 90], [96, 90]),
      1,
      'length',
      'Length of Wall 2 in Den is 0 in; it must be more than 0.',
    ],
    [
      'an end before the last wall',
      roomOf([120, 90], [96, 90, 'end'], [120, 90, 'end']),
      1,
      'turn',
      'Wall 2 in Den: the walls end here, and more of the room follow. Write inside or outside under Turn, or give what follows the name of another room.',
    ],
    [
      'turns that all go to the left',
      roomOf([120, 90, 'outside'], [96, 90, 'outside'], [120, 90, 'outside'], [96, 90, 'outside']),
      0,
      'turn',
      'Room Den: its corners turn -360° in all, once round to the left. Walls are listed in order to the right, as one faces them from inside: a corner that sticks into the room is outside, any other inside. Change inside and outside under Turn throughout.',
    ],
    [
      'walls that cross on their way to an end',
      roomOf([100, 90], [100, 90], [50, 90], [150, 90, 'end']),
      3,
      'length',
      'Wall 4 in Den would run through wall 1. Check both, the corners between them, and inside and outside under Turn.',
    ],
    [
      'walls that cross though the room closes',
      roomOf(
        [100, 90],
        [100, 90],
        [40, 90],
        [140, 90, 'outside'],
        [40, 90, 'outside'],
        [140, 90],
        [20, 90],
        [100, 90],
      ),
      3,
      'length',
      'Wall 4 in Den would run through wall 1. Check both, the corners between them, and inside and outside under Turn.',
    ],
    [
      'a wall that lies on another',
      roomOf([100, 90], [80, 90], [100, 90], [80, 90], [60, 90, 'end']),
      4,
      'length',
      'Wall 5 in Den would run through wall 1. Check both, the corners between them, and inside and outside under Turn.',
    ],
  ])('%s', (_, room, wall, cell, message) => {
    expect(said(room)).toEqual([[wall, cell, message]]);
  });

  test('more walls than are read', () => {
    const { faults } = checkRoom(
      roomOf(...Array.from({ length: MOST_WALLS + 1 }, () => [12, 90] as const)),
    );
    expect(faults.map(({ fault }) => fault.message)).toEqual([
      'Room Den has 501 walls; at most 500 are read in one room. Give each room a name of its own.',
    ]);
  });

  test('is said in words, whatever the lengths and corners are', () => {
    const next = seededNumbers(90_210);
    const pick = <One>(from: readonly One[]): One => from[Math.floor(next() * from.length)]!;
    for (let drawn = 0; drawn < count(5_000, 1_000); drawn++) {
      const walls = Array.from(
        { length: 1 + Math.floor(next() * 7) },
        () =>
          [
            pick([1e-12, 1e-3, 1, 24, 120.5, 2_400, 1e6, 200 * next()]),
            pick([1e-9, 1, 45, 90, 90, 135, 179, 179.999999999, 180 * next()]),
            pick([
              'inside',
              'inside',
              'inside',
              'outside',
              next() < 0.1 ? 'end' : 'inside',
            ] as const),
          ] as const,
      );
      const { faults, cautions, closure } = checkRoom(roomOf(...walls));
      if (closure?.isAccepted === false) expect(faults).toHaveLength(1);
      for (const { fault, wall } of [...faults, ...cautions]) {
        expect(fault.message).toMatch(/^[A-Z].*\.$/u);
        expect(fault.message).not.toMatch(/NaN|undefined|Infinity/u);
        expect(wall).toBeLessThan(walls.length);
      }
    }
  });

  test('is said of every wall at once', () => {
    const { faults } = checkRoom(roomOf([-1, 90], [96, 200], [120, 90]));
    expect(faults.map(({ fault, wall }) => [wall, fault.code])).toEqual([
      [0, 'length.not-positive'],
      [1, 'room.corner-out-of-range'],
    ]);
  });
});

const TAPE = own('Corner by tape');

describe('a corner by tape', () => {
  const byTape = (across: number, markOut = 36): number => {
    const corner = computeCornerByTape(across, markOut, TAPE);
    if (!corner.ok) throw new Error(corner.faults[0]!.message);
    return toDegrees(corner.value);
  };

  test('50 29/32 in between marks 36 in out is 89.99°, and 1/16 in there is 0.14°', () => {
    // 2 asin(50.90625 / 72), worked by hand [D]
    expect(byTape(50 + 29 / 32)).toBeCloseTo(89.99, 2);
    expect(byTape(51) - byTape(51 - 1 / 16)).toBeCloseTo(0.14, 2);
  });

  test('a triangle of three equal sides has 60°, and 3, 4 and 5 ft make half of the corner', () => {
    expect(byTape(36)).toBeCloseTo(60, 12);
    // Marks 5 ft out, 6 ft apart: half of it is the 3 of 3, 4, 5.
    expect(byTape(72, 60)).toBeCloseTo((2 * Math.atan2(3, 4) * 180) / Math.PI, 12);
  });

  test('marks stand 36 in out, or 900 mm', () => {
    expect(markOutInches('in')).toBe(36);
    expect(markOutInches('mm') * 25.4).toBeCloseTo(900, 9);
  });

  test.each([
    [72, 'room.tape-too-long'],
    [72.5, 'room.tape-too-long'],
    [0, 'length.not-positive'],
    [-3, 'length.not-positive'],
    [NaN, 'length.unreadable'],
    [Infinity, 'length.unreadable'],
  ])('%d in is refused', (across, code) => {
    const corner = computeCornerByTape(across, 36, TAPE);
    expect(!corner.ok && corner.faults.map((one) => one.code)).toEqual([code]);
  });

  test('too far apart is said with what is possible', () => {
    const corner = computeCornerByTape(75, 36, TAPE);
    expect(!corner.ok && corner.faults[0]!.message).toBe(
      'Corner by tape is 75 in; between marks 36 in out from the corner it is less than 72 in. Measure straight from mark to mark.',
    );
  });
});
