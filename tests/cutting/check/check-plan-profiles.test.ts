import { describe, expect, test } from '@jest/globals';
import { checkPlan } from '../../../src/cutting/check/check-plan.ts';
import type {
  PlannedPiece,
  PlannedStick,
  StickPlan,
  StickProblem,
} from '../../../src/cutting/problem/problem.ts';
import { piece, problemOf, stick } from '../problem-maker.ts';

// A sound plan written by hand: kerf 1, no trim. P and R are made from wide blanks, Q from narrow
// ones. A board B gives one wide and two narrow strips, or two wide ones; a stick S is either; N is
// ripped into two of whichever blank.
const problem = problemOf(
  [
    piece('a', 10, { profile: 'P' }),
    piece('b', 9, { profile: 'P' }),
    piece('long', 25, { profile: 'P' }),
    piece('q1', 6, { profile: 'Q' }),
    piece('q2', 5, { profile: 'Q' }),
    piece('c1', 4, { profile: 'Q', match: 'pair' }),
    piece('c2', 4, { profile: 'Q', match: 'pair' }),
    piece('r', 12, { profile: 'R' }),
  ],
  [
    stick(20, {
      id: 'B',
      priceCents: 300,
      have: 2,
      buyMost: 0,
      rips: [
        [
          { blank: 'wide', count: 1 },
          { blank: 'narrow', count: 2 },
        ],
        [{ blank: 'wide', count: 2 }],
      ],
    }),
    stick(15, {
      id: 'S',
      priceCents: 50,
      rips: [[{ blank: 'narrow', count: 1 }], [{ blank: 'wide', count: 1 }]],
    }),
    stick(12, { id: 'N', priceCents: 60, strips: 2, have: 1, buyMost: 0 }),
  ],
  {
    kerf: 1,
    splice: { overlap: 3 },
    keepOffcutsOver: 3,
    profiles: [
      { id: 'P', blank: 'wide', splice: { overlap: 2 } },
      { id: 'Q', blank: 'narrow', offcutCredit: { centsPerUnit: 0.5, mostCents: 8 } },
      { id: 'R', blank: 'wide' },
    ],
  },
);

const cut = (demandId: string, length: number, part?: number): PlannedPiece =>
  part === undefined ? { demandId, length } : { demandId, length, part };

const [p, q, r] = ['P', 'Q', 'R'].map((profile) => ({ profile, rip: 0, unit: 0, strip: 0 }));
const sticks: readonly PlannedStick[] = [
  { supplyId: 'B', ...p!, pieces: [cut('a', 10), cut('b', 9)], offcut: 0 },
  { supplyId: 'B', ...p!, unit: 1, rip: 1, pieces: [cut('long', 20, 0)], offcut: 0 },
  { supplyId: 'B', ...p!, unit: 1, rip: 1, strip: 1, pieces: [cut('long', 7, 1)], offcut: 12 },
  // Offcuts of 3 and 9 units at half a cent: 1 and 4 cents.
  {
    supplyId: 'B',
    ...q!,
    strip: 1,
    pieces: [cut('q1', 6), cut('c1', 4), cut('c2', 4)],
    offcut: 3,
  },
  { supplyId: 'S', ...q!, pieces: [cut('q2', 5)], offcut: 9 },
  { supplyId: 'N', ...r!, pieces: [cut('r', 12)], offcut: 0 },
];
const plan: StickPlan = { sticks, unserved: [], costCents: 710, creditCents: 5, laborCents: 0 };

/** The plan with one stick changed. */
function damaged(at: number, change: Partial<PlannedStick>): StickPlan {
  return {
    ...plan,
    sticks: sticks.map((one, place) => (place === at ? { ...one, ...change } : one)),
  };
}

/** The plan without the sticks at some places, and what was cut from them unserved. */
function without(places: readonly number[], unserved: StickPlan['unserved']): StickPlan {
  return { ...plan, sticks: sticks.filter((_, at) => !places.includes(at)), unserved };
}

function withProfile(id: string, more: object): StickProblem {
  const profiles = problem.profiles!.map((one) => (one.id === id ? { ...one, ...more } : one));
  return { ...problem, profiles };
}

test('a sound plan of three profiles passes', () => {
  expect(checkPlan(problem, plan)).toEqual([]);
});

describe('damage to profiles, rips and credits is found', () => {
  test.each([
    [
      'a profile that is not listed',
      damaged(0, { profile: 'X' }),
      'Stick B no. 1, strip 1 is of the profile “X”, which is not listed.',
    ],
    [
      'a piece of another profile',
      damaged(0, { profile: 'R' }),
      'Stick B no. 1, strip 1 gives piece a, which is of another profile.',
    ],
    [
      'a rip that there is not',
      damaged(0, { rip: 2 }),
      'Stick B no. 1, strip 1 is of a rip that B does not have.',
    ],
    ['a board ripped in two ways', damaged(1, { rip: 0 }), 'B no. 2 is ripped in 2 ways.'],
    [
      'a strip of another blank, by its number',
      damaged(0, { strip: 2 }),
      'Stick B no. 1, strip 3 is a strip of another blank.',
    ],
    [
      'a strip of another blank, by its rip',
      damaged(4, { rip: 1 }),
      'Stick S no. 1, strip 1 is a strip of another blank.',
    ],
    [
      'a strip more than its rip gives',
      damaged(2, { strip: 2 }),
      'Stick B no. 2, strip 3 is a strip more than B rips into.',
    ],
    [
      'a board without rips ripped for two blanks',
      damaged(4, { supplyId: 'N', strip: 1, offcut: 6 }),
      'N no. 1 is ripped in 2 ways.',
    ],
    [
      'a credit that the offcuts don’t come to',
      { ...plan, creditCents: 6 },
      'The offcuts are worth 5 cents, not 6.',
    ],
    [
      'a profile that stands in two places',
      { ...plan, sticks: [0, 3, 4, 1, 2, 5].map((at) => sticks[at]!) },
      'Stick B no. 2, strip 1 stands apart from the others of its profile.',
    ],
    [
      'a shorter stick of the profile first',
      { ...plan, sticks: [0, 1, 2, 4, 3, 5].map((at) => sticks[at]!) },
      'Stick B no. 1, strip 2 stands after a shorter stick.',
    ],
    [
      'a stock said to be used up that is not, for a blank of it',
      without([4], [{ demandId: 'q2', why: 'stock used up' }]),
      'Piece q2 is unserved and S is not used up.',
    ],
    [
      'unserved pieces in another order',
      without(
        [4, 5],
        [
          { demandId: 'r', why: 'stock used up' },
          { demandId: 'q2', why: 'stock used up' },
        ],
      ),
      'Unserved q2 stands after a later piece.',
    ],
  ])('%s', (_, wrong, sentence) => {
    expect(checkPlan(problem, wrong)).toContain(sentence);
  });

  test('a shorter stick after a longer one of another profile is in order', () => {
    const other = { ...plan, sticks: [5, 0, 1, 2, 3, 4].map((at) => sticks[at]!) };
    expect(checkPlan(problem, other)).toEqual([]);
  });

  test('a matched group of two profiles', () => {
    const demands = problem.demands.map((one) =>
      one.id === 'c2' ? { ...one, profile: 'P' } : one,
    );
    expect(checkPlan({ ...problem, demands }, plan)).toContain(
      'Matched group pair is of 2 profiles.',
    );
  });

  test('parts cut by the common overlap where the profile has its own, and the other way round', () => {
    expect(checkPlan(withProfile('P', { splice: undefined }), plan)).toEqual([
      'The parts of piece long sum to 27, not 28.',
    ]);
    const { splice, ...bare } = problem;
    expect(splice).toEqual({ overlap: 3 });
    expect(checkPlan(bare, plan)).toEqual([]);
  });

  test('a credit of more than half of what the strip costs', () => {
    // At 7 cents a stick, the offcut of 9 units is worth 3, not 4; at 300 a board of three, 50 is far.
    const supplies = problem.supplies.map((one) =>
      one.id === 'S' ? { ...one, priceCents: 7 } : one,
    );
    expect(checkPlan({ ...problem, supplies }, { ...plan, costCents: 667 })).toEqual([
      'The offcuts are worth 4 cents, not 5.',
    ]);
  });

  test('a credit of an offcut that is too short to be kept, or above the most', () => {
    expect(checkPlan({ ...problem, keepOffcutsOver: 4 }, plan)).toEqual([
      'The offcuts are worth 4 cents, not 5.',
    ]);
    const capped = withProfile('Q', { offcutCredit: { centsPerUnit: 0.5, mostCents: 3 } });
    expect(checkPlan(capped, plan)).toEqual(['The offcuts are worth 4 cents, not 5.']);
  });
});

describe('why a piece is unserved is judged by the sticks of its profile', () => {
  // A wide piece of 16 beside sticks of 20 that are narrow, and wide ones of 15.
  const judged = problemOf(
    [piece('x', 16, { profile: 'P' }), piece('y', 5, { profile: 'P' })],
    [
      stick(20, { id: 'narrow', rips: [[{ blank: 'narrow', count: 1 }]] }),
      stick(15, { id: 'wide', rips: [[{ blank: 'wide', count: 1 }]], buyMost: 0 }),
    ],
    {
      profiles: [
        { id: 'P', blank: 'wide' },
        { id: 'Q', blank: 'narrow' },
      ],
    },
  );
  const nothing = (
    x: StickPlan['unserved'][number]['why'],
    y: StickPlan['unserved'][number]['why'],
  ): StickPlan => ({
    sticks: [],
    unserved: [
      { demandId: 'x', why: x },
      { demandId: 'y', why: y },
    ],
    costCents: 0,
    creditCents: 0,
    laborCents: 0,
  });

  test('a longer stick of another blank is of no use, nor does it make a stock less used up', () => {
    expect(checkPlan(judged, nothing('longer than every stick', 'stock used up'))).toEqual([]);
  });

  test('what is too long for another profile need not be for this one', () => {
    expect(
      checkPlan(judged, nothing('longer than every stick', 'longer than every stick')),
    ).toEqual(['Piece y is not longer than every stick.']);
  });

  test('a piece that a splice by its own profile’s rule would serve', () => {
    const profiles = [{ id: 'P', blank: 'wide', splice: { overlap: 2 } }];
    expect(
      checkPlan({ ...judged, profiles }, nothing('longer than every stick', 'stock used up')),
    ).toEqual(['Piece x could be spliced.']);
  });
});
