/** Two things at once: what a person does while the pane is still about something else. */
import { describe, expect, jest, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { own } from '../../src/core/faults/argument.ts';
import { fault, ok, type Outcome } from '../../src/core/faults/fault.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { EDITING_MS } from '../../src/pane/actions/check-job.ts';
import { sayStale } from '../../src/pane/plan/say-stale.ts';
import type { Planner } from '../../src/pane/planner.ts';
import { demoHost, makePane } from './make-pane.ts';
import { AS_FILE, memoryHost } from './memory-host.ts';

const file = (name: string, bytes: Promise<ArrayBuffer> = Promise.resolve(new ArrayBuffer(1))) => ({
  name,
  arrayBuffer: () => bytes,
});
const named = (name: string): WorkbookHost => {
  const host = memoryHost([], AS_FILE);
  return { ...host, survey: async () => ok({ ...unwrap(await host.survey()), name }) };
};

function unwrap<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new RangeError(outcome.faults.map(({ message }) => message).join(' '));
  return outcome.value;
}

/** The planner, and what it was asked to plan. */
function countedPlanner(during: () => void = () => undefined): {
  loads: () => Promise<Planner>;
  calls: () => number;
} {
  let calls = 0;
  const planJob: Planner['planJob'] = async (job, options) => {
    calls += 1;
    during();
    await options.pause?.();
    return planner.planJob(job, options);
  };
  return { loads: () => Promise.resolve({ ...planner, planJob }), calls: () => calls };
}

describe('A button pressed twice', () => {
  test('plans once', async () => {
    const { loads, calls } = countedPlanner();
    const { store, actions, ready } = makePane(demoHost(), { loadPlanner: loads });
    await ready();
    await Promise.all([actions.plan(), actions.plan()]);
    expect(calls()).toBe(1);
    expect(store.get().planning.result).toBeDefined();
  });

  test('writes once, and replaces once', async () => {
    const host = demoHost();
    const { actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    await Promise.all([actions.askToWrite(), actions.askToWrite()]);
    expect(host.log).toHaveLength(1);
    await actions.askToWrite();
    await Promise.all([actions.write(), actions.write()]);
    expect(host.log).toHaveLength(2);
  });

  test('makes the input sheets once', async () => {
    const host = memoryHost([]);
    const { actions, ready } = makePane(host);
    await ready();
    await Promise.all([actions.makeInput('blank'), actions.makeInput('blank')]);
    expect(host.log).toHaveLength(1);
  });
});

describe('Inputs that change', () => {
  test('a moment before planning are planned as they are, not as they were read', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    host.type('Runs', 1, 3, '9\' 1"');
    await actions.plan();
    const { planning, reading } = store.get();
    expect(planning.result?.fingerprint).toBe(reading.found?.fingerprint);
    const typed = planning.result?.plan.job.runs.find(({ made }) => made === undefined);
    expect(Number(typed?.length)).toBe(109);
  });

  test('a moment before planning into something that cannot be read are not planned', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    host.type('Runs', 1, 3, 'long');
    await actions.plan();
    const { planning, reading } = store.get();
    expect(planning).toMatchObject({ running: undefined, result: undefined });
    expect(reading.found?.faults).toHaveLength(1);
  });

  test('between plan and writing are not written over by an old plan', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    host.type('Runs', 1, 3, '9\' 1"');
    await actions.askToWrite();
    expect(host.log).toEqual([]);
    expect(store.get().writing.kind).toBe('idle');
    expect(sayStale(store.get())).toMatch(/plan again before it is written/u);
    await actions.plan();
    await actions.askToWrite();
    expect(host.log).toHaveLength(1);
  });

  test('while it is asked whether to replace are noticed before anything is replaced', async () => {
    const host = demoHost();
    host.sheets.set('Cutting', { name: 'Cutting', ours: true, rows: [['old']] });
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    await actions.askToWrite();
    host.type('Runs', 1, 3, '9\' 1"');
    await actions.write();
    expect(host.log).toEqual([]);
    expect(store.get().writing.kind).toBe('idle');
  });

  test('after a planning that failed are known to be others than those', async () => {
    const host = demoHost();
    const heading = (name: string): number => host.sheets.get('Runs')?.rows[0]?.indexOf(name) ?? -1;
    const [length, onePiece] = [heading('Length'), heading('One piece')];
    const typed = host.sheets.get('Runs')?.rows[1]?.[length] ?? null;
    // Longer than any stick, which only planning finds.
    host.type('Runs', 1, length, '900');
    host.type('Runs', 1, onePiece, 'yes');
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    expect(store.get().planning.failedFrom).toBe(store.get().reading.found?.fingerprint);
    host.type('Runs', 1, length, typed);
    await actions.checkAgain();
    expect(store.get().planning.failedFrom).not.toBe(store.get().reading.found?.fingerprint);
    await actions.plan();
    expect(store.get().planning.failedFrom).toBeUndefined();
  });
});

describe('Another file', () => {
  test('that is opened while a plan is made ends that planning', async () => {
    const aborted: boolean[] = [];
    let open = (): Promise<void> => Promise.resolve();
    const loads = (): Promise<Planner> =>
      Promise.resolve({
        ...planner,
        planJob: async (job, options) => {
          await open();
          aborted.push(options.signal?.aborted === true);
          return planner.planJob(job, options);
        },
      });
    const { store, actions, ready } = makePane(demoHost(), {
      loadPlanner: loads,
      openFile: (name) => Promise.resolve(ok(named(name))),
    });
    await ready();
    open = () => actions.openFile(file('other.xlsx'));
    await actions.plan();
    expect(aborted).toEqual([true]);
    expect(store.get().planning).toMatchObject({ running: undefined, result: undefined });
    expect(store.get().reading.found?.survey.name).toBe('other.xlsx');
  });

  test('chosen last is the one that stays open, however long the one before takes', async () => {
    const { store, actions, ready } = makePane(undefined, {
      openFile: (name) => Promise.resolve(ok(named(name))),
    });
    await ready();
    let finish: (bytes: ArrayBuffer) => void = () => undefined;
    const slow = new Promise<ArrayBuffer>((resolve) => {
      finish = resolve;
    });
    const first = actions.openFile(file('slow.xlsx', slow));
    await actions.openFile(file('quick.xlsx'));
    finish(new ArrayBuffer(1));
    await first;
    expect(store.get().reading.found?.survey.name).toBe('quick.xlsx');
    expect(store.get().busy).toBeUndefined();
  });

  test('is not opened while sheets are being written', async () => {
    const host = demoHost();
    let open = (): Promise<void> => Promise.resolve();
    const { store, actions, ready } = makePane({
      ...host,
      write: async (description, choice) => {
        await open();
        return host.write(description, choice);
      },
    });
    await ready();
    await actions.plan();
    open = () => actions.openFile(file('other.xlsx'));
    await actions.askToWrite();
    expect(store.get().writing.kind).toBe('written');
    expect(store.get().reading.found?.survey.name).toBe('House.xlsx');
  });

  test('that is a folder, or that another program keeps shut, is said and is no bug', async () => {
    const { store, actions, ready } = makePane(undefined);
    await ready();
    await actions.openFile(file('Houses', Promise.reject(new Error('not a file'))));
    const { bug, trouble, busy } = store.get();
    expect({ bug, busy }).toEqual({ bug: undefined, busy: undefined });
    expect(trouble.map(({ message }) => message).join()).toMatch(
      /^Houses could not be read \(“not a file”\)\. .*choose it again\.$/u,
    );
  });
});

describe('A file opened again', () => {
  test('is read by the columns that were chosen for it before', async () => {
    const kept = new Map<string, string>();
    const preferences = {
      get: (key: string) => kept.get(key),
      set: (key: string, value: string) => void kept.set(key, value),
    };
    const open = (): WorkbookHost => {
      const rows = [
        ['Area', 'Type', 'Size'],
        ['Hall', 'Tall base', '100'],
      ];
      const others = [...demoHost().sheets.values()].filter(({ name }) => name !== 'Runs');
      return memoryHost([...others, { name: 'House', rows }], AS_FILE);
    };
    const runsIn = async (choose: boolean): Promise<string | undefined> => {
      const { store, actions, ready } = makePane(undefined, {
        preferences,
        openFile: () => Promise.resolve(ok(open())),
      });
      await ready();
      await actions.openFile(file('House.xlsx'));
      if (choose) {
        await actions.beginMapping('Runs');
        await actions.choosePlace('House');
        await actions.keepMapping();
      }
      return store.get().reading.found?.tables.find(({ name }) => name === 'Runs')?.place?.sheet;
    };
    expect(await runsIn(false)).toBeUndefined();
    expect(await runsIn(true)).toBe('House');
    expect(await runsIn(false)).toBe('House');
  });
});

describe('A cell that is being typed in', () => {
  test('keeps the tables from being read until it is left; then they are read by themselves', async () => {
    const host = demoHost();
    const editing = fault('host.editing-cell', own('The workbook'), null);
    let isEditing = true;
    const { store, ready } = makePane({
      ...host,
      survey: () => (isEditing ? Promise.resolve({ ok: false, faults: [editing] }) : host.survey()),
    });
    jest.useFakeTimers();
    try {
      const began = ready();
      await jest.advanceTimersByTimeAsync(10);
      await began;
      expect(store.get().trouble).toEqual([editing]);
      await jest.advanceTimersByTimeAsync(EDITING_MS);
      expect(store.get().reading.found).toBeUndefined();
      isEditing = false;
      await jest.advanceTimersByTimeAsync(EDITING_MS);
      expect(store.get().reading.found?.job).toBeDefined();
      expect(store.get().trouble).toEqual([]);
    } finally {
      jest.useRealTimers();
    }
  });
});
