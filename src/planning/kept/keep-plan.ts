/** A plan as text, to be kept with its job: what was decided, not what follows from it. */
import { hashText } from '../../core/hash-text.ts';
import type { CalendarDay } from '../../core/units/calendar-day.ts';
import type { RawTable } from '../input/raw-table.ts';
import type { CuttingGroup, JobPlan } from '../job-plan.ts';
import { writeAnswer, type KeptAnswer } from './kept-answer.ts';
import type { SearchEffort } from '../search-effort.ts';
import { writeCut, type KeptCut } from './kept-cut.ts';

export const KEPT_FORMAT = 2;

/** A plan, and what it was made from. */
export interface PlanToKeep {
  readonly plan: JobPlan;
  /** Of the inputs, see `fingerprint`. */
  readonly fingerprint: string;
  /** The inputs themselves: the plan is worked out of them again. */
  readonly tables: readonly RawTable[];
  /** When it was made, and how long was looked for a cheaper one. */
  readonly day: CalendarDay;
  readonly effort: SearchEffort;
}

/** The text as an object: `check` is the hash of `plan` as it stands there. */
export interface KeptRecord {
  readonly format: number;
  /** The version of the program that made it. */
  readonly program: string;
  readonly fingerprint: string;
  readonly check: string;
  /** A KeptDecisions as JSON. */
  readonly plan: string;
}

export interface KeptDecisions {
  readonly day: CalendarDay;
  readonly effort: SearchEffort;
  readonly tables: readonly RawTable[];
  readonly cut: readonly KeptCut[];
  /** Of each group of the plan and of its options, by the hash of its problem. */
  readonly answers: readonly (readonly [problem: string, answer: KeptAnswer])[];
}

/** A plan's own groups, and those of its plans with an option taken up. */
export function allGroups({ groups, options }: JobPlan): readonly CuttingGroup[] {
  return [...groups, ...options.flatMap(({ plan }) => plan?.groups ?? [])];
}

/** Of the plan and of its options, which share what none of them changes; by the hashes of the problems. */
function answersOf(plan: JobPlan): ReadonlyMap<string, KeptAnswer> {
  const answers = new Map<string, KeptAnswer>();
  for (const { problem, answer } of allGroups(plan)) {
    const key = hashText(JSON.stringify(problem));
    if (!answers.has(key)) answers.set(key, writeAnswer(problem, answer));
  }
  return answers;
}

/**
 * Writes a plan so that `readKeptPlan` can make it again: the inputs, the sticks that were cut before,
 * and what the stick planner answered. Pieces, set-ups, hours and money follow from these.
 *
 * @param program the program's version
 */
export function keepPlan(kept: PlanToKeep, program: string): string {
  const { plan, fingerprint, tables, day, effort } = kept;
  const decisions: KeptDecisions = {
    day,
    effort,
    tables,
    cut: plan.cut.map(writeCut),
    answers: [...answersOf(plan)],
  };
  const text = JSON.stringify(decisions);
  const record: KeptRecord = {
    format: KEPT_FORMAT,
    program,
    fingerprint,
    check: hashText(text),
    plan: text,
  };
  return JSON.stringify(record);
}
