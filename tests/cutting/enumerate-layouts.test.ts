import { expect, test } from '@jest/globals';
import { boardSets } from '../../src/cutting/column-generation/board-sets.ts';
import { certify } from '../../src/cutting/column-generation/certify.ts';
import { CoverSearch } from '../../src/cutting/column-generation/cover-search.ts';
import { enumerateLayouts } from '../../src/cutting/column-generation/enumerate-layouts.ts';
import { makeInstance } from '../../src/cutting/column-generation/make-instance.ts';
import { spareLayouts } from '../../src/cutting/column-generation/spare-layouts.ts';
import type { Block } from '../../src/cutting/quick/cut-list.ts';
import { pieces, problemOf, stick } from './problem-maker.ts';

const quiet = { isSpent: () => false, pause: () => Promise.resolve() };

// Worked by hand: three sticks of 100 hold 60 + 40, 50 + 50 and 35 + 35 + 30 just so, and no two do.
const problem = problemOf(pieces([60, 50, 50, 40, 35, 35, 30]), [stick(100)]);
const blocks = problem.demands.map(({ id, length }, at): Block => ({
  weight: length,
  pieces: [{ demandId: id, length }],
  demands: [at],
}));
const instance = makeInstance(problem, [blocks], [[]]);
// A cent a unit: a stick of 100 for 100 cents is worth its price when full, so the bound is 300.
const duals = Float64Array.from(instance.rowLeast, (_, row) => instance.items[row]?.weight ?? 0);
const proof = certify(instance, duals)!;

test('a search that was broken off knows nothing of what it had begun', async () => {
  expect(proof.bound.costCents).toBe(300);
  const budget = 300 * proof.grain - proof.total;
  const [set] = boardSets(instance, proof, budget, 10)!;
  const search = new CoverSearch(instance, proof, spareLayouts(instance, proof, budget, 1000)!);
  const run = (mostLooks: number) =>
    search.run(budget - set!.spare, set!.strips, set!.stock, { ...quiet, mostLooks });
  expect(await run(2)).toBe('too many');
  const found = await run(10_000);
  if (typeof found === 'string') throw new Error(`Found: ${found}.`);
  expect(found.map(({ items }) => items.length).sort((a, b) => a - b)).toEqual([2, 2, 3]);
});

test('what can only be seen by trying is seen: three pieces of 60 take three sticks', async () => {
  // By volume 180 cents and so two sticks; by hand, no two pieces of 60 share a stick of 100.
  const sixties = problemOf(pieces([60, 60, 60]), [stick(100)]);
  const alike = sixties.demands.map(({ id, length }, at): Block => ({
    weight: length,
    pieces: [{ demandId: id, length }],
    demands: [at],
  }));
  const three = makeInstance(sixties, [alike], [[]]);
  const byVolume = certify(three, Float64Array.of(60, 0))!;
  expect(byVolume.bound.costCents).toBe(200);
  const size = { mostLayouts: 100, mostLooks: 10_000, mostBoardSets: 10, isOver: () => false };
  const options = { ...quiet, ...size };
  expect(await enumerateLayouts(three, byVolume, { ...options, mostCents: 200 })).toBe('none');
  expect(await enumerateLayouts(three, byVolume, { ...options, mostCents: 300 })).toBeInstanceOf(
    Map,
  );
});
