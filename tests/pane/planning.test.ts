import { describe, expect, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { behindMark, sayStale } from '../../src/pane/plan/say-stale.ts';
import { WRITTEN_NOTE } from '../../src/pane/job/find-job.ts';
import { demoHost, makePane } from './make-pane.ts';
import { AS_FILE, memoryHost, REFUSAL, UNDOABLE } from './memory-host.ts';
import { planSheets } from '../sheets/sheet-names.ts';

const OUTPUT = planSheets().join(', ');
const WRITTEN = OUTPUT.replace(', Client', ' and Client');

describe('From a blank workbook to written sheets', () => {
  test('the demo is made, checked, planned and written, and only then do the sheets stand', async () => {
    const host = memoryHost([]);
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.makeInput('demo');
    expect(host.log).toEqual([
      'write Runs, Walls, Trim, Openings, Profiles, Shop, Stock, Work, Options, Job, Hours, How to for the person, replacing none',
    ]);
    expect(store.get().reading.found?.faults).toEqual([]);
    await actions.plan();
    expect(store.get().planning.result?.wrong).toEqual([]);
    expect(host.sheets.has('Production')).toBe(false);
    await actions.askToWrite();
    expect(host.log.at(-1)).toBe(`write ${OUTPUT} for the tool, replacing none`);
    expect(store.get().writing).toEqual({
      kind: 'written',
      sheets: OUTPUT.split(', '),
      file: undefined,
    });
    expect(store.get().announcement.text).toBe(`${WRITTEN} were written.`);
  });

  test('sheets are replaced only after the question, which names what points into them', async () => {
    const host = demoHost();
    host.sheets.set('Cutting', {
      name: 'Cutting',
      ours: true,
      rows: [['old']],
      pointedAtBy: ['Notes!B4'],
    });
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    await actions.askToWrite();
    expect(store.get().writing).toEqual({
      kind: 'asking',
      question: {
        replaced: ['Cutting'],
        added: OUTPUT.split(', ').filter((name) => name !== 'Cutting'),
        pointing: [{ sheet: 'Cutting', cells: ['Notes!B4'] }],
      },
    });
    expect(host.log).toEqual([]);
    await actions.write();
    expect(host.log).toEqual([`write ${OUTPUT} for the tool, replacing Cutting`]);
  });

  test('where Undo takes the sheets back, the word that they were written goes with them', async () => {
    for (const [can, stands] of [
      [UNDOABLE, 'idle'],
      [undefined, 'written'],
    ] as const) {
      const host = memoryHost([], can);
      const { store, actions, ready } = makePane(host);
      await ready();
      await actions.makeInput('demo');
      await actions.plan();
      await actions.askToWrite();
      expect(store.get().writing.kind).toBe('written');
      host.type('Cutting', 0, 0, 'changed');
      expect(store.get().writing.kind).toBe(stands);
    }
  });

  test('a sheet that came to stand there after the question is not replaced', async () => {
    const host = demoHost();
    host.sheets.set('Cutting', { name: 'Cutting', ours: true, rows: [['old']] });
    const { actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    await actions.askToWrite();
    host.sheets.set('Client', { name: 'Client', ours: true, rows: [['came since']] });
    await actions.write();
    expect(host.log).toEqual([`write ${OUTPUT} for the tool, replacing Cutting`]);
  });

  test('a workbook that refuses to be written is said, and the plan stays', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    host.fails = 'write';
    await actions.askToWrite();
    const { trouble, writing, planning } = store.get();
    expect(trouble).toEqual([REFUSAL]);
    expect(writing.kind).toBe('idle');
    expect(planning.result).toBeDefined();
    expect(host.notes.has(WRITTEN_NOTE)).toBe(false);
  });

  test('inputs that changed since are known, also to a pane that opens anew', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    await actions.askToWrite();
    await actions.checkAgain();
    const isOld = (state = store.get()): boolean => {
      const { found } = state.reading;
      return found?.writtenFrom !== undefined && found.writtenFrom !== found.fingerprint;
    };
    expect(isOld()).toBe(false);
    host.type('Runs', 1, 3, '9\' 1"');
    await actions.checkAgain();
    expect(isOld()).toBe(true);
    expect(store.get().planning.result?.fingerprint).not.toBe(
      store.get().reading.found?.fingerprint,
    );
    const again = makePane(host);
    await again.ready();
    expect(isOld(again.store.get())).toBe(true);
    // It knows when they were written, from the clock that it was given then.
    const said =
      'The inputs have changed since the sheets were written (30 Nov 2026, 09:12): plan and write them again before anybody cuts by them.';
    expect([sayStale(store.get()), sayStale(again.store.get())]).toEqual([said, said]);
    expect(behindMark(again.store.get().reading.found!)).toBe(
      'Written from inputs of 30 Nov 2026, 09:12; inputs have changed since',
    );
    // A note of an earlier version tells no time.
    host.notes.set(WRITTEN_NOTE, '0123456789abcdef');
    await again.actions.checkAgain();
    expect(sayStale(again.store.get())).toBe(said.replace(' (30 Nov 2026, 09:12)', ''));
  });
});

describe('Planning', () => {
  test('does nothing while a problem stands', async () => {
    const host = demoHost();
    host.type('Runs', 2, 3, '3/0');
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    const { running, result, faults } = store.get().planning;
    expect({ running, result, faults }).toEqual({
      running: undefined,
      result: undefined,
      faults: [],
    });
    expect(store.get().announcement.text).not.toMatch(/Plan/u);
  });

  test('that is stopped writes nothing and leaves the earlier plan where it was', async () => {
    const host = demoHost();
    let stop = (): void => undefined;
    let isSlow = false;
    const { store, actions, ready } = makePane(host, {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          planJob: (job, options) => {
            if (isSlow) stop();
            return planner.planJob(job, options);
          },
        }),
    });
    stop = actions.stop;
    await ready();
    await actions.plan();
    const { result } = store.get().planning;
    expect(result).toBeDefined();
    isSlow = true;
    await actions.plan();
    const { planning, announcement } = store.get();
    expect(planning.stopped).toBe(true);
    expect(planning.running).toBeUndefined();
    expect(planning.result).toBe(result);
    expect(announcement.text).toBe('Stopped; the earlier plan stands.');
    expect(host.log).toEqual([]);
  });

  test('tells the profiles as they are planned, with cost and bound', async () => {
    const { store, actions, ready } = makePane(demoHost());
    await ready();
    const seen = new Set<string>();
    let withCost = 0;
    store.subscribe(() => {
      const { running } = store.get().planning;
      if (running === undefined) return;
      seen.add(running.profile);
      if (running.costCents !== undefined && running.boundCents !== undefined) {
        withCost += 1;
        expect(running.boundCents).toBeLessThanOrEqual(running.costCents);
      }
    });
    await actions.plan();
    const profiles = store.get().reading.found?.job?.profiles.map(({ name }) => name) ?? [];
    // Options are planned after the job itself, profile by profile too.
    const ofJob = [...seen].filter((name) => !name.startsWith('option '));
    expect(ofJob.sort()).toEqual(['', ...profiles].sort());
    expect(withCost).toBeGreaterThanOrEqual(profiles.length);
  });

  test('of a job that cannot be made gives every reason and no plan', async () => {
    const host = demoHost();
    const headings = host.sheets.get('Runs')?.rows[0] ?? [];
    host.type('Runs', 1, headings.indexOf('Length'), '900');
    host.type('Runs', 1, headings.indexOf('One piece'), 'yes');
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.plan();
    const { planning } = store.get();
    expect(planning.result).toBeUndefined();
    expect(planning.faults.map(({ code }) => code)).toContain('cutting.unserved');
    expect(store.get().announcement.text).toMatch(/^No plan: 1 problem/u);
  });

  test('is not begun for a cove that cannot be made: Checks say so at its size, as it is typed', async () => {
    const host = demoHost();
    host.type('Profiles', 1, 2, '30');
    host.type('Profiles', 1, 5, '31');
    host.type('Runs', 1, 3, 'long');
    const { store, actions, ready } = makePane(host);
    await ready();
    const faults = store.get().reading.found?.faults ?? [];
    expect(faults.map(({ code, where }) => [code, where && 'cell' in where && where.cell])).toEqual(
      [
        ['length.unreadable', 'D2'],
        ['cove.too-wide', 'C2'],
      ],
    );
    await actions.plan();
    expect(store.get().planning.result).toBeUndefined();
  });

  test('that does not add up is never written', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host, {
      loadPlanner: () =>
        Promise.resolve({ ...planner, checkJobPlan: () => ['A piece is missing.'] }),
    });
    await ready();
    await actions.plan();
    expect(store.get().planning.result?.wrong).toEqual(['A piece is missing.']);
    await actions.askToWrite();
    expect(host.log).toEqual([]);
  });
});

describe('Without a workbook beside it', () => {
  test('the pane makes a blank workbook as a file', async () => {
    const { store, actions, saved, ready } = makePane(undefined);
    await ready();
    expect(store.get().workbook).toEqual({ kind: 'none', why: 'plain page' });
    await actions.makeInput('blank');
    expect(saved).toEqual(['trim.xlsx']);
    expect(store.get().workbook.kind).toBe('none');
  });

  test('the demo is saved and opened, planned, and its sheets come as a file', async () => {
    const file = memoryHost([...demoHost().sheets.values()], AS_FILE);
    const { store, actions, saved, ready } = makePane(undefined, {
      openFile: () => Promise.resolve({ ok: true, value: file }),
    });
    await ready();
    await actions.makeInput('demo');
    await actions.plan();
    await actions.askToWrite();
    expect(saved).toEqual(['demo-trim.xlsx', 'House planned.xlsx']);
    expect(store.get().announcement.text).toBe(`${WRITTEN} were written to House planned.xlsx.`);
  });

  test('a file that cannot be opened is said, and the pane waits for another', async () => {
    const { store, actions, ready } = makePane(undefined, {
      openFile: () => Promise.resolve({ ok: false, faults: [REFUSAL] }),
    });
    await ready();
    const file = { name: 'a.xlsx', arrayBuffer: () => Promise.resolve(new ArrayBuffer(1)) };
    await actions.openFile(file);
    expect(store.get().trouble).toEqual([REFUSAL]);
    expect(store.get().busy).toBeUndefined();
    expect(store.get().workbook.kind).toBe('none');
  });
});

describe('An example of a function', () => {
  const reference = {
    id: 'tilt',
    name: 'COVE.TILT',
    description: '',
    parameters: [],
    example: '=COVE.TILT("3 5/8", "7/8", "3/8")',
  };

  test('goes into the selected cell in English, and it is said where', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    await actions.putExample(reference);
    expect(host.log).toEqual(['put =COVE.TILT("3 5/8", "7/8", "3/8")']);
    expect(store.get().announcement.text).toBe('The example of COVE.TILT is in Runs!Q2.');
  });

  test('that the workbook refuses is said too', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    host.fails = 'putFormula';
    await actions.putExample(reference);
    expect(store.get().functions.outcome).toEqual({
      id: 'tilt',
      text: REFUSAL.message,
      ok: false,
    });
  });
});
