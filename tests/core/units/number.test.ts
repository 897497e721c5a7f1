/** Plain numbers, angles, and what a cell held. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';
import { parseNumber, sayGiven, type AllowedUnits } from '../../../src/core/units/number.ts';

const ANY: AllowedUnits = { percent: true, degrees: true, currency: '' };
const read = (given: unknown, sign?: '.' | ',', allowed = ANY): number | string => {
  const outcome = parseNumber(given, 'price', sign, allowed);
  return outcome.ok ? outcome.value : outcome.faults.map((one) => one.code).join();
};

describe('a number as it is typed', () => {
  test.each([
    ['3.5', 3.5],
    [' 1200 ', 1200],
    ['.5', 0.5],
    ['3.', 3],
    ['-4', -4],
    ['- 4', -4],
    ['+4', 4],
    ['12 %', 12],
    ['12%', 12],
    ['$4.10', 4.1],
    ['-$4.10', -4.1],
    ['4.10 €', 4.1],
    ['£4', 4],
    ['45°', 45],
    ['CHF 1200', 1200],
    ['kr. 12', 12],
    ['12 kr.', 12],
    // As spreadsheets write what is below 0.
    ['(4.10)', -4.1],
    ['($4.10)', -4.1],
    ['$(4.10)', -4.1],
    ['1,200.5', 1200.5],
    ['1,234,567', 1234567],
    ["1'234.5", 1234.5],
    ['1\u202f234.5', 1234.5],
    ['1 234.5', 1234.5],
    ['４．１０', 4.1],
    ['＄４', 4],
    ['4\u200b.10', 4.1],
    ['3.54330708661417', 3.54330708661417],
    [7, 7],
    [-0.25, -0.25],
  ])('%s is %d', (given, value) => {
    expect(read(given)).toBe(value);
  });

  test('takes the decimal sign that the shop has set, and no other', () => {
    expect(read('3,5', ',')).toBe(3.5);
    expect(read('€ 4,10', ',')).toBe(4.1);
    expect(read('1.200,5', ',')).toBe(1200.5);
    expect(read('1 200,5', ',')).toBe(1200.5);
    expect(read('1 200', ',')).toBe(1200);
    for (const [text, sign, code] of [
      ['3,5', '.', 'number.other-sign'],
      ['0,125', '.', 'number.other-sign'],
      ['1.200,5', '.', 'number.other-sign'],
      ['1.234.567', '.', 'number.other-sign'],
      ['3.5', ',', 'number.other-sign'],
      ['1,200.5', ',', 'number.other-sign'],
      ['1,200', '.', 'number.two-readings'],
      ['1.200', ',', 'number.two-readings'],
    ] as const) {
      expect([text, read(text, sign)]).toEqual([text, code]);
    }
  });

  test('names both readings where thousands and decimals can not be told apart', () => {
    const outcome = parseNumber('1,200', 'price');
    expect(!outcome.ok && outcome.faults[0]!.message).toBe(
      'Price: “1,200” may be 1200 or 1.200. Write it without a sign between thousands.',
    );
  });

  test.each<readonly [text: string, allowed: AllowedUnits, code: string]>([
    ['4.10%', {}, 'number.percent'],
    ['4.10%', { currency: '' }, 'number.percent'],
    ['38°', {}, 'number.other-unit'],
    ['$4.10', { percent: true }, 'number.other-unit'],
    ['4 mm', { currency: '' }, 'number.other-unit'],
    ['4 kg', ANY, 'number.other-unit'],
    ['$4.10/ft', ANY, 'number.other-unit'],
    ['4.10 €', { currency: '$' }, 'number.other-currency'],
    ['USD 4.10', { currency: 'CAD' }, 'number.other-currency'],
  ])('%s is refused by what stands with it (%j)', (text, allowed, code) => {
    expect(read(text, '.', allowed)).toBe(code);
  });

  test.each<readonly [text: string, allowed: AllowedUnits]>([
    ['$4', { currency: 'USD' }],
    ['CA$4', { currency: 'CAD' }],
    ['€4', { currency: 'EUR' }],
    ['4 Taler', { currency: 'Taler' }],
    ['4 min', { words: ['min'] }],
  ])('%s is 4 where that is what is counted in (%j)', (text, allowed) => {
    expect(read(text, '.', allowed)).toBe(4);
  });

  test('a text of more than 60 characters is refused before anything is looked for in it', () => {
    const begin = performance.now();
    for (const text of ['1 '.repeat(400_000), `7${' '.repeat(400_000)}x`, '('.repeat(400_000)]) {
      expect(read(text)).toBe('number.too-many-characters');
    }
    expect(performance.now() - begin).toBeLessThan(100);
    expect(read(`${' '.repeat(400_000)}7`)).toBe(7);
  });

  test.each([
    '',
    ' ',
    null,
    undefined,
    'abc',
    '1e999',
    '1e3',
    '--4',
    '4-',
    '1 200',
    '1,20.5',
    '(4',
    '-(4)',
    '3/4',
    'NaN',
    '%',
    '$',
    '-',
    '.',
    ',',
    '12 %%',
    '1234567890123',
    NaN,
    Infinity,
    -Infinity,
    true,
    new Date(0),
    {},
    [3],
  ])('%p is refused', (given) => {
    expect(read(given)).toBe('number.unreadable');
  });

  test('names the text in the refusal', () => {
    const outcome = parseNumber('4 or 5', 'price');
    expect(!outcome.ok && outcome.faults[0]!.message).toBe(
      'Price: “4 or 5” is not a number. Write it like 3.5 or 12.',
    );
  });

  test('no reading gives minus nothing', () => {
    expect(Object.is(read('-0'), 0)).toBe(true);
  });

  test('a number written with either sign reads back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.nat({ max: 9999 }), (whole, part) => {
        const text = `${whole}.${String(part).padStart(4, '0')}`;
        expect(read(text)).toBe(Number(text));
        expect(read(text.replace('.', ','), ',')).toBe(Number(text));
      }),
      { numRuns: 200 },
    );
  });
});

test.each([
  [null, null],
  [undefined, null],
  ['text', 'text'],
  [true, true],
  [3.5, 3.5],
  [NaN, 'NaN'],
  [new Date(0), 'a date'],
  [{}, 'something that is no text or number'],
])('a cell that held %p is said as %p', (given, said) => {
  expect(sayGiven(given)).toBe(said);
});

describe('angles', () => {
  test('a half turn is 180°, a right angle 90°', () => {
    expect(toRadians(degrees(180))).toBe(Math.PI);
    expect(toDegrees(radians(Math.PI / 2))).toBe(90);
  });

  test('degrees to radians and back is the same angle', () => {
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (angle) => {
        expect(Math.abs(toDegrees(toRadians(degrees(angle))) - angle)).toBeLessThan(1e-12);
      }),
      { numRuns: 200 },
    );
  });
});
