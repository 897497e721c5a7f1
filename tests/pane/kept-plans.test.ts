import { describe, expect, test } from '@jest/globals';
import { SETTLE_MS } from '../../src/pane/actions/check-job.ts';
import { BROKEN_OFF, sayNewTicks, sayTicks } from '../../src/pane/plan/say-ticks.ts';
import type { PaneState } from '../../src/pane/state/pane-state.ts';
import { AS_FILE, memoryHost, sheetOf, type MemoryHost } from './memory-host.ts';
import { makePane, type TestPane } from './make-pane.ts';
import { tablesOf } from '../planning/make-job.ts';

const TABLES = tablesOf({
  runs: 'Room,Run,Profile,Length\nHall,a,Base,60 1/8\nHall,b,Base,59 7/8\nHall,c,Base,59',
  shop: 'Setting,Value\nend allowance,0\nend trim,0\ncrosscut kerf,0\nhourly rate,0',
  stock: "For,Kind,Length,Price,Per\nBase,stick,10',20,piece",
});
const house = (can = {}): MemoryHost =>
  memoryHost(TABLES.map(sheetOf), Object.keys(can).length === 0 ? undefined : AS_FILE);

async function open(host: MemoryHost, others = {}): Promise<TestPane> {
  const pane = makePane(host, others);
  pane.store.send({ type: 'planning seconds typed', seconds: '0' });
  await pane.ready();
  await settled();
  return pane;
}

/** Until what was begun by the opening or by a change has come to its end. */
async function settled(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, SETTLE_MS + 300));
}

async function planAndWrite({ actions, store }: TestPane): Promise<void> {
  await actions.plan();
  await actions.askToWrite();
  if (store.get().writing.kind === 'asking') await actions.write();
}

/** Where a stick has its name on the sheet that was written, from 0; its box is at the left of it. */
function placeOf(host: MemoryHost, stick: string): { row: number; column: number } {
  const rows = host.sheets.get('Cutting')!.rows;
  const name = `#${stick.split('#')[1]!} `;
  const isName = (value: unknown): boolean => typeof value === 'string' && value.startsWith(name);
  const row = rows.findIndex((cells) => cells.some(isName));
  return { row, column: rows[row]!.findIndex(isName) };
}

function tick(host: MemoryHost, stick: string, value: string | null = 'x'): void {
  const { row, column } = placeOf(host, stick);
  host.type('Cutting', row, column - 1, value);
}

/** What stands beside the ticked boxes of Cutting. */
function ticked(rows: readonly (readonly unknown[])[]): unknown[] {
  return rows.flatMap((cells) =>
    cells.flatMap((value, at) => (value === 'x' ? [cells[at + 1]] : [])),
  );
}

function layouts({ planning }: PaneState): string[] {
  return planning.result!.plan.profiles.flatMap(({ sticks }) =>
    sticks.map(
      ({ id, pieces, isCut }) =>
        `${id}: ${pieces.map((one) => one.id.split(' / ')[1]).join(', ')}${isCut === true ? ' (cut)' : ''}`,
    ),
  );
}

describe('A plan is kept with its workbook', () => {
  test('and is the very plan after a reload: the client’s copy can be made of it at once', async () => {
    const host = house();
    const first = await open(host);
    await planAndWrite(first);
    expect([...host.texts.keys()]).toEqual(['written-plan']);
    const again = await open(host);
    const { planning } = again.store.get();
    expect(planning.recalled).toBe(true);
    expect(planning.result!.plan.totals).toEqual(first.store.get().planning.result!.plan.totals);
    await again.actions.saveClient();
    await again.actions.saveExports();
    expect(again.saved).toEqual(['House-client.xlsx', 'House-files.zip']);
  });

  test('also where it was never written, and beside a file', async () => {
    const host = house();
    await (await open(host)).actions.plan();
    expect([...host.texts.keys()]).toEqual(['plan']);
    expect((await open(host)).store.get().planning.result).toBeDefined();
    const file = house(AS_FILE);
    await planAndWrite(await open(file));
    expect([...file.texts.keys()]).toEqual(['written-plan']);
  });

  test('of inputs that changed since it is kept, and said to be of older ones', async () => {
    const host = house();
    await planAndWrite(await open(host));
    host.type('Runs', 1, 3, '62');
    const again = await open(host);
    const { reading, planning } = again.store.get();
    expect(planning.result).toBeDefined();
    expect(planning.result!.fingerprint).not.toBe(reading.found!.fingerprint);
    await again.actions.saveClient();
    expect(again.saved).toEqual([]);
  });

  test('damaged or of another version it is refused in words, and planning anew puts it right', async () => {
    const host = house();
    await planAndWrite(await open(host));
    const text = host.texts.get('written-plan')!;
    for (const [broken, code] of [
      [text.slice(9), 'plan.kept-damaged'],
      [text.replace(/"program":"[^"]*"/u, '"program":"0.0.1"'), 'plan.kept-other-version'],
    ] as const) {
      host.texts.delete('plan');
      host.texts.set('written-plan', broken);
      const pane = await open(host);
      const { planning, announcement } = pane.store.get();
      expect(planning.result).toBeUndefined();
      expect(planning.keptFaults.map((one) => one.code)).toEqual([code]);
      expect(announcement.text).toContain('Plan the job anew.');
      await pane.actions.plan();
      expect(pane.store.get().planning.keptFaults).toEqual([]);
      expect(pane.store.get().planning.result).toBeDefined();
    }
  });

  test('Where it can’t be kept, that is said and the plan stands', async () => {
    const host = house();
    const pane = await open(host);
    host.fails = 'keepText';
    await pane.actions.plan();
    expect(pane.store.get().planning.result).toBeDefined();
    expect(pane.store.get().trouble).toHaveLength(1);
  });
});

describe('Ticks', () => {
  test('are heard, stay in the next plan, and stand on its sheets', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    expect(layouts(pane.store.get())).toEqual(['Base #1: a, b', 'Base #2: c']);
    tick(host, 'Base #1');
    await settled();
    const { ticks } = pane.store.get().planning;
    expect(sayTicks(ticks!)).toBe(
      '1 of 2 sticks cut or begun: it stays when the job is planned again, and only the rest is planned anew.',
    );
    expect(pane.store.get().announcement.text).toContain('1 of 2 sticks cut or begun');
    host.type('Runs', 1, 3, '62');
    await settled();
    await planAndWrite(pane);
    const after = ['Base #1: a, b (cut)', 'Base #2: a', 'Base #3: c'];
    expect(layouts(pane.store.get())).toEqual(after);
    const rows = host.sheets.get('Cutting')!.rows;
    // The lot's own row first: nobody pulls or buys it again.
    expect(ticked(rows)).toEqual(['A', '#1 A1', 'left over', 'R1-2']);
    // The same after a reload, and once more with nothing changed.
    const again = await open(host);
    expect(layouts(again.store.get())).toEqual(after);
    await again.actions.plan();
    expect(layouts(again.store.get())).toEqual(after);
  });

  test('typed after a plan keep it from being written: none is lost with the old sheets', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    await pane.actions.plan();
    tick(host, 'Base #2');
    await pane.actions.askToWrite();
    expect(pane.store.get().writing.kind).toBe('idle');
    expect(sayNewTicks(pane.store.get().planning)).toContain('plan again');
    await planAndWrite(pane);
    expect(layouts(pane.store.get())[1]).toBe('Base #2: c (cut)');
  });

  test('stay where the very plan of the sheets is written once more', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    tick(host, 'Base #2');
    await pane.actions.askToWrite();
    await pane.actions.write();
    const rows = host.sheets.get('Cutting')!.rows;
    expect(ticked(rows)).toEqual(['A', '#2 A2', 'R1-3']);
  });

  test('can be dropped: all is planned anew, and the sheets then have none', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    tick(host, 'Base #1');
    await settled();
    await pane.actions.planAnew();
    expect(pane.store.get().planning.result!.plan.totals.sticksCut).toBe(0);
    await pane.actions.askToWrite();
    await pane.actions.write();
    expect(host.sheets.get('Cutting')!.rows.some((cells) => cells.includes('x'))).toBe(false);
  });

  test('taken off again free the stick', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    tick(host, 'Base #1');
    await planAndWrite(pane);
    expect(pane.store.get().planning.result!.plan.totals.sticksCut).toBe(1);
    const rows = host.sheets.get('Cutting')!.rows;
    rows.forEach((cells, at) => {
      cells.forEach((value, column) => {
        if (value === 'x') host.type('Cutting', at, column, null);
      });
    });
    await planAndWrite(pane);
    expect(pane.store.get().planning.result!.plan.totals.sticksCut).toBe(0);
  });

  test('on sheets of another plan than the kept one are not taken for its own', async () => {
    const host = house();
    const pane = await open(host);
    await planAndWrite(pane);
    const { column } = placeOf(host, 'Base #2');
    const row = host.sheets.get('Cutting')!.rows.findIndex((cells) => cells[column] === 'R1-3');
    expect(row).toBeGreaterThan(0);
    host.type('Cutting', row, column, 'R1-9');
    tick(host, 'Base #2');
    await settled();
    expect(pane.store.get().planning.ticksLost).toBe(true);
    expect(pane.store.get().announcement.text).toContain('can’t be read');
  });
});

test('Left in the middle of planning, the next visit says that it was broken off', async () => {
  const notes = new Map<string, string>();
  const visit = {
    get: (key: string) => notes.get(key),
    set: (key: string, value: string) => void notes.set(key, value),
  };
  const host = house();
  const pane = await open(host, { visit });
  const planning = pane.actions.plan();
  expect(notes.get('planning')).toBe('yes');
  const again = await open(house(), { visit });
  expect(again.store.get().planning.brokenOff).toBe(true);
  expect(again.store.get().announcement.text).toContain(BROKEN_OFF.slice(0, 20));
  await planning;
  expect(notes.get('planning')).toBe('');
  await again.actions.plan();
  expect(again.store.get().planning.brokenOff).toBe(false);
});
