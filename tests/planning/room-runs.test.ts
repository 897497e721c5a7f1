import { describe, expect, test } from '@jest/globals';
import createManifold from 'manifold-3d';

import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import type { Piece } from '../../src/planning/piece.ts';
import { drawCorners, wallsAlong } from '../core/room/make-rooms.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { jobOf, PLAIN, planOf, readTables, type Tables } from './make-job.ts';
import { READING_ROOM, saidOf } from './reading-room.ts';

describe('Runs out of Walls and Trim', () => {
  test('are those of a reading room worked by hand', () => {
    const { pieces, cutAways, faults, cautions } = listPieces(jobOf(READING_ROOM));
    expect(faults).toEqual([]);
    expect(cautions).toEqual([]);
    // Casing 3 1/2 and reveal 3/16 each side: the door takes 38 5/16 to 81 11/16 of wall 5, the cased
    // opening 32 5/16 to 87 11/16 of wall 2. Wall 1 is across from the door; from it to the right to the
    // cased opening, to the left to the door. What lies between the two starts at its longest, 3 and 4.
    // Walls 1 and 6 are whole, between two inside corners, and over 4 ft: 1/16 longer, to spring in.
    expect(saidOf(pieces, 'Base')).toEqual([
      '1: 216 1/16 square/square 1',
      '2: 32 5/16 cope/square 2',
      '2: 32 5/16 square/cope 7',
      // Round the outside corner each is longer by the base's thickness, 3/4.
      '3: 96 3/4 square/outside miter 5',
      '4: 72 3/4 outside miter/square 5',
      '5: 38 5/16 cope/square 6',
      '5: 38 5/16 square/cope 4',
      '6: 192 1/16 square/cope 3',
    ]);
    // The window with its casing stands from 28 5/16 to 83 11/16 up and takes 74 5/16 to 141 11/16 of wall 1.
    expect(saidOf(pieces, 'Rail')).toEqual([
      '1: 74 5/16 square/square 3',
      '1: 74 5/16 square/square 1',
      '2: 32 5/16 cope/square 2',
      '2: 32 5/16 square/cope 8',
      '3: 96 3/4 square/outside miter 6',
      '4: 72 3/4 outside miter/square 6',
      '5: 38 5/16 cope/square 7',
      '5: 38 5/16 square/cope 5',
      '6: 192 square/cope 4',
    ]);
    // All round: only the last has two copes. Projection 4 5/8 · sin 38° = 2.8474, up to the next 1/16.
    expect(saidOf(pieces, 'Crown')).toEqual([
      '1: 216 square/square 1',
      '2: 120 cope/square 2',
      '3: 98 7/8 cope/outside miter 3',
      '4: 74 7/8 outside miter/square 3',
      '5: 120 cope/square 4',
      '6: 192 cope/cope 5',
    ]);
    expect(
      cutAways.map(
        (one) => `${one.profile} ${one.wall} ${one.opening} ${one.taken.toFraction(true)}`,
      ),
    ).toEqual([
      'Base 2 cased opening 55 3/8',
      'Base 5 door 43 3/8',
      'Rail 1 window 67 3/8',
      'Rail 2 cased opening 55 3/8',
      'Rail 5 door 43 3/8',
    ]);
  });

  test('are planned, and told apart from those of Runs, in the plan as JSON', async () => {
    const plan = planToJson(await planOf({ ...READING_ROOM, runs: PLAIN.runs }));
    const first = plan.pieces.find(({ run, profile }) => run === '3' && profile === 'Base');
    expect(first?.madeFrom).toEqual({
      wall: { file: 'walls.csv', line: 4, column: 3 },
      trim: { file: 'trim.csv', line: 2, column: 2 },
      order: 5,
      isTakenOver: false,
      joined: ['right'],
    });
    expect(plan.pieces.find(({ room }) => room === 'Hall')?.madeFrom).toBeNull();
  });

  test('of an alcove end square where the room stays open', () => {
    const { pieces } = listPieces(
      jobOf({
        ...READING_ROOM,
        openings: PLAIN.openings,
        walls: "Room,Wall,Length,Turn\nNook,left,30,\nNook,back,5',\nNook,right,30,end",
        trim: 'Room,Profile,Where\nNook,Base,floor',
      }),
    );
    expect(saidOf(pieces, 'Base')).toEqual([
      'left: 30 square/cope 3',
      'back: 60 1/16 square/square 1',
      'right: 30 cope/square 2',
    ]);
  });

  test('give way to a run of the same room, wall and profile, never both', () => {
    const typed = 'Room,Run,Profile,Length,Left end\nreading  room,2,BASE,119,cope';
    const { asRead, cautions, faults } = readTables({ ...READING_ROOM, runs: typed });
    expect(faults).toEqual([]);
    const base = asRead.runs.filter(({ profile }) => profile.toLowerCase() === 'base');
    expect(base.map(({ run }) => run)).toEqual(['1', '2', '3', '4', '5', '6']);
    expect(cautions.filter(({ code }) => code.startsWith('room.'))).toMatchObject([
      {
        code: 'room.run-taken-over',
        details: { length: { inches: 120 } },
        where: { file: 'runs.csv', line: 2, column: 4 },
      },
    ]);
    const beside = 'Room,Run,Profile,Length\nReading room,north,Base,100';
    expect(readTables({ ...READING_ROOM, runs: beside }).cautions).toContainEqual(
      expect.objectContaining({ code: 'room.runs-beside' }),
    );
  });

  test('leave an opening to the run that somebody typed for it', () => {
    const runs = 'Room,Run,Profile,Length\nReading room,closet,Base,60';
    const openings = `${READING_ROOM.openings}\nReading room,closet,door,24,80,Casing,10,`;
    const { faults, cutAways } = listPieces(jobOf({ ...READING_ROOM, runs, openings }));
    expect(faults).toEqual([]);
    expect(cutAways.filter(({ run }) => run === 'closet')).toHaveLength(1);
  });

  test('at the ceiling stay whole, and a casing that reaches into them is told of', () => {
    // The door's casing ends 83 11/16 up; of 87 in the crown's drop, 4 5/8 · cos 38° = 3.6446, leaves 83.3554.
    const walls = READING_ROOM.walls
      .replace('Turn', 'Turn,Height')
      .replace("5,10',,", "5,10',,,87");
    const { faults, cautions } = readTables({ ...READING_ROOM, walls });
    expect(faults).toEqual([]);
    const told = cautions.filter(({ code }) => code.startsWith('room.'));
    expect(told).toMatchObject([
      {
        code: 'room.casing-laps-ceiling',
        given: { inches: expect.closeTo(0.3321, 3) },
        where: { file: 'openings.csv', line: 2, column: 5 },
      },
    ]);
  });

  test('of a room that nearly closes are made as typed, and the gap is told', () => {
    const walls = READING_ROOM.walls.replace("5,10'", "5,10' 1/8");
    const { asRead, cautions } = readTables({ ...READING_ROOM, walls });
    expect(
      asRead.runs.filter(({ run }) => run === '5').map(({ length }) => Number(length)),
    ).toEqual([120.125, 120.125, 120.125]);
    expect(cautions.filter(({ code }) => code.startsWith('room.'))).toMatchObject([
      {
        code: 'room.gap',
        given: { inches: 0.125 },
        where: { file: 'walls.csv', line: 7, column: 3 },
      },
    ]);
  });

  test('come from a corner by tape as from one by gauge', () => {
    // 2 · asin(25.456 / 36) = 90.00°: 50.912 across marks 36 in out.
    const walls = READING_ROOM.walls
      .replace('Turn', 'Turn,Corner by tape')
      .replaceAll(',90,', ',,');
    const byTape = walls.replace("1,18',,inside", "1,18',,inside,50 29/32");
    const { asRead, faults } = readTables({ ...READING_ROOM, walls: byTape });
    expect(faults).toEqual([]);
    expect(Number(asRead.walls[0]!.corner)).toBeCloseTo(89.99, 2);
  });
});

describe('A corner by tape in millimetres', () => {
  test('is measured from marks 900 mm out', () => {
    // 900 · √2 = 1272.79.
    const walls =
      'Room,Wall,Length,Corner by tape\nDen,1,4000,1273\nDen,2,3000,\nDen,3,4000,\nDen,4,3000,';
    const shop = `${PLAIN.shop}\nunit,mm`;
    const { asRead, faults } = readTables({
      ...READING_ROOM,
      walls,
      shop,
      openings: PLAIN.openings,
      trim: 'Room,Profile,Where\nDen,Base,floor',
    });
    expect(faults).toEqual([]);
    expect(Number(asRead.walls[0]!.corner)).toBeCloseTo(90.02, 2);
    expect(asRead.runs).toHaveLength(4);
  });
});

interface DrawnRoom {
  readonly tables: Tables;
  /** Of base and of crown, without openings and outside corners. */
  readonly around: number;
  readonly outside: number;
  readonly taken: number;
  /** Walls over 4 ft between two inside corners, without an opening: base is sprung in there. */
  readonly sprung: number;
}

const CASED = 2 * (3.5 + 3 / 16);

describe('Runs of random rooms with square corners', () => {
  test('come to the walls, less the openings, more the outside corners, and meet at each corner', async () => {
    const library = await createManifold();
    library.setup();
    const next = seededNumbers(11);
    for (let drawn = 0; drawn < count(200); drawn++) {
      const { tables, around, outside, taken, sprung } = drawRoom(next, library);
      const { pieces, faults } = listPieces(jobOf(tables));
      expect(faults).toEqual([]);
      const total = (profile: string): number =>
        pieces
          .filter((one) => one.profile === profile && one.kind === 'run')
          .reduce((sum, { cutLength }) => sum + Number(cutLength), 0);
      expect(total('Base')).toBeCloseTo(around - taken + outside * 2 * 0.75 + sprung / 16, 6);
      const projection = 4.625 * Math.sin((38 * Math.PI) / 180);
      const up = Math.ceil(projection * 16 - 1e-6) / 16;
      // Each wall is rounded up by itself: one with two outside corners once.
      const crown = total('Crown');
      expect(crown).toBeLessThanOrEqual(around + outside * 2 * up + 1e-6);
      expect(crown).toBeGreaterThanOrEqual(around + outside * 2 * projection - 1e-6);
      checkCorners(pieces.filter(({ profile }) => profile === 'Crown'));
      // Every room has a door, so that only what no opening parts has a last one with two copes.
      const most = Math.max(...copesOf(pieces, 'Base').values());
      expect(most).toBe(1);
      const inRing = [...copesOf(pieces, 'Crown')].sort(([one], [other]) => one - other);
      expect(inRing.map(([, copes]) => copes)).toEqual(
        inRing.map((_, at) => (at === 0 ? 0 : at === inRing.length - 1 ? 2 : 1)),
      );
    }
  });
});

/** How many copes each has that goes up by itself, or joined beforehand: by its turn. */
function copesOf(pieces: readonly Piece[], profile: string): Map<number, number> {
  const copes = new Map<number, number>();
  for (const one of pieces) {
    const order = one.made?.order?.left;
    if (one.profile !== profile || order === undefined) continue;
    const here = [one.left, one.right].filter(({ kind }) => kind === 'cope').length;
    copes.set(order, (copes.get(order) ?? 0) + here);
  }
  return copes;
}

/** Pieces of a ring, a piece a wall: at each corner two miters, or a cope on what goes up later. */
function checkCorners(ring: readonly Piece[]): void {
  ring.forEach((one, at) => {
    const other = ring[(at + 1) % ring.length]!;
    const met = [one.right.kind, other.left.kind].join(' + ');
    const [order, next] = [one.made!.order!.left, other.made!.order!.left];
    if (met === 'outside miter + outside miter') expect(next).toBe(order);
    else expect(met).toBe(next > order ? 'square + cope' : 'cope + square');
  });
}

function drawRoom(
  next: () => number,
  library: Awaited<ReturnType<typeof createManifold>>,
): DrawnRoom {
  const walls = wallsAlong(drawCorners('rectilinear', next, library));
  const rows = walls.map(({ name, length, turn }) => `Den,${name},${Math.round(length)},${turn}`);
  const lengths = walls.map(({ length }) => Math.round(length));
  // One door on the longest wall, and one more opening on another where it fits.
  const longest = lengths.indexOf(Math.max(...lengths));
  const others = lengths.flatMap((length, at) => (at !== longest && length > 60 ? [at] : []));
  const second = others[Math.floor(next() * others.length)];
  const widths = [30, ...(second === undefined ? [] : [24])];
  const opened = [longest, ...(second === undefined ? [] : [second])];
  const isInside = (at: number): boolean => walls.at(at)!.turn === 'inside';
  const sprung = lengths.filter(
    (length, at) => length > 48 && isInside(at) && isInside(at - 1) && !opened.includes(at),
  ).length;
  const openings = opened.map((wall, at) => {
    const free = lengths[wall]! - widths[at]! - CASED - 2;
    const position = Math.floor(next() * free) + 5;
    return `Den,${walls[wall]!.name},door,${widths[at]},80,Casing,${position}`;
  });
  return {
    tables: {
      runs: 'Room,Run,Profile,Length',
      walls: `Room,Wall,Length,Turn\n${rows.join('\n')}`,
      trim: 'Room,Profile,Where\nDen,Base,floor\nDen,Crown,ceiling',
      openings: `Room,Wall,Kind,Width,Height,Casing,Position\n${openings.join('\n')}`,
    },
    around: lengths.reduce((sum, one) => sum + one, 0),
    outside: walls.filter(({ turn }) => turn === 'outside').length,
    taken: widths.reduce((sum, one) => sum + one + CASED, 0),
    sprung,
  };
}

describe('Many rooms', () => {
  test('are read and made together', () => {
    const rooms = Array.from({ length: count(1000) }, (_, at) => `Room ${at}`);
    const walls = rooms.flatMap((room) =>
      [120, 144, 120, 144].map((length, at) => `${room},${at + 1},${length}`),
    );
    const openings = rooms.map((room) => `${room},1,door,32,80,Casing,40`);
    const { asRead, faults } = readTables({
      ...READING_ROOM,
      walls: `Room,Wall,Length\n${walls.join('\n')}`,
      trim: 'Room,Profile,Where\nall,Base,floor\nall,Rail,height\nall,Crown,ceiling',
      openings: `Room,Wall,Kind,Width,Height,Casing,Position\n${openings.join('\n')}`,
    });
    expect(faults).toEqual([]);
    expect(asRead.runs).toHaveLength(rooms.length * 12);
  });
});
