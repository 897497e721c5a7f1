import { describe, expect, test } from '@jest/globals';
import { PIECE_HEADINGS, STICK_HEADINGS } from '../../src/cli/read-cut.ts';
import { SET_UP_HEADINGS } from '../../src/cli/answer-set-up.ts';
import { INCHES_AND_POINT, type LengthReading } from '../../src/core/units/length.ts';
import type { Heading } from '../../src/planning/input/headings/heading.ts';
import { findHeading } from '../../src/planning/input/headings/meant-headings.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { chooseNotUsed, guessColumns, mapColumns } from '../../src/planning/input/map-columns.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readRows } from '../../src/planning/input/read-rows.ts';
import { readRuns } from '../../src/planning/input/read-runs.ts';
import { headingKey, type Findings } from '../../src/planning/input/row-reader.ts';
import { planOf, readTables } from './make-job.ts';

const runs = (headings: RawCell[], ...rows: RawCell[][]): RawTable => ({
  name: 'Runs',
  source: { kind: 'sheet', name: 'House' },
  headings: { line: 1, cells: headings },
  rows: rows.map((cells, index) => ({ line: index + 2, cells })),
});

const read = (table: RawTable, reading: LengthReading = INCHES_AND_POINT) => {
  const findings: Findings = { faults: [], cautions: [] };
  const found = readRuns(table, reading, findings);
  return {
    runs: found.map(({ room, profile, length, quantity }) =>
      [room, profile, Number(length), quantity].join(' '),
    ),
    faults: findings.faults.map(({ code, where }) => [
      code,
      where && 'cell' in where && where.cell,
    ]),
    cautions: findings.cautions.map(({ code }) => code),
    messages: findings.faults.map(({ message }) => message),
  };
};

const ALL: readonly (readonly [string, readonly Heading[]])[] = [
  ...Object.entries(TABLE_HEADINGS),
  ['the pieces of cut', PIECE_HEADINGS],
  ['the sticks of cut', STICK_HEADINGS],
  ['the coves of setups', SET_UP_HEADINGS],
];

describe('Words that are read as our headings', () => {
  test.each(ALL)('mean one column of %s, and only one', (_name, headings) => {
    const words = headings.flatMap(({ heading, also = [] }) => [heading, ...also].map(headingKey));
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
    for (const one of headings) {
      for (const word of [one.heading, ...(one.also ?? [])]) {
        expect(findHeading(word, headings)).toBe(one);
        expect(findHeading(` ${word.toUpperCase()} `, headings)).toBe(one);
      }
    }
  });

  test.each(ALL)(
    'are guessed for no column of %s that another is headed with',
    (_name, headings) => {
      for (const { often = [], also = [] } of headings) {
        for (const word of often) expect(also.map(headingKey)).not.toContain(headingKey(word));
      }
    },
  );

  test.each(ALL.flatMap(([name, headings]) => headings.map((one) => [name, one] as const)))(
    'of %s say what stands under $heading, and its words where it holds a word',
    (_name, { meaning, holds, allowed }) => {
      expect(meaning).toMatch(/^[A-Z0-9].*\.$/u);
      expect(allowed !== undefined).toBe(holds === 'word');
    },
  );

  test.each(ALL)(
    'read every table headed with them as one headed with ours: %s',
    (_name, headings) => {
      const cells = headings.map(({ heading }) => heading.slice(0, 3));
      const table = (words: readonly string[]): RawTable => runs([...words], cells);
      const given = (words: readonly string[]) => {
        const findings: Findings = { faults: [], cautions: [] };
        const rows = readRows(table(words), headings, INCHES_AND_POINT, findings);
        return [rows.map((row) => headings.map((one) => row.raw(one.key))), findings];
      };
      const ours = given(headings.map(({ heading }) => heading));
      expect(given(headings.map(({ heading, also = [] }) => also[0] ?? heading))).toEqual(ours);
      expect(given(headings.map(({ heading, also = [] }) => also.at(-1) ?? heading))).toEqual(ours);
    },
  );

  test('change nothing of a plan: a list headed Trim, Len and Pcs is the list headed our way', async () => {
    const rows = 'Hall,north,Base,100,3\nHall,south,Base,50,1';
    const plan = async (headings: string) => {
      const planned = await planOf({ runs: `${headings}\n${rows}` });
      return [planned.pieces.map(({ id }) => id), planned.totals.priceCents];
    };
    expect(await plan('Area,Wall,Trim,Len,Pcs')).toEqual(
      await plan('Room,Run,Profile,Length,Quantity'),
    );
  });
});

describe('Two columns that say the same', () => {
  const HEAD = ['Room', 'Profile', 'Length'];
  const ROW = ['Hall', 'Base', 96];

  test('are at fault, and both are named', () => {
    const found = read(runs([...HEAD, 'Quantity', 'Qty'], [...ROW, 2, 3]));
    expect(found.faults).toEqual([['table.heading-two', 'E1']]);
    expect(found.messages[0]).toMatch(/“Quantity” and “Qty”/u);
  });

  test('are no fault where one is empty in every row: the filled one counts', () => {
    for (const headings of [
      ['Quantity', 'Qty'],
      ['Qty', 'Quantity'],
      ['Pcs', 'Quantity'],
    ]) {
      const found = read(runs([...HEAD, ...headings], [...ROW, null, 3], [...ROW, ' ', 4]));
      expect(found).toMatchObject({ faults: [], cautions: [] });
      expect(found.runs).toEqual(['Hall Base 96 3', 'Hall Base 96 4']);
    }
  });

  test('may be notes, of which either will do', () => {
    const found = read(runs([...HEAD, 'Note', 'Remarks'], [...ROW, 'a', 'b']));
    expect(found).toMatchObject({ faults: [], cautions: ['table.heading-unknown'] });
  });
});

describe('A heading that is nearly ours', () => {
  const found = (heading: string, cell: RawCell, more: RawCell[] = []) =>
    read(runs(['Room', 'Profile', 'Length', heading], ['Hall', 'Base', 96, cell, ...more]));

  test.each([
    ['Quantiy', 2, 'Quantity'],
    ['Qauntity', 2, 'Quantity'],
    ['Measure as', 'opening', 'Measured as'],
    ['Left', 'cope', 'Left end'],
    ['Piece', 'yes', 'One piece'],
    ['Corner', 135, 'Left corner or Right corner'],
    ['Number', 4, 'Quantity'],
    ['Peices', 4, 'Quantity'],
    ['Completed', 'yes', 'Done'],
  ])('%s is refused, with what it may be meant for', (heading, cell, may) => {
    const { faults, messages } = found(heading, cell);
    expect(faults).toEqual([['table.heading-near', 'D1']]);
    expect(messages[0]).toContain(`Did you mean ${may}?`);
  });

  test.each([
    ['Delivered on', 'Tuesday'],
    ['Paint', 'white'],
    ['Note color', 'white'],
    ['Room height', 'low'],
    ['Complete', 'see the drawing'],
    ['Supplier', 'the yard'],
    ['Quantiy (not used)', 2],
    ['not used: Qty', 2],
  ])('%s with %j is the person’s own: said, and ignored', (heading, cell) => {
    expect(found(heading, cell)).toMatchObject({
      faults: [],
      cautions: ['table.heading-unknown'],
      runs: ['Hall Base 96 1'],
    });
  });

  test('that is needed is asked for once', () => {
    const { faults } = read(runs(['Room', 'Profle', 'Length'], ['Hall', 'Base', 96]));
    expect(faults).toEqual([['table.heading-near', 'B1']]);
  });
});

describe('Numbers that stand unused', () => {
  const found = (heading: string, ...cells: RawCell[]) =>
    read(
      runs(
        ['Room', 'Profile', 'Length', 'Quantity', heading],
        ...cells.map((cell) => ['Hall', 'Base', 96, 1, cell]),
      ),
    );

  test.each([
    ['Total pieces', 12],
    ['Height', '9 1/2'],
    ['Width mm', '90'],
    ['Unit cost', '$4.10'],
    ['Saw kerf', 0.125],
    ['Miter angle', '22.5'],
    ['How many sets', '3'],
  ])('are refused where they may be meant: %s', (heading, cell) => {
    expect(found(heading, cell, cell).faults).toEqual([['table.column-unused', 'E1']]);
  });

  test.each([
    ['No.', [1, 2, 3]],
    ['Phone', ['5550101']],
    ['Drawing', [1, 1]],
    ['Size', ['large', 'small']],
  ])('are left alone where they are plainly other: %s', (heading, cells) => {
    expect(found(heading, ...cells).faults).toEqual([]);
  });

  test.each(['Anzahl', 'Menge', 'Stk', 'Antal', 'Times', '#', 'Max'])(
    'are refused as a count where no column says one, in any language: %s',
    (heading) => {
      const table = (cells: RawCell[], head: RawCell[] = []) =>
        runs(
          ['Room', 'Profile', 'Length', heading, ...head],
          ...cells.map((cell) => ['Hall', 'Base', 96, cell, ...head.map(() => 1)]),
        );
      for (const cells of [[2], ['2'], [1, 3, 1], ['1', '0', '12']]) {
        expect(read(table(cells)).faults).toEqual([['table.column-unused', 'D1']]);
        expect(read(table(cells, ['Quantity']))).toMatchObject({ faults: [] });
      }
    },
  );

  test.each([
    ['#', [1, 2, 3]],
    ['Level', [1, 1, 1]],
    ['Area m', ['a', 'b']],
    ['Waste %', [10, 12, 10]],
    ['Drawing', [1.5, 2, 2]],
    ['Sheet', [20400, 20400]],
  ])('are no count that is asked about: %s with %j', (heading, cells) => {
    const table = runs(
      ['Room', 'Profile', 'Length', heading],
      ...cells.map((cell) => ['Hall', 'Base', 96, cell]),
    );
    expect(read(table)).toMatchObject({ faults: [], cautions: ['table.heading-unknown'] });
  });

  test('are refused under no heading, and texts there are said', () => {
    const bare = (...cells: RawCell[]) =>
      read(
        runs(
          ['Room', 'Profile', 'Length', null, ''],
          ...cells.map((cell) => ['Hall', 'Base', 8, null, cell]),
        ),
      );
    expect(bare(4, 4).faults).toEqual([['table.heading-merged', 'E1']]);
    expect(bare('4 3/8', null).faults).toEqual([['table.heading-merged', 'E1']]);
    expect(bare('ask the painter', null)).toMatchObject({
      faults: [],
      cautions: ['table.heading-none'],
      runs: ['Hall Base 8 1', 'Hall Base 8 1'],
    });
    expect(bare(null, ' ')).toMatchObject({ faults: [], cautions: [] });
    // A decimal comma in a list that is parted by commas pushes what follows it over.
    const shifted = runs(['Room', 'Profile', 'Length'], ['Hall', 'Base', '100', '5']);
    expect(read(shifted).faults).toEqual([['table.heading-merged', 'D1']]);
  });

  test('are refused as the unit of lengths where that isn’t the shop’s', () => {
    expect(found('UOM', 'cm').faults).toEqual([['table.column-unused', 'E1']]);
    expect(found('UOM', 'in').faults).toEqual([]);
    const metric = { unit: 'mm', decimalSign: '.' } as const;
    const table = runs(['Room', 'Profile', 'Length', 'Unit'], ['Hall', 'Base', 96, 'in']);
    expect(read(table, metric).faults).toEqual([['table.column-unused', 'D1']]);
  });
});

describe('Columns that a person chose', () => {
  const theirs = ['Area', 'Item', 'Feet', 'Qty', 'Colour', 'Quantity'];
  const list = runs(theirs, ['Hall', 'Base', 8, 4, 'white', null]);
  const needed = { Room: 'Area', Profile: 'Item', Length: 'Feet' };

  test('leave no filled quantity unused: that is a fault at its heading', () => {
    const { faults, runs: none } = read(mapColumns(list, 'Runs', needed));
    expect(faults).toEqual([['table.column-unused', 'D1']]);
    expect(none).toEqual(['Hall Base 96 1']);
  });

  test('may say that it is not used, which is a caution', () => {
    const said = chooseNotUsed(needed, 'Qty', false);
    expect(read(mapColumns(list, 'Runs', said))).toMatchObject({
      faults: [],
      cautions: ['table.heading-unknown', 'table.heading-unit'],
    });
    expect(chooseNotUsed(said, 'Qty', true)).toEqual(needed);
  });

  test('are guessed as the filled ones, and the needed ones first', () => {
    const isFilled = (column: number): boolean => column !== 5;
    expect(guessColumns(theirs, 'Runs', isFilled)).toEqual({ ...needed, Quantity: 'Qty' });
    const { runs: found, faults } = read(
      mapColumns(list, 'Runs', guessColumns(theirs, 'Runs', isFilled)),
    );
    expect([found, faults]).toEqual([['Hall Base 96 4'], []]);
  });
});

describe('A setting that is nearly ours', () => {
  test.each([
    ['blade diametre', 'blade diameter'],
    ['blade dia.', 'blade diameter'],
    ['blade kerf', 'kerf'],
    ['margin', 'margin %'],
    ['overhead', 'overhead %'],
    ['hourly', 'hourly rate'],
    ['labor hourly rate', 'hourly rate'],
    ['decimal', 'decimal sign'],
    ['end trims', 'end trim'],
  ])('%s is refused: did you mean %s?', (name, meant) => {
    const { faults, job } = readTables({ shop: `Setting,Value\n${name},9` });
    expect(job).toBeUndefined();
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['job.setting-near', { file: 'shop.csv', line: 2, column: 1 }],
    ]);
    expect(faults[0]?.message).toContain(`Did you mean ${meant}?`);
  });

  test.each(['phone', 'arbor maker', 'margin (not used)', 'blade kerf (not used)'])(
    '%s is the person’s own: said, and ignored',
    (name) => {
      const { faults, cautions } = readTables({ shop: `Setting,Value\n${name},9` });
      expect(faults).toEqual([]);
      expect(cautions.map(({ code }) => code)).toContain('job.setting-unknown');
    },
  );

  test('is read whatever its case, spaces and hyphens', () => {
    const { job } = readTables({ shop: 'Settings,Values\nMARGIN%,9\nSet up Spare,24' });
    expect([job?.shop.margin, Number(job?.shop.setUpSpare)]).toEqual([9, 24]);
  });
});
