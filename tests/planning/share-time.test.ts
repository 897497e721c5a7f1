import { describe, expect, test } from '@jest/globals';
import { shareTime } from '../../src/planning/share-time.ts';

describe('The time of a job', () => {
  test('goes to its groups by their pieces, and what one leaves goes to the later ones', () => {
    let clock = 50;
    const shares = shareTime(1000, [30, 50, 20], { now: () => clock });
    const spend = (place: number, milliseconds: number): number | undefined => {
      const { budget, end } = shares.begin(place);
      clock += milliseconds;
      end();
      return budget.budget?.milliseconds;
    };
    expect(spend(0, 100)).toBeCloseTo(300, 9);
    // 50 of the 70 pieces left, of 900 ms.
    expect(spend(1, 100)).toBeCloseTo((900 * 5) / 7, 9);
    expect(spend(2, 5000)).toBeCloseTo(800, 9);
    expect(spend(2, 1)).toBe(0);
  });

  test('gives no group less where there is more of it, however coarse the steps', () => {
    const sharesOf = (milliseconds: number, stepMilliseconds: number): number[] => {
      let clock = 0;
      const shares = shareTime(milliseconds, [9, 1, 5], { now: () => clock });
      return [0, 1, 2].map((place) => {
        const { budget, end } = shares.begin(place);
        const share = budget.budget?.milliseconds ?? 0;
        // A group is done after 40 ms; it looks at the clock only between its steps.
        for (let spent = 0; spent < Math.min(share, 40); spent += stepMilliseconds) {
          clock += stepMilliseconds;
        }
        end();
        return share;
      });
    };
    for (const step of [1, 7, 30]) {
      let before = [0, 0, 0];
      for (let milliseconds = 0; milliseconds < 200; milliseconds += 0.7) {
        const shares = sharesOf(milliseconds, step);
        shares.forEach((share, at) => expect(share).toBeGreaterThanOrEqual(before[at]! - 1e-9));
        before = shares;
      }
    }
  });

  test('gives no group less than a quarter of what is left', () => {
    const shares = shareTime(1000, [1, 9999], { now: () => 0 });
    expect(shares.begin(0).budget.budget?.milliseconds).toBeCloseTo(250, 9);
  });

  test('may be given as a budget; steps hold for each group', () => {
    const now = (): number => 0;
    const both = shareTime(undefined, [1, 1], { now, budget: { milliseconds: 100, steps: 7 } });
    expect(both.begin(0).budget.budget).toEqual({ milliseconds: 50, steps: 7 });
    const steps = shareTime(undefined, [1, 1], { budget: { steps: 7 } });
    expect(steps.begin(1).budget.budget).toEqual({ steps: 7 });
    expect(shareTime(undefined, [1], {}).begin(0).budget).toEqual({});
  });

  test('takes a clock', () => {
    expect(() => shareTime(1000, [1], {})).toThrow(RangeError);
  });
});
