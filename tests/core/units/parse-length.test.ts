/** Lengths as people type them: every form, every refusal. */
import { describe, expect, test } from '@jest/globals';
import Fraction from 'fraction.js';
import { exactDecimal, LONGEST_INCHES, parseLength } from '../../../src/core/units/length.ts';
import type { LengthReading } from '../../../src/core/units/length.ts';

const POINT: LengthReading = { unit: 'in', decimalSign: '.' };
const COMMA: LengthReading = { unit: 'in', decimalSign: ',' };
const MILLIMETRES: LengthReading = { unit: 'mm', decimalSign: '.' };

/** The reading as `n/d`, or the code of its one fault. */
function read(given: unknown, reading?: LengthReading): string {
  const outcome = parseLength(given, 'length', reading);
  if (outcome.ok) return outcome.value.toFraction();
  expect(outcome.faults).toHaveLength(1);
  return outcome.faults[0]!.code;
}

describe('a length typed in inches', () => {
  test.each([
    ['3.5', '7/2'],
    ['3.', '3'],
    ['.5', '1/2'],
    ['0.1', '1/10'],
    ['88', '88'],
    ['0', '0'],
    ['3 1/2', '7/2'],
    ['3  1/2', '7/2'],
    ['3-1/2', '7/2'],
    ['3-1/2"', '7/2'],
    ['3 - 1/2', '7/2'],
    ['3½', '7/2'],
    ['3 ½', '7/2'],
    ['3-½', '7/2'],
    ['½', '1/2'],
    ['⅞', '7/8'],
    ['2⅓', '7/3'],
    ['3 1⁄2', '7/2'],
    ['3\u00a01/2', '7/2'],
    ['3\u20091/2', '7/2'],
    ['3‑1/2', '7/2'],
    ['3–1/2', '7/2'],
    ['1/2', '1/2'],
    ['0 3/4', '3/4'],
    ['9/8', '9/8'],
    ['  3 1/2  ', '7/2'],
    ['3 1/2"', '7/2'],
    ['3 1/2″', '7/2'],
    ['3 1/2”', '7/2'],
    ["3 1/2''", '7/2'],
    ['3 1/2′′', '7/2'],
    ['3 1/2 in', '7/2'],
    ['3 1/2 in.', '7/2'],
    ['3 1/2 IN', '7/2'],
    ['1 inch', '1'],
    ['3 1/2 inches', '7/2'],
    ['-3 1/2', '-7/2'],
    ['−3 1/2', '-7/2'],
  ])('%s is %s in', (text, exact) => {
    expect(read(text)).toBe(exact);
  });
});

describe('a length typed in feet and inches', () => {
  test.each([
    ['7\' 4 3/8"', '707/8'],
    ['7\'4 3/8"', '707/8'],
    ['7\'-4 3/8"', '707/8'],
    ['7\' - 4 3/8"', '707/8'],
    ['7\' 4-3/8"', '707/8'],
    ['7\' 4⅜"', '707/8'],
    ['7′ 4⅜″', '707/8'],
    ['7’ 4 3/8”', '707/8'],
    ["7' 4 3/8''", '707/8'],
    ["7' 4 3/8", '707/8'],
    ['7ft 4-3/8 in', '707/8'],
    ['7 ft. 4 3/8 in.', '707/8'],
    ['7 feet 4 3/8 inches', '707/8'],
    ['1 foot 1 inch', '13'],
    ["7'", '84'],
    ['7.5 ft', '90'],
    ["7 1/2'", '90'],
    ['7\' 0 1/2"', '169/2'],
    ['7\'½"', '169/2'],
    ['0\' 3"', '3'],
    ['-7\' 4 3/8"', '-707/8'],
  ])('%s is %s in', (text, exact) => {
    expect(read(text)).toBe(exact);
  });
});

describe('a length of which another may be meant', () => {
  const texts = ['3 -1/2', "7 -1/2'", '8.5\' 6"', '8 1/2\' 6"', "8.5'6"];
  test.each(texts)('%s is refused: less than it, or the other part', (text) => {
    expect(read(text)).toBe('length.unreadable');
  });
});

describe('a metric length is exact in inches, at 25.4 mm to the inch', () => {
  // 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
  test.each([
    ['90 mm', '450/127'],
    ['90mm', '450/127'],
    ['2.29 m', '11450/127'],
    ['229 cm', '11450/127'],
    ['2290 MM', '11450/127'],
    ['25.4 mm', '1'],
    ['12 1/2 mm', '125/254'],
  ])('%s is %s in', (text, exact) => {
    expect(read(text)).toBe(exact);
  });

  test('a bare number is in the unit of the shop, a marked one is not', () => {
    expect(read('90', MILLIMETRES)).toBe('450/127');
    expect(read(90, MILLIMETRES)).toBe('450/127');
    expect(read('3 1/2"', MILLIMETRES)).toBe('7/2');
    expect(read('3 1/2 in', MILLIMETRES)).toBe('7/2');
    expect(read("7' 4", MILLIMETRES)).toBe('88');
    expect(read('9 cm', MILLIMETRES)).toBe('450/127');
  });
});

describe('the decimal sign is the one that the shop has set', () => {
  test.each([
    ['3,5', '7/2'],
    [',5', '1/2'],
    ['2,29 m', '11450/127'],
    ["7' 4,5", '177/2'],
    ['3 1/2', '7/2'],
    ['7 ft. 4 in.', '88'],
  ])('with a comma, %s is %s in', (text, exact) => {
    expect(read(text, COMMA)).toBe(exact);
  });

  test.each(['3.5', '.5', '2.29 m', '1,200.5'])('with a comma, %s is refused', (text) => {
    expect(read(text, COMMA)).toBe('number.other-sign');
  });

  test.each(['3,5', ',5', '2,29 m', '0,125', '1.200,5', '1.234.567'])(
    'with a point, %s is refused',
    (text) => {
      expect(read(text, POINT)).toBe('number.other-sign');
    },
  );
});

describe('thousands in groups', () => {
  test.each<readonly [text: string, reading: LengthReading, inches: string]>([
    ['1,234.5', POINT, '2469/2'],
    ['1,234,567.5 mm', POINT, read('1234567.5 mm')],
    ["1,234.5'", POINT, '14814'],
    ['1.234,5', COMMA, '2469/2'],
    ['1 234,5', COMMA, '2469/2'],
    ['1 234', COMMA, '1234'],
    ['1\u00a0234', POINT, '1234'],
    ['1 234.5', POINT, '2469/2'],
    ['1 234 1/2', COMMA, '2469/2'],
    ['1 234', MILLIMETRES, read('1234 mm')],
    ["1'234.5 mm", POINT, read('1234.5 mm')],
    ['1’234 mm', POINT, read('1234 mm')],
    ["1'234'567 mm", MILLIMETRES, read('1234567 mm')],
  ])('%s is read', (text, reading, inches) => {
    expect(read(text, reading)).toBe(inches);
  });

  test.each<readonly [text: string, reading: LengthReading, readings: readonly string[]]>([
    ['1,234', POINT, ['1234', '1.234']],
    ['1,234 mm', POINT, ['1234', '1.234']],
    ['1.234', COMMA, ['1234', '1,234']],
    ["1'234", POINT, ['1234', '1 ft 234 in']],
    ["1'234", MILLIMETRES, ['1234', '1 ft 234 in']],
    ["1'004", POINT, ['1004', '1 ft 4 in']],
  ])('%s is refused with both readings', (text, reading, [one, other]) => {
    const outcome = parseLength(text, 'length', reading);
    expect(!outcome.ok && outcome.faults[0]).toMatchObject({
      code: 'number.two-readings',
      details: { one, other },
    });
  });

  test.each(['2 125', '1,23,4', '1,2345', '12,34.5', '3 1000'])(
    'what is in no groups of three stays unread: %s',
    (text) => {
      expect(read(text, POINT)).toMatch(/^length\.unreadable$|^number\.other-sign$/u);
    },
  );
});

describe('a length in other writings', () => {
  test.each([
    ['5 feet 3 and 1/2 inches', '127/2'],
    ['5 ft 3 and 1/2 in', '127/2'],
    ['5 ft and 3 in', '63'],
    ['3 & 1/2', '7/2'],
    ['3∕4', '3/4'],
    ['3 3⁄4', '15/4'],
    ['３ １／２ ｉｎ', '7/2'],
    ['９０ ㎜', '450/127'],
    ['7＇ 4＂', '88'],
    ['3\u200b 1/2', '7/2'],
    ['(4.10)', '-41/10'],
    ['(3 1/2")', '-7/2'],
  ])('%s is %s in', (text, exact) => {
    expect(read(text)).toBe(exact);
  });

  test.each(['8 ft 14 in', "8' 12", '7\' 12 1/2"', '1 ft 234 in'])(
    '%s has a foot or more over its feet, and is refused',
    (text) => {
      expect(read(text)).toBe('length.inches-over-foot');
    },
  );

  test.each([
    ['4.10%', 'number.percent'],
    ['12 %', 'number.percent'],
    ['$4.10', 'number.other-unit'],
    ['4.10 €', 'number.other-unit'],
    ['4 kg', 'number.other-unit'],
    ['3 1/2 x', 'number.other-unit'],
    ['3x', 'number.other-unit'],
    ['3 furlongs', 'number.other-unit'],
    ['3 m m', 'number.other-unit'],
    ['38°', 'number.other-unit'],
  ])('%s is refused by what stands with it', (text, code) => {
    expect(read(text)).toBe(code);
  });

  test('a text of more than 60 characters is refused before anything is looked for in it', () => {
    const begin = performance.now();
    const texts = [`7'${' '.repeat(400_000)}x`, '1 '.repeat(200_000), "1'".repeat(200_000)];
    for (const text of texts) expect(read(text)).toBe('number.too-many-characters');
    expect(performance.now() - begin).toBeLessThan(100);
    expect(read(`${' '.repeat(400_000)}7' 4"`)).toBe('88');
  });

  test('of 60 characters of any kind takes no time worth speaking of', () => {
    const pieces = [' ', '1', "'", '"', '/', '-', '.', ',', 'ft', 'and ', '(', '¾', '%'];
    const texts = pieces.flatMap((one) =>
      pieces.map((other) => `7${(one + other).repeat(30)}`.slice(0, 59) + 'x'),
    );
    const begin = performance.now();
    for (const text of texts) parseLength(text, 'length');
    expect((performance.now() - begin) / texts.length).toBeLessThan(2);
  });
});

describe('a number from a cell', () => {
  test.each([
    [3.5, '7/2'],
    [0.1, '1/10'],
    [-3.5, '-7/2'],
    [88.015625, '5633/64'],
    [123456.015625, '7901185/64'],
    // A formula's noise past the 15 digits that a sheet shows.
    [0.1 + 0.2, '3/10'],
    [88.50000000000001, '177/2'],
    [1e-7, '1/10000000'],
  ])('%s is %s in', (given, exact) => {
    expect(read(given)).toBe(exact);
  });

  test('stays the decimal that was typed at any size (30,480.1 mm was once 30,480.099999999999)', () => {
    expect(read(30_480.1, MILLIMETRES)).toBe(new Fraction('30480.1').div('25.4').toFraction());
  });

  test('that is NaN or infinite is a fault that says so', () => {
    for (const given of [NaN, Infinity, -Infinity]) {
      const outcome = parseLength(given, 'length');
      expect(outcome.ok).toBe(false);
      expect(!outcome.ok && outcome.faults[0]!.given).toBe(String(given));
    }
    expect(() => exactDecimal(NaN)).toThrow(RangeError);
  });
});

describe('what is no length is refused by name', () => {
  // prettier-ignore
  test.each([
    '1/2/3', "12''''", '--4', '- -4', '1e999', '1e3', '1E3', 'NaN', 'Infinity', 'abc', '-', '"', "'", '/', '1/', '/2', '3 1/2 1/2', '1 2 3', '3½½', '1½/2', '3 9/8', '3 8/8',
    '7" 4\'', "7' 4'", '7" 4"', '12 "" ', '90 mm 3', '26 000 m', '3..5',
    '3.5.1', '3.5/4', '+4', '=1+2', '0x10', '3²', '3\u0000',
    // Once read as nothing, or as the inches alone.
    "3 9/8'", "3 9/8' 4\"", "7' 3 9/8\"",
  ])('%j cannot be read', (text) => {
    expect(read(text)).toBe('length.unreadable');
  });

  test.each(['3/0', '0/0', '3 1/0', "3/0'", '7\' 1/0"', '3/0 mm', '3/0\' 1/0"'])(
    '%s divides by zero',
    (text) => {
      expect(read(text)).toBe('length.zero-denominator');
    },
  );

  test.each([[''], ['   '], ['\u00a0'], [null], [undefined]])('%j is missing', (given) => {
    expect(read(given)).toBe('length.missing');
  });

  test('a cell that a spreadsheet has turned into a date is told apart', () => {
    expect(read(new Date(2026, 2, 4))).toBe('length.date');
  });

  test.each([[true], [{}], [[3]], [3n]])('a value of another kind (%p) cannot be read', (given) => {
    expect(read(given)).toBe('length.unreadable');
  });

  test('a length past the longest is a slip of the keyboard, and the longest itself is not', () => {
    expect(read(String(LONGEST_INCHES))).toBe('1000000');
    expect(read('25400 m')).toBe('1000000');
    for (const given of [
      '1000000 1/16',
      '-1000001',
      '83334 ft',
      '25401 m',
      '123456789012',
      1e7,
      1e308,
    ]) {
      expect([given, read(given)]).toEqual([given, 'length.too-long']);
    }
  });

  test('the message names the argument, the text and a way on', () => {
    const outcome = parseLength("12''''", 'stickLength');
    expect(!outcome.ok && outcome.faults[0]).toMatchObject({
      code: 'length.unreadable',
      argument: 'stickLength',
      given: "12''''",
      message: `Stick length: “12''''” is not a length that can be read. Write it like 3 1/2, 7' 4 3/8" or 90 mm.`,
    });
  });
});
