import { describe, expect, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { writer } from '../../src/browser/load-writer.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { demoHost, makePane } from './make-pane.ts';
import { AS_FILE, memoryHost, REFUSAL, type MemoryHost } from './memory-host.ts';

/** A pane with the demo planned, and every description that it made a file of. */
async function plannedPane(host: MemoryHost = demoHost()) {
  const made: WorkbookDescription[] = [];
  const pane = makePane(host, {
    makeFile: (description) => {
      made.push(description);
      return Promise.resolve(new Uint8Array([1]));
    },
  });
  await pane.ready();
  await pane.actions.plan();
  return { ...pane, host, made };
}

describe("The client's copy", () => {
  test('is saved as a file by itself, named after the workbook, and the workbook stays as it is', async () => {
    const { store, actions, saved, made, host } = await plannedPane();
    await actions.saveClient();
    expect(saved).toEqual(['House-client.xlsx']);
    const result = store.get().planning.result!;
    expect(result).toMatchObject({ day: '2026-11-30', effort: { seconds: 20 } });
    expect(made).toEqual([writer.describeClientCopy(result.plan, result)]);
    expect(host.log).toEqual([]);
    expect(store.get().busy).toBeUndefined();
    const said = 'The client’s copy is saved as House-client.xlsx';
    expect(store.get().notice).toContain(said);
    expect(store.get().announcement.text).toContain(said);
  });

  test('has beside it drawings, outlines and lists for other programs, in one file', async () => {
    const zipped: string[] = [];
    const pane = makePane(demoHost(), {
      makeZip: (files) => {
        zipped.push(...files.map(({ path }) => path));
        return Promise.resolve(new Uint8Array([2]));
      },
    });
    await pane.ready();
    await pane.actions.plan();
    await pane.actions.saveExports();
    expect(pane.saved).toEqual(['House-files.zip']);
    const result = pane.store.get().planning.result!;
    expect(zipped).toEqual(writer.exportPlan(result.plan, result).map(({ path }) => path));
    expect(pane.store.get().notice).toContain('House-files.zip');
  });

  test('has beside it a page for the phone at the saw, of this very plan', async () => {
    const files = new Map<string, string>();
    const shown: string[] = [];
    const pane = makePane(demoHost(), {
      saveFile: (name, bytes) => void files.set(name, new TextDecoder().decode(bytes)),
      showSawView: (html) => void shown.push(html),
    });
    await pane.ready();
    await pane.actions.showShopView();
    expect(shown).toEqual([]);
    await pane.actions.plan();
    await pane.actions.showShopView();
    expect(files.size).toBe(0);
    await pane.actions.saveShopView();
    expect(shown).toEqual([...files.values()]);
    const { plan, ...stamp } = pane.store.get().planning.result!;
    const name = 'House-at-the-saw.html';
    expect([...files]).toEqual([[name, writer.writeShopView(plan, stamp)]]);
    expect(pane.store.get().notice).toContain(name);
  });

  test('is not saved of inputs that have changed since the plan', async () => {
    const { store, actions, saved, host } = await plannedPane();
    host.type('Runs', 1, 3, '9\' 1"');
    await actions.saveClient();
    expect(saved).toEqual([]);
    expect([store.get().notice, store.get().busy]).toEqual([undefined, undefined]);
    expect(store.get().announcement.text).toContain('plan again');
  });

  test('is not saved before there is a plan, of a plan that is wrong, or beside other work', async () => {
    const unplanned = makePane(demoHost());
    await unplanned.ready();
    await unplanned.actions.saveClient();
    expect([unplanned.saved, unplanned.store.get().busy]).toEqual([[], undefined]);
    const host = demoHost();
    const wrong = makePane(host, {
      loadPlanner: () => Promise.resolve({ ...planner, checkJobPlan: () => ['It is wrong.'] }),
    });
    await wrong.ready();
    await wrong.actions.plan();
    await wrong.actions.saveClient();
    expect(wrong.saved).toEqual([]);
    const busy = await plannedPane();
    busy.store.send({ type: 'writing begun', of: 4 });
    await busy.actions.saveClient();
    busy.store.send({ type: 'writing dropped' });
    busy.store.send({ type: 'busy', with: 'Making the sheets' });
    await busy.actions.saveClient();
    expect(busy.saved).toEqual([]);
  });

  test('a workbook that cannot be read, or a part that does not load, is said and ends the wait', async () => {
    const unread = await plannedPane();
    unread.host.fails = 'survey';
    await unread.actions.saveClient();
    expect([unread.saved, unread.store.get().trouble]).toEqual([[], [REFUSAL]]);
    const offline = makePane(demoHost(), {
      makeFile: () => Promise.reject(new TypeError('Failed to fetch')),
    });
    await offline.ready();
    await offline.actions.plan();
    await offline.actions.saveClient();
    const { trouble, busy, bug } = offline.store.get();
    expect(trouble.map(({ code }) => code)).toEqual(['pane.not-loaded']);
    expect([busy, bug, offline.saved]).toEqual([undefined, undefined, []]);
  });

  test('a fault of this program is said as one', async () => {
    const broken = makePane(demoHost(), {
      makeFile: () => Promise.reject(new RangeError('no such cell')),
    });
    await broken.ready();
    await broken.actions.plan();
    await broken.actions.saveClient();
    expect(broken.store.get().bug).toBe('no such cell');
  });
});

describe('Set-up numbers as formulas', () => {
  test('are written where a person ticks so, and else not', async () => {
    const choices: boolean[] = [];
    const pane = makePane(memoryHost([...demoHost().sheets.values()], AS_FILE), {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          loadWriter: () =>
            Promise.resolve({
              ...writer,
              describePlan: (plan, choice) => {
                choices.push(choice.keepsFormulas);
                return writer.describePlan(plan, choice);
              },
            }),
        }),
    });
    await pane.ready();
    await pane.actions.plan();
    await pane.actions.askToWrite();
    pane.store.send({ type: 'formulas kept', keeps: true });
    await pane.actions.askToWrite();
    expect(choices).toEqual([false, true]);
  });
});
