/**
 * What passes between the one who wants sticks planned and the worker who plans them: plain data,
 * so that any port can carry it. Every message names its call, since a worker makes several.
 */
import type { Outcome } from '../../core/faults/fault.ts';
import type {
  PlanSticksOptions,
  StickAnswer,
  StickProblem,
  StickProgress,
} from '../problem/problem.ts';

export type ToWorker = PlanCall | { readonly kind: 'stop'; readonly call: number };

export interface PlanCall extends Pick<PlanSticksOptions, 'budget' | 'seed' | 'start'> {
  readonly kind: 'plan';
  readonly call: number;
  readonly problem: StickProblem;
}

export type FromWorker =
  /** The worker runs and has taken the call up. */
  | { readonly kind: 'begun'; readonly call: number }
  | WorkerProgress
  | { readonly kind: 'ended'; readonly call: number; readonly outcome: Outcome<StickAnswer> }
  /** The planner threw. */
  | { readonly kind: 'broken'; readonly call: number; readonly what: string };

export interface WorkerProgress extends Omit<StickProgress, 'answer'> {
  readonly kind: 'progress';
  readonly call: number;
  /** The best so far, written out, now and then. */
  readonly answer?: StickAnswer;
}

/** The worker's end of the line; the latest `onMessage` alone hears. */
export interface WorkerPort {
  readonly post: (message: FromWorker) => void;
  readonly onMessage: (hear: (message: ToWorker) => void) => void;
}

/** The caller's end of it; the latest `onMessage` and `onCrash` alone hear. */
export interface RunningWorker {
  readonly post: (message: ToWorker) => void;
  readonly onMessage: (hear: (message: FromWorker) => void) => void;
  /** The worker could not be loaded, died, or what it said can't be read. */
  readonly onCrash: (hear: () => void) => void;
  /** At once, whatever it does. */
  readonly end: () => void;
}
