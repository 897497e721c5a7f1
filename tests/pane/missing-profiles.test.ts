import { describe, expect, test } from '@jest/globals';
import { missingProfiles, rowsForProfiles } from '../../src/planning/input/missing-profiles.ts';
import type { RawCell } from '../../src/planning/input/raw-table.ts';
import { demoHost, makePane } from './make-pane.ts';
import { AS_FILE, memoryHost, type MemoryHost } from './memory-host.ts';

/** Names a profile in two runs, one in another case, and one more in an opening. */
function spoiled(): MemoryHost {
  const host = demoHost();
  host.type('Runs', 1, 2, 'Cornice');
  host.type('Runs', 2, 2, ' cornice');
  const openings = host.sheets.get('Openings')!.rows;
  const casing = openings[0]!.indexOf('Casing');
  host.type('Openings', 1, casing, '3/4 round');
  return host;
}

const profilesOf = (host: MemoryHost, from: number): RawCell[][] =>
  host.sheets.get('Profiles')!.rows.slice(from);

describe('Profiles that are named and not listed', () => {
  test('are added once each by one click, and ask what they are made of', async () => {
    const host = spoiled();
    const count = host.sheets.get('Profiles')!.rows.length;
    const { store, actions, ready } = makePane(host);
    await ready();
    const before = store.get().reading.found!;
    expect(missingProfiles(before.faults)).toEqual(['Cornice', '3/4 round']);
    await actions.addMissingProfiles();
    expect(profilesOf(host, count)).toEqual([
      ['Cornice', '?'],
      ['3/4 round', '?'],
    ]);
    const { reading, notice, busy } = store.get();
    expect(host.log).toEqual([
      `show {"sheet":"Profiles","cell":"B${count + 1}"} with the keyboard`,
    ]);
    expect([notice, busy]).toEqual([
      '2 profiles were added on Profiles. Say under Make what each is, where it has a “?”: a cove asks for its sizes then.',
      undefined,
    ]);
    // Nothing is planned before somebody has said what they are.
    expect(reading.found?.job).toBeUndefined();
    expect(reading.found?.faults.map(({ code, where, message }) => [code, where, message])).toEqual(
      [count + 1, count + 2].map((line) => [
        'word.unknown',
        { sheet: 'Profiles', cell: `B${line}` },
        'Make: “?” is not known here. Allowed: cove, crown cove, buy.',
      ]),
    );
    await actions.addMissingProfiles();
    expect(profilesOf(host, count)).toHaveLength(2);
  });

  test('that turn out to be coves are asked for their sizes, each at its cell', async () => {
    const host = spoiled();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.addMissingProfiles();
    const { rows } = host.sheets.get('Profiles')!;
    host.type('Profiles', rows.length - 2, 1, 'cove');
    host.type('Profiles', rows.length - 1, 1, 'buy');
    await actions.checkAgain();
    const line = rows.length - 1;
    const places = store.get().reading.found!.faults.map(({ code, where }) => [code, where]);
    expect(places).toEqual(
      ['C', 'D', 'F', 'G'].map((letter) => [
        'job.cove-needs',
        { sheet: 'Profiles', cell: `${letter}${line}` },
      ]),
    );
  });

  test('go under the headings that a person’s own table has for them', async () => {
    const sheets = [...spoiled().sheets.values()];
    const host = memoryHost([
      ...sheets.filter(({ name }) => name !== 'Profiles'),
      {
        name: 'Moldings',
        rows: [
          ['No.', 'What', 'Style name'],
          [1, 'buy', 'Tall base'],
        ],
      },
    ]);
    const { actions, store, ready } = makePane(host);
    await ready();
    await actions.beginMapping('Profiles');
    await actions.choosePlace('Moldings');
    store.send({ type: 'column chosen', heading: 'Profile', theirs: 'Style name' });
    store.send({ type: 'column chosen', heading: 'Make', theirs: 'What' });
    await actions.keepMapping();
    const names = missingProfiles(store.get().reading.found!.faults);
    await actions.addMissingProfiles();
    const [first, ...others] = host.sheets.get('Moldings')!.rows.slice(2);
    expect(first).toEqual([null, '?', names[0]]);
    expect(others).toHaveLength(names.length - 1);
    expect(host.log.at(-1)).toBe('show {"sheet":"Moldings","cell":"B3"} with the keyboard');
  });

  test('stand as bought ones in a table without Make, and are shown at their names', () => {
    const headings = { line: 1, cells: ['Price', 'Molding'] };
    const source = { kind: 'sheet', name: 'P' } as const;
    const table = { name: 'Profiles', source, headings, rows: [] };
    const reading = { unit: 'in', decimalSign: '.' } as const;
    expect(rowsForProfiles(table, ['Cornice'], reading)).toEqual({
      rows: [[null, 'Cornice']],
      toFill: 1,
      asksMake: false,
    });
    const nameless = { ...table, headings: { line: 1, cells: ['Price'] } };
    expect(rowsForProfiles(nameless, ['Cornice'], reading)).toBeUndefined();
  });

  test('are said in words where the workbook can not take them', async () => {
    const host = spoiled();
    const { actions, store, ready } = makePane(host);
    await ready();
    host.fails = 'appendRows';
    await actions.addMissingProfiles();
    const { trouble, busy, notice } = store.get();
    expect([trouble.map(({ code }) => code), busy, notice]).toEqual([
      ['host.refused'],
      undefined,
      undefined,
    ]);
    expect(memoryHost([], AS_FILE).can.appendRows).toBe(false);
  });
});
