/**
 * The pane's worker: it plans sticks beside the thread that draws. The solver's program comes over
 * the network once it is needed, which is with the first plan that the quick ones don't prove.
 */
import type { Highs, InitOptions } from 'highs';
import { yieldNowAndThen } from '../hosts/yield-to-browser.ts';
import { answerCalls } from '../cutting/worker/answer-calls.ts';
import type { ToWorker } from '../cutting/worker/messages.ts';

const now = (): number => performance.now();
let solver: Promise<Highs> | undefined;

answerCalls(
  {
    post: (message) => postMessage(message),
    onMessage: (hear) => {
      onmessage = ({ data }: MessageEvent<ToWorker>) => hear(data);
    },
  },
  { loadSolver: keepSolver, now, pause: yieldNowAndThen(now) },
);

/** Loaded once; where it did not come it is asked for again with the next call. */
function keepSolver(): Promise<Highs> {
  solver ??= loadSolver().catch((error: unknown) => {
    solver = undefined;
    throw error;
  });
  return solver;
}

/** The package's types are written for require, what it gives to import is the loader itself. */
async function loadSolver(): Promise<Highs> {
  const { default: load } = (await import('highs')) as unknown as {
    readonly default: (options?: InitOptions) => Promise<Highs>;
  };
  return load({ locateFile: () => new URL('highs/runtime', import.meta.url).href });
}
