/** The band of a price: a sum's distribution worked out otherwise, and what moves it. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  computePriceRange,
  DRAWS,
  type PriceRange,
  type RangeQuestion,
  type Unsure,
} from '../../../src/core/bid/price-range.ts';
import { computeTriangular, type Triangular } from '../../../src/core/bid/triangular.ts';
import { seededChance } from '../../../src/cutting/seeded-chance.ts';

const AS_SAID: Unsure = { name: 'The job', low: 1, likely: 1, high: 1 };
/** The first is the job's factor: what all the others are times. */
const timesJob = ([job = 1, ...values]: readonly number[]): number =>
  job * values.reduce((sum, one) => sum + one, 0);
const sumOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0);
const factor = (name: string, low: number, likely: number, high: number): Unsure => ({
  ...{ name, low, likely, high },
});

function rangeOf({
  factors,
  job = AS_SAID,
  ...given
}: Partial<RangeQuestion> &
  Pick<RangeQuestion, 'factors'> & { readonly job?: Unsure }): PriceRange {
  const range = computePriceRange({
    priceOf: timesJob,
    chance: seededChance(7),
    ...given,
    factors: [job, ...factors],
  });
  if (!range.ok) throw new Error(range.faults[0]!.message);
  return range.value;
}

/** Shares of a sum of triangles, times a job's factor, on a grid: each added by its density, never drawn. */
function quantilesOnGrid(
  factors: readonly Unsure[],
  job: Unsure,
  shares: readonly number[],
): number[] {
  const cells = 2000;
  const highest = factors.reduce((sum, { high }) => sum + high, 0);
  const wide = highest / cells;
  const below = ({ low, likely, high }: Triangular, x: number): number => {
    if (x <= low) return 0;
    if (x >= high) return 1;
    return x < likely
      ? (x - low) ** 2 / ((high - low) * (likely - low))
      : 1 - (high - x) ** 2 / ((high - low) * (high - likely));
  };
  // A cell holds what lies within half of its width.
  let mass: number[] = [1];
  for (const one of factors) {
    const own = Array.from(
      { length: Math.ceil(one.high / wide) + 2 },
      (_, at) => below(one, (at + 0.5) * wide) - below(one, (at - 0.5) * wide),
    );
    const next = new Array<number>(mass.length + own.length - 1).fill(0);
    mass.forEach((p, i) => own.forEach((q, j) => (next[i + j]! += p * q)));
    mass = next;
  }
  let all = 0;
  const sums = mass.map((one) => (all += one));
  const belowPrice = (price: number): number => {
    const steps = 200;
    let share = 0;
    for (let step = 0; step < steps; step++) {
      const times = computeTriangular(job, (step + 0.5) / steps);
      const place = price / times / wide;
      const at = Math.floor(place + 0.5);
      const part = place + 0.5 - at;
      share += (sums[at - 1] ?? (at < 1 ? 0 : 1)) + part * (mass[at] ?? 0);
    }
    return share / steps;
  };
  return shares.map((share) => {
    let [from, to] = [0, highest * job.high];
    for (let halving = 0; halving < 50; halving++) {
      const middle = (from + to) / 2;
      if (belowPrice(middle) < share) from = middle;
      else to = middle;
    }
    return (from + to) / 2;
  });
}

describe('the range of a price', () => {
  const FACTORS = [
    factor('Passes', 300, 400, 700),
    factor('Smoothing', 200, 260, 500),
    factor('Waste', 80, 100, 160),
    factor('Crosscuts', 90, 100, 130),
  ];
  const JOB = factor('The job', 0.85, 1, 1.3);

  test('of one factor alone is its triangle', () => {
    const range = rangeOf({ factors: [factor('Only', 1, 2, 4)] });
    // Of ten thousand draws these lie within four standard errors: 0.0082 and 0.0116, by the density there.
    expect(Math.abs(range.low - 1.548)).toBeLessThan(0.033);
    expect(Math.abs(range.high - 3.225)).toBeLessThan(0.047);
    expect(range.likely).toBe(2);
    // A third of the triangle lies below its likely.
    expect(Math.abs(range.holds - 1 / 3)).toBeLessThan(0.02);
  });

  test.each([
    ['with the job as said', AS_SAID],
    ['under one factor of the job', JOB],
  ])('of a sum %s is as its distribution has it, worked out without chance', (_, job) => {
    const wanted = quantilesOnGrid(FACTORS, job, [0.1, 0.5, 0.9]);
    const range = rangeOf({ factors: FACTORS, job });
    const band = wanted[2]! - wanted[0]!;
    [range.low, range.middle, range.high].forEach((figure, at) => {
      expect(Math.abs(figure - wanted[at]!) / band).toBeLessThan(0.02);
    });
  });

  test('is wider under one factor of the job than where factors go each their own way', () => {
    const [alone, together] = [AS_SAID, JOB].map((job) => rangeOf({ factors: FACTORS, job }));
    expect(together!.high - together!.low).toBeGreaterThan(1.3 * (alone!.high - alone!.low));
  });

  test('repeats to the last digit for a seed, and hardly differs for another', () => {
    const of = (seed: number) =>
      rangeOf({ factors: FACTORS, job: JOB, chance: seededChance(seed) });
    expect(of(7)).toEqual(of(7));
    expect(of(8)).not.toEqual(of(7));
    expect(Math.abs(of(8).high - of(7).high)).toBeLessThan(0.05 * (of(7).high - of(7).low));
  });

  test('is in order, and holds the likely figure where factors reach as far down as up', () => {
    const even = fc.array(
      fc
        .tuple(
          fc.double({ min: 1, max: 100, noNaN: true }),
          fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        )
        .map(([likely, part]) => factor('', likely * (1 - part), likely, likely * (1 + part))),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(even, (factors) => {
        const { low, likely, middle, high, holds } = rangeOf({ factors });
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
        expect(low).toBeLessThan(likely);
        expect(high).toBeGreaterThan(likely);
        expect(Math.abs(holds - 1 / 2)).toBeLessThan(0.03);
      }),
      { numRuns: 10 },
    );
  });

  test('lies above the likely figure where many things can go wrong and few right, and says so', () => {
    const factors = Array.from({ length: 20 }, (_, at) => factor(`${at}`, 95, 100, 200));
    const { low, likely, holds } = rangeOf({ factors });
    expect(likely).toBe(2000);
    expect(low).toBeGreaterThan(likely);
    expect(holds).toBeLessThan(0.01);
  });

  test('never falls where a factor is raised, draw for draw', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom('low', 'likely', 'high' as const),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (which, end, part) => {
          const raised = FACTORS.map((one, at) => {
            if (at !== which) return one;
            const room = { low: one.likely, likely: one.high, high: 2 * one.high }[end as 'low'];
            const from = one[end as 'low'];
            return { ...one, [end]: from + part * (room - from) };
          });
          const [before, after] = [FACTORS, raised].map((factors) =>
            rangeOf({ factors, job: JOB }),
          );
          for (const key of ['low', 'middle', 'high', 'likely'] as const) {
            expect(after![key]).toBeGreaterThanOrEqual(before![key] - 1e-9);
          }
        },
      ),
      { numRuns: 10 },
    );
  });

  test('is driven by what swings the price most, by hand, and shares add to one', () => {
    const { drivers } = rangeOf({ factors: FACTORS, job: JOB });
    // Likely is 860: the job swings 0.85 to 1.3 of it; passes 400, smoothing 300, waste 80, crosscuts 40.
    const swings = { 'The job': 0.45 * 860, Passes: 400, Smoothing: 300, Waste: 80, Crosscuts: 40 };
    const all = sumOf(Object.values(swings));
    expect(drivers.map(({ name }) => name)).toEqual([
      ...['Passes', 'The job', 'Smoothing', 'Waste', 'Crosscuts'],
    ]);
    for (const { name, share } of drivers) {
      expect(share).toBeCloseTo(swings[name as keyof typeof swings] / all, 9);
    }
    expect(drivers[0]).toMatchObject({ atLow: 760, atHigh: 1160 });
  });

  test('of what is all known is one figure that nothing moves', () => {
    const range = rangeOf({ factors: [factor('Known', 5, 5, 5)] });
    expect(range).toMatchObject({ low: 5, likely: 5, middle: 5, high: 5, holds: 1 });
    expect(range.drivers.map(({ share }) => share)).toEqual([0, 0]);
    expect(rangeOf({ factors: [] }).likely).toBe(0);
  });

  test('has every draw in one bar, side by side, of one round width, twenty at most', () => {
    for (const factors of [FACTORS, [factor('Only', 1, 2, 4)], [factor('Known', 5, 5, 5)]]) {
      const { bars, low, high } = rangeOf({ factors, job: JOB });
      expect(sumOf(bars.map(({ draws }) => draws))).toBe(DRAWS);
      expect(bars.length).toBeLessThanOrEqual(20);
      const width = bars[0]!.to - bars[0]!.from;
      expect(String(Math.round(width * 100))).toMatch(/^[125]0*$/u);
      bars.forEach(({ from, to }, at) => {
        expect(to - from).toBeCloseTo(width, 9);
        if (at > 0) expect(from).toBe(bars[at - 1]!.to);
      });
      // [D] A tenth of the draws lies below the band: the bars before it hold no more, those up to it no less.
      const below = (price: number): number =>
        sumOf(bars.filter(({ to }) => to <= price).map(({ draws }) => draws));
      expect(below(low)).toBeLessThanOrEqual(DRAWS / 10 + 1);
      expect(below(high + width)).toBeGreaterThanOrEqual(0.9 * DRAWS - 1);
    }
  });

  test('widens no less than in proportion where the only factor’s ends both go out', () => {
    // [D] One factor, price linear in it: each quantile is likely + (reach · a constant of the shape), so
    // reaching out by the same share on both sides moves low down and high up by that share.
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 1.9, noNaN: true }),
        (down, up, more) => {
          const of = (times: number): PriceRange =>
            rangeOf({ factors: [factor('Only', 100 - down * times, 100, 100 + up * times)] });
          const [narrow, wide] = [of(1), of(more)];
          expect(wide.low - 100).toBeCloseTo((narrow.low - 100) * more, 9);
          expect(wide.high - 100).toBeCloseTo((narrow.high - 100) * more, 9);
        },
      ),
      { numRuns: 10 },
    );
  });

  test('follows a price that is no sum: a least charge cuts the band off below', () => {
    const priceOf = (values: readonly number[]): number => Math.max(900, timesJob(values));
    const range = rangeOf({ factors: FACTORS, priceOf });
    expect(range.low).toBeGreaterThanOrEqual(900);
    expect(range.high).toBeCloseTo(rangeOf({ factors: FACTORS }).high, 9);
  });

  test('names each factor that is out of order, and the job’s', () => {
    const range = computePriceRange({
      factors: [factor('The job', 1, 2, 1.5), factor('Passes', 3, 2, 4), factor('Waste', 1, 2, 4)],
      priceOf: sumOf,
      chance: () => {
        throw new Error('nothing is drawn');
      },
    });
    expect(!range.ok && range.faults.map(({ argument }) => argument)).toEqual([
      { own: 'The job' },
      { own: 'Passes' },
    ]);
    expect(DRAWS).toBe(10_000);
  });
});
