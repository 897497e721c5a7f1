import { afterEach, describe, expect, jest, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { SETTLE_MS } from '../../src/pane/actions/check-job.ts';
import type { JobFound } from '../../src/pane/job/job-found.ts';
import { choiceNote } from '../../src/planning/input/table-choices.ts';
import type { Run } from '../../src/planning/job.ts';
import type { PaneStore } from '../../src/pane/state/store.ts';
import { demoHost, makePane } from './make-pane.ts';
import { memoryHost, REFUSAL } from './memory-host.ts';

const foundIn = (store: PaneStore): JobFound => {
  const { found } = store.get().reading;
  if (found === undefined) throw new RangeError('Nothing was read.');
  return found;
};
const placesIn = (store: PaneStore): Record<string, string | undefined> =>
  Object.fromEntries(foundIn(store).tables.map(({ name, place }) => [name, place?.sheet]));

/** Those of Runs, without what Walls and Trim make. */
const typedRuns = (store: PaneStore): readonly Run[] =>
  (foundIn(store).job?.runs ?? []).filter(({ made }) => made === undefined);

afterEach(() => {
  jest.useRealTimers();
});

describe('The pane beside a workbook', () => {
  test('finds the tables of the demo and nothing wrong in them', async () => {
    const { store, ready } = makePane(demoHost());
    await ready();
    const { faults, job, settings, coves } = foundIn(store);
    expect(placesIn(store)).toEqual({
      Runs: 'Runs',
      Walls: 'Walls',
      Trim: 'Trim',
      Openings: 'Openings',
      Profiles: 'Profiles',
      Shop: 'Shop',
      Stock: 'Stock',
      Work: 'Work',
      Options: 'Options',
      Job: 'Job',
      Hours: 'Hours',
    });
    expect(faults).toEqual([]);
    // Rows of Runs, each wall of Walls with each of its trim but one that a row of Runs stands for.
    expect(job?.runs).toHaveLength(26 + (3 * 8 - 3) + 2 * 6 + (3 + 3 + 2) - 1);
    expect(coves.map(({ name }) => name)).toEqual([
      'Reading cove',
      'Gallery crown',
      'Picture rail',
    ]);
    expect(settings.find(({ name }) => name === 'blade diameter')).toEqual({
      name: 'blade diameter',
      value: '9 7/8"',
      usual: false,
      where: { sheet: 'Shop', cell: 'B2' },
    });
    expect(store.get().functions.separator).toBe(';');
  });

  test('tells a fault with its cell, and shows that cell when asked', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    host.type('Runs', 2, 3, '3/0');
    await ready();
    const [only] = foundIn(store).faults;
    expect(only?.where).toEqual({ sheet: 'Runs', cell: 'D3' });
    expect(foundIn(store).job).toBeUndefined();
    expect(store.get().announcement.text).toBe('The tables were read: 1 problem, 1 caution.');
    await actions.show({ sheet: 'Runs', cell: 'D3' });
    expect(host.log).toEqual(['show {"sheet":"Runs","cell":"D3"}']);
  });

  test('still knows the profiles that can be read while other tables are at fault', async () => {
    const host = demoHost();
    host.type('Runs', 2, 3, 'unmeasured');
    host.type('Profiles', 2, 2, '?');
    const { store, ready } = makePane(host);
    await ready();
    expect(foundIn(store).coves.map(({ name }) => name)).toEqual(['Reading cove', 'Picture rail']);
  });

  test('checks again once the typing rests, however many cells were typed in', async () => {
    const host = demoHost();
    const { store, ready } = makePane(host);
    await ready();
    jest.useFakeTimers();
    const { turn } = store.get().reading;
    host.type('Runs', 2, 3, 'a');
    await jest.advanceTimersByTimeAsync(SETTLE_MS - 1);
    host.type('Runs', 3, 3, 'b');
    await jest.advanceTimersByTimeAsync(SETTLE_MS - 1);
    expect(store.get().reading.turn).toBe(turn);
    await jest.advanceTimersByTimeAsync(1);
    expect(store.get().reading.turn).toBe(turn + 1);
    expect(foundIn(store).faults).toHaveLength(2);
  });

  test('does not check again for a change on a sheet that it wrote itself', async () => {
    const host = demoHost();
    host.sheets.set('Cutting', { name: 'Cutting', ours: true, rows: [['x']] });
    const { store, ready } = makePane(host);
    await ready();
    jest.useFakeTimers();
    const { turn } = store.get().reading;
    host.type('Cutting', 0, 0, 'scribbled');
    await jest.advanceTimersByTimeAsync(10 * SETTLE_MS);
    expect(store.get().reading.turn).toBe(turn);
  });

  test.each(['survey', 'recall', 'readTable'] as const)(
    'says so in words when the workbook refuses to %s, and reads again when asked',
    async (call) => {
      const host = demoHost();
      host.fails = call;
      const { store, actions, ready } = makePane(host);
      await ready();
      const { trouble, reading } = store.get();
      const said = [...trouble, ...(reading.found?.faults ?? [])];
      expect(said.map(({ message }) => message)).toContain(REFUSAL.message);
      expect(reading.found?.job).toBeUndefined();
      host.fails = undefined;
      await actions.checkAgain();
      expect(foundIn(store).job).toBeDefined();
    },
  );

  test('plans nothing while a table that may be left out is there and cannot be read', async () => {
    const host = demoHost();
    const { store, ready } = makePane({
      ...host,
      readTable: (place, name) =>
        name === 'Openings'
          ? Promise.resolve({ ok: false, faults: [REFUSAL] })
          : host.readTable(place, name),
    });
    await ready();
    expect(foundIn(store).faults).toEqual([REFUSAL]);
    expect(foundIn(store).job).toBeUndefined();
  });

  test('says that the planner could not be loaded, and can try again', async () => {
    let loads = 0;
    const { store, actions, ready } = makePane(demoHost(), {
      loadPlanner: () =>
        ++loads === 1 ? Promise.reject(new Error('offline')) : Promise.resolve(planner),
    });
    await ready();
    expect(store.get().trouble.map(({ code }) => code)).toEqual(['pane.not-loaded']);
    expect(store.get().bug).toBeUndefined();
    await actions.checkAgain();
    expect(foundIn(store).job).toBeDefined();
  });

  test('tells an exception as a fault of the program, by its own words', async () => {
    const { store, ready } = makePane(demoHost(), {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          readJob: () => {
            throw new RangeError('a bug');
          },
        }),
    });
    await ready();
    expect(store.get().bug).toBe('a bug');
  });
});

describe('A table of the person’s own', () => {
  const own = () =>
    memoryHost([
      ...[...demoHost().sheets.values()].filter(({ name }) => !['Runs', 'Options'].includes(name)),
      {
        name: 'Trim list',
        rows: [
          ['Area', 'Type', 'Size', 'Qty'],
          ['Hall', 'Tall base', '100', 1],
        ],
      },
    ]);

  test('is taken for Runs by its columns, which are guessed, kept and read by', async () => {
    const host = own();
    const { store, actions, ready } = makePane(host);
    await ready();
    expect(placesIn(store)['Runs']).toBeUndefined();
    await actions.beginMapping('Runs');
    await actions.choosePlace('Trim list');
    expect(store.get().mapping?.columns).toEqual({
      Room: 'Area',
      Profile: 'Type',
      Length: 'Size',
      Quantity: 'Qty',
    });
    await actions.keepMapping();
    expect(store.get().mapping).toBeUndefined();
    expect(typedRuns(store).map(({ room, quantity }) => [room, quantity])).toEqual([['Hall', 1]]);
    const again = makePane(host);
    await again.ready();
    expect(placesIn(again.store)['Runs']).toBe('Trim list');
    await again.actions.forgetChoice('Runs');
    expect(placesIn(again.store)['Runs']).toBeUndefined();
  });

  test('that cannot be kept is said, and the choice stays open', async () => {
    const host = own();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.beginMapping('Runs');
    await actions.choosePlace('Trim list');
    host.fails = 'remember';
    await actions.keepMapping();
    expect(store.get().trouble).toEqual([REFUSAL]);
    expect(store.get().mapping?.placeKey).toBe('Trim list');
    expect(host.notes.get(choiceNote('Runs'))).toBeUndefined();
  });

  test('is asked for where two are alike, and the one named is read', async () => {
    const [runs, ...all] = [...demoHost().sheets.values()];
    // Its options are of rooms that the upper floor lacks.
    const others = all.filter(({ name }) => name !== 'Options');
    const host = memoryHost([
      { ...runs!, name: 'Ground floor' },
      { ...runs!, name: 'Upper floor', rows: runs!.rows.slice(0, 3) },
      ...others,
    ]);
    const { store, actions, ready } = makePane(host);
    await ready();
    const standing = foundIn(store).tables.find(({ name }) => name === 'Runs');
    expect(standing?.alike.map(({ sheet }) => sheet)).toEqual(['Ground floor', 'Upper floor']);
    await actions.takeAsItIs('Runs', 'Upper floor');
    expect(typedRuns(store)).toHaveLength(2);
  });
});
