import { describe, expect, test } from '@jest/globals';
import { checkBound } from '../../../src/cutting/check/check-bound.ts';
import type { StickBound, StickPlan } from '../../../src/cutting/problem/problem.ts';
import { piece, pieces, problemOf, stick } from '../problem-maker.ts';

type Dual = StickBound['duals'][number];

const dual = (length: number, cents: number, more: Partial<Dual> = {}): Dual => ({
  length,
  profile: '',
  cents,
  ...more,
});

const boundOf = (
  costCents: number,
  duals: readonly Dual[],
  more: Partial<StickBound> = {},
): StickBound => ({ costCents, duals, credits: [], ...more });

/** A plan that serves all and splices nothing, as far as a bound is concerned. */
const dear = (costCents: number, creditCents = 0): StickPlan => ({
  sticks: [],
  unserved: [],
  costCents,
  creditCents,
  laborCents: 0,
});

describe('a sound bound passes, and a dual raised where it matters is found', () => {
  test('two halves to a stick', () => {
    const problem = problemOf(pieces([50, 50, 50, 50]), [stick(100)]);
    expect(checkBound(problem, dear(200), boundOf(200, [dual(50, 50)]))).toEqual([]);
    expect(checkBound(problem, dear(200), boundOf(300, [dual(50, 50.5)]))).toEqual([
      'Supply s100 is worth 101 cents, more than its price and credit, 100.',
      'The bound is 300 cents and the plan costs 200.',
    ]);
  });

  test('a stick holds no more of a piece than is served', () => {
    // 30 and 50 are worth the 100 cents that the stick costs; three of 30 would be worth 180.
    const problem = problemOf(pieces([30, 50]), [stick(100)]);
    expect(checkBound(problem, dear(100), boundOf(100, [dual(30, 60), dual(50, 40)]))).toEqual([]);
    expect(checkBound(problem, dear(200), boundOf(200, [dual(30, 61), dual(50, 40)]))).toEqual([
      'Supply s100 is worth 101 cents, more than its price and credit, 100.',
    ]);
  });

  test('kerfs are lost between pieces and not after the last', () => {
    // 40 + 1 + 30 + 1 + 28 fill the 100 between the trims just so.
    const sticks = [stick(104, { id: 'S' })];
    const duals = [dual(40, 40), dual(30, 30), dual(28, 30)];
    const problem = problemOf(pieces([40, 30, 28]), sticks, { kerf: 1, endTrim: 2 });
    expect(checkBound(problem, dear(100), boundOf(100, duals))).toEqual([]);
    const dearer = boundOf(200, [dual(40, 41), ...duals.slice(1)]);
    expect(checkBound(problem, dear(200), dearer)).toHaveLength(1);
    // A unit less and the three don't go on one stick.
    const tighter = { ...problem, supplies: [stick(103, { id: 'S' })] };
    expect(checkBound(tighter, dear(200), dearer)).toEqual([]);
  });

  test('a supply that runs out may be worth more, at the cost of its credit', () => {
    const problem = problemOf(pieces([50, 50, 50, 50]), [
      stick(100),
      stick(100, { id: 'free', priceCents: 0, have: 1, buyMost: 0 }),
    ]);
    const credits = [{ supplyId: 'free', cents: 100 }];
    const bound = boundOf(100, [dual(50, 50)], { credits });
    expect(checkBound(problem, dear(100), bound)).toEqual([]);
    const less = [{ supplyId: 'free', cents: 99 }];
    expect(checkBound(problem, dear(200), boundOf(200, bound.duals, { credits: less }))).toEqual([
      'Supply free is worth 100 cents, more than its price and credit, 99.',
    ]);
  });

  test('what can’t be had need not be worth its price', () => {
    const problem = problemOf(pieces([50]), [
      stick(100),
      stick(100, { id: 'none', priceCents: 1, buyMost: 0 }),
    ]);
    expect(checkBound(problem, dear(100), boundOf(100, [dual(50, 100)]))).toEqual([]);
  });

  test('an offcut that is kept is worth its credit, up to half of the stick’s price', () => {
    const profiles = [{ id: '', blank: '', offcutCredit: { centsPerUnit: 0.5, mostCents: 40 } }];
    const problem = problemOf(pieces([60, 20]), [stick(100, { priceCents: 90 })], {
      kerf: 1,
      profiles,
      keepOffcutsOver: 20,
    });
    // Beside 60 there are 39 left, for 19 cents; beside 20, 79 left for 39; beside both, 18 are scrap.
    const bound = boundOf(90, [dual(60, 71), dual(20, 19)]);
    expect(checkBound(problem, dear(90), bound)).toEqual([]);
    expect(checkBound(problem, dear(91), boundOf(91, [dual(60, 72), dual(20, 19)]))).toEqual([
      'Supply s100 is worth 91 cents, more than its price and credit, 90.',
    ]);
    expect(checkBound(problem, dear(91), boundOf(91, [dual(60, 39), dual(20, 52)]))).toEqual([
      'Supply s100 is worth 91 cents, more than its price and credit, 90.',
    ]);
    // At 60 cents no offcut is worth more than 30.
    const half = { ...problem, supplies: [stick(100, { priceCents: 60 })] };
    expect(checkBound(half, dear(60), boundOf(60, [dual(60, 30), dual(20, 30)]))).toEqual([]);
    expect(checkBound(half, dear(61), boundOf(61, [dual(60, 30), dual(20, 31)]))).toEqual([
      'Supply s100 is worth 61 cents, more than its price and credit, 60.',
    ]);
  });

  test('a board is worth what its strips are, in whichever way it is ripped', () => {
    const profiles = [
      { id: 'P', blank: 'wide' },
      { id: 'Q', blank: 'narrow' },
    ];
    const rips = [
      [
        { blank: 'wide', count: 1 },
        { blank: 'narrow', count: 2 },
      ],
      [{ blank: 'narrow', count: 3 }],
    ];
    const problem = problemOf(
      [
        piece('p', 60, { profile: 'P' }),
        ...pieces([60, 60, 60, 60]).map((q) => ({ ...q, profile: 'Q' })),
      ],
      [stick(100, { priceCents: 300, rips })],
      { profiles },
    );
    const at = (p: number, q: number): readonly Dual[] => [
      dual(60, p, { profile: 'P' }),
      dual(60, q, { profile: 'Q' }),
    ];
    expect(checkBound(problem, dear(600), boundOf(600, at(100, 100)))).toEqual([]);
    expect(checkBound(problem, dear(600), boundOf(600, at(140, 80)))).toEqual([]);
    expect(checkBound(problem, dear(600), boundOf(600, at(101, 100)))).toHaveLength(1);
    expect(checkBound(problem, dear(600), boundOf(600, at(90, 101)))).toHaveLength(1);
    // Without rips any one blank twice: two wide or two narrow strips, never one of each.
    const plain = { ...problem, supplies: [stick(100, { priceCents: 300, strips: 2 })] };
    expect(checkBound(plain, dear(900), boundOf(900, at(150, 150)))).toEqual([]);
    expect(checkBound(plain, dear(900), boundOf(900, at(151, 150)))).toHaveLength(1);
  });

  test('pieces of two profiles never lie on one strip', () => {
    const profiles = ['P', 'Q'].map((id) => ({ id, blank: 'one' }));
    const problem = problemOf(
      [piece('p', 50, { profile: 'P' }), piece('q', 50, { profile: 'Q' })],
      [stick(100)],
      { profiles },
    );
    const duals = [dual(50, 100, { profile: 'P' }), dual(50, 100, { profile: 'Q' })];
    expect(checkBound(problem, dear(200), boundOf(200, duals))).toEqual([]);
  });

  test('a matched group is cut whole or not at all', () => {
    const problem = problemOf(
      [piece('a', 40, { match: 'pair' }), piece('b', 40, { match: 'pair' }), piece('c', 30)],
      [stick(81, { priceCents: 100 })],
      { kerf: 1 },
    );
    const group = dual(80, 100, { match: 'pair' });
    expect(checkBound(problem, dear(200), boundOf(200, [group, dual(30, 100)]))).toEqual([]);
    // By its pieces' lengths where no entry names it; 40 and 30 together would be 150.
    expect(checkBound(problem, dear(200), boundOf(200, [dual(40, 50), dual(30, 100)]))).toEqual([]);
    expect(checkBound(problem, dear(300), boundOf(300, [dual(40, 51), dual(30, 100)]))).toEqual([
      'Supply s81 is worth 102 cents, more than its price and credit, 100.',
    ]);
    // Nor is the group worth anything by an entry that names it at another length.
    const other = dual(81, 100, { match: 'pair' });
    expect(checkBound(problem, dear(200), boundOf(200, [other, dual(30, 100)]))).toEqual([
      'The duals prove 100 cents, not 200.',
    ]);
  });

  test('a splice counts as what its parts take up, any length of them', () => {
    // Two parts with an overlap of 10 and two kerfs: 202 units of the 101 that a stick holds.
    const problem = problemOf(
      [piece('long', 190), piece('short', 50)],
      [stick(100, { priceCents: 101 })],
      { kerf: 1, splice: { overlap: 10 } },
    );
    const strip = { supplyId: 's100', profile: '', rip: 0, strip: 0, offcut: 0 };
    const cut: StickPlan = {
      ...dear(303),
      sticks: [0, 1].map((part) => ({
        ...strip,
        unit: part,
        pieces: [{ demandId: 'long', length: 100, part }],
      })),
    };
    const spliced = dual(190, 202, { spliced: true });
    const rate = (centsPerUnit: number): Partial<StickBound> => ({
      spliceRates: [{ profile: '', centsPerUnit }],
    });
    expect(checkBound(problem, cut, boundOf(303, [spliced, dual(50, 51)], rate(1)))).toEqual([]);
    expect(checkBound(problem, cut, boundOf(303, [spliced, dual(50, 52)], rate(1)))).toEqual([
      'Supply s100 is worth 102 cents, more than its price and credit, 101.',
    ]);
    expect(checkBound(problem, cut, boundOf(303, [spliced, dual(50, 51)], rate(0.5)))).toEqual([
      'Spliced piece long is worth 202 cents and its parts are worth 101.',
    ]);
    expect(checkBound(problem, cut, boundOf(303, [dual(190, 202), dual(50, 51)]))).toEqual([
      'The duals prove 101 cents, not 303.',
    ]);
  });
});

describe('what the duals prove', () => {
  const problem = problemOf(pieces([50, 50, 50]), [stick(100, { priceCents: 97 })]);
  const duals = [dual(50, 48)];

  test('is rounded up to what whole sticks can cost', () => {
    expect(checkBound(problem, dear(194), boundOf(194, duals))).toEqual([]);
    expect(checkBound(problem, dear(194), boundOf(144, duals))).toEqual([
      'The duals prove 194 cents, not 144.',
    ]);
    expect(checkBound(problem, dear(291), boundOf(291, duals))).toEqual([
      'The duals prove 194 cents, not 291.',
    ]);
  });

  test('is rounded by the sticks that a served piece can be cut from alone', () => {
    const supplies = [
      ...problem.supplies,
      stick(49, { id: 'short', priceCents: 5 }),
      stick(90, { id: 'none', priceCents: 7, buyMost: 0 }),
    ];
    expect(checkBound({ ...problem, supplies }, dear(194), boundOf(194, duals))).toEqual([]);
    const longer = [...problem.supplies, stick(50, { id: 'short', priceCents: 60 })];
    expect(checkBound({ ...problem, supplies: longer }, dear(194), boundOf(144, duals))).toEqual(
      [],
    );
  });

  test('is rounded to the cent where an offcut is credited, and may be less than 0', () => {
    const profiles = [{ id: '', blank: '', offcutCredit: { centsPerUnit: 1, mostCents: 50 } }];
    const credited = { ...problem, profiles, keepOffcutsOver: 60 };
    expect(checkBound(credited, dear(194), boundOf(144, duals))).toEqual([]);
    const supplies = [stick(100, { priceCents: 97, have: 2, buyMost: 0 })];
    const credits = [{ supplyId: 's100', cents: 75 }];
    const below = boundOf(-6, duals, { credits });
    expect(checkBound({ ...credited, supplies }, dear(0), below)).toEqual([]);
    expect(checkBound({ ...problem, supplies }, dear(0), { ...below, costCents: 0 })).toEqual([]);
  });

  test('leaves out what the plan leaves unserved', () => {
    const left: StickPlan = {
      ...dear(97),
      unserved: [{ demandId: 'p2', why: 'stock used up' }],
    };
    expect(checkBound(problem, left, boundOf(97, duals))).toEqual([]);
  });

  test('is no more than the plan costs, its credits taken off', () => {
    expect(checkBound(problem, dear(200, 7), boundOf(194, duals))).toEqual([
      'The bound is 194 cents and the plan costs 193.',
    ]);
  });

  test('stands beside what was tried', () => {
    const tried = (costCents: number, pricesCents: number): readonly string[] =>
      checkBound(problem, dear(291), boundOf(costCents, duals, { tried: { pricesCents } }));
    expect(tried(291, 194)).toEqual([]);
    expect(tried(291, 291)).toEqual(['The duals prove 194 cents, not 291.']);
    expect(tried(97, 194)).toEqual(['The bound of 97 cents is less than its duals prove.']);
    expect(tried(388, 194)).toEqual(['The bound is 388 cents and the plan costs 291.']);
  });
});

describe('a quick check', () => {
  test('finds what is wrong wherever that can be told at once', () => {
    const problem = problemOf(pieces([50, 50, 50, 50]), [stick(100)]);
    expect(checkBound(problem, dear(300), boundOf(300, [dual(50, 50.5)]), true)).toEqual([
      'Supply s100 is worth 101 cents, more than its price and credit, 100.',
    ]);
  });

  test('says nothing of a supply that would take long to work out, but of all the rest', () => {
    // Forty lengths without a common divisor, worth what they measure, fill a hundred million units in
    // more ways than are gone through.
    const lengths = Array.from({ length: 40 }, (_, at) => 8_000_000 + 500_009 * at + at ** 3);
    const problem = problemOf(pieces(lengths), [stick(100_000_000, { priceCents: 1 })]);
    const duals = lengths.map((length) => dual(length, length));
    const all = lengths.reduce((sum, length) => sum + length, 0);
    expect(checkBound(problem, dear(all), boundOf(all, duals), true)).toEqual([]);
    expect(checkBound(problem, dear(all), boundOf(all - 1, duals), true)).toEqual([
      `The duals prove ${all} cents, not ${all - 1}.`,
    ]);
  });
});

describe('figures that no bound can have are found', () => {
  const problem = problemOf(pieces([50]), [stick(100), stick(90, { have: 1, buyMost: 0 })]);
  const credit = (supplyId: string, cents: number): Partial<StickBound> => ({
    credits: [{ supplyId, cents }],
  });

  test.each([
    [boundOf(100, [dual(50, -1)]), 'The dual of 50 of “” is -1 cents.'],
    [boundOf(100, [dual(50, NaN)]), 'The dual of 50 of “” is NaN cents.'],
    [boundOf(100, [dual(50, 50), dual(50, 50)]), 'The dual of 50 of “” is given twice.'],
    [boundOf(100, [dual(50, 50, { profile: 'X' })]), 'The bound names a profile “X”, not listed.'],
    [boundOf(100, [], credit('s90', -1)), 'The credit of s90 is -1 cents.'],
    [boundOf(100, [], credit('X', 1)), 'The credit of X is of a supply not listed.'],
    [boundOf(100, [], credit('s100', 1)), 'Supply s100 has a credit and never runs out.'],
    [boundOf(99.5, [dual(50, 100)]), 'A bound of 99.5 cents is not whole.'],
    [boundOf(100, [dual(50, 1 / 3)]), 'A figure of the bound is finer than sums can be exact to.'],
    [
      boundOf(100, [dual(50, 2 ** 53)]),
      'The figures of the bound are too large to be added exactly.',
    ],
  ])('case %#', (bound, sentence) => {
    expect(checkBound(problem, dear(100), bound)).toEqual([sentence]);
  });
});
