/** Totals below a list: never one of its rows, never passed over without a word. */
import { describe, expect, test } from '@jest/globals';

import { readTables } from './make-job.ts';

describe('A row that looks like a total', () => {
  test.each(['Total', 'TOTALS:', 'Grand total', 'Summe', 'Sum', 'Subtotal', 'Totaal'])(
    'is left out where it can be no row, and said: %s',
    (word) => {
      const runs = `Room,Profile,Length\nHall,Base,100\nLoft,Base,60\n${word},,160`;
      const { job, faults, cautions } = readTables({ runs });
      expect(faults).toEqual([]);
      expect(job?.runs.map(({ room }) => room)).toEqual(['Hall', 'Loft']);
      const own = cautions.filter(({ code }) => code === 'table.total-ignored');
      expect(own.map(({ given, where }) => [given, where])).toEqual([
        [word, { file: 'runs.csv', line: 4, column: 1 }],
      ]);
    },
  );

  test('is refused where it could be a row: it would be planned', () => {
    const { job, faults } = readTables({
      runs: 'Room,Profile,Length\nHall,Base,100\nTotal,Base,100',
    });
    expect(job).toBeUndefined();
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['table.total-row', { file: 'runs.csv', line: 3, column: 1 }],
    ]);
  });

  test.each([
    ['Hall total', 'n', 1],
    ['Subtotal Hall', 'n', 1],
    ['Sub-total: Hall', 'n', 1],
    ['Total for Hall', 'n', 1],
    ['Hall', 'Total', 2],
    ['Hall', 'Base subtotal:', 2],
  ])('is refused too where it says of what: %s, %s', (room, run, column) => {
    const runs = `Room,Run,Profile,Length\nHall,n,Base,100\n${room},${run},Base,100\nLoft,n,Base,60`;
    const { job, faults } = readTables({ runs });
    expect(job).toBeUndefined();
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['table.total-row', { file: 'runs.csv', line: 3, column }],
    ]);
  });

  test('is found by a word in any column, also among the rows', () => {
    const runs =
      'Room,Run,Profile,Length\nHall,n,Base,100\n,,Sub-total,100\nLoft,n,Base,60\n,Total,,160\n';
    const { job, cautions } = readTables({ runs });
    expect(job?.runs).toHaveLength(2);
    expect(cautions.filter(({ code }) => code === 'table.total-ignored')).toHaveLength(2);
  });

  test('is none for its note, nor for a name that holds the word', () => {
    const runs = 'Room,Profile,Length,Note\nTotal wine room,Base,100,total\nHall,Base,10,Sum';
    const { job, cautions, faults } = readTables({ runs });
    expect(faults).toEqual([]);
    expect(job?.runs).toHaveLength(2);
    expect(cautions.filter(({ code }) => code.startsWith('table.total'))).toEqual([]);
  });

  test.each([
    [
      'all of the rows above',
      'Hall,Base,100,\nLoft,Base,60,\nDen,Base,40 1/2,\nDen,Base,200 1/2,',
      [5],
    ],
    ['each times its quantity', 'Hall,Base,10,4\nLoft,Base,6,\nDen,Base,5,2\nDen,Base,56,', [5]],
    [
      'a part, then all',
      'A,Base,1,\nA,Base,2,\nA,Base,4,\nA,Base,7,\nB,Base,3,\nB,Base,5,\nB,Base,6,\nB,Base,14,\nB,Base,21,',
      [5, 9, 10],
    ],
    ['two rows alone', 'Hall,Base,24,\nHall,Base,24,\nHall,Base,48,', []],
    ['many pieces of that length', 'A,Base,1,\nA,Base,2,\nA,Base,4,\nA,Base,7,3', []],
  ])('is cautioned with all its cells where its length is the sum of %s', (_what, rows, lines) => {
    const { job, cautions, faults } = readTables({ runs: `Room,Profile,Length,Quantity\n${rows}` });
    expect(faults).toEqual([]);
    expect(job?.runs).toHaveLength(rows.split('\n').length);
    const own = cautions.filter(({ code }) => code === 'table.total-length');
    expect(own.map(({ where }) => where)).toEqual(
      lines.map((line) => ({ file: 'runs.csv', line, column: 3 })),
    );
  });

  test('alone makes no list', () => {
    const { faults } = readTables({ runs: 'Room,Profile,Length\nTotal,,160' });
    expect(faults.map(({ code }) => code)).toEqual(['table.empty']);
  });
});
