/** The stick planner in a worker of the browser's, kept from call to call. */
import type { FromWorker, RunningWorker } from '../cutting/worker/messages.ts';
import { planSticksIn } from '../cutting/worker/plan-sticks-in.ts';

export const planInWorker = planSticksIn(startWorker, {
  now: () => performance.now(),
  every: (milliseconds, act) => {
    const timer = setInterval(act, milliseconds);
    return () => clearInterval(timer);
  },
});

/** @throws ReferenceError where there are no workers, and what a browser throws that forbids them */
function startWorker(): RunningWorker {
  const worker = new Worker(
    /* webpackChunkName: 'plan-worker' */ new URL('./plan-worker.ts', import.meta.url),
  );
  let hear: (message: FromWorker) => void = () => undefined;
  let crash = (): void => undefined;
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => hear(data);
  worker.onmessageerror = () => crash();
  worker.onerror = (event) => {
    // It is dealt with: the browser need not report it as well.
    event.preventDefault();
    crash();
  };
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (next) => {
      hear = next;
    },
    onCrash: (next) => {
      crash = next;
    },
    end: () => worker.terminate(),
  };
}
