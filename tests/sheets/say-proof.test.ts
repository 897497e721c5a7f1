import { describe, expect, test } from '@jest/globals';
import { sayMoney } from '../../src/core/units/say-money.ts';
import { sayCost, sayProof, sumProofs, type Proof } from '../../src/sheets/words/say-proof.ts';

const say = (cents: number): string => sayMoney(cents, '$');
const proof = (status: Proof['status'], boundCents: number, creditCents = 0): Proof => ({
  status,
  lumberCents: 11000,
  creditCents,
  laborCents: 0,
  boundCents,
});

describe('How good a cutting plan is', () => {
  test('is said in three phrases, never better than it is', () => {
    expect(sayProof(proof('proven', 11000), say, '.')).toBe('proven least cost');
    expect(sayProof(proof('gap', 10000), say, '.')).toBe(
      'within 10 % of the least possible (at most $10.00 more might be saved)',
    );
    expect(sayProof(proof('gap', 10999), say, '.')).toBe(
      'within 0.1 % of the least possible (at most $0.01 more might be saved)',
    );
    expect(sayProof(proof('unfinished', 10000), say, '.')).toBe(
      'bound not finished: within 10 % of the least possible (at most $10.00 more might be saved)',
    );
  });

  test('has its share in the decimal sign of the shop', () => {
    expect(sayProof(proof('gap', 10999), say, ',')).toMatch(/^within 0,1 % of the least possible/u);
  });

  test('is no share of nothing', () => {
    expect(sayProof(proof('gap', 0), say, '.')).toBe(
      'how near the least possible is not known (at most $110.00 more might be saved)',
    );
  });

  test('is judged by what the lumber costs once the kept offcuts are taken off', () => {
    const credited = proof('gap', 10000, 500);
    expect(sayCost(credited, say)).toBe('$110.00 less $5.00 for kept offcuts');
    expect(sayProof(credited, say, '.')).toBe(
      'within 5 % of the least possible (at most $5.00 more might be saved)',
    );
    expect(sayCost(proof('gap', 10000), say)).toBe('$110.00');
  });

  test('of several problems is as good as the least good', () => {
    const [proven, gap, unfinished] = [
      proof('proven', 11000),
      proof('gap', 10000, 200),
      proof('unfinished', 9000),
    ];
    expect(sumProofs([proven, proven]).status).toBe('proven');
    expect(sumProofs([proven, gap])).toEqual({
      status: 'gap',
      lumberCents: 22000,
      creditCents: 200,
      laborCents: 0,
      boundCents: 21000,
    });
    expect(sumProofs([unfinished, gap, proven]).status).toBe('unfinished');
  });
});
