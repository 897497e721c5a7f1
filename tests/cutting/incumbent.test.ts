import { describe, expect, test } from '@jest/globals';
import { Incumbent, type Offer } from '../../src/cutting/incumbent.ts';
import type { Block } from '../../src/cutting/quick/cut-list.ts';
import { answerOf, pieces, problemOf, stick } from './problem-maker.ts';

const supply = stick(100);

/** Sticks of 100 cut into these lengths, without kerf; each piece is the next that is asked for. */
function offerOf(...lengths: readonly (readonly number[])[]): Offer {
  const waiting = [...lengths.flat()].sort((a, b) => b - a).map((length, at) => ({ length, at }));
  const blockOf = (wanted: number): Block => {
    const place = waiting.findIndex(({ length }) => length === wanted);
    const [{ length, at }] = waiting.splice(place, 1) as [{ length: number; at: number }];
    return { weight: length, pieces: [{ demandId: `p${at}`, length }], demands: [at] };
  };
  const sticks = lengths.map((own) => ({ profile: '', supply, rip: 0, blocks: own.map(blockOf) }));
  const blocks = sticks.flatMap((one) => one.blocks);
  return { sticks, unserved: new Map(), lists: [{ blocks, unservable: [], spliced: new Set() }] };
}

function incumbentWith(first: Offer): Incumbent {
  const asked = first.sticks.flatMap(({ blocks }) => blocks.map(({ weight }) => weight));
  const problem = problemOf(pieces([...asked].sort((a, b) => b - a)), [supply]);
  const incumbent = new Incumbent(problem, {});
  incumbent.offer(first, 'first');
  return incumbent;
}

describe('Of two plans that serve the same for as much, the better', () => {
  test.each([
    ['has fewer lay-outs', offerOf([60], [60], [50, 10]), offerOf([60, 10], [60], [50])],
    [
      'has fewer lay-outs though its offcut is shorter',
      offerOf([40, 20], [40, 20]),
      offerOf([40, 40], [20, 20]),
    ],
  ])('%s', (_, better, worse) => {
    const improved = incumbentWith(worse);
    expect(improved.offer(better, 'second')).toBe(true);
    expect(improved.best.sticks).toEqual(better.sticks);
    const kept = incumbentWith(better);
    expect(kept.offer(worse, 'second')).toBe(false);
    expect(kept.best.sticks).toEqual(better.sticks);
  });
});

test('What stands with short offcuts is emptied for a longer one as it is offered', () => {
  const better = offerOf([60, 20], [50, 10]);
  const kept = incumbentWith(better);
  expect(kept.offer(offerOf([60, 10], [50, 20]), 'second')).toBe(false);
  const lengths = incumbentWith(offerOf([60, 10], [50, 20])).best.sticks.map(({ blocks }) =>
    blocks.reduce((sum, { weight }) => sum + weight, 0),
  );
  expect(Math.min(...lengths)).toBeLessThanOrEqual(60);
  expect(Math.max(...lengths)).toBeGreaterThanOrEqual(80);
});

test('What tidying makes of the cheapest plan is what the planner answers', async () => {
  // By hand: no two of 60, 60 and 50 go on one stick of 100, so it takes three.
  // Two are cut alike where the piece of 10 lies with the one of 50.
  const { plan } = await answerOf(problemOf(pieces([60, 10, 60, 50]), [supply]));
  const layouts = plan.sticks.map(({ pieces: cut }) => cut.map(({ length }) => length));
  expect(layouts).toEqual([[60], [60], [50, 10]]);
});
