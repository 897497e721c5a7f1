import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { INCHES_AND_POINT, parseLength } from '../../src/core/units/length.ts';
import { giveUnits, otherUnit } from '../../src/planning/input/heading-units.ts';
import { unitOfHeading } from '../../src/planning/input/headings/unit-of-heading.ts';
import { guessColumns, mapColumns } from '../../src/planning/input/map-columns.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readRuns } from '../../src/planning/input/read-runs.ts';
import type { Findings } from '../../src/planning/input/row-reader.ts';

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
  const inFeet = new Map([[0, 'ft' as const]]);
  const read = (cell: RawCell): RawCell | undefined =>
    giveUnits(table(['Length'], [cell]), inFeet, INCHES_AND_POINT).rows[0]?.cells[0];

  // Eight feet taken for eight inches would be cut so.
  test.each([
    [8, 96],
    ['8', 96],
    ['8 1/2', 102],
    ['8.5', 102],
    ['8\' 2"', 98],
    ['90 mm', 90 / 25.4],
  ])('%j under Feet are %d inches', (cell, inches) => {
    const parsed = parseLength(read(cell), 'length');
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
        const [row] = giveUnits(given, new Map([[0, 'm']]), reading).rows;
        const parsed = parseLength(row?.cells[0], 'length', reading);
        expect(parsed.ok && Number(parsed.value.mul(127, 5))).toBeCloseTo(hundredths * 10, 6);
      }),
    );
  });
});

describe('A trim list of the person’s own', () => {
  test('is guessed at by its words, whatever unit stands after them', () => {
    expect(guessColumns(['Area', 'Moulding', 'Len (ft)', 'Wall, mm', 'Qty'], 'Runs')).toEqual({
      Room: 'Area',
      Profile: 'Moulding',
      Length: 'Len (ft)',
      Run: 'Wall, mm',
      Quantity: 'Qty',
    });
    expect(guessColumns(['Length', 'Length (ft)'], 'Runs')).toMatchObject({ Length: 'Length' });
  });

  const mapped = (length: RawCell): RawTable => {
    const given = table(['Room', 'Profile', 'Feet'], ['Hall', 'Base', length]);
    return mapColumns(given, 'Runs', guessColumns(given.headings.cells, 'Runs'));
  };
  const read = (given: RawTable): { findings: Findings; inches: number[] } => {
    const findings: Findings = { faults: [], cautions: [] };
    const runs = readRuns(given, INCHES_AND_POINT, findings);
    return { findings, inches: runs.map(({ length }) => Number(length)) };
  };

  test('keeps its units when it is read by the guess, which is said', () => {
    const { inches, findings } = read(mapped(7));
    expect(inches).toEqual([84]);
    expect(findings.cautions.map(({ code, where }) => [code, where])).toEqual([
      ['table.heading-unit', { sheet: 'House', cell: 'C1' }],
    ]);
  });

  test('is read by its headings alone where they name the unit beside a word that is known', () => {
    const { inches, findings } = read(table(['Room', 'Trim', 'Len (ft)'], ['Hall', 'Base', 7]));
    expect(inches).toEqual([84]);
    expect(findings.cautions.map(({ code }) => code)).toEqual(['table.heading-unit']);
    const own = read(table(['Room', 'Trim', 'Length in'], ['Hall', 'Base', 7]));
    expect(own).toEqual({ inches: [7], findings: { faults: [], cautions: [] } });
  });

  test('leaves the number of a date bare, so that it is asked about in any unit', () => {
    expect(read(mapped(45708)).findings.faults.map(({ code }) => code)).toEqual([
      'length.date-number',
    ]);
  });
});
