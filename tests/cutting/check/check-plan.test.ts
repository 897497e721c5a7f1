import { describe, expect, test } from '@jest/globals';
import { checkPlan } from '../../../src/cutting/check/check-plan.ts';
import type {
  PlannedPiece,
  PlannedStick,
  StickPlan,
} from '../../../src/cutting/problem/problem.ts';
import { piece, problemOf, stick } from '../problem-maker.ts';

// A sound plan written by hand: kerf 1, end trim 1, so S gives 20 and each strip of B gives 10.
const problem = problemOf(
  [
    piece('a', 10),
    piece('b', 9),
    piece('c1', 4, { match: 'pair' }),
    piece('c2', 4, { match: 'pair' }),
    piece('d', 6, { onePiece: true }),
    piece('long', 30),
    piece('e', 21, { onePiece: true }),
  ],
  [
    stick(22, { id: 'S', priceCents: 100 }),
    stick(12, { id: 'B', priceCents: 90, strips: 2, have: 1, buyMost: 0 }),
  ],
  { kerf: 1, endTrim: 1, splice: { overlap: 2 } },
);

const cut = (demandId: string, length: number, part?: number): PlannedPiece =>
  part === undefined ? { demandId, length } : { demandId, length, part };

const plain = { profile: '', rip: 0 };
const sticks: readonly PlannedStick[] = [
  { supplyId: 'S', ...plain, unit: 0, strip: 0, pieces: [cut('a', 10), cut('b', 9)], offcut: 0 },
  { supplyId: 'S', ...plain, unit: 1, strip: 0, pieces: [cut('long', 20, 0)], offcut: 0 },
  { supplyId: 'S', ...plain, unit: 2, strip: 0, pieces: [cut('long', 12, 1)], offcut: 7 },
  { supplyId: 'B', ...plain, unit: 0, strip: 0, pieces: [cut('c1', 4), cut('c2', 4)], offcut: 0 },
  { supplyId: 'B', ...plain, unit: 0, strip: 1, pieces: [cut('d', 6)], offcut: 3 },
];
const plan: StickPlan = {
  sticks,
  unserved: [{ demandId: 'e', why: 'longer than every stick' }],
  costCents: 390,
  creditCents: 0,
  laborCents: 0,
};

/** The plan with one stick changed. */
function damaged(at: number, change: Partial<PlannedStick>): StickPlan {
  return {
    ...plan,
    sticks: sticks.map((one, place) => (place === at ? { ...one, ...change } : one)),
  };
}

/** The plan with the pieces of one stick changed and its offcut made right. */
function recut(at: number, pieces: readonly PlannedPiece[]): StickPlan {
  const room = sticks[at]!.supplyId === 'S' ? 20 : 10;
  const offcut = pieces.reduce((left, { length }) => left - length - 1, room);
  return damaged(at, { pieces, offcut: Math.max(0, offcut) });
}

test('a sound plan passes, one stick of it filled exactly', () => {
  expect(checkPlan(problem, plan)).toEqual([]);
});

describe('damage is found', () => {
  test.each([
    ['a piece dropped', recut(0, [cut('a', 10)]), 'Piece b is neither cut nor listed as unserved.'],
    ['a piece cut twice', recut(4, [cut('d', 4), cut('d', 4)]), 'Piece d is cut 2 times.'],
    ['a piece cut short', recut(4, [cut('d', 5)]), 'Piece d is cut 5, not 6.'],
    [
      'a piece nobody asked for',
      recut(2, [cut('long', 12, 1), cut('x', 2)]),
      'Piece x was never asked for.',
    ],
    ['a stick too full', recut(4, [cut('d', 11)]), 'Stick B no. 1, strip 2 needs 11 and gives 10.'],
    [
      'a kerf forgotten',
      recut(0, [cut('a', 10), cut('b', 10)]),
      'Stick S no. 1, strip 1 needs 21 and gives 20.',
    ],
    [
      'an offcut too long',
      damaged(2, { offcut: 8 }),
      'Stick S no. 3, strip 1 leaves an offcut of 7, not 8.',
    ],
    [
      'an offcut that is no number',
      damaged(2, { offcut: NaN }),
      'Stick S no. 3, strip 1 leaves an offcut of 7, not NaN.',
    ],
    ['an empty stick', damaged(4, { pieces: [] }), 'Stick B no. 1, strip 2 has no pieces.'],
    [
      'a supply that is not listed',
      damaged(0, { supplyId: 'T' }),
      'Stick T no. 1, strip 1 is of a supply that is not listed.',
    ],
    [
      'more boards than there are',
      damaged(4, { unit: 1 }),
      'Stick B no. 2, strip 2 is more than can be had of B.',
    ],
    [
      'more strips than a board has',
      damaged(4, { strip: 2 }),
      'Stick B no. 1, strip 3 is a strip more than B rips into.',
    ],
    ['the same strip twice', damaged(4, { strip: 0 }), 'Stick B no. 1, strip 1 is cut twice.'],
    ['the same stick twice', damaged(2, { unit: 1 }), 'Stick S no. 2, strip 1 is cut twice.'],
    ['a unit that is no whole number', damaged(0, { unit: 0.5 }), /more than can be had of S/],
    [
      'a splice that does not reach',
      recut(2, [cut('long', 11, 1)]),
      'The parts of piece long sum to 31, not 32.',
    ],
    [
      'a part that is no more than overlap',
      recut(2, [cut('long', 2, 1)]),
      'Part 1 of piece long is 2, no longer than the overlap.',
    ],
    [
      'a part numbered twice',
      recut(2, [cut('long', 12, 0)]),
      'Piece long has parts 0, 0; they must run from 0, two or more.',
    ],
    [
      'a lone part',
      { ...plan, sticks: sticks.filter((_, at) => at !== 2) },
      'Piece long has parts 0; they must run from 0, two or more.',
    ],
    [
      'a whole piece beside a part',
      recut(2, [cut('long', 12)]),
      'Piece long has parts -1, 0; they must run from 0, two or more.',
    ],
    [
      'a one-piece demand spliced',
      recut(4, [cut('d', 4, 0), cut('d', 4, 1)]),
      'Piece d is spliced and must be one piece.',
    ],
    [
      'a matched piece spliced',
      recut(3, [cut('c1', 3, 0), cut('c1', 3, 1), cut('c2', 4)]),
      'Piece c1 is spliced and belongs to a matched group.',
    ],
    [
      'a matched group torn apart',
      {
        ...recut(3, [cut('c1', 4)]),
        sticks: recut(3, [cut('c1', 4)]).sticks.map((one, at) =>
          at === 2 ? { ...one, pieces: [...one.pieces, cut('c2', 4)], offcut: 2 } : one,
        ),
      },
      'Matched group pair is on Stick B no. 1, strip 1 and Stick S no. 3, strip 1.',
    ],
    [
      'half of a matched group unserved',
      {
        ...recut(3, [cut('c1', 4)]),
        unserved: [...plan.unserved, { demandId: 'c2', why: 'stock used up' as const }],
      },
      'Matched group pair is on Stick B no. 1, strip 1 and no stick.',
    ],
    [
      'an unserved piece that is cut',
      { ...plan, unserved: [...plan.unserved, { demandId: 'a', why: 'stock used up' as const }] },
      'Piece a is cut and listed as unserved.',
    ],
    [
      'an unserved piece listed twice',
      { ...plan, unserved: [...plan.unserved, ...plan.unserved] },
      'Piece e is listed as unserved 2 times.',
    ],
    [
      'an unserved piece nobody asked for',
      { ...plan, unserved: [...plan.unserved, { demandId: 'x', why: 'stock used up' as const }] },
      'Unserved x was never asked for.',
    ],
    ['an unserved piece left out', { ...plan, unserved: [] }, /^Piece e is neither cut/],
    [
      'a piece said to be too long that is not',
      {
        ...recut(0, [cut('a', 10)]),
        unserved: [...plan.unserved, { demandId: 'b', why: 'longer than every stick' as const }],
      },
      'Piece b is not longer than every stick.',
    ],
    [
      'an overlong piece left that could be spliced',
      {
        ...plan,
        sticks: sticks.filter((_, at) => at !== 1 && at !== 2),
        unserved: [...plan.unserved, { demandId: 'long', why: 'longer than every stick' as const }],
      },
      'Piece long could be spliced.',
    ],
    [
      'a matched group said to be too long that is not',
      {
        ...plan,
        sticks: sticks.filter((_, at) => at !== 3),
        unserved: [
          ...plan.unserved,
          ...['c1', 'c2'].map((demandId) => ({
            demandId,
            why: 'matched group too long' as const,
          })),
        ],
      },
      'The matched group of piece c1 is not too long.',
    ],
    [
      'a stock said to be used up that is not',
      {
        ...recut(0, [cut('a', 10)]),
        unserved: [...plan.unserved, { demandId: 'b', why: 'stock used up' as const }],
      },
      'Piece b is unserved and S is not used up.',
    ],
    ['a wrong sum', { ...plan, costCents: 389 }, 'The plan costs 390 cents, not 389.'],
    [
      'a sum that counts a board by its strips',
      { ...plan, costCents: 480 },
      'The plan costs 390 cents, not 480.',
    ],
    [
      'a shorter stick first',
      { ...plan, sticks: [...sticks].reverse() },
      'Stick S no. 3, strip 1 stands after a shorter stick.',
    ],
  ])('%s', (_, wrong, sentence) => {
    const said = checkPlan(problem, wrong);
    expect(said).toEqual(
      expect.arrayContaining([
        typeof sentence === 'string' ? sentence : expect.stringMatching(sentence),
      ]),
    );
  });

  test('splices where the job allows none', () => {
    const { splice, ...strict } = problem;
    expect(splice).toEqual({ overlap: 2 });
    expect(checkPlan(strict, plan)).toEqual([
      'Piece long is spliced and the job allows no splice.',
    ]);
  });

  test('more boards than there are, whatever their numbers', () => {
    const supplies = problem.supplies.map((one) =>
      one.id === 'S' ? { ...one, have: 0, buyMost: 2 } : one,
    );
    expect(checkPlan({ ...problem, supplies }, plan)).toEqual([
      'Stick S no. 3, strip 1 is more than can be had of S.',
      '3 of S are used and 2 can be had.',
    ]);
  });
});
