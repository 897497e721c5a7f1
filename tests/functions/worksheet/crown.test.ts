import { describe, expect, test } from '@jest/globals';
import { answer, call, said } from '../calls.ts';

// Saw makers' printed charts; corners other than 90 tell sine from cosine.
const CHART = [
  [38, 90, 31.62, 33.86],
  [45, 90, 35.26, 30],
  [45, 108, 27.19, 24.56],
  [40, 120, 20.36, 22.52],
  [45, 135, 16.32, 15.7],
  [40, 144, 11.8, 13.69],
] as const;

describe('COVE.CROWNMITER and COVE.CROWNBEVEL', () => {
  test.each(CHART)(
    'spring %d, corner %d: miter %d, bevel %d, as printed',
    (spring, corner, miter, bevel) => {
      expect(answer('CROWNMITER', spring, corner)).toBeCloseTo(miter, 1);
      expect(answer('CROWNBEVEL', spring, corner)).toBeCloseTo(bevel, 1);
    },
  );

  test('take a square corner where none is given', () => {
    expect(answer('CROWNMITER', 38)).toBe(answer('CROWNMITER', '38°', 90));
    expect(answer('CROWNBEVEL', 38, '')).toBe(answer('CROWNBEVEL', 38, 90));
  });

  test('go through a table of springs and corners', () => {
    const table = call('CROWNMITER', [[38, 45]], [[90], [135], ['0']]);
    expect(table[1]?.[1]).toBeCloseTo(16.32, 2);
    expect(said(table[2]?.[0])).toMatch(/^#VALUE! Corner is 0°/u);
  });

  test('refuse a spring that is no angle between wall and ceiling', () => {
    for (const id of ['CROWNMITER', 'CROWNBEVEL']) {
      expect(said(answer(id, 90))).toMatch(/^#VALUE! Spring is 90°/u);
      expect(said(answer(id, -1))).toMatch(/^#VALUE! Spring is -1°/u);
      expect(said(answer(id))).toBe('#VALUE! Spring is empty and is needed here.');
      expect(said(answer(id, 'steep'))).toContain('#VALUE! Spring: “steep” is not a number.');
    }
  });
});
