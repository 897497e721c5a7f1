import { beforeAll, describe, expect, test } from '@jest/globals';
import createManifold, { type ManifoldToplevel } from 'manifold-3d';

import { toDegrees } from '../../src/core/units/angle.ts';
import { RUN_HEADINGS } from '../../src/planning/input/headings/run-headings.ts';
import { rowsForRuns } from '../../src/planning/input/rows-for-runs.ts';
import { listPieces, type PieceList } from '../../src/planning/pieces/list-pieces.ts';
import { listRoomFittings } from '../../src/planning/rooms/room-fittings.ts';
import { keyOf } from '../../src/planning/rooms/typed-runs.ts';
import { listRuns } from '../../src/planning/list-runs.ts';
import type { Job, Run } from '../../src/planning/job.ts';
import type { Piece } from '../../src/planning/piece.ts';
import { readJob, type JobReading } from '../../src/planning/input/read-job.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { drawCorners, KINDS, wallsAlong, type Kind } from '../core/room/make-rooms.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { jobOf, readTables, tablesOf, type Tables } from './make-job.ts';
import { READING_ROOM } from './reading-room.ts';

const HEADINGS = RUN_HEADINGS.map(({ heading }) => heading).join(',');

/** The tables with those runs put below the rows of Runs. */
function withRows(tables: Tables, runs: readonly Run[], headings?: string): JobReading {
  const all = tablesOf(tables);
  const mine = all.find(({ name }) => name === 'Runs')!;
  const table: RawTable =
    headings === undefined
      ? mine
      : { ...mine, headings: { line: 1, cells: headings.split(',') }, rows: [] };
  const { shop } = readTables(tables).asRead;
  const rows = rowsForRuns(table, runs, shop);
  if (!rows.ok) throw new Error(rows.faults.map(({ message }) => message).join(' '));
  const from = table.rows.length + 2;
  const added = rows.value.map((cells, at) => ({ line: from + at, cells }));
  const grown = { ...table, rows: [...table.rows, ...added] };
  return readJob(
    all.map((one) => (one.name === 'Runs' ? grown : one)),
    'job',
  );
}

/** All that a shop is told of a piece, but for where it was typed. */
function toldOf({ pieces, cutAways }: PieceList) {
  return {
    cutAways,
    pieces: pieces.map(({ made, onWall, ...one }: Piece) => ({
      ...one,
      where: undefined,
      cutLength: one.cutLength.toFraction(),
      left: { ...one.left, added: one.left.added.toFraction() },
      right: { ...one.right, added: one.right.added.toFraction() },
      made: made && {
        place: made.place.at,
        order: made.order,
      },
      onWall: onWall && {
        ...onWall,
        lies: onWall.lies && {
          ...onWall.lies,
          from: onWall.lies.from.toFraction(),
          to: onWall.lies.to.toFraction(),
        },
      },
    })),
  };
}

/** What goes up when, and joined to what. */
function fittedOf(job: Job) {
  return listRoomFittings({ job, pieces: listPieces(job).pieces }).map(({ trims, typed }) => ({
    typed,
    trims: trims.map(({ pieces }) =>
      pieces.map(({ piece, wall, order, goesOn, joinedTo }) => ({
        ...{ id: piece.id, wall, order, goesOn, joinedTo },
      })),
    ),
  }));
}

function checkSame(before: Job, after: JobReading): void {
  expect(after.faults.map(({ message }) => message)).toEqual([]);
  expect(toldOf(listPieces(after.job!))).toEqual(toldOf(listPieces(before)));
  expect(fittedOf(after.job!)).toEqual(fittedOf(before));
}

const codesOf = ({ cautions }: JobReading): string[] =>
  cautions.map(({ code }) => code).filter((code) => code.startsWith('room.'));

describe('Runs that are taken over', () => {
  test('all at once, or a single one, plan to the very pieces that were made', () => {
    const job = jobOf(READING_ROOM);
    const all = withRows(READING_ROOM, job.runs, HEADINGS);
    checkSame(job, all);
    expect(all.job!.runs.every(({ made }) => made?.isTakenOver)).toBe(true);
    expect(all.cautions.find(({ code }) => code.startsWith('room.'))?.message).toBe(
      'Room Reading room: Runs has 18 of its runs, the same as Walls and Trim make. Another length or corner in Walls no longer changes these; take a row out to have its run made again.',
    );
    for (const run of job.runs) checkSame(job, withRows(READING_ROOM, [run], HEADINGS));
  });

  test('run where Trim has them, whatever Profiles says of their place', () => {
    // Casing belongs round openings: along the floor, doors cut it away by what Trim says alone.
    const tables = { ...READING_ROOM, trim: 'Room,Profile,Where\nall,Casing,floor' };
    const job = jobOf(tables);
    expect(listPieces(job).cutAways).not.toEqual([]);
    checkSame(job, withRows(tables, job.runs, HEADINGS));
  });

  test('say what is otherwise than it is made', () => {
    const row = "reading room,4,Base,70,outside miter,cope,89,\nReading room,3,Base,8',,,,";
    const runs = `Room,Run,Profile,Length,Left end,Right end,Left corner,Quantity\n${row}`;
    const reading = readTables({ ...READING_ROOM, runs });
    const said = reading.cautions.filter(({ code }) => code.startsWith('room.'));
    expect(said.map(({ message }) => message)).toEqual([
      'Run 4 in Reading room: this row stands in place of the run of “Base” that Walls and Trim make on that wall (which has length 72 in, left corner 90°, right end square). Take it out to have that one again.',
      'Run 3 in Reading room: this row stands in place of the run of “Base” that Walls and Trim make on that wall (which has right end outside miter). Take it out to have that one again.',
    ]);
    // The miter on wall 4 has no other to be joined to.
    const [room] = fittedOf(reading.job!);
    const fourth = room!.trims[0]!.find(({ wall }) => wall === 3)!;
    expect(fourth.joinedTo).toEqual([]);
  });

  test('of one profile at two heights are told where one row stands for both', () => {
    const trim = 'Room,Profile,Where,Height\nall,Rail,height,20\nall,Rail,height,60';
    const tables = { ...READING_ROOM, trim };
    const job = jobOf(tables);
    const both = job.runs.filter(({ run }) => run === '6');
    checkSame(job, withRows(tables, both, HEADINGS));
    const one = withRows(tables, both.slice(0, 1), HEADINGS);
    const told = one.cautions.find(({ code }) => code === 'room.run-taken-over');
    expect(told?.message).toBe(
      'Run 6 in Reading room: Walls and Trim make 2 of “Rail” on that wall, and Runs has 1 in their place. Check that this is meant; without these rows that is planned which is made.',
    );
    expect(listPieces(one.job!).pieces.filter(({ run }) => run === '6')).toHaveLength(1);
    // Nobody knows which of the two it is, and so when it goes up.
    expect(fittedOf(one.job!)[0]!.typed).toHaveLength(1);
  });

  test('of which Runs lacks a column are refused, by its name', () => {
    const job = jobOf(READING_ROOM);
    const [table] = tablesOf(READING_ROOM);
    const rows = rowsForRuns(table!, job.runs, job.shop);
    expect(rows.ok ? [] : rows.faults.map(({ message }) => message)).toEqual([
      'Runs has no column Left end, which the run 2 of Base in Reading room needs (“cope”). Add the heading, and take the run over again; nothing was written.',
      'Runs has no column Right end, which the run 2 of Base in Reading room needs (“cope”). Add the heading, and take the run over again; nothing was written.',
    ]);
    // Square at both ends, the first needs neither.
    expect(rowsForRuns(table!, job.runs.slice(0, 1), job.shop)).toMatchObject({
      ok: true,
      value: [['Reading room', '1', 'Base', '216"']],
    });
  });

  test('whose names Runs would not take for names are refused', () => {
    const walls = 'Room,Wall,Length,Turn\nTotal,1,144,\nTotal,2,120,end';
    const tables = { ...READING_ROOM, walls, openings: '' };
    const job = readTables({ ...tables, trim: 'Room,Profile,Where\nall,Base,floor' }).asRead;
    const [table] = tablesOf({ runs: HEADINGS });
    for (const run of job.runs) {
      const odd = { ...run, right: { ...run.right, corner: 179.5 as Run['right']['corner'] } };
      const rows = rowsForRuns(table!, [odd], job.shop);
      expect(rows.ok ? [] : rows.faults.map(({ code }) => code)).toEqual([
        'room.run-reads-otherwise',
      ]);
    }
  });
});

describe('Random rooms', () => {
  let library: ManifoldToplevel;
  beforeAll(async () => {
    library = await createManifold();
    library.setup();
  });

  test('plan to the same pieces, ends, marks, turns and joints whichever of their runs are taken over', () => {
    const next = seededNumbers(29);
    for (let drawn = 0; drawn < count(200); drawn++) {
      const tables = drawTables(KINDS[drawn % KINDS.length]!, next, library);
      const job = jobOf(tables);
      const made = job.runs.filter((run) => run.made !== undefined);
      const keys = new Set(made.map(keyOf).filter(() => next() < 0.4));
      const chosen = made.filter((run) => keys.has(keyOf(run)));
      const after = withRows(tables, chosen);
      checkSame(job, after);
      const taken = after.job!.runs.filter((run) => run.made?.isTakenOver === true);
      expect(taken.map(keyOf)).toEqual(chosen.map(keyOf));
      expect(codesOf(after).filter((code) => code === 'room.run-taken-over')).toEqual([]);
      checkList(job);
    }
  });
});

/** What is listed of each run comes to its pieces: as many, as long but for what their ends add. */
function checkList(job: Job): void {
  const listed = listRuns(job);
  expect(listed.map(({ run }) => run)).toEqual(job.runs);
  const parts = listed.flatMap(({ run, cut }) =>
    Array.from({ length: run.quantity }, () => cut?.parts ?? [run]).flat(),
  );
  const pieces = listPieces(job).pieces.filter(
    ({ kind, run }) => kind === 'run' && job.runs.some((one) => one.run === run),
  );
  expect(pieces).toHaveLength(parts.length);
  const sum = (lengths: readonly number[]): number => lengths.reduce((all, one) => all + one, 0);
  const asked = sum(parts.map(({ length }) => Number(length)));
  const cut = sum(
    pieces.map((one) => Number(one.cutLength.sub(one.left.added).sub(one.right.added))),
  );
  expect(cut).toBeGreaterThan(asked - 1e-6);
  expect(cut).toBeLessThan(asked + parts.length / 16 + 1e-6);
  for (const { run, cut: away } of listed) {
    const taken = sum((away?.taken ?? []).map((one) => Number(one.taken)));
    const left = sum((away?.parts ?? [run]).map(({ length }) => Number(length)));
    expect(left + taken).toBeCloseTo(Number(run.length), 9);
  }
}

/** A room in inches or millimetres, with two or three openings on its longest wall and runs typed beside. */
function drawTables(kind: Kind, next: () => number, library: ManifoldToplevel): Tables {
  const walls = wallsAlong(drawCorners(kind, next, library));
  const isMetric = next() < 0.5;
  const write = (inches: number): string =>
    isMetric ? `${(inches * 25.4).toFixed(1)} mm` : inches.toFixed(4);
  const rows = walls.map(
    ({ name, length, cornerAtRight, turn }) =>
      `Den,${name},${write(length)},${toDegrees(cornerAtRight).toFixed(3)},${turn}`,
  );
  const lengths = walls.map(({ length }) => length);
  const longest = lengths.indexOf(Math.max(...lengths));
  const room = lengths[longest]!;
  const isPlaced = next() < 0.8;
  const wide = room / 8;
  const openings = [0.05, 0.4, 0.75].map((share, at) => {
    const position = isPlaced || at > 0 ? write(room * (share + next() * 0.05)) : '';
    const [casing, sill] = at === 1 ? ['Casing', '20'] : ['', ''];
    return `Den,${longest + 1},${at === 1 ? 'window' : 'door'},${write(wide)},60,${casing},${position},${sill}`;
  });
  const corners = next() < 0.5 ? 'cope' : 'miter';
  return {
    runs: `${HEADINGS}\nDen,shelf,Base,30\nHall,north,Base,100`,
    walls: `Room,Wall,Length,Corner,Turn\n${rows.join('\n')}`,
    trim: `Room,Profile,Where,Height,Inside corners,Note\nall,Base,floor,,${corners},low\nDen,Crown,ceiling,,,\nDen,Casing,height,36,,\nDen,Casing,height,50,miter,"2nd, upper"`,
    openings: `Room,Wall,Kind,Width,Height,Casing,Position,Sill\n${openings.join('\n')}`,
  };
}
