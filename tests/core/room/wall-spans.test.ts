/** Openings on a wall, and what cut-aways leave of it. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { own } from '../../../src/core/faults/argument.ts';
import {
  checkOpeningsOnWall,
  keptSpans,
  type OpeningOnWall,
  type Span,
} from '../../../src/core/room/wall-spans.ts';

const span = (from: number, to: number): Span => ({
  from: new Fraction(from),
  to: new Fraction(to),
});
const kept = (length: number, ...cuts: readonly Span[]): number[][] =>
  keptSpans(new Fraction(length), cuts).map(({ from, to }) => [Number(from), Number(to)]);

describe('what is left of a wall', () => {
  test.each<[string, number[][], Span[]]>([
    ['all of it, where nothing is cut away', [[0, 120]], []],
    ['both sides of a door', [[0, 30], [68, 120]], [span(30, 68)]], // prettier-ignore
    ['between two doors, whatever their order', [[0, 10], [40, 60], [90, 120]], [span(60, 90), span(10, 40)]], // prettier-ignore
    ['nothing between doors whose casings meet or lap', [[0, 10], [70, 120]], [span(10, 40), span(40, 60), span(55, 70)]], // prettier-ignore
    ['nothing more where one lies in another', [[0, 10], [90, 120]], [span(10, 90), span(20, 30)]], // prettier-ignore
    ['nothing at a corner that a casing reaches or laps', [[40, 100]], [span(-3, 40), span(100, 120)]], // prettier-ignore
    ['nothing, where an opening takes it all', [], [span(-1, 121)]],
    ['all of it, where a cut-away lies beyond its ends', [[0, 120]], [span(-30, 0), span(120, 150)]], // prettier-ignore
  ])('%s', (_, wanted, cuts) => {
    expect(kept(120, ...cuts)).toEqual(wanted);
  });

  test('is exact in thirds and sevenths', () => {
    const cut = { from: new Fraction(1, 3), to: new Fraction(2, 7).add(1, 3) };
    const [first, second] = keptSpans(new Fraction(450, 127), [cut]);
    expect(first!.to.sub(first!.from).toFraction()).toBe('1/3');
    expect(second!.from.toFraction()).toBe('13/21');
    expect(second!.to.toFraction()).toBe('450/127');
  });

  test('is what no cut-away covers, inch by inch', () => {
    const cuts = fc.array(
      fc.tuple(fc.integer({ min: -20, max: 130 }), fc.integer({ min: 1, max: 40 })),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), cuts, (length, drawn) => {
        const spans = kept(length, ...drawn.map(([from, wide]) => span(from, from + wide)));
        const bare = Array.from({ length }, (_, at) =>
          drawn.every(([from, wide]) => at + 0.5 < from || at + 0.5 > from + wide),
        );
        const inSpans = bare.map((_, at) =>
          spans.some(([from, to]) => from! < at + 0.5 && at + 0.5 < to!),
        );
        expect(inSpans).toEqual(bare);
        spans.forEach(([from, to], at) => {
          expect(to).toBeGreaterThan(from!);
          if (at > 0) expect(from).toBeGreaterThan(spans[at - 1]![1]!);
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe('openings on their wall', () => {
  const wall = { name: '2', length: new Fraction(120) };
  const opening = (name: string, width: number, position?: number): OpeningOnWall => ({
    argument: own(name),
    width: new Fraction(width),
    ...(position === undefined ? {} : { position: new Fraction(position) }),
  });
  const said = (...openings: OpeningOnWall[]): unknown[] =>
    checkOpeningsOnWall(wall, openings).map((one) => [one.opening, one.cell, one.fault.message]);

  test('may fill it from corner to corner, and touch each other', () => {
    expect(said(opening('Door', 60, 60), opening('Window', 60, 0))).toEqual([]);
    expect(said(opening('Door', 120))).toEqual([]);
  });

  test.each<[string, OpeningOnWall[], [number, string, string][]]>([
    [
      'a door wider than its wall',
      [opening('Door', 130, 4)],
      [
        [
          0,
          'width',
          "Door is 130 in wide, and wall 2 is 120 in long. Check Width, Wall and the wall's Length.",
        ],
      ],
    ],
    [
      'a door beyond its end',
      [opening('Door', 32, 90)],
      [
        [
          0,
          'position',
          "Door: the opening reaches 122 in along a wall of 120 in. Check Position, Width and the wall's Length.",
        ],
      ],
    ],
    [
      'a door before its corner',
      [opening('Door', 32, -2)],
      [[0, 'position', 'Position of Door is -2 in; it must be 0 or more.']],
    ],
    [
      'two that overlap, at the one further right',
      [opening('Window', 36, 50), opening('Door', 32, 20)],
      [
        [
          0,
          'position',
          'Window begins 50 in along wall 2, inside Door, which reaches from 20 in to 52 in. Check Position and Width of both.',
        ],
      ],
    ],
    [
      'a third that lies in the first, past the second',
      [opening('Door', 100, 0), opening('Window', 20, 10), opening('Window 2', 20, 60)],
      [
        [
          1,
          'position',
          'Window begins 10 in along wall 2, inside Door, which reaches from 0 in to 100 in. Check Position and Width of both.',
        ],
        [
          2,
          'position',
          'Window 2 begins 60 in along wall 2, inside Door, which reaches from 0 in to 100 in. Check Position and Width of both.',
        ],
      ],
    ],
    [
      'more of them than fit, wherever they are',
      [opening('Door', 70), opening('Door 2', 60, 10)],
      [
        [
          1,
          'width',
          'Door 2: the openings on wall 2 are 130 in wide in all, and it is 120 in long. Check their Width and Wall.',
        ],
      ],
    ],
  ])('%s', (_, openings, wanted) => {
    expect(said(...openings)).toEqual(wanted);
  });
});
