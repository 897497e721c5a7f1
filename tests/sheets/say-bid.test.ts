import { describe, expect, test } from '@jest/globals';
import { learnRates } from '../../src/core/bid/learn-rates.ts';
import { computePriceRange, type Unsure } from '../../src/core/bid/price-range.ts';
import { seededChance } from '../../src/cutting/seeded-chance.ts';
import { sayLearned, sayRange } from '../../src/sheets/words/say-bid.ts';

const DOLLARS = { currency: '$', decimalSign: '.' } as const;
const KRONER = { currency: 'kr', decimalSign: ',' } as const;

function rangeOf(factors: readonly Unsure[]) {
  const range = computePriceRange({
    factors,
    priceOf: (values) => values.reduce((sum, one) => sum + one, 0),
    chance: seededChance(1),
  });
  if (!range.ok) throw new Error(range.faults[0]!.message);
  return range.value;
}

describe('The bid in words', () => {
  const even = rangeOf([
    { name: 'Passes', low: 300, likely: 400, high: 500 },
    { name: 'Waste', low: 90, likely: 100, high: 110 },
  ]);

  test('says the band, the half, and how often the likely figure holds', () => {
    const money = String.raw`\$\d{3}\.\d{2}`;
    expect(sayRange(even, DOLLARS)).toMatch(
      new RegExp(
        `^Eight jobs in ten come to between ${money} and ${money}, half of them to more than ${money}\\. (?:49|50|51) in 100 come to no more than \\$500\\.00, with all as is likely\\.$`,
        'u',
      ),
    );
    expect(sayRange(even, KRONER)).toContain('no more than 500,00 kr');
  });

  test('warns of a likely figure that hardly ever holds, and says what is all known', () => {
    const many = Array.from({ length: 20 }, () => ({ name: '', low: 95, likely: 100, high: 200 }));
    expect(sayRange(rangeOf(many), DOLLARS)).toContain(
      'Hardly any comes to no more than $2,000.00, with all as is likely: more can go wrong than right.',
    );
    const known = rangeOf([{ name: 'Known', low: 5, likely: 5, high: 5 }]);
    expect(sayRange(known, DOLLARS)).toBe('All is known: $5.00.');
  });

  test('has a learned rate beside the one that counts until now', () => {
    // 0.12 h by hand (tests/core/bid/learn-rates.test.ts) is 7.2 min; 1.28155 / sqrt(800) h is 2.72 min; three digits are said.
    const jobs = [{ counts: [100], hours: 14, spread: 5 }];
    const [learned] = learnRates([{ rate: 0.1, spread: 0.05 }], jobs).rates;
    expect(sayLearned('Smoothing', learned!, ',')).toEqual({
      label: 'Smoothing',
      value: '7,2 min',
      note: 'until now 6 min; in eight cases of ten between 4,48 min and 9,92 min',
    });
  });
});
