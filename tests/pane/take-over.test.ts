import { describe, expect, test } from '@jest/globals';
import { marksOf, sayRunCount } from '../../src/pane/job/say-runs.ts';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { keyOf } from '../../src/planning/rooms/typed-runs.ts';
import { fitRoom } from '../../src/planning/rooms/room-fittings.ts';
import { PLAIN, tablesOf, type Tables } from '../planning/make-job.ts';
import { READING_ROOM } from '../planning/reading-room.ts';
import { makePane, type TestPane } from './make-pane.ts';
import { AS_FILE, memoryHost, sheetOf, type MemoryHost } from './memory-host.ts';

const HEADINGS =
  'Room,Run,Profile,Length,Measured as,Quantity,Left end,Right end,Left corner,Right corner,Note';

function hostOf(tables: Tables = {}): MemoryHost {
  const all = tablesOf({ ...READING_ROOM, runs: HEADINGS, ...tables });
  return memoryHost(all.map(sheetOf));
}

/** Keys of made runs that are so. */
function madeKeys({ store }: TestPane, is: (run: string, profile: string) => boolean): string[] {
  return store
    .get()
    .reading.found!.runs.filter(
      ({ run, from }) => from.row === undefined && is(run.run, run.profile),
    )
    .map(({ run }) => keyOf(run));
}

const rowsOf = (host: MemoryHost) => host.sheets.get('Runs')!.rows;
const piecesOf = ({ store }: TestPane) =>
  listPieces(store.get().reading.found!.job!).pieces.map(({ id, mark, cutLength }) => [
    ...[id, mark],
    Number(cutLength),
  ]);

describe('Runs that Walls and Trim make', () => {
  test('are taken over by one click, as rows of the person’s own Runs, and plan to the same pieces', async () => {
    const host = hostOf();
    const pane = makePane(host);
    await pane.ready();
    const before = piecesOf(pane);
    expect(sayRunCount(pane.store.get().reading.found!.runs)).toBe(
      '18 runs: 18 made from Walls and Trim.',
    );
    await pane.actions.takeOver(
      madeKeys(pane, (run, profile) => run === '3' && profile === 'Base'),
    );
    expect(rowsOf(host).slice(1)).toEqual([
      ['Reading room', '3', 'Base', '96"', null, null, null, 'outside miter', null, null, null],
    ]);
    const { notice, busy, trouble, reading } = pane.store.get();
    expect([notice, busy, trouble]).toEqual([
      '1 run was taken over: on Runs, row 2. What stands there is planned now in place of what was made.',
      undefined,
      [],
    ]);
    expect(host.log).toEqual(['show {"sheet":"Runs","cell":"A2"}']);
    expect(sayRunCount(reading.found!.runs)).toBe(
      '18 runs: 17 made from Walls and Trim, 1 typed in Runs.',
    );
    expect(piecesOf(pane)).toEqual(before);
    await pane.actions.takeOver(madeKeys(pane, () => true));
    expect(rowsOf(host)).toHaveLength(19);
    expect(piecesOf(pane)).toEqual(before);
    expect(pane.store.get().reading.found!.cautions.map(({ code }) => code)).toContain(
      'room.runs-taken-over',
    );
    await pane.actions.takeOver(madeKeys(pane, () => true));
    expect(pane.store.get().notice).toBe('Nothing was taken over: no such run is made any more.');
  });

  test('are taken over into a sheet Runs that is made first where there is none', async () => {
    const all = tablesOf(READING_ROOM).filter(({ name }) => name !== 'Runs');
    const host = memoryHost(all.map(sheetOf));
    const pane = makePane(host);
    await pane.ready();
    const before = piecesOf(pane);
    await pane.actions.takeOver(madeKeys(pane, (run) => run === '2'));
    expect(host.log[0]).toBe('write Runs for the person, replacing none');
    expect(piecesOf(pane)).toEqual(before);
    expect(pane.store.get().notice).toMatch(/^3 runs were taken over: on Runs, rows 2 to 4/u);
  });

  test('are left as they are where Runs lacks a column for them, or the workbook takes no rows', async () => {
    const host = hostOf({ runs: 'Room,Run,Profile,Length' });
    const pane = makePane(host);
    await pane.ready();
    await pane.actions.takeOver(madeKeys(pane, () => true));
    expect(rowsOf(host)).toHaveLength(1);
    expect(pane.store.get().trouble.map(({ code, argument }) => [code, argument])).toEqual([
      ['room.runs-lack-heading', 'leftEnd'],
      ['room.runs-lack-heading', 'rightEnd'],
    ]);
    const refusing = hostOf();
    const other = makePane(refusing);
    await other.ready();
    refusing.fails = 'appendRows';
    await other.actions.takeOver(madeKeys(other, () => true));
    expect(other.store.get()).toMatchObject({
      busy: undefined,
      trouble: [{ code: 'host.refused' }],
    });
    expect(memoryHost([], AS_FILE).can.appendRows).toBe(false);
  });

  test('are listed with the marks that they have on the plan, also while another table is at fault', async () => {
    const host = hostOf({ stock: `${PLAIN.stock}\nRail,pole,,,16',2,foot,,` });
    const pane = makePane(host);
    await pane.ready();
    const { job, asRead, runs } = pane.store.get().reading.found!;
    expect([job, runs.length]).toEqual([undefined, 18]);
    const fittings = fitRoom(asRead, 'reading ROOM');
    const marks = [...marksOf(fittings).values()];
    // The base of wall 2, which a cased opening parts, goes up in two.
    expect(marks.slice(0, 3)).toEqual([['1A'], ['2A', '7A'], ['3A']]);
    expect(fitRoom(asRead, 'Attic')).toBeUndefined();
  });
});

describe('Rates that hours have otherwise than Work', () => {
  const COVES: Tables = {
    runs: 'Room,Profile,Length,Measured as\nHall,Cove,60,finished\nHall,Cove,60,finished',
    work: 'Work,Per,Minutes,Money,For,Ours\nsmooth,,8,,,',
    hours: 'Date,Work,Profile,Hours\n,set up a cove,,1:00\n,smooth,,0.75\n,cope,,1',
  };
  const plannedPane = async (more: Tables = {}) => {
    const host = memoryHost(tablesOf({ ...COVES, ...more }).map(sheetOf));
    const pane = makePane(host);
    await pane.ready();
    pane.store.send({ type: 'planning seconds typed', seconds: '0' });
    await pane.actions.plan();
    return { host, pane };
  };
  const workOf = (host: MemoryHost) => host.sheets.get('Work')!.rows.slice(1);

  test('are taken over as a row of Work where no cell says them, and never into a cell of the person’s', async () => {
    const { host, pane } = await plannedPane();
    const before = workOf(host);
    await pane.actions.takeOverRate('smooth, per square foot');
    expect(workOf(host)).toEqual(before);
    expect(pane.store.get().notice).toContain('Nothing was taken over');
    await pane.actions.takeOverRate('set up a cove, per set-up');
    // 0.88 h by hand (tests/planning/hours.test.ts).
    expect(workOf(host)).toEqual([
      ...before,
      ['set up a cove', 'set-up', '52.8', null, null, 'yes'],
    ]);
    expect(pane.store.get()).toMatchObject({ busy: undefined, trouble: [] });
    expect(pane.store.get().notice).toBe(
      '52.8 min for set up a cove, per set-up, were taken over: on Work, row 3. Plan the job again to have its price by it.',
    );
    // The job has changed by it: what stands in the pane is of the job before.
    await pane.actions.takeOverRate('set up a cove, per set-up');
    expect(workOf(host)).toHaveLength(before.length + 1);
  });

  test('are those of the hours that were written down since the plan', async () => {
    const { host, pane } = await plannedPane();
    // By hand: (0.8333 h · 16 + 0.6667 h · 9) / 25, at spreads of a quarter and a third of an hour.
    host.type('Hours', 1, 3, '0:50');
    await pane.actions.takeOverRate('set up a cove, per set-up');
    expect(workOf(host).at(-1)).toEqual(['set up a cove', 'set-up', '46.4', null, null, 'yes']);
  });

  test('are left where Work lacks a column for them, or Shop has a row for them', async () => {
    const lacking = await plannedPane({ work: 'Work,Minutes\nsmooth,8' });
    await lacking.pane.actions.takeOverRate('set up a cove, per set-up');
    expect(workOf(lacking.host)).toHaveLength(1);
    expect(lacking.pane.store.get().trouble).toMatchObject([{ code: 'rates.lack-heading' }]);
    const onShop = await plannedPane({ shop: `${PLAIN.shop}\nset-up minutes,40` });
    await onShop.pane.actions.takeOverRate('set up a cove, per set-up');
    expect(workOf(onShop.host)).toHaveLength(1);
    expect(onShop.pane.store.get().notice).toContain('Nothing was taken over');
  });
});
