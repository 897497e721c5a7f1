/** Ports, clocks and workers that a test holds in its hand. */
import type { CallerDeps } from '../../../src/cutting/worker/call-worker.ts';
import type { FromWorker, RunningWorker, ToWorker } from '../../../src/cutting/worker/messages.ts';

/** Until everything that waits for nothing but its turn is done. */
export async function settled(): Promise<void> {
  await new Promise((resolve) => setImmediate(resolve));
}

export interface Clock extends CallerDeps {
  /** Lets time pass, in the steps in which the caller looks. */
  readonly pass: (milliseconds: number) => void;
  /** How many are still being called again and again. */
  readonly running: () => number;
}

export function clock(): Clock {
  let time = 1000;
  const timers = new Set<{ readonly every: number; next: number; readonly act: () => void }>();
  return {
    now: () => time,
    every: (every, act) => {
      const timer = { every, next: time + every, act };
      timers.add(timer);
      return () => void timers.delete(timer);
    },
    pass: (milliseconds) => {
      const end = time + milliseconds;
      while (time < end) {
        time += 1;
        for (const timer of [...timers]) {
          if (timer.next > time || !timers.has(timer)) continue;
          timer.next += timer.every;
          timer.act();
        }
      }
    },
    running: () => timers.size,
  };
}

/** A worker that says what the test has it say. */
export interface ScriptedWorker extends RunningWorker {
  readonly heard: readonly ToWorker[];
  readonly say: (message: FromWorker) => void;
  readonly crash: () => void;
  readonly isEnded: () => boolean;
}

export function scriptedWorker(): ScriptedWorker {
  const heard: ToWorker[] = [];
  let hear: (message: FromWorker) => void = () => undefined;
  let crash = (): void => undefined;
  let ended = false;
  return {
    heard,
    // As a real port: a copy, and only of what can be copied.
    post: (message) => void heard.push(structuredClone(message)),
    onMessage: (next) => {
      hear = next;
    },
    onCrash: (next) => {
      crash = next;
    },
    end: () => {
      ended = true;
      crash();
    },
    say: (message) => hear(structuredClone(message)),
    crash: () => crash(),
    isEnded: () => ended,
  };
}
