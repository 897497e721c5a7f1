import { describe, expect, test } from '@jest/globals';
import { sayArgument } from '../../../src/core/faults/argument.ts';
import { MOST_PLANNED_PIECES, MOST_UNITS } from '../../../src/cutting/problem/limits.ts';
import type {
  OffcutCredit,
  Rip,
  StickProblem,
  StickProfile,
} from '../../../src/cutting/problem/problem.ts';
import { planSticks } from '../../../src/cutting/plan-sticks.ts';
import { validateProblem } from '../../../src/cutting/problem/validate-problem.ts';
import { piece, problemOf, stick } from '../problem-maker.ts';

const sound = problemOf([piece('a', 40)], [stick(96)], {
  unitsPerInch: 8,
  kerf: 1,
  endTrim: 8,
  splice: { overlap: 4 },
});

function withPiece(length: number): StickProblem {
  return { ...sound, demands: [piece('a', length)] };
}

function withStick(more: Parameters<typeof stick>[1]): StickProblem {
  return { ...sound, supplies: [stick(96, more)] };
}

/** The sound problem with profiles, its piece and stick being of the first. */
function withProfiles(profiles: readonly StickProfile[]): StickProblem {
  return { ...sound, profiles, demands: [piece('a', 40, { profile: profiles[0]?.id ?? 'P' })] };
}

const two: readonly StickProfile[] = [
  { id: 'P', blank: 'wide' },
  { id: 'Q', blank: 'narrow' },
];

function withRips(rips: readonly Rip[]): StickProblem {
  return { ...withProfiles(two), supplies: [stick(96, { rips })] };
}

function withCredit(more: Partial<OffcutCredit>): StickProblem {
  const offcutCredit = { centsPerUnit: 0.5, mostCents: 20, ...more };
  return withProfiles([{ id: 'P', blank: '', offcutCredit }]);
}

function withRule(overlap: number, grid?: number): StickProblem {
  const splice = grid === undefined ? { overlap } : { overlap, grid };
  return withProfiles([{ id: 'P', blank: 'wide', splice }, two[1]!]);
}

const refusals: readonly (readonly [StickProblem, string, string])[] = [
  [{ ...sound, unitsPerInch: 0 }, 'number.too-small', 'Units per inch'],
  [{ ...sound, unitsPerInch: 2.5 }, 'number.not-whole', 'Units per inch'],
  [{ ...sound, unitsPerInch: NaN }, 'number.unreadable', 'Units per inch'],
  [{ ...sound, unitsPerInch: 1_000_001 }, 'cutting.unit-too-fine', 'Units per inch'],
  [{ ...sound, kerf: -1 }, 'length.negative', 'Kerf'],
  [{ ...sound, kerf: 0.5 }, 'number.not-whole', 'Kerf'],
  [{ ...sound, kerf: NaN }, 'number.unreadable', 'Kerf'],
  [{ ...sound, endTrim: -8 }, 'length.negative', 'End trim'],
  [{ ...sound, endTrim: Infinity }, 'number.unreadable', 'End trim'],
  [{ ...sound, keepOffcutsOver: -1 }, 'length.negative', 'Keep offcuts over'],
  [{ ...sound, splice: { overlap: -1 } }, 'length.negative', 'Splice overlap'],
  [{ ...sound, splice: { overlap: 80 } }, 'cutting.splice-too-short', 'Splice overlap'],
  [withPiece(0), 'length.not-positive', 'Piece a'],
  [withPiece(-40), 'length.not-positive', 'Piece a'],
  [withPiece(40.25), 'number.not-whole', 'Piece a'],
  [withPiece(NaN), 'number.unreadable', 'Piece a'],
  [withPiece(MOST_UNITS + 1), 'length.too-long', 'Piece a'],
  [{ ...sound, demands: [piece('a', 1), piece('a', 2)] }, 'cutting.id-twice', 'Piece'],
  [{ ...sound, demands: [piece('', 1)] }, 'text.missing', 'Id of a piece'],
  [{ ...sound, supplies: [] }, 'cutting.no-sticks', 'the pieces'],
  [{ ...sound, supplies: [stick(96), stick(96)] }, 'cutting.id-twice', 'Stick'],
  [withStick({ length: 16 }), 'cutting.stick-shorter-than-trim', 'Stick s96'],
  [withStick({ length: 0 }), 'length.not-positive', 'Stick s96'],
  [withStick({ priceCents: -1 }), 'number.negative', 'Price of stick s96'],
  [withStick({ priceCents: 9.5 }), 'number.not-whole', 'Price of stick s96'],
  [withStick({ priceCents: NaN }), 'number.unreadable', 'Price of stick s96'],
  [withStick({ priceCents: 2e9 }), 'number.too-large', 'Price of stick s96'],
  [withStick({ strips: 0 }), 'number.too-small', 'Strips of stick s96'],
  [withStick({ strips: 1.5 }), 'number.not-whole', 'Strips of stick s96'],
  [withStick({ strips: 1001 }), 'number.too-large', 'Strips of stick s96'],
  [withStick({ have: -1 }), 'number.negative', 'Sticks s96 on the rack'],
  [withStick({ have: Infinity }), 'number.unreadable', 'Sticks s96 on the rack'],
  [withStick({ buyMost: -2 }), 'number.negative', 'Sticks s96 to buy'],
  [withStick({ buyMost: 0.5 }), 'number.not-whole', 'Sticks s96 to buy'],
  [{ ...withPiece(3), kerf: 4 }, 'cutting.kerf-longer-than-piece', 'Piece a'],
  [{ ...withProfiles(two), demands: [piece('a', 40)] }, 'cutting.profile-unknown', 'Piece a'],
  [
    { ...withProfiles(two), demands: [piece('a', 40, { profile: 'R' })] },
    'cutting.profile-unknown',
    'Piece a',
  ],
  [withProfiles([two[0]!, two[0]!]), 'cutting.id-twice', 'Profile'],
  [withProfiles([two[0]!, { id: '', blank: 'wide' }]), 'text.missing', 'Id of a profile'],
  [withRips([]), 'cutting.rip-empty', 'Stick s96'],
  [withRips([[{ blank: 'wide', count: 1 }], []]), 'cutting.rip-empty', 'Rip 2 of stick s96'],
  [withRips([[{ blank: 'odd', count: 1 }]]), 'cutting.blank-unknown', 'Rip 1 of stick s96'],
  [
    withRips([
      [
        { blank: 'wide', count: 1 },
        { blank: 'wide', count: 1 },
      ],
    ]),
    'cutting.blank-twice',
    'Rip 1 of stick s96',
  ],
  ...(
    [
      [0, 'number.too-small'],
      [1.5, 'number.not-whole'],
      [-1, 'number.negative'],
      [1001, 'number.too-large'],
    ] as const
  ).map(
    ([count, code]) =>
      [withRips([[{ blank: 'wide', count }]]), code, 'Rip 1 of stick s96, strips of wide'] as const,
  ),
  [withCredit({ centsPerUnit: -1 }), 'number.negative', 'Offcut credit of P'],
  [withCredit({ centsPerUnit: NaN }), 'number.unreadable', 'Offcut credit of P'],
  [withCredit({ centsPerUnit: Infinity }), 'number.unreadable', 'Offcut credit of P'],
  [withCredit({ mostCents: -1 }), 'number.negative', 'Most offcut credit of P'],
  [withCredit({ mostCents: 0.5 }), 'number.not-whole', 'Most offcut credit of P'],
  [withRule(-1), 'length.negative', 'Splice overlap of P'],
  [withRule(0.5), 'number.not-whole', 'Splice overlap of P'],
  [withRule(4, 0), 'length.not-positive', 'Splice grid of P'],
  [withRule(80), 'cutting.splice-too-short', 'Splice overlap of P'],
  [{ ...sound, splice: { overlap: 4, grid: 1.5 } }, 'number.not-whole', 'Splice grid'],
  [
    {
      ...withProfiles(two),
      demands: ['P', 'Q'].map((profile) => piece(profile, 10, { profile, match: 'pair' })),
    },
    'cutting.match-of-two-profiles',
    'Matched group pair',
  ],
];

describe('a stick problem is refused', () => {
  test.each(refusals)('case %#: %j', async (problem, code, argument) => {
    const outcome = await planSticks(problem);
    expect(
      outcome.ok ? [] : outcome.faults.map((one) => [one.code, sayArgument(one.argument)]),
    ).toEqual([[code, argument]]);
  });

  test('where it has too many pieces', () => {
    const demands = Array.from({ length: MOST_PLANNED_PIECES + 1 }, (_, at) => piece(`p${at}`, 1));
    expect(validateProblem({ ...sound, demands })).toMatchObject([
      {
        code: 'cutting.too-many-pieces',
        given: MOST_PLANNED_PIECES + 1,
        limit: MOST_PLANNED_PIECES,
      },
    ]);
  });

  test('where its splices come to too many parts', () => {
    // Each part but the last takes the piece 80 - 4 = 76 units on.
    expect(validateProblem(withPiece(76 * (MOST_PLANNED_PIECES + 1)))).toMatchObject([
      { code: 'cutting.too-many-pieces', given: MOST_PLANNED_PIECES + 1 },
    ]);
  });

  test('where the parts of all its profiles together are too many', () => {
    const half = (MOST_PLANNED_PIECES + 2) / 2;
    const demands = ['P', 'Q'].map((profile) => piece(profile, 76 * half, { profile }));
    expect(validateProblem({ ...withProfiles(two), demands })).toMatchObject([
      { code: 'cutting.too-many-pieces', given: MOST_PLANNED_PIECES + 2 },
    ]);
  });

  test('with what helps, in words, where kerf, profiles or rips are at fault', () => {
    const faults = validateProblem({
      ...withRips([[], [{ blank: 'odd', count: 1 }]]),
      kerf: 4,
      demands: [
        piece('a', 3, { profile: 'R' }),
        piece('b', 8, { profile: 'P', match: 'pair' }),
        piece('c', 8, { profile: 'Q', match: 'pair' }),
      ],
    });
    expect(faults.map(({ message }) => message)).toEqual([
      'Rip 1 of stick s96 gives 0 strips. List the blanks that it rips into, or leave it out.',
      'Rip 2 of stick s96: no profile is made from the blank “odd”. Leave it out, or correct the name.',
      'Piece a is 3/8 in long and the kerf is 1/2 in: the cut takes more than the piece. Check the length, or use a thinner blade.',
      'Piece a: the profile “R” is not one of those listed. List it, or correct the name.',
      'Matched group pair has pieces of “P” and of “Q”. Pieces that come from one stick are of one profile; give each profile a group of its own.',
    ]);
  });

  test('with all that is wrong at once, each by its name and in inches', () => {
    const faults = validateProblem({
      ...sound,
      kerf: -4,
      splice: { overlap: -1 },
      demands: [piece('a', 0), piece('b', 7.5), piece('b', 8)],
      supplies: [stick(12, { priceCents: -1, have: -1 })],
    });
    expect(faults.map(({ message }) => message)).toEqual([
      'Kerf is -1/2 in; it must be 0 or more.',
      'Stick s12 of 1 1/2 in is used up by its end trims (2 in). Use a longer stick or less trim.',
      'Price of stick s12 is -1; it must be 0 or more.',
      'Sticks s12 on the rack is -1; it must be 0 or more.',
      'Piece a is 0 in; it must be more than 0.',
      'Piece b is 7.5; it must be a whole number.',
      'Piece “b” stands twice. Give each its own.',
      'Splice overlap is -1/8 in; it must be 0 or more.',
    ]);
  });
});

describe('a stick problem is sound', () => {
  test('where a piece is longer than every stick: the plan will say so', () => {
    expect(validateProblem({ ...withPiece(500), splice: { overlap: 0 } })).toEqual([]);
  });

  test('where nothing can be had of a stick, or a stick is free', () => {
    expect(validateProblem(withStick({ buyMost: 0, priceCents: 0 }))).toEqual([]);
  });

  test('where a piece is as long as the kerf', () => {
    expect(validateProblem({ ...withPiece(4), kerf: 4 })).toEqual([]);
  });

  test('where a profile has no sticks of its own, and a rule that no stick of another allows', () => {
    const rips = [[{ blank: 'wide', count: 2 }]];
    const profiles = [two[0]!, { ...two[1]!, splice: { overlap: 500 } }];
    const supplies = [stick(96, { rips, strips: 0 })];
    expect(validateProblem({ ...withProfiles(profiles), supplies })).toEqual([]);
  });

  test('where a lone profile has no name, and its pieces say none', () => {
    expect(validateProblem({ ...sound, profiles: [{ id: '', blank: '' }] })).toEqual([]);
    expect(validateProblem({ ...sound, profiles: [two[0]!] })).toEqual([]);
  });

  test('where nothing is asked for', () => {
    expect(validateProblem({ ...sound, demands: [], supplies: [] })).toEqual([]);
  });
});
