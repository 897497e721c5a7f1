/** The worker of the command line: it plans sticks beside the thread that hears Ctrl-C. */
import { parentPort } from 'node:worker_threads';
import type { Highs, InitOptions } from 'highs';
import { answerCalls } from '../cutting/worker/answer-calls.ts';
import type { ToWorker } from '../cutting/worker/messages.ts';

const port = parentPort;
if (port === null) throw new RangeError('This is a worker: it is started by the program.');

let solver: Promise<Highs> | undefined;

/** The package's types are written for require, what it gives to import is the loader itself. */
async function loadSolver(): Promise<Highs> {
  const { default: load } = (await import('highs')) as unknown as {
    readonly default: (options?: InitOptions) => Promise<Highs>;
  };
  return load();
}

answerCalls(
  {
    post: (message) => port.postMessage(message),
    onMessage: (hear) => void port.on('message', (message: ToWorker) => hear(message)),
  },
  {
    loadSolver: () => (solver ??= loadSolver()),
    now: () => performance.now(),
    pause: () => new Promise((resolve) => setImmediate(resolve)),
  },
);
