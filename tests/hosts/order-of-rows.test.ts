import { expect, test } from '@jest/globals';
import { orderOfRows, type SortedCell } from '../../src/hosts/grid/rows/order-of-rows.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';

function sorted(cells: readonly SortedCell[], isDescending = false): SortedCell[] {
  return orderOfRows(cells, isDescending, INCHES_AND_POINT).map((at) => cells[at] ?? null);
}

test('lengths go by what they measure, however they are written; blanks come last in either direction', () => {
  const lengths = ['10\' 11"', '9 1/4', null, 84, '2.29 m', '7\' 4 3/8"', ' '];
  expect(sorted(lengths)).toEqual(['9 1/4', 84, '7\' 4 3/8"', '2.29 m', '10\' 11"', null, ' ']);
  expect(sorted(lengths, true)).toEqual([
    '10\' 11"',
    '2.29 m',
    '7\' 4 3/8"',
    84,
    '9 1/4',
    null,
    ' ',
  ]);
  const metric = orderOfRows(['0,9 m', 450, '30 1/2"'], false, { unit: 'mm', decimalSign: ',' });
  expect(metric).toEqual([1, 2, 0]);
});

test('words go by the alphabet and the numbers in them by their size; equals stay as they stood', () => {
  expect(sorted(['R1-12', 'r1-2', 'R1-1'])).toEqual(['R1-1', 'r1-2', 'R1-12']);
  expect(orderOfRows(['base', 'Base', 'apron', 'base'], false, INCHES_AND_POINT)).toEqual([
    2, 0, 1, 3,
  ]);
  // One word among them: then no cell is a length.
  expect(sorted(['north', 12, '3 1/2', 2])).toEqual([2, 12, '3 1/2', 'north']);
});
