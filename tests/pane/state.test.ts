import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { own } from '../../src/core/faults/argument.ts';
import { fault } from '../../src/core/faults/fault.ts';
import type { JobFound, TableMatch } from '../../src/pane/job/job-found.ts';
import type { PaneEvent } from '../../src/pane/state/pane-event.ts';
import { nextStepOf } from '../../src/pane/state/next-step.ts';
import { INITIAL_STATE, type PaneState } from '../../src/pane/state/pane-state.ts';
import { reduce } from '../../src/pane/state/reduce.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { createStore } from '../../src/pane/state/store.ts';
import { sayRead } from '../../src/pane/job/say-checks.ts';
import { sayStale } from '../../src/pane/plan/say-stale.ts';
import { usualShop } from '../../src/pane/profile/chosen-profile.ts';

const after = (...events: readonly PaneEvent[]): PaneState => events.reduce(reduce, INITIAL_STATE);

const RUNS: TableMatch = {
  name: 'Runs',
  required: true,
  place: { key: 'Runs', sheet: 'Runs', line: 1, headings: ['Room'], rowCount: 1 },
  alike: [],
  choice: undefined,
};

const STOCK: TableMatch = { ...RUNS, name: 'Stock', place: RUNS.place! };

const found = (faults: number, print = 'a'): JobFound => ({
  survey: { name: 'House.xlsx', places: [], sheets: [] },
  tables: [RUNS],
  job: undefined,
  asRead: readJob([], 'House.xlsx').asRead,
  runs: [],
  shop: usualShop(),
  settings: [],
  coves: [],
  rooms: [],
  faults: Array.from({ length: faults }, () => fault('table.empty', 'sheet.Runs', null)),
  cautions: [],
  fingerprint: print,
  inputs: [],
  writtenFrom: undefined,
});

const MADE = { day: '2026-11-30', effort: { steps: 1 } };
const WRITTEN = { plan: {} as never, fingerprint: 'a', tables: [], ...MADE };

describe('The next step', () => {
  const open: PaneEvent = { type: 'workbook opened', host: {} as never };
  const read = (turn: number, one: JobFound): PaneEvent[] => [
    { type: 'reading begun' },
    { type: 'job read', turn, found: one },
  ];
  const bare: TableMatch = { ...RUNS, place: { ...RUNS.place!, rowCount: 0 } };
  const nothing = { ...found(1), tables: [bare] };

  test('is a door where nothing is typed, whatever is missing; then the first problem, then the plan', () => {
    const blank = after(open, ...read(2, nothing));
    expect([nextStepOf(blank)?.kind, blank.tab]).toEqual(['begin', 'profile']);
    const typed = read(3, found(3)).reduce(reduce, blank);
    expect(nextStepOf(typed)).toMatchObject({ kind: 'mend', more: 2 });
    // The list has come: it is shown.
    expect(typed.tab).toBe('job');
    const clean = read(4, found(0)).reduce(reduce, typed);
    expect(nextStepOf(clean)).toEqual({ kind: 'plan' });
    const result = { ...WRITTEN, plan: { totals: {} }, cutKey: '', wrong: [] } as never;
    const about = { turn: 2, fingerprint: 'a', result, faults: [], cautions: [] };
    const planned = [
      { type: 'planning begun', of: 1 } as const,
      { type: 'planning ended', ...about } as const,
    ].reduce(reduce, clean);
    expect(nextStepOf(planned)).toEqual({ kind: 'write' });
    const event = { type: 'written', sheets: ['Cutting'], file: undefined, from: WRITTEN } as const;
    const written = reduce(planned, { ...event, at: new Date(0) });
    expect(nextStepOf(written)).toEqual({ kind: 'written' });
    const changed = read(5, found(0, 'b')).reduce(reduce, written);
    expect(nextStepOf(changed)).toEqual({ kind: 'plan' });
  });

  test('takes no tab away that a person chose, and shows a list that another workbook has', () => {
    const chosen = after(open, { type: 'tab chosen', tab: 'functions' }, ...read(2, nothing));
    expect(chosen.tab).toBe('functions');
    const onProfile = after(open, { type: 'tab chosen', tab: 'profile' }, ...read(2, found(0)));
    expect(onProfile.tab).toBe('profile');
    expect(after(open, ...read(2, nothing), open, ...read(4, found(0))).tab).toBe('job');
  });

  test('is begun by a list under headings of one’s own, not by a note', () => {
    const place = (headings: string[]) => ({ ...RUNS.place!, key: 'Mine', headings });
    const own = (headings: string[]): JobFound => ({
      ...found(0),
      tables: [{ ...RUNS, place: undefined }],
      survey: { name: '', places: [place(headings)], sheets: [] },
    });
    expect(nextStepOf(after(open, ...read(2, own(['Room', 'Item', 'Feet']))))).toEqual({
      kind: 'choose',
      table: 'Runs',
    });
    expect(nextStepOf(after(open, ...read(2, own(['Notes']))))).toEqual({ kind: 'begin' });
  });
});

describe('Readings of the workbook', () => {
  test('that another has overtaken change nothing, in whichever order they come back', () => {
    const begun = after({ type: 'reading begun' }, { type: 'reading begun' });
    const old = reduce(begun, { type: 'job read', turn: 1, found: found(3, 'old') });
    expect(old).toBe(begun);
    const failed = reduce(begun, {
      type: 'reading failed',
      turn: 1,
      faults: [fault('table.empty', 'sheet.Runs', null)],
    });
    expect(failed).toBe(begun);
    const read = reduce(begun, { type: 'job read', turn: 2, found: found(1, 'new') });
    expect(read.reading).toMatchObject({ busy: false, found: { fingerprint: 'new' } });
  });

  test('are heard when their counts change, and not at every keystroke', () => {
    const once = after({ type: 'reading begun' }, { type: 'job read', turn: 1, found: found(2) });
    expect(once.announcement).toEqual({ turn: 1, text: 'The tables were read: 2 problems.' });
    const again = [
      { type: 'reading begun' },
      { type: 'job read', turn: 2, found: found(2, 'b') },
    ] as const;
    expect(again.reduce<PaneState>(reduce, once).announcement).toBe(once.announcement);
    const fewer = [
      { type: 'reading begun' },
      { type: 'job read', turn: 2, found: found(1, 'b') },
    ] as const;
    expect(fewer.reduce<PaneState>(reduce, once).announcement.turn).toBe(2);
  });

  test('of a workbook without any table do not sound as if all were well', () => {
    const none = { ...found(0), tables: [{ ...RUNS, place: undefined }] };
    const read = after({ type: 'reading begun' }, { type: 'job read', turn: 1, found: none });
    expect(read.announcement.text).toBe('The workbook was read: no input tables are chosen yet.');
    const [place] = [RUNS.place!];
    const alike = {
      ...none,
      tables: [{ ...RUNS, place: undefined, alike: [place, place] }, STOCK],
    };
    expect(sayRead(alike)).toBe(
      'The tables were read: runs to be chosen; no problems in the others.',
    );
  });

  test('say once that the inputs are no longer those of the sheets that were written', () => {
    const survey = {
      name: '',
      places: [],
      sheets: [{ name: 'Cutting', ours: true, pointedAtBy: [] }],
    };
    const read = (turn: number, print: string): PaneEvent[] => [
      { type: 'reading begun' },
      { type: 'job read', turn, found: { ...found(0, print), survey, writtenFrom: 'a' } },
    ];
    const same = after(...read(1, 'a'));
    expect(sayStale(same)).toBeUndefined();
    const changed = read(2, 'b').reduce<PaneState>(reduce, same);
    expect(changed.announcement.text).toBe(sayStale(changed));
    expect(sayStale(changed)).toMatch(/^The inputs have changed since the sheets were written/u);
    const still = read(3, 'c').reduce<PaneState>(reduce, changed);
    expect(still.announcement).toBe(changed.announcement);
  });

  test('that fail of the same thing again are heard once', () => {
    const faults = () => [fault('host.editing-cell', own('The workbook'), null)];
    const once = after(
      { type: 'reading begun' },
      { type: 'reading failed', turn: 1, faults: faults() },
    );
    const again = [
      { type: 'reading begun' },
      { type: 'reading failed', turn: 2, faults: faults() },
    ] as const;
    const twice = again.reduce<PaneState>(reduce, once);
    expect(twice.announcement).toBe(once.announcement);
    expect(twice.reading.busy).toBe(false);
  });
});

describe('What the workbook refused', () => {
  const faults = [fault('host.editing-cell', own('The workbook'), null)];

  test('to a reading is put away when another succeeds', () => {
    const failed = after(
      { type: 'reading begun' },
      { type: 'reading failed', turn: 1, faults },
      { type: 'reading begun' },
    );
    expect(failed.trouble).toBe(faults);
    expect(reduce(failed, { type: 'job read', turn: 2, found: found(0) }).trouble).toEqual([]);
  });

  test('to something else stands until it was read and put away', () => {
    const state = after(
      { type: 'reading begun' },
      { type: 'trouble', faults },
      { type: 'job read', turn: 1, found: found(0) },
    );
    expect(state.trouble).toBe(faults);
    expect(reduce(state, { type: 'trouble put away' }).trouble).toEqual([]);
  });
});

describe('Columns chosen for a table', () => {
  const choose = (heading: string, theirs: string): PaneEvent => ({
    type: 'column chosen',
    heading,
    theirs,
  });

  test('stand for one of ours each: the one chosen last keeps it', () => {
    const state = after(
      { type: 'mapping begun', table: 'Runs' },
      choose('Room', 'Area'),
      choose('Run', 'Area'),
      choose('Length', 'Long'),
    );
    expect(state.mapping?.columns).toEqual({ Run: 'Area', Length: 'Long' });
    expect(reduce(state, choose('Run', '')).mapping?.columns).toEqual({ Length: 'Long' });
  });

  test('never give one of their columns twice, whatever is chosen', () => {
    const events = fc.array(
      fc.record({
        type: fc.constant('column chosen' as const),
        heading: fc.constantFrom('Room', 'Run', 'Profile', 'Length'),
        theirs: fc.constantFrom('', 'A', 'B', 'C'),
      }),
    );
    fc.assert(
      fc.property(events, (chosen) => {
        const { mapping } = after({ type: 'mapping begun', table: 'Runs' }, ...chosen);
        const theirs = Object.values(mapping?.columns ?? {});
        expect(new Set(theirs).size).toBe(theirs.length);
        expect(theirs).not.toContain('');
        const last = chosen.at(-1);
        if (last !== undefined && last.theirs !== '') {
          expect(mapping?.columns[last.heading]).toBe(last.theirs);
        }
      }),
    );
  });
});

describe('Planning', () => {
  test('moves and ends only for the planning that is running', () => {
    const begun = after({ type: 'planning begun', of: 4 }, { type: 'planning begun', of: 4 });
    expect(reduce(begun, { type: 'planning moved', turn: 1, progress: { done: 3 } })).toBe(begun);
    const moved = reduce(begun, { type: 'planning moved', turn: 2, progress: { done: 3 } });
    expect(moved.planning.running).toMatchObject({ done: 3, of: 4, stopping: false });
    expect(reduce(begun, { type: 'planning stopped', turn: 1 })).toBe(begun);
  });

  test('that is being stopped goes on saying so while it still moves', () => {
    const state = after(
      { type: 'planning begun', of: 4 },
      { type: 'planning stopping' },
      { type: 'planning moved', turn: 1, progress: { done: 1 } },
    );
    expect(state.planning.running?.stopping).toBe(true);
  });

  test('begun anew takes the word of sheets written before off the screen', () => {
    const state = after(
      { type: 'written', sheets: ['Cutting'], file: undefined, from: WRITTEN, at: new Date(0) },
      { type: 'planning begun', of: 1 },
    );
    expect(state.writing.kind).toBe('idle');
  });
});

describe('Another workbook', () => {
  test('begins with nothing found and nothing chosen in the one before', () => {
    const host = {} as never;
    const state = after(
      { type: 'reading begun' },
      { type: 'job read', turn: 1, found: found(2) },
      { type: 'profile chosen', name: 'Reading cove' },
      { type: 'mapping begun', table: 'Runs' },
      { type: 'workbook opened', host },
    );
    expect(state.reading.found).toBeUndefined();
    expect(state.profile.chosen).toBeUndefined();
    expect(state.mapping).toBeUndefined();
  });

  test('drops what is still being read of the one before', () => {
    const host = {} as never;
    const state = after({ type: 'reading begun' }, { type: 'workbook opened', host });
    const late = reduce(state, { type: 'job read', turn: 1, found: found(2) });
    expect(late.reading.found).toBeUndefined();
  });

  test('drops the plan of the one before, and one that is still being made', () => {
    const host = {} as never;
    const state = after(
      { type: 'planning begun', of: 1 },
      { type: 'workbook opened', host },
      {
        type: 'planning ended',
        turn: 1,
        fingerprint: 'a',
        result: undefined,
        faults: found(1).faults,
        cautions: [],
      },
    );
    expect(state.planning).toMatchObject({ running: undefined, result: undefined, faults: [] });
  });
});

describe('The store', () => {
  test('tells its listeners of changes alone, until they leave', () => {
    const store = createStore();
    let heard = 0;
    const leave = store.subscribe(() => (heard += 1));
    store.send({ type: 'planning stopping' });
    expect(heard).toBe(0);
    store.send({ type: 'tab chosen', tab: 'plan' });
    expect(heard).toBe(1);
    leave();
    store.send({ type: 'tab chosen', tab: 'job' });
    expect(heard).toBe(1);
    expect(store.get().tab).toBe('job');
  });
});
