import { expect, test } from '@jest/globals';
import { serveMore } from '../../src/cutting/serve-more.ts';
import type { UnservedReason } from '../../src/cutting/problem/problem.ts';
import { answerOf, piece, pieces, problemOf, stick } from './problem-maker.ts';
import { loadSolver } from './solver.ts';

test('what was left over is cut from a stick that came free, whole groups together', () => {
  const pair = { match: 'pair' };
  const problem = problemOf(
    [piece('a', 90), piece('b', 40, pair), piece('c', 50, pair), piece('d', 95)],
    [stick(100, { have: 2, buyMost: 0 })],
  );
  const usedUp: UnservedReason = 'stock used up';
  const block = { weight: 90, pieces: [{ demandId: 'a', length: 90 }], demands: [0] };
  const served = serveMore(problem, {
    sticks: [{ profile: '', supply: problem.supplies[0]!, rip: 0, blocks: [block] }],
    unserved: new Map([
      ['b', usedUp],
      ['c', usedUp],
      ['d', usedUp],
    ]),
  });
  // One stick is left: the pair (90) is shorter than d and comes first.
  expect([...served.unserved.keys()]).toEqual(['d']);
  expect(served.sticks.at(-1)!.blocks[0]!.pieces.map(({ demandId }) => demandId)).toEqual([
    'b',
    'c',
  ]);
});

test('nothing changes where nothing is left over, or no stick is free', () => {
  const problem = problemOf(pieces([90, 90]), [stick(100, { have: 1, buyMost: 0 })]);
  const full = {
    sticks: [
      {
        profile: '',
        supply: problem.supplies[0]!,
        rip: 0,
        blocks: [{ weight: 90, pieces: [{ demandId: 'p0', length: 90 }], demands: [0] }],
      },
    ],
    unserved: new Map<string, UnservedReason>([['p1', 'stock used up']]),
  };
  expect(serveMore(problem, full)).toBe(full);
});

test('a short stock serves as many as it can, in a plan that stands', async () => {
  // Two sticks of 100 hold five of 40, 40, 60, 30, 30, 95 at most: 40 + 60, 40 + 30 + 30.
  const problem = problemOf(pieces([40, 40, 60, 30, 30, 95]), [
    stick(100, { have: 2, buyMost: 0 }),
  ]);
  const { plan } = await answerOf(problem, { loadSolver, budget: { steps: 500 } });
  expect(plan.unserved).toEqual([{ demandId: 'p5', why: 'stock used up' }]);
});
