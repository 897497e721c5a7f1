import { describe, expect, test } from '@jest/globals';
import { planSticks } from '../../../src/cutting/plan-sticks.ts';
import type { StickProblem } from '../../../src/cutting/problem/problem.ts';
import { answerCalls, type WorkerDeps } from '../../../src/cutting/worker/answer-calls.ts';
import type { FromWorker, PlanCall, ToWorker } from '../../../src/cutting/worker/messages.ts';
import { pieces, problemOf, seededNumbers, stick } from '../problem-maker.ts';
import { settled } from './ports.ts';

const draw = seededNumbers(3);
/** Hard enough for the quick plans not to be proven at once. */
const PROBLEM = problemOf(
  pieces(Array.from({ length: 60 }, () => 150 + draw(500))),
  [stick(960, { priceCents: 950 }), stick(1440, { priceCents: 1510 })],
  { kerf: 2 },
);

interface Line {
  readonly said: FromWorker[];
  readonly ask: (message: ToWorker) => void;
}

function workerWith(deps: Partial<WorkerDeps> = {}): Line {
  const said: FromWorker[] = [];
  let hear: (message: ToWorker) => void = () => undefined;
  let time = 0;
  answerCalls(
    {
      post: (message) => void said.push(structuredClone(message)),
      onMessage: (next) => {
        hear = next;
      },
    },
    { now: () => (time += 1), pause: () => Promise.resolve(), ...deps },
  );
  return { said, ask: (message) => hear(structuredClone(message)) };
}

const call = (problem: StickProblem, more: Partial<PlanCall> = {}): PlanCall => ({
  kind: 'plan',
  call: 5,
  problem,
  ...more,
});

/** Until it has ended or broken. */
async function endOf({ said }: Line): Promise<FromWorker> {
  for (let turn = 0; turn < 10_000; turn++) {
    const last = said.at(-1);
    if (last?.kind === 'ended' || last?.kind === 'broken') return last;
    await settled();
  }
  throw new RangeError('The worker does not end.');
}

describe('A worker', () => {
  test('says that it has begun, tells its gains, the first written out, and ends with the planner’s answer', async () => {
    const line = workerWith();
    line.ask(call(PROBLEM, { seed: 4 }));
    const end = await endOf(line);
    expect(end).toEqual({
      kind: 'ended',
      call: 5,
      outcome: await planSticks(PROBLEM, { seed: 4 }),
    });
    expect(line.said[0]).toEqual({ kind: 'begun', call: 5 });
    expect(line.said[1]).toMatchObject({ kind: 'progress', call: 5, answer: { plan: {} } });
  });

  test('writes a plan out no more often than about three times a second', async () => {
    let time = 0;
    const now = (): number => (time += 20);
    const line = workerWith({ now });
    const times: number[] = [];
    const push = line.said.push.bind(line.said);
    line.said.push = (...messages) => {
      if (messages.some((one) => one.kind === 'progress' && one.answer !== undefined))
        times.push(time);
      return push(...messages);
    };
    line.ask(call(PROBLEM));
    await endOf(line);
    expect(times.length).toBeGreaterThan(0);
    times.slice(1).forEach((at, index) => expect(at - times[index]!).toBeGreaterThanOrEqual(300));
  });

  test('hears a stop of its call between two steps, and of no other', async () => {
    const plans: number[] = [];
    const stops = [4, 5];
    for (const stopped of stops) {
      let pauses = 0;
      const line: Line = workerWith({
        pause: () => {
          pauses += 1;
          if (pauses === 1) line.ask({ kind: 'stop', call: stopped });
          return Promise.resolve();
        },
      });
      line.ask(call(PROBLEM));
      const end = await endOf(line);
      plans.push(pauses);
      expect(end).toMatchObject({
        kind: 'ended',
        outcome: { value: { status: stopped === 5 ? 'unfinished' : 'gap' } },
      });
    }
    // The quick plans are made whole all the same: here no solver goes on from them.
    expect(plans[1]).toBe(plans[0]);
    expect(plans[0]).toBeGreaterThan(1);
  });

  test('counts its steps as the planner does', async () => {
    const line = workerWith();
    line.ask(call(PROBLEM, { budget: { steps: 1 } }));
    const end = await endOf(line);
    expect(end).toMatchObject({ outcome: await planSticks(PROBLEM, { budget: { steps: 1 } }) });
  });

  test('gives the faults of a problem', async () => {
    const line = workerWith();
    line.ask(call({ ...PROBLEM, supplies: [] }));
    const end = await endOf(line);
    expect(end).toMatchObject({ kind: 'ended', outcome: { ok: false } });
  });

  test('whose solver does not load says so, after the quick plans are told', async () => {
    const line = workerWith({ loadSolver: () => Promise.reject(new Error('404')) });
    line.ask(call(PROBLEM));
    expect(await endOf(line)).toEqual({ kind: 'broken', call: 5, what: '404' });
    expect(line.said.some((one) => one.kind === 'progress' && one.answer !== undefined)).toBe(true);
  });

  test('answers two calls beside each other, each under its own number', async () => {
    const line = workerWith({ pause: settled });
    line.ask(call(PROBLEM, { call: 1 }));
    line.ask(call(problemOf(pieces([50]), [stick(100)]), { call: 2 }));
    for (let turn = 0; turn < 10_000; turn++) {
      if (line.said.filter(({ kind }) => kind === 'ended').length === 2) break;
      await settled();
    }
    const costs = line.said.flatMap((one) =>
      one.kind === 'ended' && one.outcome.ok ? [[one.call, one.outcome.value.plan.costCents]] : [],
    );
    expect(costs).toEqual([
      [2, 100],
      [1, expect.any(Number)],
    ]);
  });
});
