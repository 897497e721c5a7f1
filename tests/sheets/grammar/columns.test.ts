import { describe, expect, test } from '@jest/globals';
import {
  bare,
  columns,
  columnsOver,
  gridFor,
  left,
  noted,
  rangeAt,
  right,
  sized,
} from '../../../src/sheets/grammar/columns.ts';
import { cell } from '../../../src/sheets/grammar/sheet-draft.ts';

/** Letters worked by hand: the name takes B and C, so that pieces stand in D. */
const LIST = columns({
  number: right('No.'),
  name: left('Name', 2),
  pieces: right(({ unit }) => `Pieces (${unit})`),
  price: right(({ currency }) => `Price (${currency})`),
});
const FACTS = { unit: 'mm', currency: '€' } as const;

describe('The columns of a table', () => {
  test('have the letters of the columns of the sheet that they take', () => {
    expect(LIST.width).toBe(5);
    expect(LIST.at('number', 7)).toBe('A7');
    expect(LIST.at('name', 7)).toBe('B7');
    expect(LIST.at('pieces', 7)).toBe('D7');
    expect([LIST.start('name'), LIST.end('name'), LIST.start('price')]).toEqual([1, 2, 4]);
  });

  test('keep row or all of a cell where a formula asks for it', () => {
    expect(LIST.inRow('pieces', 12)).toBe('D$12');
    expect(LIST.fixed('pieces', 12)).toBe('$D$12');
    expect(LIST.range('price', 4, 9)).toBe('E4:E9');
    expect(LIST.rowsOf('price', 4, 9)).toBe('E$4:E$9');
    expect(LIST.fixedRange('price', 4, 9)).toBe('$E$4:$E$9');
    expect(LIST.fixedRange('price', 4, 4)).toBe('$E$4');
  });

  test('add up to 0 where there is no row', () => {
    expect(LIST.sum('price', 4, 9)).toBe('SUM(E4:E9)');
    expect(LIST.sum('price', 4, 3)).toBe('0');
  });

  test('follow a column that is put in before them, and so does every formula', () => {
    const more = columns({
      number: right('No.'),
      mark: left('Mark'),
      name: left('Name', 2),
      pieces: right('Pieces'),
      price: right('Price'),
    });
    expect(more.at('pieces', 7)).toBe('E7');
    expect(more.sum('price', 4, 9)).toBe('SUM(F4:F9)');
    expect(more.joins()).toEqual([[2, 3]]);
  });

  test('reach past Z as a spreadsheet does', () => {
    const wide = columns({ before: bare(26), after: bare() });
    expect(wide.at('after', 1)).toBe('AA1');
  });

  test('give a row by name: what is not given is blank, and the row ends with what is', () => {
    const pieces = cell(3, 'rowWhole');
    expect(LIST.sparseRow({ pieces })).toEqual({
      cells: [null, null, null, pieces],
      joins: [[1, 2]],
    });
    const all = LIST.row({ number: null, name: null, pieces, price: null });
    expect(all).toEqual(LIST.sparseRow({ pieces }));
    const none = cell(null, 'totalLabel');
    expect(LIST.loose({ pieces }, none)).toEqual({ cells: [none, none, none, pieces, none] });
  });

  test('say in their headings what the shop counts in', () => {
    const { cells } = LIST.headings(FACTS);
    expect(cells.map((one) => one?.value ?? null)).toEqual([
      'No.',
      'Name',
      null,
      'Pieces (mm)',
      'Price (€)',
    ]);
    expect(cells[0]).toEqual({ value: 'No.', style: 'headingRight' });
    expect(cells[1]).toEqual({ value: 'Name', style: 'heading' });
  });

  test('take headings that come with the data', () => {
    const rooms = columns({ room: bare(), length: noted('Length') });
    const { cells } = rooms.headings(undefined, { room: 'Hall' });
    expect(cells.map((one) => one?.value)).toEqual(['Hall', 'Length']);
  });

  test('refuse a heading that lacks its facts, and a name that no column has', () => {
    expect(() => LIST.headings()).toThrow(/heading of “pieces” lacks its facts/u);
    expect(() => LIST.at('depth' as 'price', 1)).toThrow(/No column is called “depth”/u);
  });
});

test('A column by its place gives a range, or a cell where it is one row', () => {
  expect(rangeAt(2, 4, 9)).toBe('C4:C9');
  expect(rangeAt(2, 4, 4)).toBe('C4');
});

test('A grid has a width for every column of its tables, the last given for those beyond', () => {
  const widths = (tables: Parameters<typeof gridFor>[1]): number[] =>
    gridFor([7, 22, 9], tables).map(({ width }) => width);
  expect(widths([columns({ one: bare() })])).toEqual([7, 22, 9]);
  expect(widths([LIST, columns({ one: bare(2) })])).toEqual([7, 22, 9, 9, 9]);
});

describe('The sum of some columns of a row', () => {
  const paid = columns({ wood: bare(), credit: bare(), hours: bare(), work: bare() });

  test('is that of a range where they stand side by side', () => {
    expect(paid.sumOfRow(['wood', 'credit'], 7)).toBe('SUM(A7:B7)');
  });

  test('leaves out what stands between them', () => {
    expect(paid.sumOfRow(['wood', 'credit', 'work'], 7)).toBe('SUM(A7,B7,D7)');
  });
});

test('A table over another moves with it, whatever column comes in there', () => {
  const over = (before: number): string[] => {
    const pieces = columns({ first: bare(before), piece: bare(), length: bare(), end: bare() });
    const sticks = columnsOver(pieces, { name: ['first', 'piece'], length: ['length'] });
    return [sticks.at('name', 3), sticks.at('length', 3), String(sticks.width)];
  };
  expect(over(1)).toEqual(['A3', 'C3', '4']);
  expect(over(2)).toEqual(['A3', 'D3', '5']);
});

test('A table with a sheet for itself says each width in its column’s line', () => {
  const alone = columns({ room: sized(15, left('Room')), note: sized(18, left('Note')) });
  expect(alone.grid()).toEqual([{ width: 15 }, { width: 18 }]);
  expect(() => LIST.grid()).toThrow('“number” has no width.');
});
