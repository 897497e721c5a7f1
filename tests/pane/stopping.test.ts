import { describe, expect, test } from '@jest/globals';
import { planner } from '../../src/browser/load-planner.ts';
import { demoHost, makePane } from './make-pane.ts';

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
