import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Outcome } from '../../src/core/faults/fault.ts';
import { ok } from '../../src/core/faults/fault.ts';
import { findTables, type FoundTables } from '../../src/planning/input/find-tables.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import type { Place } from '../../src/planning/input/recognize-tables.ts';
import { headingKey } from '../../src/planning/input/row-reader.ts';
import {
  choiceNote,
  readChoices,
  writeChoices,
  type Choices,
  type Notes,
} from '../../src/planning/input/table-choices.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';

describe('What the person said of their tables', () => {
  test('reads back as it was kept, whatever sheets and columns are called', () => {
    const word = fc.string({ minLength: 1 });
    const columnsOf = (name: 'Runs' | 'Stock') =>
      fc
        .uniqueArray(
          fc.tuple(fc.constantFrom(...TABLE_HEADINGS[name].map(({ heading }) => heading)), word),
          { selector: ([ours]) => ours },
        )
        .map((pairs) => pairs.filter(([, theirs]) => headingKey(theirs) !== ''))
        .filter((pairs) => new Set(pairs.map(([, one]) => headingKey(one))).size === pairs.length)
        .map((pairs) => Object.fromEntries(pairs));
    const choice = (name: 'Runs' | 'Stock') =>
      fc.record(
        { sheet: word, table: word, columns: columnsOf(name) },
        { requiredKeys: ['sheet'] },
      );
    const all = fc.record({ Runs: choice('Runs'), Stock: choice('Stock') }, { requiredKeys: [] });
    fc.assert(
      fc.property(all, (choices: Choices) => {
        expect(readChoices(writeChoices(choices))).toEqual({ choices, cautions: [] });
      }),
    );
  });

  test('stands in a note a table, which a person can read', () => {
    const notes = writeChoices({ Runs: { sheet: 'House', columns: { Profile: 'Item' } } });
    expect(notes[choiceNote('Runs')]).toBe('{"sheet":"House","columns":{"Profile":"Item"}}');
    expect(notes[choiceNote('Stock')]).toBeUndefined();
  });

  test('is read as an earlier version kept it, until it is kept anew', () => {
    const columns = '{"version":1,"tables":{"Runs":{"sheet":"House"},"Stock":{"sheet":"Rack"}}}';
    const choices = { Runs: { sheet: 'House' }, Stock: { sheet: 'Rack' } };
    expect(readChoices({ columns })).toEqual({ choices, cautions: [] });
    expect(readChoices({ columns, ...writeChoices({}) })).toEqual({ choices: {}, cautions: [] });
    expect(readChoices({ columns: '{"version":2,"tables":{}}' }).choices).toEqual({});
  });

  test('is ignored, and that is said by name, where the note is broken or forged', () => {
    const broken = [
      '',
      '{',
      'null',
      '[]',
      '7',
      '{"sheet":7}',
      '{"sheet":""}',
      '{"sheet":"House","table":7}',
      '{"sheet":"House","columns":[]}',
      '{"sheet":"House","columns":{"Length":7}}',
      '{"sheet":"House","columns":{"Length":""}}',
      '{"sheet":"House","columns":{"Lngth":"Feet"}}',
      '{"sheet":"House","columns":{"__proto__":"Feet"}}',
      // One column of theirs for two of ours.
      '{"sheet":"House","columns":{"Length":"Feet","Quantity":" feet"}}',
    ];
    for (const text of broken) {
      const { choices, cautions } = readChoices({ [choiceNote('Runs')]: text });
      expect([text, choices]).toEqual([text, {}]);
      expect(cautions.map(({ code }) => code)).toEqual(['table.choice-unread']);
      expect(cautions[0]?.message).toContain('“Coveledger columns of Runs”');
    }
    fc.assert(
      fc.property(fc.json(), (text) => {
        const { choices, cautions } = readChoices({ [choiceNote('Stock')]: text });
        expect(Object.keys(choices).length + cautions.length).toBe(1);
      }),
    );
  });
});

describe('A table of the person’s own', () => {
  interface Sheet extends Place {
    readonly rows: readonly (readonly RawCell[])[];
  }
  const HEADINGS = ['Room', 'Item', 'Feet', 'Qty'];
  const house = (headings: readonly RawCell[] = HEADINGS, sheet = 'House'): Sheet => ({
    sheet,
    headings,
    rows: [['Hall', 'Base', 8, 2]],
  });
  const runs: Sheet = {
    sheet: 'Runs',
    headings: ['Room', 'Profile', 'Length'],
    rows: [['Hall', 'Base', 1]],
  };
  const COLUMNS = { Room: 'Room', Profile: 'Item', Length: 'Feet', Quantity: 'Qty' };
  const chosen = writeChoices({ Runs: { sheet: 'House', columns: COLUMNS } });
  const find = (places: readonly Sheet[], notes: Notes = chosen): Promise<FoundTables<Sheet>> =>
    findTables({
      places,
      notes,
      read: ({ sheet, headings, rows }, name): Promise<Outcome<RawTable>> =>
        Promise.resolve(
          ok({
            name,
            source: { kind: 'sheet', name: sheet },
            headings: { line: 3, cells: headings },
            rows: rows.map((cells, index) => ({ line: index + 4, cells })),
          }),
        ),
    });
  const faultsOf = async (...places: readonly Sheet[]): Promise<unknown[]> => {
    const { tables, faults } = await find(places);
    expect(tables).toEqual([]);
    return faults.map(({ code, argument, given, where }) => ({ code, argument, given, where }));
  };

  test('is read with our headings, its numbers in the unit that its own heading names', async () => {
    const { tables, faults, cautions } = await find([house(), runs]);
    expect(faults).toEqual([]);
    expect(tables.map(({ name, source }) => [name, source.name])).toEqual([['Runs', 'House']]);
    expect(tables[0]?.headings.cells).toEqual(['Room', 'Profile', 'Length (ft)', 'Quantity']);
    expect(tables[0]?.rows).toEqual([{ line: 4, cells: ['Hall', 'Base', 8, 2] }]);
    expect(cautions).toEqual([]);
  });

  test('whose sheet is gone is at fault by name, also where a sheet Runs could stand in', async () => {
    const gone = { code: 'table.choice-gone', argument: 'sheet.Runs', given: 'House' };
    expect(await faultsOf(house(HEADINGS, 'House 2'))).toEqual([gone]);
    expect(await faultsOf(runs)).toEqual([gone]);
    const { faults } = await find([]);
    expect(faults[0]?.message).toContain('“House”');
  });

  test('whose column is gone is at fault by name, needed or not', async () => {
    const at = { sheet: 'House', cell: 'A3' };
    expect(await faultsOf(house(['Room', 'Item', 'Feet', 'How many']))).toEqual([
      { code: 'table.column-gone', argument: 'quantity', given: 'Qty', where: at },
    ]);
    expect(await faultsOf(house(['Room', 'Items', 'Feet', 'Qty']))).toEqual([
      { code: 'table.column-gone', argument: 'profile', given: 'Item', where: at },
    ]);
    const { faults } = await find([house(['Room', 'Items', 'Feet', 'Qty'])]);
    expect(faults[0]?.message).toMatch(/Runs has no column headed “Item” any more/u);
  });

  test('whose column has been given our heading since is read by it', async () => {
    const { tables, faults } = await find([house(['Room', 'Profile', 'FEET', 'Quantity'])]);
    expect(faults).toEqual([]);
    expect(tables[0]?.headings.cells).toEqual(['Room', 'Profile', 'Length (ft)', 'Quantity']);
  });

  test('whose column that is not used is gone is read all the same', async () => {
    const columns = { ...COLUMNS, 'Total (not used)': 'Total' };
    const { tables, faults } = await find(
      [house()],
      writeChoices({ Runs: { sheet: 'House', columns } }),
    );
    expect([tables.length, faults]).toEqual([1, []]);
  });

  test('with a chosen heading over two columns is not guessed at', async () => {
    expect(await faultsOf(house(['Room', 'Item', 'Feet', 'Qty', 'Feet']))).toMatchObject([
      { code: 'table.heading-twice', where: { sheet: 'House', cell: 'E3' } },
    ]);
  });
});
