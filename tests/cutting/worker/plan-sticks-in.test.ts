import { describe, expect, test } from '@jest/globals';
import type { Outcome } from '../../../src/core/faults/fault.ts';
import { planSticks } from '../../../src/cutting/plan-sticks.ts';
import type { PlanSticksOptions, StickAnswer } from '../../../src/cutting/problem/problem.ts';
import { planSticksIn } from '../../../src/cutting/worker/plan-sticks-in.ts';
import { pieces, problemOf, stick } from '../problem-maker.ts';
import { clock, scriptedWorker, settled, type Clock, type ScriptedWorker } from './ports.ts';

const PROBLEM = problemOf(pieces([50, 40, 30]), [stick(100)]);

/** The three pieces by hand, each from its own stick of 100 for 1.00: right, and dearer than need be. */
const DEAR: StickAnswer = {
  plan: {
    sticks: [50, 40, 30].map((length, at) => ({
      supplyId: 's100',
      profile: '',
      unit: at,
      rip: 0,
      strip: 0,
      pieces: [{ demandId: `p${at}`, length }],
      offcut: 100 - length,
    })),
    unserved: [],
    costCents: 300,
    creditCents: 0,
    laborCents: 0,
  },
  bound: { costCents: 120, duals: [], credits: [] },
  status: 'gap',
};

/** Two on one stick, one on another: 120 of length need two. */
const CHEAP: StickAnswer = {
  plan: {
    ...DEAR.plan,
    sticks: [
      {
        ...DEAR.plan.sticks[0]!,
        pieces: [
          { demandId: 'p0', length: 50 },
          { demandId: 'p1', length: 40 },
        ],
        offcut: 10,
      },
      { ...DEAR.plan.sticks[2]!, unit: 1 },
    ],
    costCents: 200,
  },
  bound: { costCents: 200, duals: [], credits: [] },
  status: 'proven',
};

/** What no stick gives: the last piece is missing. */
const WRONG: StickAnswer = { ...DEAR, plan: { ...DEAR.plan, sticks: DEAR.plan.sticks.slice(1) } };

interface Bench {
  readonly time: Clock;
  readonly workers: ScriptedWorker[];
  readonly plan: (options?: PlanSticksOptions) => Promise<Outcome<StickAnswer>>;
}

function bench(): Bench {
  const time = clock();
  const workers: ScriptedWorker[] = [];
  const plan = planSticksIn(() => {
    const worker = scriptedWorker();
    workers.push(worker);
    return worker;
  }, time);
  return { time, workers, plan: (options) => plan(PROBLEM, options) };
}

const progress = (answer: StickAnswer, call = 1) =>
  ({
    kind: 'progress',
    call,
    phase: 'trying',
    costCents: answer.plan.costCents,
    boundCents: answer.bound.costCents,
    answer,
  }) as const;

const ended = (value: StickAnswer, call = 1) =>
  ({ kind: 'ended', call, outcome: { ok: true, value } }) as const;

/** The plan is not the planner's own of this thread, which fills a stick with two. */
const unfinished = (answer: StickAnswer) => ({
  ok: true,
  value: { ...answer, status: 'unfinished' },
});

describe('A planner in a worker', () => {
  test('is sent the problem, its budget and its seed, and its answer comes back as it is', async () => {
    const { time, workers, plan } = bench();
    const budget = { milliseconds: 2000, steps: 70 };
    const planning = plan({ budget, seed: 9 });
    expect(workers[0]!.heard).toEqual([
      { kind: 'plan', call: 1, problem: PROBLEM, budget, seed: 9 },
    ]);
    workers[0]!.say({ kind: 'begun', call: 1 });
    workers[0]!.say(ended(CHEAP));
    expect(await planning).toEqual({ ok: true, value: CHEAP });
    expect(time.running()).toBe(0);
  });

  test('tells how far it is, with the best plan that has come so far', async () => {
    const { workers, plan } = bench();
    const seen: unknown[] = [];
    const planning = plan({
      onProgress: ({ phase, costCents, boundCents, answer }) =>
        seen.push([phase, costCents, boundCents, answer().plan.costCents]),
    });
    const worker = workers[0]!;
    worker.say(progress(DEAR));
    worker.say({ kind: 'progress', call: 1, phase: 'next', costCents: 250, boundCents: 130 });
    worker.say(progress(CHEAP));
    worker.say(ended(CHEAP));
    await planning;
    expect(seen).toEqual([
      ['trying', 300, 120, 300],
      ['next', 250, 130, 300],
      ['trying', 200, 200, 200],
    ]);
  });

  test('serves the next call too, and what comes late of an earlier one is not taken for it', async () => {
    const { workers, plan } = bench();
    const first = plan();
    workers[0]!.say(ended(CHEAP));
    await first;
    const second = plan();
    workers[0]!.say(ended(CHEAP, 1));
    workers[0]!.say(ended(DEAR, 2));
    expect(await second).toEqual({ ok: true, value: DEAR });
    expect([workers.length, workers[0]!.isEnded()]).toEqual([1, false]);
  });

  test('that is at work is not asked a second thing: another one is, and only one is kept', async () => {
    const { workers, plan } = bench();
    const both = [plan(), plan()];
    workers[1]!.say(ended(DEAR, 2));
    workers[0]!.say(ended(CHEAP, 1));
    expect(await Promise.all(both)).toEqual([
      { ok: true, value: CHEAP },
      { ok: true, value: DEAR },
    ]);
    expect(workers.map((one) => one.isEnded()).sort()).toEqual([false, true]);
  });

  test('gives the faults of a problem as any planner does', async () => {
    const { workers, plan } = bench();
    const planning = plan();
    workers[0]!.say({ kind: 'ended', call: 1, outcome: { ok: false, faults: [] } });
    expect(await planning).toEqual({ ok: false, faults: [] });
  });

  test('passes on what its caller throws, and is not used again', async () => {
    const { time, workers, plan } = bench();
    const planning = plan({
      onProgress: () => {
        throw new Error('the screen is gone');
      },
    });
    workers[0]!.say(progress(DEAR));
    await expect(planning).rejects.toThrow('the screen is gone');
    expect([workers[0]!.isEnded(), time.running()]).toEqual([true, 0]);
  });
});

describe('A stop', () => {
  test('is passed on, and what the worker then answers stands', async () => {
    const { time, workers, plan } = bench();
    const signal = { aborted: false };
    const planning = plan({ signal });
    time.pass(500);
    expect(workers[0]!.heard).toHaveLength(1);
    signal.aborted = true;
    time.pass(50);
    expect(workers[0]!.heard[1]).toEqual({ kind: 'stop', call: 1 });
    workers[0]!.say(ended({ ...DEAR, status: 'unfinished' }));
    expect(await planning).toEqual(unfinished(DEAR));
    expect(workers[0]!.isEnded()).toBe(false);
  });

  test('that is not answered ends the worker within a second and keeps the best so far', async () => {
    const { time, workers, plan } = bench();
    const signal = { aborted: false };
    const planning = plan({ signal });
    workers[0]!.say(progress(CHEAP));
    workers[0]!.say(progress(DEAR));
    signal.aborted = true;
    time.pass(650);
    expect(workers[0]!.isEnded()).toBe(false);
    time.pass(200);
    expect(await planning).toEqual(unfinished(DEAR));
    expect([workers[0]!.isEnded(), time.running()]).toEqual([true, 0]);
  });

  test('leaves proven what was proven already', async () => {
    const { time, workers, plan } = bench();
    const signal = { aborted: false };
    const planning = plan({ signal });
    workers[0]!.say(progress(CHEAP));
    signal.aborted = true;
    time.pass(1000);
    expect(await planning).toEqual({ ok: true, value: CHEAP });
  });

  test('before any plan still gives the first quick one, of this thread', async () => {
    const { time, workers, plan } = bench();
    const signal = { aborted: false };
    const planning = plan({ signal });
    signal.aborted = true;
    time.pass(1000);
    expect(await planning).toEqual(await planSticks(PROBLEM, { signal }));
    expect(workers[0]!.isEnded()).toBe(true);
  });

  test('before the beginning starts no worker', async () => {
    const { workers, plan } = bench();
    const signal = { aborted: true };
    expect(await plan({ signal })).toEqual(await planSticks(PROBLEM, { signal }));
    expect(workers).toEqual([]);
  });
});

describe('A worker that fails', () => {
  const here = planSticks(PROBLEM);

  test.each<[string, (worker: ScriptedWorker, time: Clock) => void]>([
    ['dies', (worker) => worker.crash()],
    ['throws', (worker) => worker.say({ kind: 'broken', call: 1, what: 'out of memory' })],
    ['never begins', (_, time) => time.pass(15_100)],
    [
      'begins and then is silent',
      (worker, time) => (worker.say({ kind: 'begun', call: 1 }), time.pass(7_100)),
    ],
    ['answers with a plan that is wrong', (worker) => worker.say(ended(WRONG))],
  ])('before its first plan leaves the planning to this thread: it %s', async (_, fail) => {
    const { time, workers, plan } = bench();
    const planning = plan({ budget: { milliseconds: 2000 } });
    fail(workers[0]!, time);
    expect(await planning).toEqual(await here);
    expect(time.running()).toBe(0);
  });

  test.each<[string, (worker: ScriptedWorker, time: Clock) => void]>([
    ['dies', (worker) => worker.crash()],
    ['throws', (worker) => worker.say({ kind: 'broken', call: 1, what: 'no solver' })],
    ['is silent', (_, time) => time.pass(7_100)],
    ['answers with a plan that is wrong', (worker) => worker.say(ended(WRONG))],
  ])('after it leaves the best so far, unfinished: it %s', async (_, fail) => {
    const { time, workers, plan } = bench();
    const planning = plan({ budget: { milliseconds: 2000 } });
    workers[0]!.say(progress(DEAR));
    workers[0]!.say(progress(WRONG));
    fail(workers[0]!, time);
    expect(await planning).toEqual(unfinished(DEAR));
    expect(time.running()).toBe(0);
  });

  test('is given the whole of its time, and five seconds more', async () => {
    const { time, workers, plan } = bench();
    const planning = plan({ budget: { milliseconds: 2000 } });
    time.pass(10_000);
    workers[0]!.say({ kind: 'begun', call: 1 });
    time.pass(6_900);
    expect(workers[0]!.isEnded()).toBe(false);
    workers[0]!.say(ended(CHEAP));
    expect(await planning).toEqual({ ok: true, value: CHEAP });
  });

  test('while it waits for work is replaced', async () => {
    const { workers, plan } = bench();
    const first = plan();
    workers[0]!.say(ended(CHEAP));
    await first;
    workers[0]!.crash();
    const second = plan();
    workers[1]!.say(ended(DEAR, 2));
    expect(await second).toEqual({ ok: true, value: DEAR });
  });

  test('to start, or to take the problem, leaves the planning to this thread', async () => {
    const time = clock();
    const none = planSticksIn(() => {
      throw new Error('no worker here');
    }, time);
    expect(await none(PROBLEM)).toEqual(await here);
    const deaf = planSticksIn(
      () => ({
        ...scriptedWorker(),
        post: () => {
          throw new Error('cannot be copied');
        },
      }),
      time,
    );
    expect(await deaf(PROBLEM)).toEqual(await here);
    await settled();
    expect(time.running()).toBe(0);
  });
});
