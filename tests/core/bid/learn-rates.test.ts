/** Rates learned from hours: by hand, limits, and a reference built otherwise (elimination with pivots, nothing scaled). */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  learnRates,
  type HoursSpent,
  type PresentRate,
} from '../../../src/core/bid/learn-rates.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Jobs that took about what the rates say, of up to four works. */
const anyQuestion = fc.integer({ min: 1, max: 4 }).chain((works) =>
  fc.record({
    present: fc.array(
      fc
        .record({ rate: number(0.05, 2), share: number(0.05, 0.5) })
        .map(({ rate, share }): PresentRate => ({ rate, spread: rate * share })),
      { minLength: works, maxLength: works },
    ),
    jobs: fc.array(
      fc.record({
        counts: fc.array(number(0, 40), { minLength: works, maxLength: works }),
        hours: number(1, 80),
        spread: number(1, 20),
      }),
      { maxLength: 12 },
    ),
  }),
);

/** The normal equations as they stand, by elimination with pivots; with the inverse beside. */
function eliminate(present: readonly PresentRate[], jobs: readonly HoursSpent[]) {
  const size = present.length;
  const rows = present.map(({ rate, spread }, i) => {
    const left = present.map((_, j) =>
      jobs.reduce(
        (sum, { counts, spread: s }) => sum + (counts[i]! * counts[j]!) / s ** 2,
        i === j ? 1 / spread ** 2 : 0,
      ),
    );
    const right = jobs.reduce(
      (sum, { counts, hours, spread: s }) => sum + (counts[i]! * hours) / s ** 2,
      rate / spread ** 2,
    );
    return [...left, right, ...present.map((_, j) => (i === j ? 1 : 0))];
  });
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column; row < size; row++) {
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    }
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const by = rows[column]![column]!;
    rows[column] = rows[column]!.map((one) => one / by);
    rows.forEach((row, at) => {
      if (at === column) return;
      const times = row[column]!;
      rows[at] = row.map((one, to) => one - times * rows[column]![to]!);
    });
  }
  return {
    rates: rows.map((row) => row[size]!),
    spreads: rows.map((row, at) => Math.sqrt(row[size + 1 + at]!)),
  };
}

/** What is made least, as the formula says it. */
function missOf(
  rates: readonly number[],
  present: readonly PresentRate[],
  jobs: readonly HoursSpent[],
): number {
  const byHours = jobs.map(({ counts, hours, spread }) => {
    const given = counts.reduce((sum, one, work) => sum + one * rates[work]!, 0);
    return ((hours - given) / spread) ** 2;
  });
  const byRates = present.map(({ rate, spread }, work) => ((rates[work]! - rate) / spread) ** 2);
  return [...byHours, ...byRates].reduce((sum, one) => sum + one, 0);
}

const ratesOf = (present: readonly PresentRate[], jobs: readonly HoursSpent[]): number[] =>
  learnRates(present, jobs).rates.map(({ rate }) => rate);

describe('rates learned from hours', () => {
  test('one rate and one job, by hand', () => {
    // (0.1 / 0.05² + 100 · 14 / 5²) / (1 / 0.05² + 100² / 5²) = (40 + 56) / (400 + 400) = 0.12 [D]
    const jobs = [{ counts: [100], hours: 14, spread: 5 }];
    const { rates, off } = learnRates([{ rate: 0.1, spread: 0.05 }], jobs);
    expect(rates[0]!.rate).toBeCloseTo(0.12, 12);
    // Its spread is 1 / sqrt(800), and 1.28155 of them reach to where one in ten lies beyond.
    expect(rates[0]!.high - rates[0]!.rate).toBeCloseTo(1.28155 / Math.sqrt(800), 6);
    expect(rates[0]!.rate - rates[0]!.low).toBeCloseTo(1.28155 / Math.sqrt(800), 6);
    expect(rates[0]!.old).toBe(0.1);
    // 14 h against 12 h.
    expect(off[0]).toBeCloseTo(0.4, 12);
  });

  test('are those of elimination, interval and all, where none would go below 0', () => {
    fc.assert(
      fc.property(anyQuestion, ({ present, jobs }) => {
        const wanted = eliminate(present, jobs);
        fc.pre(wanted.rates.every((rate) => rate > 0));
        learnRates(present, jobs).rates.forEach(({ rate, low, high }, work) => {
          const near = 1e-8 * present[work]!.rate;
          expect(Math.abs(rate - wanted.rates[work]!)).toBeLessThan(near);
          const reach = 1.2815515655446 * wanted.spreads[work]!;
          expect(Math.abs(high - rate - reach)).toBeLessThan(near);
          expect(Math.abs(low - Math.max(0, rate - reach))).toBeLessThan(near);
        });
      }),
      { numRuns: 300 },
    );
  });

  test('are from 0, and no step of any of them makes the miss less', () => {
    fc.assert(
      fc.property(anyQuestion, fc.boolean(), ({ present, jobs }, isShort) => {
        // Jobs that took next to nothing draw rates toward 0, and some below if they could.
        const taken = isShort
          ? jobs.map((job) => ({ ...job, hours: job.hours / 50, spread: 0.3 }))
          : jobs;
        const rates = ratesOf(present, taken);
        const miss = missOf(rates, present, taken);
        rates.forEach((rate, work) => {
          expect(rate).toBeGreaterThanOrEqual(0);
          for (const step of [1e-4, -1e-4]) {
            const stepped = rates.map((one, at) => (at === work ? one + step : one));
            if (stepped[work]! < 0) continue;
            expect(missOf(stepped, present, taken)).toBeGreaterThanOrEqual(
              miss - 1e-9 * (1 + miss),
            );
          }
        });
      }),
      { numRuns: 200 },
    );
  });

  test('stay as they are without jobs, where their spread is 0, and for work that was not done', () => {
    const present = [
      { rate: 0.5, spread: 0.1 },
      { rate: 0.2, spread: 0 },
      { rate: 1, spread: 0.5 },
    ];
    expect(ratesOf(present, [])).toEqual([0.5, 0.2, 1]);
    const jobs = [{ counts: [10, 20, 0], hours: 20, spread: 1 }];
    const { rates } = learnRates(present, jobs);
    expect(rates[0]!.rate).toBeGreaterThan(0.6);
    expect(rates[1]).toEqual({ old: 0.2, rate: 0.2, low: 0.2, high: 0.2 });
    expect(rates[2]!.rate).toBe(1);
    // Nothing was learned of it: its interval is that of its own spread.
    expect(rates[2]!.high).toBeCloseTo(1 + 1.28155 * 0.5, 5);
  });

  test('come to the present ones as these grow sure', () => {
    fc.assert(
      fc.property(anyQuestion, ({ present, jobs }) => {
        const sure = present.map(({ rate }) => ({ rate, spread: 1e-6 * rate }));
        ratesOf(sure, jobs).forEach((rate, work) => {
          expect(Math.abs(rate / present[work]!.rate - 1)).toBeLessThan(1e-4);
        });
      }),
      { numRuns: 50 },
    );
  });

  test('come to those that the hours were made with, as jobs grow many', () => {
    const real = [0.3, 0.05, 1.2];
    const present = [0.2, 0.08, 1].map((rate): PresentRate => ({ rate, spread: 0.4 * rate }));
    const jobs = Array.from({ length: 400 }, (_, job): HoursSpent => {
      const counts = [(job * 7) % 23, (job * 13) % 91, (job * 5) % 7];
      const hours = counts.reduce((sum, one, work) => sum + one * real[work]!, 0);
      return { counts, hours, spread: 1 };
    });
    const few = ratesOf(present, jobs.slice(0, 3));
    const many = learnRates(present, jobs).rates;
    many.forEach(({ rate, low, high }, work) => {
      expect(Math.abs(rate / real[work]! - 1)).toBeLessThan(0.01);
      expect(Math.abs(rate - real[work]!)).toBeLessThanOrEqual(Math.abs(few[work]! - real[work]!));
      expect(high - low).toBeLessThan(0.3 * present[work]!.spread);
    });
  });

  test('say which job is odd', () => {
    const jobs = [10, 20, 30, 40, 15].map((units, at) => ({
      counts: [units],
      hours: units * (at === 4 ? 0.6 : 0.2),
      spread: 1,
    }));
    const { off } = learnRates([{ rate: 0.2, spread: 0.05 }], jobs);
    expect(off.map((one) => Math.abs(one) > 3)).toEqual([false, false, false, false, true]);
  });

  test.each([
    [[{ rate: -1, spread: 1 }], []],
    [[{ rate: 1, spread: NaN }], []],
    [[{ rate: 1, spread: 1 }], [{ counts: [], hours: 1, spread: 1 }]],
    [[{ rate: 1, spread: 1 }], [{ counts: [1], hours: 1, spread: 0 }]],
    [[{ rate: 1, spread: 1 }], [{ counts: [-1], hours: 1, spread: 1 }]],
    [[{ rate: 1, spread: 1 }], [{ counts: [1], hours: Infinity, spread: 1 }]],
  ])('of %j and %j are a bug of the caller’s', (present, jobs) => {
    expect(() => learnRates(present, jobs)).toThrow(RangeError);
  });
});
