/** Faults are values; their wording names what was given, what is allowed and where. */
import { describe, expect, test } from '@jest/globals';
import {
  failed,
  fault,
  ok,
  placeFault,
  rewordFault,
  sayFault,
  sayWhere,
  type FaultCode,
} from '../../../src/core/faults/fault.ts';
import { sayQuantity, type Quantity } from '../../../src/core/faults/quantity.ts';
import { WORDING } from '../../../src/core/faults/wording.ts';

const negative = fault('length.negative', 'reveal', { inches: -0.1875 });

describe('a fault', () => {
  test('carries its code, argument, what was given and the limit, and a sentence', () => {
    const limit = { inches: 1_000_000 };
    expect(fault('length.too-long', 'length', '90000 ft', { limit })).toEqual({
      code: 'length.too-long',
      argument: 'length',
      given: '90000 ft',
      limit,
      message: 'Length: “90000 ft” is longer than 1000000 in. Check the unit.',
    });
  });

  test('is worded in inches first, and in millimetres for a shop that measures so', () => {
    expect(negative.message).toBe('Reveal is -3/16 in; it must be 0 or more.');
    const metric = rewordFault(negative, 'mm');
    expect(metric.message).toBe('Reveal is -4.8 mm; it must be 0 or more.');
    expect(rewordFault(metric, 'in')).toEqual(negative);
    expect(rewordFault(negative, 'mm', ',').message).toBe(metric.message.replace('4.8', '4,8'));
  });

  test('keeps its place when it is reworded, and says the place first', () => {
    const inSheet = placeFault(negative, { sheet: 'Openings', cell: 'G7' });
    const inFile = placeFault(negative, { file: 'openings.csv', line: 7, column: 3 });
    expect(sayFault(negative)).toBe(negative.message);
    expect(sayFault(inSheet)).toBe(`Openings!G7: ${negative.message}`);
    expect(sayFault(inFile)).toBe(`openings.csv, line 7, column 3: ${negative.message}`);
    expect(rewordFault(inFile, 'mm').where).toEqual(inFile.where);
    expect(sayWhere({ sheet: 'Runs', cell: 'B2' })).toBe('Runs!B2');
  });

  test('makes an outcome that is not ok, together with all the others', () => {
    const other = fault('text.missing', 'room', null);
    expect(failed(negative, other)).toEqual({ ok: false, faults: [negative, other] });
    expect(ok(3)).toEqual({ ok: true, value: 3 });
  });
});

describe('every wording', () => {
  const facts = {
    argument: '<argument>',
    given: '<given>',
    limit: '<limit>',
    detail: (name: string) => `<${name}>`,
    decimal: (digits: string) => digits,
  };
  test.each(Object.keys(WORDING) as FaultCode[])('of %s is whole sentences about it', (code) => {
    const message = WORDING[code](facts);
    expect(message).toMatch(/<(argument|given)>/u);
    expect(message).toMatch(/\.$/u);
    expect(message).not.toMatch(/undefined|null|NaN|\[object| {2}|\s$/u);
  });
});

describe('a quantity in words', () => {
  test.each([
    [null, 'nothing'],
    ['', 'nothing'],
    ['3/0', '“3/0”'],
    [12, '12'],
    [0.1 + 0.2, '0.3'],
    [true, 'yes'],
    [false, 'no'],
    [{ degrees: 59.836 }, '59.84°'],
    [{ inches: 0 }, '0 in'],
    [{ inches: 3 }, '3 in'],
    [{ inches: 0.5 }, '1/2 in'],
    [{ inches: 3.515625 }, '3 33/64 in'],
    [{ inches: -3.5 }, '-3 1/2 in'],
    [{ inches: 59.8665 }, '59.8665 in'],
  ])('%j is said as %s', (quantity, said) => {
    expect(sayQuantity(quantity, 'in')).toBe(said);
  });

  test('an inch is 25.4 mm in a metric shop', () => {
    expect(sayQuantity({ inches: 1 }, 'mm')).toBe('25.4 mm');
  });

  test('a long text is cut short', () => {
    expect(sayQuantity('x'.repeat(1000), 'in')).toHaveLength(62);
  });
});

describe('The wording of counts', () => {
  const said = (...given: Parameters<typeof fault>): string => fault(...given).message;

  test('parts whole numbers of five digits and more in threes, in the sign of who reads them', () => {
    const rows = fault('grid.too-many-rows', 'sheet.Runs', null, { limit: 30_000 });
    expect(rows.message).toMatch(/^Runs has more than 30,000 rows/u);
    expect(rewordFault(rows, 'mm', ',').message).toMatch(/^Runs has more than 30\.000 rows/u);
    expect(said('number.too-large', 'price', -1_234_567, { limit: 9_999 })).toBe(
      'Price is -1,234,567; at most 9999 is allowed.',
    );
    expect(said('number.too-large', 'price', 12_345.5, { limit: 10_000 })).toBe(
      'Price is 12345.5; at most 10,000 is allowed.',
    );
  });

  test('speaks of one cell as of one, and of a blank as of no number', () => {
    const cells = (code: 'grid.other-workbooks' | 'grid.table-columns', count: number): string =>
      said(code, 'workbook', 'a.xlsx', { details: { count, first: 'Runs!C3' } });
    expect(cells('grid.other-workbooks', 1)).toContain(
      'the value of a cell (Runs!C3) from another',
    );
    expect(cells('grid.other-workbooks', 2)).toContain('values of 2 cells from other workbooks');
    expect(cells('grid.table-columns', 1)).toContain('the formula in Runs!C3 names columns');
    expect(cells('grid.table-columns', 12)).toContain('formulas in 12 cells (Runs!C3 is one) name');
    for (const blank of [null, '']) {
      expect(said('number.unreadable', 'price', blank)).toBe(
        'Price is empty. Give a number, such as 3.5 or 12.',
      );
    }
  });
});

test('a number beyond all measure is said by a bound, never in powers of ten', () => {
  const said = (given: Quantity): string => fault('number.too-large', 'count', given).message;
  for (const given of [
    1e21,
    -1e300,
    1.8758823224332384e66,
    { inches: 1e30 + 0.5 },
    { inches: 2e20 },
  ]) {
    expect(said(given)).toMatch(/(?:over |below -)1,000,000,000,000,000/u);
    expect(rewordFault(fault('number.too-large', 'count', given), 'mm', ',').message).toMatch(
      /(?:over |below -)1\.000\.000\.000\.000\.000/u,
    );
  }
  expect(said(123_456_789_012)).toContain('123,456,789,012');
  const fine = fault('cutting.unit-too-fine', 'pieces', 1.8758823224332384e66, {
    limit: 1_000_000,
  });
  expect(fine.message).toContain('share no unit that is any use; 1/1,000,000 in is the finest');
});
