import { describe, expect, test } from '@jest/globals';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { jobOf } from './make-job.ts';

const HEAD = 'Room,Wall,Kind,Width,Height,Sides cased,Reveal,Casing,Apron,Stool,Position,Quantity';
const list = (openings: string, runs = 'Room,Run,Profile,Length\nHall,north,Base,200') =>
  listPieces(jobOf({ runs, openings: `${HEAD}\n${openings}` }));
const table = (openings: string, runs?: string) =>
  list(openings, runs).pieces.map((piece) => [piece.id, piece.cutLength.toFraction(true)]);

describe('an opening', () => {
  // By hand: casing 3 1/2 wide, reveal 3/16: a leg is height + 3 11/16, a head width + 7 3/8.
  test('cased on two sides becomes four legs and two heads', () => {
    expect(table('Hall,,door,32,80,2,,Casing')).toEqual([
      ['Hall / north / 1', '200'],
      ['Hall / door, left leg side 1 / 1', '83 11/16'],
      ['Hall / door, right leg side 1 / 1', '83 11/16'],
      ['Hall / door, head side 1 / 1', '39 3/8'],
      ['Hall / door, left leg side 2 / 1', '83 11/16'],
      ['Hall / door, right leg side 2 / 1', '83 11/16'],
      ['Hall / door, head side 2 / 1', '39 3/8'],
    ]);
  });

  test('that is a window is cased all round, or stands on its stool over an apron', () => {
    expect(
      table('Hall,,window,30,50,1,,Casing')
        .slice(1)
        .map(([, length]) => length),
    ).toEqual(['57 3/8', '57 3/8', '37 3/8', '37 3/8']);
    // Legs square on the stool; the apron as wide as the casing outside, the stool an inch more at each end.
    expect(table('Hall,,window,30,50,1,,Casing,Casing,Base').slice(1)).toEqual([
      ['Hall / window, left leg / 1', '53 11/16'],
      ['Hall / window, right leg / 1', '53 11/16'],
      ['Hall / window, head / 1', '37 3/8'],
      ['Hall / window, apron / 1', '37 3/8'],
      ['Hall / window, stool / 1', '39 3/8'],
    ]);
  });

  test('belongs to the room of the runs, however its case is typed', () => {
    const { pieces } = list('HALL,North,door,32,80,1,,Casing,,,60');
    expect(new Set(pieces.map((piece) => piece.room))).toEqual(new Set(['Hall']));
  });

  test('of a quantity gives so many of each piece, traceable to its row', () => {
    const { pieces } = list('Hall,,door,32,80,1,,Casing,,,,3');
    const legs = pieces.filter((piece) => piece.run === 'door, left leg');
    expect(legs.map((piece) => piece.number)).toEqual([1, 2, 3]);
    expect(legs[0]!.where).toEqual({ file: 'openings.csv', line: 2, column: 4 });
  });
});

describe("a wall's base", () => {
  // By hand: a 32 in door takes 32 + 2 (3/16 + 3 1/2) = 39 3/8 out of the wall.
  test('becomes two pieces around a door whose place is known', () => {
    expect(table('Hall,north,door,32,80,1,,Casing,,,60').slice(0, 2)).toEqual([
      ['Hall / north / 1', '56 5/16'],
      ['Hall / north / 2', '104 5/16'],
    ]);
  });

  test('keeps its own ends at the corners and is square at the casing', () => {
    const runs =
      'Room,Run,Profile,Length,Left end,Right end\nHall,north,Base,200,cope,inside miter';
    const { pieces } = list('Hall,north,door,32,80,1,,Casing,,,60', runs);
    expect(pieces.slice(0, 2).map((piece) => [piece.left.kind, piece.right.kind])).toEqual([
      ['cope', 'square'],
      ['square', 'inside miter'],
    ]);
  });

  test('is shortened by the total where the place is not known, which is said', () => {
    const { pieces, cautions } = list('Hall,north,door,32,80,1,,Casing');
    expect(pieces[0]!.cutLength.toFraction(true)).toBe('160 5/8');
    expect(cautions.map((one) => one.code)).toEqual(['job.opening-by-total']);
  });

  test('is left whole by a window, and crown by any opening', () => {
    const runs = 'Room,Run,Profile,Length\nHall,north,Base,200\nHall,north,Crown,200';
    const lengths = (kind: string) =>
      table(`Hall,north,${kind},32,80,1,,Casing,,,60`, runs)
        .filter(([id]) => id!.startsWith('Hall / north /'))
        .map(([, length]) => length);
    expect(lengths('window')).toEqual(['200', '200']);
    expect(lengths('cased opening')).toEqual(['56 5/16', '104 5/16', '200']);
  });

  test.each([
    [
      'past the end of the wall',
      'Hall,north,door,32,80,1,,Casing,,,180',
      'job.opening-outside-wall',
    ],
    [
      'over another',
      'Hall,north,door,32,80,1,,Casing,,,60\nHall,north,door,32,80,1,,Casing,,,80',
      'job.openings-overlap',
    ],
    ['wider than the wall', 'Hall,north,door,199,80,1,,Casing', 'job.base-all-cut-away'],
  ])('refuses an opening %s', (_, openings, code) => {
    expect(list(openings).faults.map((one) => one.code)).toContain(code);
  });

  test('may lap the corner with its casing, on the left as on the right', () => {
    const casedAt = (position: string) =>
      list(
        `Hall,north,door,32,80,1,,Casing,,,${position}`,
        'Room,Run,Profile,Length\nHall,north,Base,120',
      );
    for (const position of ['2', '86']) {
      const { pieces, faults } = casedAt(position);
      expect(faults).toEqual([]);
      // By hand: 120 less 2, the door and reveal and casing on the one side left: 82 5/16.
      expect(
        pieces
          .filter((piece) => piece.run === 'north')
          .map((piece) => piece.cutLength.toFraction(true)),
      ).toEqual(['82 5/16']);
    }
    expect(casedAt('89').faults.map((one) => one.code)).toEqual(['job.opening-outside-wall']);
  });

  test('is cut out of each of several alike, which is said', () => {
    const runs = 'Room,Run,Profile,Length,Quantity\nHall,north,Base,200,2';
    const { pieces, cautions } = list('Hall,north,door,32,80,1,,Casing,,,60', runs);
    expect(pieces.filter((piece) => piece.run === 'north')).toHaveLength(4);
    expect(cautions.map((one) => one.code)).toEqual(['job.opening-in-each']);
  });

  test('asks for the length along the wall where the run is measured to a miter', () => {
    const runs =
      'Room,Run,Profile,Length,Measured as,Left end\nHall,north,Base,120,long point,outside miter';
    const { faults } = list('Hall,north,door,32,80,1,,Casing,,,40', runs);
    expect(faults.map((one) => [one.code, one.where])).toEqual([
      ['job.opening-needs-wall-length', { file: 'runs.csv', line: 2, column: 5 }],
    ]);
  });

  test('of another name is asked about, and the casing is made all the same', () => {
    const { pieces, cautions } = list('Hall,south,door,32,80,1,,Casing');
    expect(cautions.map((one) => one.code)).toEqual(['job.wall-unknown']);
    expect(pieces).toHaveLength(4);
  });
});
