/** The worker's side: plans what it is asked to, tells how far it is, and hears when to stop. */
import { planSticks } from '../plan-sticks.ts';
import type { PlanSticksOptions, StickProgress } from '../problem/problem.ts';
import type { PlanCall, WorkerPort } from './messages.ts';

export interface WorkerDeps {
  readonly loadSolver?: NonNullable<PlanSticksOptions['loadSolver']>;
  /** A clock in milliseconds. */
  readonly now: () => number;
  /** Lets what came over the port be heard. */
  readonly pause: () => Promise<void>;
}

/** A plan written out takes time to make and to copy: the first goes at once, others this seldom. */
const ANSWER_EVERY_MS = 300;
/** As often as anybody reads a figure that changes. */
const TELL_EVERY_MS = 80;

export function answerCalls(port: WorkerPort, deps: WorkerDeps): void {
  const signals = new Map<number, { aborted: boolean }>();
  port.onMessage((message) => {
    if (message.kind === 'stop') {
      const signal = signals.get(message.call);
      if (signal !== undefined) signal.aborted = true;
      return;
    }
    const signal = { aborted: false };
    signals.set(message.call, signal);
    void answerCall(port, deps, message, signal).finally(() => signals.delete(message.call));
  });
}

async function answerCall(
  port: WorkerPort,
  { loadSolver, now, pause }: WorkerDeps,
  { call, problem, budget, seed, start }: PlanCall,
  signal: { readonly aborted: boolean },
): Promise<void> {
  port.post({ kind: 'begun', call });
  const tell = teller(port, call, now);
  try {
    const outcome = await planSticks(problem, {
      signal,
      now,
      onProgress: (progress) => tell(progress),
      pause: async () => {
        tell();
        await pause();
      },
      ...(budget === undefined ? {} : { budget }),
      ...(seed === undefined ? {} : { seed }),
      ...(start === undefined ? {} : { start }),
      ...(loadSolver === undefined ? {} : { loadSolver }),
    });
    port.post({ kind: 'ended', call, outcome });
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    port.post({ kind: 'broken', call, what });
  }
}

/** Passes gains on, not more often than is of use; called without any it sends what waits. */
function teller(port: WorkerPort, call: number, now: () => number): (gain?: StickProgress) => void {
  let waiting: StickProgress | undefined;
  let told: { readonly at: number; readonly phase: string } | undefined;
  let sentAt: number | undefined;
  return (gain) => {
    waiting = gain ?? waiting;
    if (waiting === undefined) return;
    const at = now();
    const { phase, costCents, boundCents, answer } = waiting;
    const figures = { kind: 'progress', call, phase, costCents, boundCents } as const;
    const isNews = told === undefined || phase !== told.phase || at - told.at >= TELL_EVERY_MS;
    if (sentAt === undefined || at - sentAt >= ANSWER_EVERY_MS) {
      port.post({ ...figures, answer: answer() });
      sentAt = at;
      waiting = undefined;
    } else if (gain !== undefined && isNews) {
      port.post(figures);
    } else {
      return;
    }
    told = { at, phase };
  };
}
