/** Cells that can be read and are hardly meant: feet or metres without a unit, and marks for what stands above. */
import { describe, expect, test } from '@jest/globals';
import { readTables, type Tables } from './make-job.ts';

const METRIC = 'Setting,Value\nhourly rate,60\nunit,mm';
const found = (tables: Tables) => {
  const { faults, cautions } = readTables(tables);
  return {
    faults: faults.map(({ code, where }) => [code, where]),
    said: faults.map(({ message }) => message),
    short: cautions.filter(({ code }) => code === 'length.all-short').map(({ where }) => where),
  };
};
const at = (file: string, line: number, column: number) => ({ file, line, column });
const stock = (length: string) => `For,Kind,Length,Price,Per\nBase,stick,${length},9,piece`;

describe('A bare length that would be usual in feet or metres', () => {
  test.each(['8', '12', '16', '23 1/2', '20.0'])('is asked about as a stick of %s in', (length) => {
    expect(found({ stock: stock(length) }).faults).toEqual([
      ['length.asked-short', at('stock.csv', 2, 3)],
    ]);
  });

  test('is said with what may be meant', () => {
    expect(found({ stock: stock('16') }).said).toEqual([
      "Length is 16 in, which is hardly meant: bare numbers are read in the shop's unit. Where 16 ft is meant, write that; else write the unit with the number.",
    ]);
  });

  test.each(['16 in', '16""', "16'", '25', '96'])(
    'is taken where it says its unit, or is long: %s',
    (length) => {
      const text = length.includes('"') ? `"${length}"` : length;
      expect(found({ stock: stock(text) }).faults).toEqual([]);
    },
  );

  test('is asked about in a shop of millimetres, of sticks, runs and walls', () => {
    const runs = 'Room,Profile,Length\nHall,Base,2.4';
    const walls = 'Room,Wall,Length\nHall,N,3.6\nHall,E,2500\nHall,S,3600\nHall,W,2500';
    const trim = 'Room,Profile,Where,Walls\nHall,Base,floor,all';
    expect(found({ runs, stock: stock('2.5'), shop: METRIC }).faults).toEqual(
      [
        ['length.asked-short', at('stock.csv', 2, 3)],
        ['length.asked-short', at('runs.csv', 2, 3)],
      ].sort((one, other) => JSON.stringify(one).localeCompare(JSON.stringify(other))),
    );
    expect(
      found({ runs: 'Room,Profile,Length', walls, trim, shop: METRIC, stock: stock('2500') })
        .faults,
    ).toContainEqual(['length.asked-short', at('walls.csv', 2, 3)]);
    expect(
      found({ runs: 'Room,Profile,Length\nHall,Base,25', stock: stock('2500'), shop: METRIC })
        .faults,
    ).toEqual([]);
  });

  test('is cautioned in inches where no run of the list is longer, and only there', () => {
    const runs = (...lengths: readonly string[]) =>
      found({
        runs: `Room,Profile,Length\n${lengths.map((one) => `Hall,Base,${one}`).join('\n')}`,
      });
    expect(runs('8', '12', '10', '14')).toMatchObject({
      faults: [],
      short: [at('runs.csv', 2, 3)],
    });
    for (const lengths of [
      ['8', '12'],
      ['8', '12', '96'],
      ['8', '12', '10 in'],
      ['3 ft', '4 ft', '5 ft'],
    ]) {
      expect(runs(...lengths)).toMatchObject({ faults: [], short: [] });
    }
  });

  test.each([
    ['2/8,6/8', [4, 5]],
    ['3,7', [4, 5]],
    ['32,6.67', [5]],
    ['32,80', []],
  ])('is asked about as a door of %s', (size, columns) => {
    const openings = `Room,Wall,Kind,Width,Height,Casing,Position\nHall,,door,${size},,`;
    const { faults } = found({ openings });
    const short = faults.filter(([code]) => code === 'length.asked-short');
    expect(short.map(([, where]) => where)).toEqual(
      columns.map((one) => at('openings.csv', 2, one)),
    );
  });

  test('is told from a door’s size as carpenters write it', () => {
    const openings = 'Room,Wall,Kind,Width,Height,Casing,Position\nHall,,door,2/8,80,,';
    expect(found({ openings }).said).toEqual([
      expect.stringMatching(/Where “?2' 8""?”? is meant/u),
    ]);
  });
});

describe('Rows that were pasted twice', () => {
  const again = (...rows: readonly string[]) => {
    const runs = `Room,Run,Profile,Length\n${rows.join('\n')}`;
    const { faults, cautions } = readTables({ runs });
    expect(faults).toEqual([]);
    return cautions
      .filter(({ code }) => code === 'table.rows-again')
      .map(({ message, where }) => [message, where]);
  };
  const [n, e, s, w] = ['Hall,n,Base,96', 'Hall,e,Base,80', 'Hall,s,Base,96', 'Hall,w,Base,80'];

  test('are cautioned at the first of them, once', () => {
    expect(again(n, e, s, w, n, e, s, w)).toEqual([
      [
        '4 rows of Runs are the same as those from runs.csv, line 2, column 4 on, and count once more. Delete them where they were pasted twice.',
        at('runs.csv', 6, 4),
      ],
    ]);
    expect(again(n, e, n, w, n, e, n, w)).toHaveLength(1);
    expect(again(n, e, s, w, 'Den,n,Base,70', e, s, w)).toHaveLength(1);
  });

  test('are told from walls that are alike', () => {
    expect(again(n, e, n, e, n, e)).toEqual([]);
    expect(again(n, n, n, n, n, n)).toEqual([]);
    expect(again(n, e, s, s, e, n)).toEqual([]);
  });
});

describe('A mark for what stands above', () => {
  test.each(['"', '″', '”', '-"-', 'ditto', 'Ditto.', 'do.', 'dto.', "''"])(
    'is refused where a name is wanted, once: %s',
    (mark) => {
      const cell = `"${mark.replaceAll('"', '""')}"`;
      const runs = `Room,Run,Profile,Length\nHall,n,Base,100\n${cell},n,Base,80`;
      expect(found({ runs }).faults).toEqual([['text.ditto', at('runs.csv', 3, 1)]]);
    },
  );

  test('is a note like any other, and no part of a name', () => {
    const runs = 'Room,Profile,Length,Note\nHall,Base,100,"""do"""\nDo,Base,80,ditto';
    expect(found({ runs }).faults).toEqual([]);
  });
});
