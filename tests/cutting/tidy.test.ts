import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Block } from '../../src/cutting/quick/cut-list.ts';
import type { StickDemand, StickProblem } from '../../src/cutting/problem/problem.ts';
import { alikeEnds, countWays } from '../../src/cutting/tidy/alike-ends.ts';
import { fewerLayouts } from '../../src/cutting/tidy/fewer-layouts.ts';
import { longerOffcut } from '../../src/cutting/tidy/longer-offcut.ts';
import type { WholeStick } from '../../src/cutting/whole-stick.ts';
import { count } from '../deep.ts';
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

/** Every way to cut a list of weights from so many sticks of 100, each as its lay-outs in order. */
function everyCut(weights: readonly number[], sticks: number): readonly (readonly string[])[] {
  const found = new Map<string, readonly string[]>();
  const fill = (at: number, loads: readonly (readonly number[])[]): void => {
    const weight = weights[at];
    if (weight === undefined) {
      if (loads.some((load) => load.length === 0)) return;
      const ways = loads.map((load) => [...load].sort((a, b) => b - a).join('+')).sort();
      found.set(ways.join(' '), ways);
      return;
    }
    const tried = new Set<string>();
    loads.forEach((load, stick) => {
      const name = [...load].sort().join();
      if (tried.has(name) || load.reduce((sum, one) => sum + one, weight) > 100) return;
      tried.add(name);
      fill(
        at + 1,
        loads.map((one, other) => (other === stick ? [...one, weight] : one)),
      );
    });
  };
  fill(
    0,
    Array.from({ length: sticks }, () => []),
  );
  return [...found.values()];
}

const fewSticks = fc
  .array(
    fc
      .array(fc.constantFrom(15, 20, 30, 35), { minLength: 1, maxLength: 4 })
      .filter((lengths) => lengths.reduce((sum, one) => sum + one, 0) <= 100),
    { minLength: 2, maxLength: 6 },
  )
  .map((lengths) => cut(...lengths));

test('No two lay-outs are left that could be cut all alike, or some like a third and the rest alike: all ways tried', () => {
  fc.assert(
    fc.property(fewSticks, (sticks) => {
      const tidied = fewerLayouts(problem, sticks);
      const ways = waysOf(tidied);
      const ofWay = (way: string): readonly WholeStick[] =>
        tidied.filter((one) => waysOf([one])[0] === way);
      ways.forEach((one, at) => {
        for (const two of ways.slice(at + 1)) {
          const own = [...ofWay(one), ...ofWay(two)];
          const weights = own.flatMap(({ blocks }) => blocks.map(({ weight }) => weight));
          if (weights.length > 9) continue;
          const others = ways.filter((way) => way !== one && way !== two);
          const better = everyCut(weights, own.length).filter((recut) => {
            const kinds = new Set(recut);
            const fresh = [...kinds].filter((way) => !others.includes(way));
            return kinds.size === 1 || (kinds.size === 2 && fresh.length <= 1);
          });
          expect([one, two, better]).toEqual([one, two, []]);
        }
      });
    }),
    { numRuns: count(400) },
  );
});

describe('alike to their ends', () => {
  /** Sticks of pieces with ends, such as `30a`; what may not move stands in brackets. */
  function withEnds(...sticks: readonly string[]): { given: StickProblem; sticks: WholeStick[] } {
    const demands: StickDemand[] = [];
    const whole = sticks.map((words): WholeStick => ({
      profile: '',
      supply,
      rip: 0,
      blocks: words.split(' ').map((word): Block => {
        const [, length, ends = '', fixed] = /^\(?(\d+)(\w*)(\))?$/u.exec(word)!;
        const id = `p${demands.length}`;
        demands.push({
          ...{ id, length: Number(length), onePiece: true, ends },
          ...(fixed === undefined ? {} : { match: id }),
        });
        const pieces = [{ demandId: id, length: Number(length) }];
        return { weight: Number(length), pieces, demands: [demands.length - 1] };
      }),
    }));
    return { given: { ...problem, demands }, sticks: whole };
  }
  const said = (given: StickProblem, sticks: readonly WholeStick[]): string[] =>
    sticks
      .map(({ blocks }) =>
        blocks
          .map(({ weight, demands }) => `${weight}${given.demands[demands[0]!]!.ends}`)
          .sort()
          .join(' '),
      )
      .sort();

  test('pieces of one length change places until as many sticks as can be are alike', () => {
    const { given, sticks } = withEnds('30a 20b', '30b 20b', '30a 20a', '30b 20a');
    expect(new Set(said(given, sticks)).size).toBe(4);
    expect(new Set(said(given, alikeEnds(given, sticks))).size).toBe(2);
  });

  test('a matched piece stays where it is', () => {
    const { given, sticks } = withEnds('(30a) 20b', '30b 20a', '30b 20b');
    const tidied = alikeEnds(given, sticks);
    expect(tidied[0]!.blocks[0]).toBe(sticks[0]!.blocks[0]);
    expect(said(given, tidied)).toHaveLength(3);
  });

  test('no stick changes its lengths, no piece is lost, and there are never more ways; the fewest often', () => {
    let [reached, all] = [0, 0];
    fc.assert(
      fc.property(
        fc.array(
          fc.array(fc.constantFrom('20a', '20b', '30a', '30b'), { minLength: 1, maxLength: 3 }),
          {
            minLength: 2,
            maxLength: 4,
          },
        ),
        (words) => {
          const { given, sticks } = withEnds(...words.map((one) => one.join(' ')));
          const tidied = alikeEnds(given, sticks);
          expect(idsOf(tidied)).toEqual(idsOf(sticks));
          expect(tidied.map(({ blocks }) => blocks.map(({ weight }) => weight))).toEqual(
            sticks.map(({ blocks }) => blocks.map(({ weight }) => weight)),
          );
          const ways = new Set(said(given, tidied)).size;
          expect(ways).toBeLessThanOrEqual(new Set(said(given, sticks)).size);
          expect(countWays(given, tidied)).toBe(ways);
          const fewest = fewestByTrying(given, sticks, said);
          expect(ways).toBeGreaterThanOrEqual(fewest);
          all += 1;
          if (ways === fewest) reached += 1;
        },
      ),
      { numRuns: count(200) },
    );
    expect(reached / all).toBeGreaterThan(0.9);
  });
});

/** Every way to hand the pieces out to places of their lengths. */
function fewestByTrying(
  given: StickProblem,
  sticks: readonly WholeStick[],
  said: (given: StickProblem, sticks: readonly WholeStick[]) => string[],
): number {
  const pool = sticks.flatMap(({ blocks }) => blocks);
  let fewest = Infinity;
  const endsOf = ({ demands }: Block): string => given.demands[demands[0]!]!.ends!;
  const hand = (at: number, left: readonly Block[], done: readonly Block[]): void => {
    const place = pool[at];
    if (place === undefined) {
      const rest = [...done];
      const tried = sticks.map((one) => ({ ...one, blocks: rest.splice(0, one.blocks.length) }));
      fewest = Math.min(fewest, new Set(said(given, tried)).size);
      return;
    }
    const kinds = new Set<string>();
    for (const block of left) {
      if (block.weight !== place.weight || kinds.has(endsOf(block))) continue;
      kinds.add(endsOf(block));
      hand(
        at + 1,
        left.filter((one) => one !== block),
        [...done, block],
      );
    }
  };
  hand(0, pool, []);
  return fewest;
}

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
