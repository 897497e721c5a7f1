/** What a cell shows of its number by its format. */
import { describe, expect, test } from '@jest/globals';

import { formatSections } from '../../src/hosts/tables/format-sections.ts';
import { isDateFormat } from '../../src/hosts/tables/date-format.ts';
import { shownCell } from '../../src/hosts/tables/shown-number.ts';
import type { RawCell } from '../../src/planning/input/raw-table.ts';
import type { StatedUnit } from '../../src/core/units/stated-unit.ts';

const shown = (value: number, text: string, unit?: StatedUnit): RawCell => ({
  kind: 'shown',
  value,
  text,
  ...(unit === undefined ? {} : { unit }),
});
const veiled = (held: number, text: string): RawCell => ({ kind: 'veiled', held, text });
const length = (unit: 'in' | 'ft' | 'mm' | 'cm' | 'm'): StatedUnit => ({ kind: 'length', unit });
const money = (currency: string): StatedUnit => ({ kind: 'money', currency });
const PERCENT: StatedUnit = { kind: 'percent' };

describe('A number format', () => {
  test.each<readonly [format: string, held: number, cell: RawCell]>([
    // Percents
    ['0%', 0.15, shown(15, '15%', PERCENT)],
    ['0.00%', 0.07, shown(7, '7%', PERCENT)],
    ['0 %', 0.125, shown(12.5, '12.5 %', PERCENT)],
    ['0.00"%"', 15, shown(15, '15%', PERCENT)],
    ['0.0%;[Red]-0.0%', -0.05, shown(-5, '-5%', PERCENT)],
    // Units of length
    ['0.00" mm"', 90, shown(90, '90 mm', length('mm'))],
    ['0.00\\ "ft"', 8, shown(8, '8 ft', length('ft'))],
    ["0'", 8, shown(8, "8'", length('ft'))],
    ['0.000\\"', 3.125, shown(3.125, '3.125"', length('in'))],
    ['#,##0.0" cm"', 1234.5, shown(1234.5, '1234.5 cm', length('cm'))],
    ['#\\ ##0" mm"', 2400, shown(2400, '2 400 mm', length('mm'))],
    ['General" mm"', 5, shown(5, '5 mm', length('mm'))],
    ['0" in."', 36, shown(36, '36 in.', length('in'))],
    ['0.0_ "m"', 2.4, shown(2.4, '2.4 m', length('m'))],
    ['0" (mm)"', 40, shown(40, '40 (mm)', length('mm'))],
    ['[<1]0.00" cm";0.00" m"', 0.5, shown(0.5, '0.5 cm', length('cm'))],
    ['[<1]0.00" cm";0.00" m"', 2, shown(2, '2 m', length('m'))],
    // Money
    ['"$"#,##0.00', 4.1, shown(4.1, '$4.1', money('$'))],
    ['$#,##0.00', 4.1, shown(4.1, '$4.1', money('$'))],
    ['[$€-407] #,##0.00', 4.1, shown(4.1, '€ 4.1', money('€'))],
    ['#,##0.00\\ [$kr-41D]', 4.1, shown(4.1, '4.1 kr', money('kr'))],
    ['[$ден.-42F] 0.00', 3, shown(3, 'ден. 3', money('ден.'))],
    ['#,##0.00" €"', 4.1, shown(4.1, '4.1 €', money('€'))],
    [
      '_("$"* #,##0.00_);_("$"* \\(#,##0.00\\);_("$"* "-"??_);_(@_)',
      -4.1,
      shown(-4.1, '$(4.1)', money('$')),
    ],
    // Whatever else
    ['0" kg"', 4, shown(4, '4 kg', { kind: 'other', text: 'kg' })],
    ['0.0°', 38, shown(38, '38°', { kind: 'degrees' })],
    ['"$"0.00"/ft"', 2, shown(2, '$2/ft', { kind: 'other', text: '$/ft' })],
    ['0" ft "00" in"', 806, shown(806, '8 ft 06 in', { kind: 'other', text: 'ft' })],
    ['00', 7, shown(7, '07')],
    ['"B-"000', 7, shown(7, 'B-007', { kind: 'other', text: 'B' })],
    // Numbers as they are
    ['General', 4.25, 4.25],
    ['@', 4, 4],
    ['', 4, 4],
    ['0.00', 96.46, 96.46],
    ['#,##0.00_);(#,##0.00)', -4.1, -4.1],
    ['# ?/?', 3.5, 3.5],
    ['# ??/16', 3.5, 3.5],
    ['0.00E+00', 12_345, 12_345],
    ['#\\ ##0', 12_345, 12_345],
    ["#'##0.00", 12_345, 12_345],
    ['[$-409]0.00', 3, 3],
    ['[Red]0.00;[Blue]-0.00', 3, 3],
    ['[>=100]0;0.00', 3, 3],
    // Another number than the cell's, or none
    ['#,##0,', 8000, veiled(8000, '8')],
    ['0.0,,"M"', 8e6, veiled(8e6, '8M')],
    [';;;', 3, veiled(3, '')],
    ['0;-0;;@', 0, veiled(0, '')],
    ['"yes";;"no"', 1, veiled(1, 'yes')],
    ['"yes";;"no"', 0, veiled(0, 'no')],
    ['[=1]"one";[=2]"two"', 3, veiled(3, '')],
    // Days and times
    ['d-mmm', 46_085, { kind: 'date', day: '2026-03-04' }],
    ['[$-F800]dddd\\,\\ mmmm\\ dd\\,\\ yyyy', 46_085, { kind: 'date', day: '2026-03-04' }],
    ['h:mm', 0.5, { kind: 'date' }],
    ['[h]:mm', 1.5, { kind: 'date', day: '1900-01-01' }],
  ])('%s over %d is read as shown', (format, held, cell) => {
    expect(shownCell(held, format)).toEqual(cell);
  });

  test('of any length is read in the same time a character, and the too long as one that hides its number', () => {
    const lots = [
      '"'.repeat(400_000),
      '['.repeat(400_000),
      `${'"'.repeat(30_000)}${'['.repeat(30_000)}`,
      '0,'.repeat(200_000),
    ];
    const begin = performance.now();
    for (const format of lots) {
      expect(shownCell(4, format)).toEqual(veiled(4, ''));
      expect(isDateFormat(format)).toBe(false);
      // As long as it may be, a thousand times.
      for (let time = 0; time < 1000; time++) formatSections(format.slice(0, 1000));
    }
    expect(performance.now() - begin).toBeLessThan(3000);
  });
});
