import { describe, expect, test } from '@jest/globals';
import type { RawCell } from '../../src/planning/input/raw-table.ts';
import { demoHost, makePane } from './make-pane.ts';
import { memoryHost } from './memory-host.ts';
import type { ColumnMap } from '../../src/planning/input/map-columns.ts';
import { leftOverColumns, previewRows } from '../../src/pane/job/preview-rows.ts';

describe('A trim list of the person’s own, chosen in the pane', () => {
  const house = (headings: RawCell[], ...rows: RawCell[][]) =>
    memoryHost([
      ...[...demoHost().sheets.values()].filter(
        ({ name }) => !['Runs', 'Walls', 'Trim', 'Options'].includes(name),
      ),
      { name: 'House', rows: [headings, ...rows] },
    ]);

  test('headed in feet is read in feet, and says so at its heading', async () => {
    const host = house(['Area', 'Molding', 'Feet'], ['Hall', 'Tall base', 8]);
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.beginMapping('Runs');
    await actions.choosePlace('House');
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
    await actions.beginMapping('Runs');
    await actions.choosePlace('House');
    await actions.keepMapping();
    const { found } = store.get().reading;
    expect(found?.job).toBeUndefined();
    expect(found?.faults.map(({ code, where }) => [code, where])).toEqual([
      ['table.heading-twice', { sheet: 'House', cell: 'D1' }],
    ]);
  });

  /** Pasted over the headings of a blank Runs, whose Quantity stays at the right of it. */
  const pasted = () =>
    house(
      ['Area', 'Item', 'Feet', 'Qty', 'Colour', 'Quantity'],
      ['Hall', 'Tall base', 8, 4, 'white', null],
      ['Hall', 'Tall base', 'six', 2, 'white', null],
    );

  test('is guessed by its filled columns, and its first rows are shown as they will be read', async () => {
    const { store, actions, ready } = makePane(pasted());
    await ready();
    await actions.beginMapping('Runs');
    await actions.choosePlace('House');
    const { mapping, reading } = store.get();
    const columns = { Room: 'Area', Profile: 'Item', Length: 'Feet', Quantity: 'Qty' };
    expect(mapping?.columns).toEqual(columns);
    const preview = (chosen: ColumnMap) =>
      previewRows(mapping!.raw!, 'Runs', chosen, reading.found!.shop).map(({ cells, messages }) => [
        cells.map(({ heading, text }) => `${heading} ${text}`).join(' · '),
        messages.length,
      ]);
    expect(preview(columns)).toEqual([
      ['Room Hall · Profile Tall base · Length 96" · Quantity 4', 0],
      ['Room Hall · Profile Tall base · Length ? · Quantity 2', 1],
    ]);
    expect(preview({ Profile: 'Area', Quantity: 'Qty' })[0]).toEqual([
      'Profile Hall · Quantity 4',
      0,
    ]);
    expect(leftOverColumns(mapping!.raw!, columns)).toEqual(['Colour']);
  });

  test('whose filled quantity is left out is asked about until it is said not to be used', async () => {
    const host = house(['Area', 'Item', 'Feet', 'Qty'], ['Hall', 'Tall base', 8, 4]);
    const { store, actions, ready } = makePane(host);
    await ready();
    const choose = async (heading: string, theirs: string): Promise<readonly unknown[]> => {
      await actions.beginMapping('Runs');
      if (store.get().mapping?.placeKey === undefined) await actions.choosePlace('House');
      store.send({ type: 'column chosen', heading, theirs });
      await actions.keepMapping();
      return (store.get().reading.found?.faults ?? []).map(({ code, where }) => [code, where]);
    };
    const asked = ['table.column-unused', { sheet: 'House', cell: 'D1' }];
    expect(await choose('Quantity', '')).toEqual([asked]);
    expect(await choose('Qty (not used)', 'Qty')).toEqual([]);
    expect(store.get().reading.found?.job?.runs.map(({ quantity }) => quantity)).toEqual([1]);
    expect(await choose('Quantity', 'Qty')).toEqual([]);
    expect(store.get().reading.found?.job?.runs.map(({ quantity }) => quantity)).toEqual([4]);
  });
});
