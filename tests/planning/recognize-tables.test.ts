import { describe, expect, test } from '@jest/globals';

import { fingerprint } from '../../src/planning/input/fingerprint.ts';
import { guessColumns, mapColumns } from '../../src/planning/input/map-columns.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readRuns } from '../../src/planning/input/read-runs.ts';
import { recognizeTables, type Place } from '../../src/planning/input/recognize-tables.ts';
import type { Findings } from '../../src/planning/input/row-reader.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';

const place = (sheet: string, headings: readonly RawCell[], table?: string): Place => ({
  sheet,
  headings,
  ...(table === undefined ? {} : { table }),
});

const found = (places: readonly Place[]): Record<string, unknown> =>
  Object.fromEntries(
    recognizeTables(places).map(({ name, chosen, alike }) => [
      name,
      chosen === undefined ? alike.map((one) => one.table ?? one.sheet) : chosen.sheet,
    ]),
  );

const runs = (headings: readonly RawCell[], ...rows: RawCell[][]): RawTable => ({
  name: 'Runs',
  source: { kind: 'sheet', name: 'Trim' },
  headings: { line: 3, cells: headings },
  rows: rows.map((cells, index) => ({ line: 4 + index, cells })),
});

const read = (table: RawTable): { findings: Findings; count: number } => {
  const findings: Findings = { faults: [], cautions: [] };
  return { count: readRuns(table, INCHES_AND_POINT, findings).length, findings };
};

describe('Recognizing the tables of a job', () => {
  test('takes the sheet or the table proper that is named for it, whatever the case', () => {
    expect(
      found([
        place('runs', ['Room', 'Profile', 'Length']),
        place('Lists', ['Setting', 'Value'], 'SHOP'),
        place('Other', ['a', 'b']),
      ]),
    ).toEqual({
      ...{ Runs: 'runs', Walls: [], Trim: [], Openings: [] },
      ...{ Profiles: [], Shop: 'Lists', Stock: [], Work: [], Options: [], Job: [], Hours: [] },
    });
  });

  test('takes the table on the sheet of the same name before one elsewhere', () => {
    const headings = ['Room', 'Profile', 'Length'];
    const places = [place('Runs', headings, 'Runs'), place('Old', headings, 'runs')];
    expect(found(places)['Runs']).toBe('Runs');
  });

  test('asks where two tables are alike', () => {
    const headings = ['Room', 'Profile', 'Length'];
    expect(
      found([place('East', headings, 'Trim1'), place('West', headings, 'Trim2')])['Runs'],
    ).toEqual(['Trim1', 'Trim2']);
    expect(found([place('Runs', headings, 'A'), place('Runs', headings, 'B')])['Runs']).toEqual([
      'A',
      'B',
    ]);
  });

  test('finds by their headings what bears no name of ours, and mixes no two up', () => {
    const blank = Object.entries(TABLE_HEADINGS).map(([name, headings]) =>
      place(
        `Page of ${name.length}${name}`,
        headings.map(({ heading }) => heading.toUpperCase()),
      ),
    );
    const pages = Object.keys(TABLE_HEADINGS).map((n) => [n, `Page of ${n.length}${n}`]);
    // Lists like these are many: they go by the name of their sheet alone.
    const byName = { Walls: [], Trim: [], Work: [], Options: [], Job: [], Hours: [] };
    // One of them looks like Profiles, and one like Shop.
    const withoutJob = blank.filter(({ sheet }) => !/Job|Options/u.test(sheet));
    expect(found(withoutJob)).toEqual({ ...Object.fromEntries(pages), ...byName });
  });

  test('asks which of two lists of settings is Shop, where neither is named', () => {
    const settings = [
      place('One', ['Setting', 'Value', 'Unit']),
      place('Two', ['Setting', 'Value']),
    ];
    expect(found(settings)).toMatchObject({ Shop: ['One', 'Two'], Job: [] });
    const named = [settings[0]!, place('Job', ['Setting', 'Value'])];
    expect(found(named)).toMatchObject({ Shop: 'One', Job: 'Job' });
  });

  test('leaves a list named Walls or Trim to the table that it fits, where nothing else is that one', () => {
    const runList = ['Room', 'Wall', 'Profile', 'Length'];
    const walls = ['Room', 'Wall', 'Length', 'Turn'];
    const trim = ['Room', 'Profile', 'Where', 'Height', 'Note'];
    const molding = ['Profile', 'Where', 'Height', 'Note'];
    expect(found([place('Walls', runList)])).toMatchObject({ Runs: 'Walls', Walls: [] });
    expect(found([place('Trim', runList)])).toMatchObject({ Runs: 'Trim', Trim: [] });
    expect(found([place('Trim', molding)])).toMatchObject({ Profiles: 'Trim', Trim: [] });
    const ours = [place('walls', walls), place('TRIM', trim), place('Profiles', molding)];
    expect(found(ours)).toMatchObject({ Walls: 'walls', Trim: 'TRIM', Runs: [] });
    expect(found([place('Walls', runList), place('Runs', runList)])).toMatchObject({
      Runs: 'Runs',
      Walls: 'Walls',
    });
    expect(found([place('Sizes', walls), place('House', trim)])).toMatchObject({
      Walls: [],
      Trim: [],
    });
  });

  test('takes no list of something else for one of ours', () => {
    const none = {
      Runs: [],
      Walls: [],
      Trim: [],
      Openings: [],
      Profiles: [],
      Shop: [],
      Stock: [],
      Work: [],
      Options: [],
      Job: [],
      Hours: [],
    };
    expect(
      found([place('Sums', ['Date', 'Sum', 'Note']), place('X', ['Profile', 'Note'])]),
    ).toEqual(none);
  });
});

describe('Mapping the columns of a list that a person has', () => {
  const theirs = ['Area', 'Mark', 'Moulding', 'Len', 'Qty', 'Paint', 'Left'];

  test('guesses by the words such lists are often headed with', () => {
    expect(guessColumns(theirs, 'Runs')).toEqual({
      Room: 'Area',
      Run: 'Mark',
      Profile: 'Moulding',
      Length: 'Len',
      Quantity: 'Qty',
      'Left end': 'Left',
    });
  });

  test('takes none of theirs twice, and our own word before any other', () => {
    const map = guessColumns(['Trim', 'Profile', 'Width', 'Wide'], 'Openings');
    expect(map).toEqual({ Width: 'Width', Casing: 'Trim' });
  });

  test('reads the rows as ours, with the places of theirs', () => {
    const table = runs(theirs, ['Hall', '1', 'Base', '96', 'many', 'white', 'cope']);
    const mapped = mapColumns(table, 'Runs', guessColumns(theirs, 'Runs'));
    const { findings } = read(mapped);
    expect(findings.faults.map(({ code, where }) => [code, where])).toEqual([
      ['number.unreadable', { sheet: 'Trim', cell: 'E4' }],
    ]);
    expect(findings.cautions.map(({ given }) => given)).toEqual(['Paint']);
  });

  test('leaves out a column that is headed with our word but stands for nothing of ours', () => {
    const table = runs(['Room', 'Profile', 'Length', 'Done'], ['Hall', 'Base', '96', 'who knows']);
    expect(read(table).findings.faults).toHaveLength(1);
    const map = { Room: 'Room', Profile: 'Profile', Length: 'Length' };
    const { count, findings } = read(mapColumns(table, 'Runs', map));
    expect([count, findings.faults]).toEqual([1, []]);
    // It is no yes or no, so nothing is lost, and it is said.
    expect(findings.cautions.map(({ code, given }) => [code, given])).toEqual([
      ['table.heading-unknown', 'Done'],
    ]);
  });

  test('says which columns have rows but no heading of their own where headings are merged', () => {
    const table = runs(['Room and profile', null, 'Length'], ['Hall', 'Base', '96']);
    const { findings } = read(table);
    expect(findings.faults.map(({ code }) => code)).toEqual([
      'table.heading-missing',
      'table.heading-missing',
      'table.heading-merged',
    ]);
    expect(findings.faults[2]?.message).toBe(
      'Column B of Runs has rows but no heading of its own. Where headings are merged, take the merge apart and give each column its heading; a column that is for yourself alone may be headed “not used”.',
    );
    expect(findings.faults[2]?.where).toEqual({ sheet: 'Trim', cell: 'B3' });
  });
});

describe('The fingerprint of inputs', () => {
  const base = runs(['Room', 'Length'], ['Hall', 96], ['Hall', 97]);

  test('is the same for the same cells, wherever the table stands', () => {
    const moved = { ...base, rows: base.rows.map((row) => ({ ...row, line: row.line + 9 })) };
    expect(fingerprint([moved])).toBe(fingerprint([structuredClone(base)]));
    expect(fingerprint([base])).toMatch(/^[0-9a-f]{16}$/u);
  });

  test('changes with any cell, its kind, any heading and the order of rows', () => {
    const others = [
      runs(['Room', 'Length'], ['Hall', '96'], ['Hall', 97]),
      runs(['Room', 'Length'], ['Hall', 97], ['Hall', 96]),
      runs(['Room', 'Len'], ['Hall', 96], ['Hall', 97]),
      runs(['Room', 'Length'], ['Hall', 96]),
      { ...base, name: 'Stock' },
    ];
    const prints = [base, ...others].map((one) => fingerprint([one]));
    expect(new Set([...prints, fingerprint([])]).size).toBe(prints.length + 1);
  });
});
