/** A kind of work: what one of it takes, what it is counted by, and whose work it is. */
import type { Where } from '../../core/faults/fault.ts';

/** What work is counted by; counts.ts says how many of each there are. */
export const WORK_PER = [
  'job',
  'room',
  'opening',
  'set-up',
  'pass',
  'foot a pass',
  'foot',
  'foot a cut',
  'foot a rip',
  'square foot',
  'square foot a coat',
  'piece',
  'crosscut',
  'miter',
  'compound miter',
  'cope',
  'return',
  'joint',
  'board foot',
  'board',
  'factor',
] as const;
export type WorkPer = (typeof WORK_PER)[number];

/** Counted once for all of the job, and of no profile. */
const OF_THE_JOB = ['job', 'room', 'opening'] as const;
export type JobPer = (typeof OF_THE_JOB)[number];
/** Counted profile by profile; a factor is no count, see `factorFor`. */
export type ProfilePer = Exclude<WorkPer, JobPer | 'factor'>;

export type Counts = Readonly<Record<ProfilePer, number>>;
/** What sticks, or the lumber that is allowed, decide. */
export type LumberCounts = Pick<
  Counts,
  'set-up' | 'pass' | 'foot a pass' | 'foot a cut' | 'foot a rip' | 'crosscut' | 'joint' | 'board'
>;

export const WORK_CELLS = [
  'workDone',
  'per',
  'minutes',
  'moneyEach',
  'for',
  'ours',
  'minutesLow',
  'minutesHigh',
] as const;
export type WorkCell = (typeof WORK_CELLS)[number];

export interface WorkRow {
  readonly work: string;
  readonly per: WorkPer;
  /** For each of what it is counted by; of a factor, the factor. */
  readonly minutes: number;
  /** Between which the minutes, or the factor, are likely; absent: nobody said. */
  readonly range?: { readonly low: number; readonly high: number };
  /** Beside the hours, for each, in the shop's currency: what somebody else asks for it. */
  readonly money: number;
  /** A profile's name or a make; absent: all. */
  readonly for?: { readonly profile: string } | { readonly make: string };
  /** Whether it is in the price. */
  readonly isOurs: boolean;
  /** Of a row of Work; absent: nobody typed it, see usual-work.ts. */
  readonly typed?: { readonly where: Where; readonly cells: Readonly<Record<WorkCell, Where>> };
}

/** What a row comes to, for a profile or for the whole job. */
export interface WorkLine {
  readonly row: WorkRow;
  readonly count: number;
  /** Of work by the foot: what its hours are times; else 1. */
  readonly factor: number;
  readonly hours: number;
  /** In the shop's currency, unrounded: it is a part of the labor, which is rounded. */
  readonly money: number;
}

export function isOfTheJob(per: WorkPer): per is JobPer {
  return OF_THE_JOB.some((one) => one === per);
}

/** Whether it adds nothing to the price: somebody else's, or nothing is asked for it. */
export function isNotIncluded({ isOurs, minutes, money }: WorkRow): boolean {
  return !isOurs || (minutes === 0 && money === 0);
}

/** `crosscut`, or `smooth, for Crown`. */
export function sayWork(row: WorkRow): string {
  return row.for === undefined ? row.work : `${row.work}, for ${sayFor(row)}`;
}

export function sayFor({ for: whom }: WorkRow): string {
  if (whom === undefined) return 'all';
  return 'make' in whom ? whom.make : whom.profile;
}
