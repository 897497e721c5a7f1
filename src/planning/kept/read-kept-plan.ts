/** A kept plan, made again from what was kept of it, and looked over as a new one is. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { parseDay } from '../../core/units/calendar-day.ts';
import { hashText } from '../../core/hash-text.ts';
import { planSticks } from '../../cutting/plan-sticks.ts';
import { checkJobPlan } from '../check-job-plan.ts';
import { fingerprint } from '../input/fingerprint.ts';
import { readJob } from '../input/read-job.ts';
import { planJob } from '../plan-job.ts';
import {
  allGroups,
  KEPT_FORMAT,
  type KeptDecisions,
  type KeptRecord,
  type PlanToKeep,
} from './keep-plan.ts';
import { readAnswer } from './kept-answer.ts';
import { readCut } from './kept-cut.ts';

/**
 * Makes a kept plan again. Nothing of the text is trusted: the job is read from the inputs kept with
 * it, each answer passes the stick planner's checks, and the whole plan that of whole plans.
 *
 * @param program the program's version: another one may read inputs otherwise
 * @returns the plan with its inputs; or one fault: plan.kept-other-version, plan.kept-damaged
 */
export async function readKeptPlan(
  text: string,
  program: string,
  pause?: () => Promise<void>,
): Promise<Outcome<PlanToKeep>> {
  const damaged = failed(fault('plan.kept-damaged', 'plan', null));
  const record = parse(text);
  if (record === undefined) return damaged;
  if (record.format !== KEPT_FORMAT || record.program !== program) {
    const { program: given } = record;
    return failed(fault('plan.kept-other-version', 'plan', given, { limit: program }));
  }
  if (typeof record.plan !== 'string' || hashText(record.plan) !== record.check) return damaged;
  try {
    return (await makeAgain(record, pause)) ?? damaged;
  } catch {
    // Bytes that only look like a plan may break whatever was taken for granted of one.
    return damaged;
  }
}

function parse(text: string): KeptRecord | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && 'program' in value
      ? (value as KeptRecord)
      : undefined;
  } catch {
    return undefined;
  }
}

async function makeAgain(
  record: KeptRecord,
  pause: (() => Promise<void>) | undefined,
): Promise<Outcome<PlanToKeep> | undefined> {
  const { tables, cut, answers, day, effort } = JSON.parse(record.plan) as KeptDecisions;
  const [looked] = Object.values(effort);
  const isMade = parseDay(day, 'day').ok && typeof looked === 'number' && looked >= 0;
  if (!isMade || fingerprint(tables) !== record.fingerprint) return undefined;
  const { job } = readJob(tables, 'kept plan');
  if (job === undefined) return undefined;
  const kept = new Map(answers);
  const used = new Set<unknown>();
  const { plan } = await planJob(job, {
    cut: cut.map(readCut),
    ...(pause === undefined ? {} : { pause }),
    planSticks: (problem, options) => {
      const answer = kept.get(hashText(JSON.stringify(problem)));
      // What is asked beside the plan itself, for a caution, is a quick plan again.
      if (answer === undefined) return planSticks(problem, { ...options, budget: { steps: 0 } });
      const read = readAnswer(problem, answer);
      if (read === undefined) return Promise.resolve({ ok: false, faults: [] });
      used.add(read.plan);
      return Promise.resolve(ok(read));
    },
  });
  if (plan === undefined || checkJobPlan(plan).length > 0) return undefined;
  const isTheSame = allGroups(plan).every(
    ({ problem, answer }) => used.has(answer.plan) || problem.demands.length === 0,
  );
  return isTheSame ? ok({ plan, fingerprint: record.fingerprint, tables, day, effort }) : undefined;
}
