import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Block } from '../../src/cutting/quick/cut-list.ts';
import { fewerLayouts } from '../../src/cutting/tidy/fewer-layouts.ts';
import { longerOffcut } from '../../src/cutting/tidy/longer-offcut.ts';
import type { WholeStick } from '../../src/cutting/whole-stick.ts';
import { problemOf, stick } from './problem-maker.ts';

const supply = stick(100);
const problem = problemOf([], [supply]);

/** Sticks of 100 cut into the given lengths, without kerf; every piece is its own demand. */
function cut(...lengths: readonly (readonly number[])[]): readonly WholeStick[] {
  let next = 0;
  return lengths.map((own) => ({
    profile: '',
    supply,
    rip: 0,
    blocks: own.map((length): Block => {
      next += 1;
      return { weight: length, pieces: [{ demandId: `p${next}`, length }], demands: [next] };
    }),
  }));
}

function waysOf(sticks: readonly WholeStick[]): readonly string[] {
  const ways = sticks.map(({ blocks }) =>
    blocks
      .map(({ weight }) => weight)
      .sort((a, b) => b - a)
      .join('+'),
  );
  return [...new Set(ways)].sort();
}

function idsOf(sticks: readonly WholeStick[]): readonly string[] {
  return sticks.flatMap(({ blocks }) => blocks.map(({ pieces }) => pieces[0]!.demandId)).sort();
}

const anySticks = fc
  .array(
    fc
      .array(fc.constantFrom(10, 20, 30, 40), { minLength: 1, maxLength: 6 })
      .filter((lengths) => lengths.reduce((sum, one) => sum + one, 0) <= 100),
    { minLength: 1, maxLength: 12 },
  )
  .map((lengths) => cut(...lengths));

describe('fewer lay-outs', () => {
  test('two lay-outs whose pieces divide evenly become one', () => {
    const sticks = fewerLayouts(problem, cut([40, 40], [20, 20], [40, 40], [20, 20]));
    expect(waysOf(sticks)).toEqual(['40+20']);
  });

  test('two odd sticks are recut so that one is like the others', () => {
    const sticks = fewerLayouts(problem, cut([50, 30], [50, 30], [50, 20], [30, 25]));
    expect(waysOf(sticks)).toEqual(['25+20', '50+30']);
  });

  test('never more ways, never another piece, never a stick too full', () => {
    fc.assert(
      fc.property(anySticks, (sticks) => {
        const tidied = fewerLayouts(problem, sticks);
        expect(waysOf(tidied).length).toBeLessThanOrEqual(waysOf(sticks).length);
        expect(idsOf(tidied)).toEqual(idsOf(sticks));
        expect(tidied).toHaveLength(sticks.length);
        for (const { blocks } of tidied) {
          expect(blocks.reduce((sum, { weight }) => sum + weight, 0)).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
});

describe('one long offcut', () => {
  test('the emptiest stick gives its pieces to sticks with room', () => {
    const sticks = longerOffcut(problem, cut([60, 10], [50, 20], [30, 20]));
    expect(waysOf(sticks)).toEqual(['50+20+20', '60+30+10']);
  });

  test('the longest offcut never gets shorter, and no piece is lost', () => {
    const longest = (sticks: readonly WholeStick[]): number =>
      sticks.reduce(
        (most, { blocks }) =>
          Math.max(most, 100 - blocks.reduce((sum, { weight }) => sum + weight, 0)),
        0,
      );
    fc.assert(
      fc.property(anySticks, (sticks) => {
        const tidied = longerOffcut(problem, sticks);
        expect(idsOf(tidied)).toEqual(idsOf(sticks));
        if (tidied.length === sticks.length) {
          expect(longest(tidied)).toBeGreaterThanOrEqual(longest(sticks));
        }
      }),
    );
  });
});
