import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { jobOf, planOf, readTables } from './make-job.ts';
import {
  BASE,
  CASING,
  codesOf,
  cutsOf,
  lengthsOf,
  list,
  placeOf,
  SILL,
  tablesOf,
} from './opening-tables.ts';

describe('the other side of a cased opening', () => {
  const both = (more: string, sides = 2) =>
    `Hall,North,door,36,80,${sides},,Casing,,,48,1,,,${more}`;
  const runs = "Room,Run,Profile,Length\nHall,North,Base,12'\nStudy,South,Base,150";

  test('stands in its own room, and that room’s base is cut for the door too', () => {
    const listed = list({ runs, openings: [both('study,south,54')] });
    expect(lengthsOf(listed, 'Base')).toEqual(['44 13/16', '56 13/16']);
    // From 54 - 3 3/16 on: 50 13/16, and 150 less 54 + 36 + 3 3/16.
    expect(lengthsOf(listed, 'Base', 'Study')).toEqual(['50 13/16', '56 13/16']);
    const casings = listed.pieces.filter((one) => one.profile === 'Casing').map((one) => one.id);
    expect(casings).toEqual([
      'Hall / North door, left leg side 1 / 1',
      'Hall / North door, right leg side 1 / 1',
      'Hall / North door, head side 1 / 1',
      'Study / south door, left leg side 2 / 1',
      'Study / south door, right leg side 2 / 1',
      'Study / south door, head side 2 / 1',
    ]);
    expect(cutsOf(listed)).toEqual([
      ['Hall', 'North', 'Base', 'door', 42.375],
      ['Study', 'South', 'Base', 'door', 42.375],
    ]);
    expect(codesOf(listed)).toEqual([]);
  });

  test('counts in that room’s total', async () => {
    const stock = "For,Kind,Length,Price,Per\nBase,stick,16',14,piece\nCasing,stick,14',14,piece";
    const tables = { ...tablesOf({ runs, openings: [both('Study,South,54')] }), stock };
    const { rooms } = await planOf(tables);
    const lines = rooms.map((one) => [one.room, one.profile, one.pieces, Number(one.lengthNet)]);
    // By hand: two legs of 83 3/16 and a head of 42 3/8 on each side.
    expect(lines).toEqual([
      ['Hall', 'Base', 2, 101.625],
      ['Hall', 'Casing', 3, 208.75],
      ['Study', 'Base', 2, 107.625],
      ['Study', 'Casing', 3, 208.75],
    ]);
  });

  test('without Other position comes off that room’s base as a whole', () => {
    const listed = list({ runs, openings: [both('Study,South,')] });
    expect(lengthsOf(listed, 'Base', 'Study')).toEqual(['107 5/8']);
    expect(placeOf(listed, 'job.opening-by-total')).toEqual([
      { file: 'openings.csv', line: 2, column: 17 },
    ]);
  });

  test('that isn’t cased takes the opening’s own width', () => {
    const listed = list({ runs, openings: [both('Study,South,54', 1)] });
    expect(cutsOf(listed).map((one) => one[4])).toEqual([42.375, 36]);
    expect(listed.pieces.filter((one) => one.run.includes('leg'))).toHaveLength(2);
  });

  test('whose wall isn’t named cuts nothing there, which is said at its cell', () => {
    const listed = list({ runs, openings: [both('Study,,')] });
    expect(lengthsOf(listed, 'Base', 'Study')).toEqual(['150']);
    expect(placeOf(listed, 'job.other-wall-open')).toEqual([
      { file: 'openings.csv', line: 2, column: 16 },
    ]);
  });

  test.each([
    ['a room without runs', 'Stduy,South,', 'job.other-room-unknown', 15],
    ['a wall that the room has not', 'Study,Suoth,', 'job.wall-unknown', 16],
  ])('in %s is asked about', (_, more, code, column) => {
    const listed = list({ runs, openings: [both(more)] });
    expect(placeOf(listed, code)).toEqual([{ file: 'openings.csv', line: 2, column }]);
    expect(listed.pieces.filter((one) => one.profile === 'Casing')).toHaveLength(6);
  });

  test.each([
    ['Other wall without Other room', ',South,', 15],
    ['Other position without Other wall', 'Study,,54', 16],
  ])('is refused with %s', (_, more, column) => {
    const { faults } = readTables(tablesOf({ runs, openings: [both(more)] }));
    expect(faults.map((one) => [one.code, one.where])).toEqual([
      ['job.cell-needs-another', { file: 'openings.csv', line: 2, column }],
    ]);
  });
});

describe('a stool', () => {
  const stool = (horn: string) =>
    list({
      profiles: [BASE, CASING, SILL],
      openings: [`Hall,,window,30,50,1,,Casing,Casing,Sill stock,,1,,${horn},,,`],
    }).pieces.find((one) => one.run.endsWith('stool'))!;

  test('stands out beyond the casing by its Horn, an inch where none is given', () => {
    // Casing from outside to outside: 30 + 2 · 3 3/16 = 36 3/8.
    expect(stool('').cutLength.toFraction(true)).toBe('38 3/8');
    expect(stool('3/4').cutLength.toFraction(true)).toBe('37 7/8');
    expect(stool('0').cutLength.toFraction(true)).toBe('36 3/8');
  });
});

describe('what is given and not used', () => {
  test.each([
    ['a Sill of a door', 'Hall,North,door,36,80,1,,Casing,,,48,1,3,,,,', 'job.sill-unused', 13],
    ['a Horn without a stool', 'Hall,,window,36,50,1,,Casing,,,,1,,1,,,', 'job.horn-unused', 14],
  ])('is said: %s', (_, row, code, column) => {
    const { cautions } = readTables(tablesOf({ openings: [row] }));
    const found = cautions.filter((one) => one.code === code).map((one) => one.where);
    expect(found).toEqual([{ file: 'openings.csv', line: 2, column }]);
  });

  test('is said: a Reveal of a run that isn’t an opening', () => {
    const runs =
      'Room,Run,Profile,Length,Measured as,Reveal\nHall,N,Base,90,wall,1/4\nHall,O,Base,90,opening,1/4';
    const { cautions } = readTables(tablesOf({ runs }));
    const found = cautions.filter((one) => one.code === 'job.reveal-unused');
    expect(found.map((one) => one.where)).toEqual([{ file: 'runs.csv', line: 2, column: 6 }]);
  });
});

test('a casing mitered through its thickness still needs its width, to know what a door takes', () => {
  const profiles =
    'Profile,Make,Blank width,Blank thickness,Miter across\nBase,buy,5,3/4,\nCasing,buy,,3/4,thickness';
  const { faults } = listPieces(jobOf({ ...tablesOf({}), profiles }));
  expect(faults.map((one) => [one.code, one.where])).toEqual([
    ['job.casing-needs-width', { file: 'profiles.csv', line: 3, column: 3 }],
  ]);
});
