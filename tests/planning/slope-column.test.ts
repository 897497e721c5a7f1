/** The column Slope of Profiles: how it is typed, and what is refused at its cell. */
import { describe, expect, test } from '@jest/globals';
import { degrees } from '../../src/core/units/angle.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { jobOf, readTables, tablesOf, PLAIN, type Tables } from './make-job.ts';

const RUNS = 'Room,Profile,Length\nHall,Trim,90';
const STOCK = "For,Kind,Length,Price,Per\nTrim,stick,12',5,foot";
const tables = (slope: string, heading = 'Slope', shop?: string): Tables => ({
  runs: RUNS,
  stock: STOCK,
  profiles: `Profile,Make,Spring,${heading}\nTrim,buy,38,${slope}`,
  ...(shop === undefined ? {} : { shop }),
});
const slopeOf = (slope: string, heading?: string, shop?: string) =>
  jobOf(tables(slope, heading, shop)).profiles[0]!.slope;

/** As a host hands it over: a cell that is no text of a file. */
function readCell(cell: RawCell) {
  const all = tablesOf(tables('')).map((table): RawTable => {
    if (table.name !== 'Profiles') return table;
    const [row] = table.rows;
    return { ...table, rows: [{ ...row!, cells: [...row!.cells.slice(0, 3), cell] }] };
  });
  return readJob(all, 'job');
}

describe('a slope in Profiles', () => {
  test.each([
    ['18.4', 18.4],
    ['18.4°', 18.4],
    ['4/12', 18.4349488],
    ['4 in 12', 18.4349488],
    ['4:12', 18.4349488],
    ['59', 59],
  ])('typed %s is %d° from level', (typed, angle) => {
    expect(slopeOf(typed)).toBeCloseTo(angle, 6);
  });

  test.each(['Slope', 'slope', 'Ceiling slope', 'Ceiling pitch'])('is read under %s', (heading) => {
    expect(slopeOf('4/12', heading)).toBeCloseTo(18.4349488, 6);
  });

  test('in a shop of commas has commas, whatever the way', () => {
    const shop = 'Setting;Value\ndecimal sign;","'.replaceAll(';', ',');
    expect(slopeOf('"18,4"', 'Slope', shop)).toBe(degrees(18.4));
    expect(slopeOf('"4,5/12"', 'Slope', shop)).toBeCloseTo(20.5560452, 6);
  });

  test.each(['', '0', '0/12'])('“%s” is level, like a file without the column', (typed) => {
    expect(slopeOf(typed)).toBeUndefined();
    expect(jobOf({ ...PLAIN }).profiles.every(({ slope }) => slope === undefined)).toBe(true);
  });

  test.each([
    ['0.333', 'crown.slope-nearly-level'],
    ['1/3', 'crown.slope-unreadable'],
    ['18 1/2', 'crown.slope-unreadable'],
    ['60', 'crown.slope-too-steep'],
    ['21/12', 'crown.slope-too-steep'],
    ['-18.4', 'crown.slope-too-steep'],
    ['-4/12', 'crown.slope-too-steep'],
    ['33 %', 'number.percent'],
    ['steep', 'number.unreadable'],
    ['NaN', 'number.unreadable'],
  ])('typed %s is refused once, at its cell, as %s', (typed, code) => {
    const { faults } = readTables(tables(typed));
    expect(faults.map((one) => [one.code, one.argument])).toEqual([[code, 'slope']]);
    expect(faults[0]!.where).toMatchObject({ file: 'profiles.csv', line: 2, column: 4 });
  });

  // What a spreadsheet makes of 4/12: a number under a format of fractions, a bare number, a date, an error.
  test('that a spreadsheet has worked out is never read as a third of a degree', () => {
    const codes = (cell: RawCell) => readCell(cell).faults.map(({ code }) => code);
    const shown = (text: string): RawCell => ({ kind: 'shown', value: 4 / 12, text });
    expect(readCell(shown('4/12')).job?.profiles[0]!.slope).toBeCloseTo(18.4349488, 6);
    expect(codes(shown('1/3'))).toEqual(['crown.slope-unreadable']);
    expect(codes(shown('0.33'))).toEqual(['crown.slope-nearly-level']);
    expect(codes(4 / 12)).toEqual(['crown.slope-nearly-level']);
    expect(codes({ kind: 'date', day: '2026-04-12' })).toEqual(['table.date-cell']);
    expect(codes({ kind: 'error', text: '#N/A' })).toEqual(['table.error-cell']);
    expect(readCell(18.4).job?.profiles[0]!.slope).toBe(18.4);
  });
});
