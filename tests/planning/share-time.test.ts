import { describe, expect, test } from '@jest/globals';
import { shareTime } from '../../src/planning/share-time.ts';

describe('The time of a job', () => {
  test('goes to its groups by their pieces, and what one leaves goes to the later ones', () => {
    let clock = 50;
    const budgetOf = shareTime(1000, [30, 50, 20], { now: () => clock });
    expect(budgetOf(0).budget?.milliseconds).toBeCloseTo(300, 9);
    clock += 100;
    // 50 of the 70 pieces left, of 900 ms.
    expect(budgetOf(1).budget?.milliseconds).toBeCloseTo((900 * 5) / 7, 9);
    clock += 100;
    expect(budgetOf(2).budget?.milliseconds).toBeCloseTo(800, 9);
    clock += 5000;
    expect(budgetOf(2).budget?.milliseconds).toBe(0);
  });

  test('gives no group less than a quarter of what is left', () => {
    const budgetOf = shareTime(1000, [1, 9999], { now: () => 0 });
    expect(budgetOf(0).budget?.milliseconds).toBeCloseTo(250, 9);
  });

  test('may be given as a budget; steps hold for each group', () => {
    const now = (): number => 0;
    const both = shareTime(undefined, [1, 1], { now, budget: { milliseconds: 100, steps: 7 } });
    expect(both(0).budget).toEqual({ milliseconds: 50, steps: 7 });
    expect(shareTime(undefined, [1, 1], { budget: { steps: 7 } })(1).budget).toEqual({ steps: 7 });
    expect(shareTime(undefined, [1], {})(0)).toEqual({});
  });

  test('takes a clock', () => {
    expect(() => shareTime(1000, [1], {})).toThrow(RangeError);
  });
});
