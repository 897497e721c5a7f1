import { describe, expect, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { COUNT_REST_MS } from '../../src/pane/actions/count-list.ts';
import { sayCounted } from '../../src/pane/job/say-counted.ts';
import { PLAIN, planOf, tablesOf } from '../planning/make-job.ts';
import { demoHost, makePane } from './make-pane.ts';
import { memoryHost, sheetOf } from './memory-host.ts';

/** Its cove and its corners. */
const PAGES_OF_A_CROWN = 2;

describe('Planning', () => {
  test('that is stopped while it plans keeps the best plan so far', async () => {
    const { store, actions, ready } = makePane(demoHost(), {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          planJob: (job, options) => {
            actions.stop();
            return planner.planJob(job, options);
          },
        }),
    });
    await ready();
    await actions.plan();
    // It can be printed as it stands, one part after the other.
    await actions.printPlan();
    const { choices } = store.get().printing!;
    const [first, late, then] = [choices[0]!, choices.at(-1)!, choices[1]!];
    expect([store.get().printing!.chosen, store.get().printing!.pages?.blocks]).toEqual([
      first.key,
      1,
    ]);
    const slow = actions.choosePrint(late);
    await Promise.all([slow, actions.choosePrint(then)]);
    expect(store.get().printing).toMatchObject({
      chosen: then.key,
      pages: { blocks: PAGES_OF_A_CROWN },
    });
    const { stopped, running, result } = store.get().planning;
    expect({ stopped, running }).toEqual({ stopped: false, running: undefined });
    expect(result?.wrong).toEqual([]);
    expect(result?.plan.groups.some(({ answer }) => answer.status === 'unfinished')).toBe(true);
  });

  test('that is stopped before it has begun says that nothing was planned', async () => {
    const { store, actions, ready } = makePane(demoHost());
    await ready();
    const planning = actions.plan();
    actions.stop();
    await planning;
    const { stopped, result } = store.get().planning;
    expect({ stopped, result }).toEqual({ stopped: true, result: undefined });
    expect(store.get().announcement.text).toBe('Stopped; nothing was planned.');
  });

  test('looks for a cheaper plan for as long as was typed, and not at all for what is no number', async () => {
    const asked: unknown[] = [];
    const kept: unknown[] = [];
    const { store, actions, ready } = makePane(demoHost(), {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          planJob: (job, options) => {
            asked.push(options.seconds);
            return planner.planJob(job, options);
          },
        }),
      preferences: { get: () => undefined, set: (...both) => void kept.push(both) },
    });
    await ready();
    await actions.plan();
    for (const seconds of ['soon', '-1', '3601', '', '1.5']) {
      store.send({ type: 'planning seconds typed', seconds });
      await actions.plan();
    }
    expect(asked).toEqual([20, 1.5]);
    expect(kept).toEqual([
      ['seconds', '20'],
      ['seconds', '1.5'],
    ]);
  });
});

describe('What the list comes to while it is typed', () => {
  const rest = (milliseconds: number): Promise<void> =>
    new Promise((resolve) => setTimeout(resolve, milliseconds));
  const until = async (isSo: () => boolean): Promise<void> => {
    for (let turn = 0; turn < 500 && !isSo(); turn++) await rest(20);
  };

  test('is the quick plan’s, profile by profile and in all; newer input ends it, and what is at fault has none', async () => {
    const host = memoryHost(tablesOf(PLAIN).map(sheetOf));
    const begun: string[] = [];
    const { store, actions, ready } = makePane(host, {
      loadPlanner: () =>
        Promise.resolve({
          ...planner,
          planQuick: async (job, isStale) => {
            begun.push(job.runs.map(({ length }) => length.toString()).join());
            // Somebody types while it is counted.
            if (begun.length === 1) {
              host.type('Runs', 1, 3, '120');
              await until(isStale);
            }
            return planner.planQuick(job, isStale);
          },
        }),
    });
    await ready();
    store.send({ type: 'tab chosen', tab: 'job' });
    const end = actions.keepCounted();
    await until(() => store.get().counted !== undefined);
    expect(begun).toEqual(['100', '120']);
    const { counted, reading } = store.get();
    expect(counted?.fingerprint).toBe(reading.found?.fingerprint);
    const quick = await planOf(
      { ...PLAIN, runs: PLAIN.runs.replace('100', '120') },
      { seconds: 0, now: () => 0 },
    );
    expect(sayCounted(counted!.plan!)).toEqual(sayCounted(quick));
    const { priceCents, sticks, lengthNet } = quick.totals;
    expect([sticks, Number(lengthNet)]).toEqual([1, 120]);
    expect(sayCounted(quick).at(-1)).toEqual({
      name: 'All',
      price: `$${(priceCents / 100).toFixed(2)}`,
      amount: `10' 0", 1 stick`,
    });
    host.type('Runs', 1, 3, 'about nine feet');
    await until(() => store.get().reading.found?.faults.length === 1);
    await rest(2 * COUNT_REST_MS);
    expect(begun).toHaveLength(2);
    end();
  });
});
