import { describe, expect, test } from '@jest/globals';
import type { RawCell } from '../../src/planning/input/raw-table.ts';
import { demoHost, makePane } from './make-pane.ts';
import { memoryHost } from './memory-host.ts';

describe('A trim list of the person’s own, chosen in the pane', () => {
  const house = (headings: RawCell[], ...rows: RawCell[][]) =>
    memoryHost([
      ...[...demoHost().sheets.values()].filter(({ name }) => name !== 'Runs'),
      { name: 'House', rows: [headings, ...rows] },
    ]);

  test('headed in feet is read in feet, and says so at its heading', async () => {
    const host = house(['Area', 'Molding', 'Feet'], ['Hall', 'Tall base', 8]);
    const { store, actions, ready } = makePane(host);
    await ready();
    actions.beginMapping('Runs');
    actions.choosePlace('House');
    await actions.keepMapping();
    const { found } = store.get().reading;
    expect(Number(found?.job?.runs[0]?.length)).toBe(96);
    const said = found?.cautions.find(({ code }) => code === 'table.heading-unit');
    expect(said?.where).toEqual({ sheet: 'House', cell: 'C1' });
    expect(said?.message).toMatch(/^Length: bare numbers under “Feet” are read as feet/u);
  });

  test('with the chosen heading over two columns is not guessed at', async () => {
    const host = house(['Area', 'Molding', 'Len', 'Len'], ['Hall', 'Tall base', 80, 90]);
    const { store, actions, ready } = makePane(host);
    await ready();
    actions.beginMapping('Runs');
    actions.choosePlace('House');
    await actions.keepMapping();
    const { found } = store.get().reading;
    expect(found?.job).toBeUndefined();
    expect(found?.faults.map(({ code, where }) => [code, where])).toEqual([
      ['table.heading-twice', { sheet: 'House', cell: 'D1' }],
    ]);
  });
});
