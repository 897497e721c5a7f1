import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { sayMoney } from '../../src/core/units/say-money.ts';
import type { Drawing, PathShape } from '../../src/drawings/drawing.ts';
import { drawPriceBars, drawPriceDrivers } from '../../src/drawings/price-range.ts';
import { misplacedIn } from './drawn-coves.ts';

const say = (money: number): string => sayMoney(Math.round(money * 100), '$');
const areasOf = ({ shapes }: Drawing): PathShape[] =>
  shapes.filter(
    (one) => one.kind === 'path' && one.closed && one.stroke !== undefined,
  ) as PathShape[];
const spanOf = ({ points }: PathShape, axis: 0 | 1) => {
  const places = points.map((point) => point[axis]);
  return { from: Math.min(...places), to: Math.max(...places) };
};

/** Bars of one width with their band, and the price as it stands in them, below or above them. */
const ranges = fc
  .record({
    counts: fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 1, maxLength: 20 }),
    width: fc.constantFrom(0.01, 2, 500, 20_000),
    shares: fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 1, noNaN: true }))),
    stands: fc.double({ min: -0.3, max: 1.3, noNaN: true }),
    first: fc.integer({ min: 1, max: 40 }),
  })
  .map(({ counts, width, shares, stands, first }) => {
    const bars = counts.map((draws, at) => ({
      ...{ from: (first + at) * width, to: (first + at + 1) * width },
      draws: at === 0 ? draws + 1 : draws,
    }));
    const [from, to] = [bars[0]!.from, bars.at(-1)!.to];
    const [low, middle, high] = shares
      .toSorted((one, other) => one - other)
      .map((share) => from + share * (to - from)) as [number, number, number];
    const likely = Math.max(0, from + stands * (to - from));
    return { bars, low, middle, high, likely };
  });

describe('Prices as bars', () => {
  test('are as high as they have draws, side by side, nothing over another', () => {
    fc.assert(
      fc.property(ranges, (range) => {
        const drawing = drawPriceBars({ ...range, say, width: 178 });
        expect(misplacedIn(drawing)).toEqual([]);
        const drawn = range.bars.filter(({ draws }) => draws > 0);
        const areas = areasOf(drawing);
        expect(areas).toHaveLength(drawn.length);
        const most = Math.max(...drawn.map(({ draws }) => draws));
        const tall = areas.map((one) => spanOf(one, 1));
        const highest = Math.max(...tall.map(({ from, to }) => to - from));
        drawn.forEach(({ draws }, at) => {
          const { from, to } = tall[at]!;
          expect((to - from) / highest).toBeCloseTo(draws / most, 6);
        });
        // By lightness: the band's bars are the darker ones.
        drawn.forEach((bar, at) => {
          const half = (bar.from + bar.to) / 2;
          const isInBand = half >= range.low && half <= range.high;
          expect(areas[at]!.fill).toBe(isInBand ? 'rail' : 'removed');
        });
        for (const price of [range.low, range.middle, range.high, range.likely]) {
          expect(drawing.alt).toContain(say(price));
        }
      }),
      { numRuns: 60 },
    );
  });

  test('that nobody drew are a fault of ours', () => {
    const nothing = { bars: [], low: 1, middle: 1, high: 1, likely: 1, say, width: 178 };
    expect(() => drawPriceBars(nothing)).toThrow(RangeError);
  });
});

describe('What moves the price', () => {
  test('is a bar each from its low to its high, all to one scale, nothing over another', () => {
    const driver = fc.record({
      name: fc.constantFrom('waste', 'install at height, for the tallest of all moldings', ''),
      down: fc.double({ min: 0, max: 900, noNaN: true }),
      up: fc.double({ min: 0.01, max: 5000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(driver, { minLength: 1, maxLength: 16 }), (all) => {
        const likely = 1000;
        const drivers = all.map(({ name, down, up }) => ({
          ...{ name, atLow: likely - down, atHigh: likely + up },
        }));
        const drawing = drawPriceDrivers({ drivers, likely, say, width: 178 });
        expect(misplacedIn(drawing)).toEqual([]);
        const shown = drivers.slice(0, 12);
        const areas = areasOf(drawing).map((one) => spanOf(one, 0));
        expect(areas).toHaveLength(2 * shown.length);
        const spans = shown.map((_, at) => areas[2 * at + 1]!.to - areas[2 * at]!.from);
        const scale = spans[0]! / (shown[0]!.atHigh - shown[0]!.atLow);
        shown.forEach(({ atLow, atHigh }, at) => {
          expect(spans[at]!).toBeCloseTo(scale * (atHigh - atLow), 6);
          expect(drawing.alt).toContain(`${say(atLow)} to ${say(atHigh)}`);
        });
        const more = drivers.length - shown.length;
        expect(/and \d+ more/u.test(drawing.alt)).toBe(more > 0);
      }),
      { numRuns: 60 },
    );
  });
});
