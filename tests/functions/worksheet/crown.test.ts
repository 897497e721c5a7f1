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

describe('COVE.CROWNSLOPEMITER and COVE.CROWNSLOPEBEVEL', () => {
  test('spring 45, pitch 7.2: 2.547 from level, and 5.105, not the printed 4.45, between two slopes', () => {
    // A forum thread of 13 Feb 2017, recomputed [D] (tests/core/crown/sloped-crown.test.ts)
    expect(answer('CROWNSLOPEMITER', 45, 7.2)).toBeCloseTo(2.547, 3);
    expect(answer('CROWNSLOPEMITER', 45, 7.2, 'level')).toBeCloseTo(2.547, 3);
    expect(answer('CROWNSLOPEMITER', 45, '7.2°', 'slope')).toBeCloseTo(5.105, 3);
    // asin(sin 45° · cos 82.8°)
    expect(answer('CROWNSLOPEBEVEL', 45, 7.2, 'slope')).toBeCloseTo(5.084, 3);
  });

  test('refuse what is no pitch, no spring and no word of theirs', () => {
    for (const id of ['CROWNSLOPEMITER', 'CROWNSLOPEBEVEL']) {
      expect(said(answer(id, 45, 0))).toMatch(/^#VALUE! Pitch is 0°; .* from level/u);
      expect(said(answer(id, 90, 7))).toMatch(/^#VALUE! Spring is 90°/u);
      expect(said(answer(id, 45))).toBe('#VALUE! Pitch is empty and is needed here.');
      expect(said(answer(id, 45, 7, 'ridge'))).toMatch(/^#VALUE! Meets: “ridge” .* level, slope/u);
    }
  });
});

describe('COVE.CROWNNESTEDMITER', () => {
  test('is 45 in a square corner and 22.5 in one of 135, a column at once', () => {
    expect(call('CROWNNESTEDMITER', [[90], [135]])).toEqual([
      [expect.closeTo(45, 12)],
      [expect.closeTo(22.5, 12)],
    ]);
  });

  test('refuses what is no corner', () => {
    expect(said(answer('CROWNNESTEDMITER', 180))).toMatch(/^#VALUE! Corner is 180°/u);
    expect(said(answer('CROWNNESTEDMITER'))).toBe('#VALUE! Corner is empty and is needed here.');
  });
});

describe('COVE.RAKED', () => {
  test('2 out and 1 up, at 30 degrees, is 1.866, and falling away it is less', () => {
    // cos 30° + 2 sin 30°, worked by hand [D]
    expect(answer('RAKED', 2, 1, 30)).toBeCloseTo(1.866, 3);
    expect(answer('RAKED', '2 in', '25.4 mm', 30, 90)).toBeCloseTo(1.866, 3);
    expect(answer('RAKED', 2, 1, -30)).toBeCloseTo(Math.cos(Math.PI / 6) - 1, 9);
    expect(answer('RAKED', 2, -1, 30)).toBeCloseTo(1 - Math.cos(Math.PI / 6), 9);
  });

  test('refuses a slope that is upright, and sizes that no molding has', () => {
    expect(said(answer('RAKED', 2, 1, 90))).toMatch(/^#VALUE! Slope is 90°; .* from level/u);
    expect(said(answer('RAKED', -2, 1, 30))).toMatch(/^#VALUE! Out is -2 in/u);
    expect(said(answer('RAKED', 2, 100, 30))).toMatch(/^#VALUE! Up is 100 in/u);
  });
});
