/** Plans within an effort, stops at Ctrl-C, and shows at a terminal how far it is. */
import { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions } from '../cutting/problem/problem.ts';
import type { Effort } from './effort.ts';
import { progressLine } from './progress-line.ts';
import { planInWorker } from './start-worker.ts';
import { errorTerminal, writeErrors } from './terminal.ts';

export interface Planning {
  readonly effort: Effort;
  /** Nothing is said beside the answer. */
  readonly isSilent: boolean;
  /** Money in the shop's words; without a currency where no shop is known. */
  readonly sayMoney?: (cents: number) => string;
}

/** What a planning is handed: which planner, its options, and a place for its profiles' names. */
export interface PlanDeps {
  readonly planSticks: typeof planSticks;
  readonly options: PlanSticksOptions;
  /** So many of so many profiles done, and which is next. */
  readonly onGroup: (done: number, of: number, group: string) => void;
}

/** As a shell has it of a program that an interrupt ended. */
const INTERRUPTED_EXIT = 130;

export async function planWithin<Planned>(
  { effort, isSilent, sayMoney }: Planning,
  plan: (deps: PlanDeps) => Promise<Planned>,
): Promise<Planned> {
  const signal = { aborted: false };
  const line = progressLine(isSilent ? undefined : errorTerminal(), undefined, sayMoney);
  const interrupt = (): void => {
    if (signal.aborted) process.exit(INTERRUPTED_EXIT);
    signal.aborted = true;
    line.end();
    if (isSilent) return;
    writeErrors('Stopping; the best plan so far is kept. Ctrl-C again quits.\n');
  };
  process.on('SIGINT', interrupt);
  try {
    return await plan({
      planSticks: isQuick(effort) ? planSticks : planInWorker,
      options: {
        signal,
        onProgress: line.show,
        ...(isQuick(effort) ? { pause: hearSignals } : limitsOf(effort)),
      },
      onGroup: line.name,
    });
  } finally {
    process.off('SIGINT', interrupt);
    line.end();
  }
}

function isQuick(effort: Effort): boolean {
  return 'seconds' in effort && effort.seconds === 0;
}

function limitsOf(effort: Effort): PlanSticksOptions {
  if ('steps' in effort) return { budget: { steps: effort.steps } };
  return { budget: { milliseconds: effort.seconds * 1000 }, now: () => performance.now() };
}

function hearSignals(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
