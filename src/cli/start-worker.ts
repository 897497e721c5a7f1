/** The stick planner in a thread of its own, kept from call to call. */
import { Worker } from 'node:worker_threads';
import type { FromWorker, RunningWorker } from '../cutting/worker/messages.ts';
import { planSticksIn } from '../cutting/worker/plan-sticks-in.ts';

export const planInWorker = planSticksIn(startWorker, {
  now: () => performance.now(),
  every: (milliseconds, act) => {
    const timer = setInterval(act, milliseconds);
    return () => clearInterval(timer);
  },
});

function startWorker(): RunningWorker {
  const worker = new Worker(new URL('plan-worker.js', import.meta.url));
  let hear: (message: FromWorker) => void = () => undefined;
  let crash = (): void => undefined;
  worker.on('message', (message: FromWorker) => hear(message));
  worker.on('messageerror', () => crash());
  worker.on('error', () => crash());
  worker.on('exit', () => crash());
  // One that waits for work keeps no process alive; while it works, the timer of its call does. Last,
  // since a listener to it would hold the process again.
  worker.unref();
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (next) => {
      hear = next;
    },
    onCrash: (next) => {
      crash = next;
    },
    end: () => void worker.terminate(),
  };
}
