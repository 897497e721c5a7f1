/** One call of a worker: what it says is heard, checked and forwarded until it ends or must be ended. */
import { ok, type Outcome } from '../../core/faults/fault.ts';
import { checkPlan } from '../check/check-plan.ts';
import type { PlanSticksOptions, StickAnswer, StickProblem } from '../problem/problem.ts';
import type { FromWorker, RunningWorker, WorkerProgress } from './messages.ts';

export interface CallerDeps {
  /** A clock in milliseconds. */
  readonly now: () => number;
  /** Calls `act` again and again until the function that it returns is called. */
  readonly every: (milliseconds: number, act: () => void) => () => void;
}

export interface WorkerCall {
  /** Absent: the worker gave nothing that could be used. */
  readonly outcome?: Outcome<StickAnswer>;
  /** Whether the worker has ended its work and can be asked again. */
  readonly isFree: boolean;
}

/** `signal` tells nobody of a stop: it is polled. */
const POLL_EVERY_MS = 50;
/** A stop is answered within a second, whatever the worker is in the midst of. */
const STOP_WITHIN_MS = 700;
/** From its start to its first word: its script may come over a slow network. */
const BEGIN_WITHIN_MS = 15_000;
/** Over the budget of time, for the last step and for writing the plan out. */
const GRACE_MS = 5_000;

/**
 * Never rejects but with what `onProgress` throws, and hangs only where there is no budget of time
 * and nobody stops it; then only for as long as the worker runs.
 */
export function callWorker(
  worker: RunningWorker,
  call: number,
  problem: StickProblem,
  options: PlanSticksOptions,
  { now, every }: CallerDeps,
): Promise<WorkerCall> {
  return new Promise((resolve, reject) => {
    const { budget, seed, start, signal, onProgress } = options;
    const kept = keepAnswers(problem);
    const asked = now();
    let begun: number | undefined;
    let stopped: number | undefined;

    const leave = (): void => {
      stopPolling();
      worker.onMessage(() => undefined);
      worker.onCrash(() => undefined);
    };
    const settle = (result: WorkerCall): void => {
      leave();
      resolve(result);
    };
    const settleForBest = (isFree: boolean): void => {
      const answer = kept.best();
      settle(answer === undefined ? { isFree } : { outcome: ok(cutShort(answer)), isFree });
    };
    const forward = ({ phase, costCents, boundCents, answer }: WorkerProgress): void => {
      if (answer !== undefined) kept.add(answer);
      if (onProgress === undefined || kept.best() === undefined) return;
      onProgress({ phase, costCents, boundCents, answer: kept.sureBest });
    };
    const hear = (message: FromWorker): void => {
      if (message.call !== call) return;
      begun ??= now();
      if (message.kind === 'progress') {
        forward(message);
      } else if (message.kind === 'broken') {
        settleForBest(true);
      } else if (message.kind === 'ended') {
        const { outcome } = message;
        const isWrong = outcome.ok && checkPlan(problem, outcome.value.plan).length > 0;
        if (isWrong) settleForBest(true);
        else settle({ outcome, isFree: true });
      }
    };
    const poll = (): void => {
      const at = now();
      if (stopped === undefined && signal?.aborted === true) {
        stopped = at;
        worker.post({ kind: 'stop', call });
      }
      const isLate =
        begun === undefined
          ? at - asked >= BEGIN_WITHIN_MS
          : at - begun >= (budget?.milliseconds ?? Infinity) + GRACE_MS;
      if (isLate || (stopped !== undefined && at - stopped >= STOP_WITHIN_MS)) settleForBest(false);
    };
    /** What `onProgress` or the checks throw goes to the caller, as it does without a worker. */
    const guarded =
      <Given extends unknown[]>(act: (...given: Given) => void): ((...given: Given) => void) =>
      (...given) => {
        try {
          act(...given);
        } catch (error) {
          leave();
          reject(error instanceof Error ? error : new Error(String(error)));
        }
      };

    const stopPolling = every(POLL_EVERY_MS, guarded(poll));
    worker.onMessage(guarded(hear));
    worker.onCrash(guarded(() => settleForBest(false)));
    try {
      worker.post({
        kind: 'plan',
        call,
        problem,
        ...(budget === undefined ? {} : { budget }),
        ...(seed === undefined ? {} : { seed }),
        ...(start === undefined ? {} : { start }),
      });
    } catch {
      settleForBest(false);
    }
  });
}

interface KeptAnswers {
  readonly add: (answer: StickAnswer) => void;
  /** The newest that is right. */
  readonly best: () => StickAnswer | undefined;
  /** @throws RangeError where there is none: ask `best` first. */
  readonly sureBest: () => StickAnswer;
}

function keepAnswers(problem: StickProblem): KeptAnswers {
  let kept: StickAnswer | undefined;
  const best = (): StickAnswer | undefined => kept;
  return {
    add: (answer) => {
      if (checkPlan(problem, answer.plan).length === 0) kept = answer;
    },
    best,
    sureBest: () => {
      if (kept === undefined) throw new RangeError('No answer has come from the worker yet.');
      return kept;
    },
  };
}

/** An answer that was on its way to a better one; what is proven stays so. */
function cutShort(answer: StickAnswer): StickAnswer {
  return answer.status === 'proven' ? answer : { ...answer, status: 'unfinished' };
}
