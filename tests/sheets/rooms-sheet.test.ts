import { beforeAll, describe, expect, test } from '@jest/globals';
import createManifold, { type ManifoldToplevel } from 'manifold-3d';

import { toDegrees } from '../../src/core/units/angle.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { listRoomFittings, type FittedTrim } from '../../src/planning/rooms/room-fittings.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { sayMarks } from '../../src/sheets/rooms/openings-schedule.ts';
import { drawPlan } from '../../src/sheets/rooms/room-plan.ts';
import { letterOf, orderOf } from '../../src/sheets/rooms/rooms-words.ts';
import { CROSSCUT_CAUTION, JUDGMENT_CAUTION } from '../../src/sheets/words/standing-cautions.ts';
import { drawCorners, KINDS, wallsAlong, type Kind } from '../core/room/make-rooms.ts';
import { count } from '../deep.ts';
import { misplacedIn, textsIn } from '../drawings/drawn-coves.ts';
import { jobOf, planOf, type Tables } from '../planning/make-job.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { sheetOf, textsOf, WALLED } from './sheet-jobs.ts';

interface Row {
  readonly order: string;
  readonly mark: string;
  readonly wall: string;
  readonly profile: string;
  readonly length: number | string;
  readonly left: string;
  readonly right: string;
  readonly note: string;
}

/** Rows of pieces by the room under whose name they stand. */
function pagesOf(sheet: SheetDescription): Map<string, Row[]> {
  const pages = new Map<string, Row[]>();
  let room = '';
  for (const { cells } of sheet.rows) {
    const [first] = cells;
    if (first?.style === 'wrappedTitle' || first?.style === 'longTitle') {
      room = String(first.value).replace(/, continued$/u, '');
      continue;
    }
    if (first?.style !== 'rowStrong') continue;
    const value = (at: number): string => String(cells[at]?.value ?? '');
    const row: Row = {
      order: value(0),
      wall: value(1),
      profile: value(2),
      mark: value(3),
      length: cells[4]?.value as number | string,
      left: value(5),
      right: value(7),
      note: value(9),
    };
    pages.set(room, [...(pages.get(room) ?? []), row]);
  }
  return pages;
}

let plan: JobPlan;
let workbook: WorkbookDescription;
let sheet: SheetDescription;

beforeAll(async () => {
  plan = await planOf(WALLED);
  workbook = describePlan(plan);
  sheet = sheetOf(workbook, 'Rooms');
});

describe('The page of a room', () => {
  test('has the reading room in the order in which it goes up, each end as a glyph with its angle', () => {
    const rows = pagesOf(sheet).get('Reading room')!;
    const base = rows.filter(({ order }) => order.endsWith('A'));
    // Worked by hand with tests/planning/room-runs.test.ts.
    expect(
      base.map((one) => `${one.order} ${one.wall} ${one.length} ${one.left}, ${one.right}`),
    ).toEqual([
      '1A 1 216.0625 ▐ square, ▌ square',
      '2A 2 32.3125 ◥ cope 90°, ▌ square',
      '3A 6 192.0625 ▐ square, ◤ cope 90°',
      '4A 5 38.3125 ▐ square, ◤ cope 90°',
      '5A 3 96.75 ▐ square, ◣ miter 45°',
      '5A 4 72.75 ◢ miter 45°, ▌ square',
      '6A 5 38.3125 ◥ cope 90°, ▌ square',
      '7A 2 32.3125 ▐ square, ◤ cope 90°',
    ]);
    const [, , , , fifth] = base;
    expect(fifth?.note).toContain('joined to 4');
    // The base ends at the casing, which is up before it.
    expect(rows.findIndex(({ profile }) => profile === 'Casing')).toBe(0);
    expect(textsOf(sheet)).toContain('A: Base at the floor, inside corners coped');
    expect(textsOf(sheet)).toContain(
      'B: Rail, its lower edge 32" above the floor, inside corners coped',
    );
  });

  test('draws what openings leave where it lies on its wall, casing and reveal left out', () => {
    const lies = plan.pieces
      .filter(
        ({ room, run, profile }) => room === 'Reading room' && run === '5' && profile === 'Base',
      )
      .map(({ onWall }) => [onWall?.lies?.from, onWall?.lies?.to].map(Number));
    // The door from 42 to 78, 3 1/2 and 3/16 beside it.
    expect(lies).toEqual([
      [0, 38.3125],
      [81.6875, 120],
    ]);
  });

  test('sets apart what is typed by hand and what is around openings', () => {
    const rows = pagesOf(sheet).get('Reading room')!;
    const loose = rows.filter(({ order }) => order === '');
    const typed = loose.find(({ wall }) => wall === 'shelf');
    expect(typed).toMatchObject({ profile: 'Rail', length: 30, note: 'of oak' });
    expect(loose.filter(({ profile }) => profile === 'Casing').map(({ wall }) => wall)).toEqual([
      ...['5 door, left leg', '5 door, right leg', '5 door, head'],
      ...['1 window, left leg', '1 window, right leg', '1 window, head', '1 window, foot'],
      ...['2 cased opening, left leg', '2 cased opening, right leg', '2 cased opening, head'],
    ]);
  });

  test('gives a run that is typed in place of a made one its turn, with the ends that were typed', () => {
    const { alt } = sheet.drawings![0]!.drawing;
    expect(alt).toContain('1C on wall 1, square, square;');
    expect(alt).toContain('4C on wall 5, cope, square, right');
    // Square at both ends, it is cut to nothing, and so has no arrow.
    expect(alt).toContain('5C on wall 6, square, square.');
    const row = pagesOf(sheet)
      .get('Reading room')!
      .find(({ order }) => order === '5C');
    expect(row).toMatchObject({
      wall: '6',
      length: 192,
      note: expect.stringMatching(/^as Runs has it; spliced from 2 parts.*; typed by hand$/u),
    });
  });

  test('says of a door that nobody knows where it is that it is not drawn, and of the base that it comes in pieces', () => {
    expect(textsOf(sheet)).toContain(
      'Not on the plan, since it is not known where on the wall: door on wall a.',
    );
    const short = pagesOf(sheet)
      .get('Closet')!
      .find(({ wall }) => wall === 'a');
    // 40 less 24 + 2 · (3 1/2 + 3/16).
    expect(short).toMatchObject({ length: 8.625, note: expect.stringContaining('in pieces') });
  });

  test('has its plan with each of its pieces, and the cautions that stand above every number', () => {
    const drawn = (sheet.drawings ?? []).map(({ name }) => name);
    expect(drawn).toEqual(['Reading room plan', 'Closet plan', 'Porch plan']);
    const { alt } = sheet.drawings![0]!.drawing;
    expect(alt).toContain('; 2A on wall 2, cope, square, right; 3A on wall 6, square, cope, left;');
    const texts = textsOf(sheet);
    for (const caution of [CROSSCUT_CAUTION, JUDGMENT_CAUTION]) {
      expect(texts.filter((text) => text === caution)).toHaveLength(3);
    }
    expect(checkDescription(workbook)).toEqual([]);
  });

  test('takes lengths from Pieces by formula', () => {
    const formulas = sheet.rows.flatMap(({ cells }) => cells[4]?.formula ?? []);
    expect(formulas).toHaveLength(plan.pieces.filter(({ room }) => room !== 'Hall').length);
    expect(formulas[0]).toMatch(/^IF\(INDEX\('?Pieces'?!\$D?/u);
  });

  test('is not there where no room has walls', async () => {
    const without = describePlan(await planOf({}));
    expect(without.sheets.map(({ name }) => name)).not.toContain('Rooms');
  });
});

test('Doors and windows are listed with the pieces that come from each', () => {
  const first = sheet.rows.findIndex(({ cells }) => cells[0]?.value === 'Doors and windows');
  const rows = sheet.rows.slice(first + 3).map(({ cells }) => cells.map((one) => one?.value ?? ''));
  const legs = ['left leg', 'right leg', 'head'].map(
    (part) => plan.pieces.find(({ id }) => id === `Reading room / 5 door, ${part} / 1`)!.mark,
  );
  expect(rows).toHaveLength(4);
  expect(rows[0]).toEqual([
    ...['Reading room; other side Hall', '', '5; 42"; other side north', 'door; 36" × 80"', ''],
    ...['1; 3/16"', '', 'Casing', '', `${legs[0]} to ${legs[2]}`],
  ]);
  expect(rows[1]!.slice(2, 4)).toEqual([
    expect.stringMatching(/; 78"$/u),
    expect.stringMatching(/, sill 32"$/u),
  ]);
  expect(sayMarks(['R1-9', 'R1-10', 'R1-11', 'R2-12', 'R2-13', 'R2-15'])).toBe(
    'R1-9 to R1-11, R2-12, R2-13, R2-15',
  );
  expect([0, 25, 26].map(letterOf)).toEqual(['A', 'Z', 'AA']);
});

test('Every piece of a room with walls stands once on its page', () => {
  const pages = pagesOf(sheet);
  for (const room of ['Reading room', 'Closet', 'Porch']) {
    const wanted = plan.pieces.filter((one) => one.room === room).map(({ mark }) => mark);
    const listed = pages.get(room)!.map(({ mark }) => mark);
    expect(listed.sort()).toEqual(wanted.sort());
  }
  expect(pages.has('Hall')).toBe(false);
});

describe('In random rooms', () => {
  test('every piece goes up once, after all that its copes fit to, and its plan has its mark where it has room', async () => {
    const library = await createManifold();
    library.setup();
    const next = seededNumbers(15);
    for (let drawn = 0; drawn < count(80); drawn++) {
      const job = jobOf(drawTables(KINDS[drawn % KINDS.length]!, next, library));
      const { pieces, faults } = listPieces(job);
      expect(faults).toEqual([]);
      const [fittings, ...others] = listRoomFittings({ job, pieces });
      expect(others).toEqual([]);
      const { trims, aroundOpenings, typed, room } = fittings!;
      const fitted = trims.flatMap((trim) => trim.pieces);
      const all = [...fitted.map(({ piece }) => piece), ...aroundOpenings, ...typed];
      expect(all.map(({ id }) => id).sort()).toEqual(pieces.map(({ id }) => id).sort());
      for (const trim of trims) checkOrder(trim, room.walls.length);
      const drawing = drawPlan(fittings!, job.shop, 130);
      expect(misplacedIn(drawing)).toEqual([]);
      const texts = textsIn(drawing).map(({ text }) => text);
      const under = texts.join(' ').split('no room to mark here: ')[1] ?? '';
      const marks = trims.flatMap((trim, at) => trim.pieces.map((one) => orderOf(at, one)));
      for (const mark of new Set(marks)) {
        expect(texts.includes(mark) || under.split(/[ ,]+/u).includes(mark)).toBe(true);
      }
    }
  });
});

/** A coped end meets one that is up; what is joined has one turn. */
function checkOrder({ pieces }: FittedTrim, walls: number): void {
  const orders = pieces.map(({ order }) => order);
  expect(orders).toEqual([...orders].sort((one, other) => one - other));
  for (const one of pieces) {
    for (const end of ['left', 'right'] as const) {
      if (one.piece[end].kind !== 'cope') continue;
      const beside = (one.wall + (end === 'left' ? walls - 1 : 1)) % walls;
      const met = pieces.filter(({ wall }) => wall === beside);
      expect(Math.min(...met.map(({ order }) => order))).toBeLessThan(one.order);
    }
    for (const wall of one.joinedTo) {
      const joined = pieces.filter((other) => other.wall === wall);
      expect(joined.map(({ order }) => order)).toContain(one.order);
    }
  }
}

function drawTables(kind: Kind, next: () => number, library: ManifoldToplevel): Tables {
  const walls = wallsAlong(drawCorners(kind, next, library));
  const rows = walls.map(
    ({ name, length, cornerAtRight, turn }) =>
      `Den,${name},${length.toFixed(4)},${toDegrees(cornerAtRight).toFixed(3)},${turn}`,
  );
  const lengths = walls.map(({ length }) => length);
  const longest = lengths.indexOf(Math.max(...lengths));
  const position = 4 + Math.floor(next() * (lengths[longest]! - 40));
  return {
    runs: `Room,Run,Profile,Length\nDen,${walls[0]!.name},Crown,50\nDen,shelf,Base,30`,
    walls: `Room,Wall,Length,Corner,Turn\n${rows.join('\n')}`,
    trim: 'Room,Profile,Where,Height\nDen,Base,floor,\nDen,Crown,ceiling,\nDen,Casing,height,36',
    openings: `Room,Wall,Kind,Width,Height,Casing,Position\nDen,${longest + 1},door,28,80,Casing,${position}`,
  };
}
