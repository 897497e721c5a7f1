import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { INCHES_AND_POINT, parseLength } from '../../src/core/units/length.ts';
import {
  guessHeadings,
  otherUnit,
  readHeadingUnits,
  unitOfHeading,
} from '../../src/planning/input/heading-units.ts';
import { mapColumns } from '../../src/planning/input/map-columns.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';

const table = (headings: RawCell[], ...rows: RawCell[][]): RawTable => ({
  name: 'Runs',
  source: { kind: 'sheet', name: 'House' },
  headings: { line: 1, cells: headings },
  rows: rows.map((cells, index) => ({ line: index + 2, cells })),
});

describe('A heading of the person’s own', () => {
  test.each([
    ['Feet', 'ft'],
    ['Length (ft)', 'ft'],
    ['Len, ft.', 'ft'],
    ['Wall length [mm]', 'mm'],
    ['Width in', 'in'],
    ['Width "', 'in'],
    ['Long m', 'm'],
    ['Length', undefined],
    ['Trim', undefined],
    ['In the hall', undefined],
    ['', undefined],
  ])('%j names the unit %s', (heading, unit) => {
    expect(unitOfHeading(heading)).toBe(unit);
  });

  test('has a unit of its own only over lengths, and only where it is not the shop’s', () => {
    expect(otherUnit('Length', 'Feet', 'in')).toBe('ft');
    expect(otherUnit('Length', 'Inches', 'in')).toBeUndefined();
    expect(otherUnit('Length', 'Inches', 'mm')).toBe('in');
    expect(otherUnit('Per', 'Feet', 'in')).toBeUndefined();
  });
});

describe('Bare numbers under a heading with a unit', () => {
  const columns = { Length: 'Feet' };
  const read = (cell: RawCell): RawCell | undefined =>
    readHeadingUnits(table(['Length'], [cell]), columns, INCHES_AND_POINT).table.rows[0]?.cells[0];

  // Eight feet taken for eight inches would be cut so.
  test.each([
    [8, 96],
    ['8', 96],
    ['8 1/2', 102],
    ['8.5', 102],
    ['8\' 2"', 98],
    ['90 mm', 90 / 25.4],
  ])('%j under Feet are %d inches', (cell, inches) => {
    const parsed = parseLength(read(cell), 'Length');
    expect(parsed.ok && Number(parsed.value)).toBeCloseTo(inches, 9);
  });

  test('leave everything that is no bare number as it is', () => {
    const others: RawCell[] = ['', 'about six', null, true, { kind: 'date' }, '3 -'];
    for (const cell of others) expect(read(cell)).toEqual(cell);
  });

  test('are as many times longer as the unit is, with either decimal sign', () => {
    const any = fc.tuple(
      fc.integer({ min: 1, max: 10_000 }),
      fc.constantFrom('.' as const, ',' as const),
    );
    fc.assert(
      fc.property(any, ([hundredths, decimalSign]) => {
        const reading = { unit: 'mm' as const, decimalSign };
        const given = table(['Length'], [hundredths / 100]);
        const [row] = readHeadingUnits(given, { Length: 'Metres' }, reading).table.rows;
        const parsed = parseLength(row?.cells[0], 'Length', reading);
        expect(parsed.ok && Number(parsed.value.mul(127, 5))).toBeCloseTo(hundredths * 10, 6);
      }),
    );
  });
});

describe('A trim list of the person’s own', () => {
  test('is guessed at by its words, whatever unit stands after them', () => {
    expect(guessHeadings(['Area', 'Moulding', 'Len (ft)', 'Wall, mm', 'Qty'], 'Runs')).toEqual({
      Room: 'Area',
      Profile: 'Moulding',
      Length: 'Len (ft)',
      Run: 'Wall, mm',
      Quantity: 'Qty',
    });
    expect(guessHeadings(['Length', 'Length (ft)'], 'Runs')).toMatchObject({ Length: 'Length' });
  });

  test('keeps its units when it is read by the guess', () => {
    const given = table(['Room', 'Profile', 'Feet'], ['Hall', 'Base', 7]);
    const columns = guessHeadings(given.headings.cells, 'Runs');
    const mapped = mapColumns(given, 'Runs', columns);
    const { table: read } = readHeadingUnits(mapped, columns, INCHES_AND_POINT);
    expect(read.rows[0]?.cells).toEqual(['Hall', 'Base', '7 ft']);
  });

  test('leaves the number of a date bare, so that it is asked about in any unit', () => {
    const given = table(['Room', 'Profile', 'Feet'], ['Hall', 'Base', 45708]);
    const columns = guessHeadings(given.headings.cells, 'Runs');
    const mapped = mapColumns(given, 'Runs', columns);
    const { table: read } = readHeadingUnits(mapped, columns, INCHES_AND_POINT);
    expect(read.rows[0]?.cells).toEqual(['Hall', 'Base', 45708]);
  });
});
