/** Rates learned from jobs that have Hours, drawn toward those that the shop has now. */
import { learnRates, type HoursSpent, type LearnedRate } from '../../core/bid/learn-rates.ts';
import type { Where } from '../../core/faults/fault.ts';
import { nameKey, sameName } from '../job.ts';
import type { JobPlan } from '../job-plan.ts';
import { scopeKey } from '../input/read-hours.ts';
import type { HoursRow } from './hours-row.ts';
import { countJob } from './job-work.ts';
import { isUsualRate } from './usual-work.ts';
import { isNotIncluded, type WorkRow } from './work-row.ts';
import { factorFor, jobRows, worksOf } from './works-of.ts';

/**
 * What a figure may be off by, as a spread (two in three lie within). Common practice [C]: hours that are
 * written down at the day's end, to the quarter hour; minutes that everybody takes; a shop's own.
 */
const HOURS_SHARE = 0.15;
const LEAST_SPREAD_HOURS = 0.25;
const USUAL_SHARE = 0.5;
const OWN_SHARE = 0.25;
/** Hours that lie further off are odd: one in four hundred would be by chance. */
const MOST_SPREADS_OFF = 3;

const MINUTES_PER_HOUR = 60;

/** The hours of a job for one kind of work, all its rows together. */
export interface HoursOfJob {
  /** Which of the jobs, from 0. */
  readonly job: number;
  /** Absent: all that is in its price, and all its moldings. */
  readonly work?: string;
  readonly profile?: string;
  readonly hours: number;
  /** What the present rates make of them. */
  readonly atPresent: number;
  /** What the learned ones make of them. */
  readonly atLearned: number;
  /** By how many spreads they lie above what the learned rates give. */
  readonly off: number;
  readonly isOdd: boolean;
  /** Of its first row. */
  readonly where: Where;
}

/** A row of Work with what the hours say of it. */
export interface WorkLearned {
  readonly row: WorkRow;
  /** In all jobs whose hours were for it; of work by the foot, times the factors. */
  readonly count: number;
  /** Hours for one. */
  readonly rate: LearnedRate;
}

export interface LearnedFromHours {
  readonly works: readonly WorkLearned[];
  readonly hours: readonly HoursOfJob[];
  /** Hours for work of which their job has none: nothing is learned from them. */
  readonly ofNothing: readonly Pick<HoursOfJob, 'job' | 'work' | 'profile' | 'hours' | 'where'>[];
}

/**
 * The present rates are the last job's; a kind of work that it doesn't know is taken from the job before.
 *
 * Each kind's hours stand against the rows of Work that hold for its moldings: those in the price, or
 * those that aren't where none is. Hours of all work stand against all that is in the price of their job.
 */
export function learnFromHours(plans: readonly JobPlan[]): LearnedFromHours {
  const works = presentWorks(plans);
  const sums = plans.flatMap((plan, job) => sumsOf(plan).map((sum) => ({ ...sum, job })));
  const counted = sums.map((sum) => {
    const plan = plans[sum.job];
    return { sum, counts: plan === undefined ? NOTHING : countsFor(plan, works, sum) };
  });
  const observed = counted.filter(({ counts }) => counts.size > 0);
  const rows = works.filter((row) => observed.some(({ counts }) => counts.has(row)));
  const present = rows.map((row) => {
    const rate = row.minutes / MINUTES_PER_HOUR;
    return { rate, spread: spreadOf(row, rate, observed) };
  });
  const spent = observed.map(({ sum: { hours }, counts }): HoursSpent => {
    const spread = Math.max(LEAST_SPREAD_HOURS, HOURS_SHARE * hours);
    return { counts: rows.map((row) => counts.get(row) ?? 0), hours, spread };
  });
  const { rates, off } = learnRates(present, spent);
  return {
    works: rows.flatMap((row, at) => {
      const rate = rates[at];
      const count = observed.reduce((sum, { counts }) => sum + (counts.get(row) ?? 0), 0);
      return rate === undefined ? [] : [{ row, count, rate }];
    }),
    hours: observed.map(({ sum, counts }, at) => {
      const atPresent = [...counts].reduce((all, [row, count]) => all + count * row.minutes, 0);
      const spreads = off[at] ?? 0;
      const { hours, spread } = spent[at] ?? { hours: 0, spread: 0 };
      return {
        ...sum,
        atPresent: atPresent / MINUTES_PER_HOUR,
        atLearned: hours - spreads * spread,
        off: spreads,
        isOdd: Math.abs(spreads) > MOST_SPREADS_OFF,
      };
    }),
    ofNothing: counted.flatMap(({ sum, counts }) => (counts.size === 0 ? [sum] : [])),
  };
}

type CountsOfRows = ReadonlyMap<WorkRow, number>;
const NOTHING: CountsOfRows = new Map();

function presentWorks(plans: readonly JobPlan[]): WorkRow[] {
  const works: WorkRow[] = [];
  for (const { job } of [...plans].reverse()) {
    const known = new Set(works.map(({ work }) => nameKey(work)));
    works.push(...job.work.filter(({ work }) => !known.has(nameKey(work))));
  }
  return works;
}

type SumOfRows = Pick<HoursRow, 'work' | 'profile' | 'hours'> & { readonly where: Where };

/** Rows of the same work on the same moldings together, in the order of their first. */
function sumsOf({ job }: JobPlan): SumOfRows[] {
  const sums = new Map<string, SumOfRows>();
  for (const { work, profile, hours, cells } of job.hours) {
    const key = scopeKey({
      ...(work === undefined ? {} : { work }),
      ...(profile === undefined ? {} : { profile }),
    });
    const before = sums.get(key);
    sums.set(key, {
      ...(before ?? {
        ...(work === undefined ? {} : { work }),
        ...(profile === undefined ? {} : { profile }),
        where: cells.hours,
      }),
      hours: (before?.hours ?? 0) + hours,
    });
  }
  return [...sums.values()];
}

interface Candidate {
  readonly row: WorkRow;
  readonly count: number;
  /** Whether this work of it is in the price of the job that the hours are of. */
  readonly isPaid: boolean;
}

/** How many of each row the hours were for; empty where the job has none of it. */
function countsFor(plan: JobPlan, works: readonly WorkRow[], sum: SumOfRows): CountsOfRows {
  const all = listCandidates(plan, works, sum.profile).filter(({ count }) => count > 0);
  const { work } = sum;
  const counts = new Map<WorkRow, number>();
  const chosen =
    work === undefined
      ? all.filter(({ row, isPaid }) => isPaid && row.minutes > 0)
      : chooseRows(all.filter(({ row }) => sameName(row.work, work)));
  for (const { row, count } of chosen) counts.set(row, (counts.get(row) ?? 0) + count);
  return counts;
}

/** Those in the price; else those that a person typed; else the usual ones. */
function chooseRows(all: readonly Candidate[]): readonly Candidate[] {
  const paid = all.filter(({ row }) => !isNotIncluded(row));
  if (paid.length > 0) return paid;
  const typed = all.filter(({ row }) => row.typed !== undefined);
  return typed.length > 0 ? typed : all;
}

function listCandidates(
  plan: JobPlan,
  works: readonly WorkRow[],
  profile: string | undefined,
): Candidate[] {
  const ofJob = namesOf(plan.jobWork.lines);
  const everyName = new Set([
    ...ofJob,
    ...plan.profiles.flatMap(({ byPlan }) => [...namesOf(byPlan.work)]),
  ]);
  const own = plan.profiles.flatMap((planned) => {
    if (profile !== undefined && !sameName(planned.profile.name, profile)) return [];
    const rows = worksOf(planned.profile, works);
    const names = namesOf(planned.byPlan.work);
    return rows.flatMap((row): Candidate[] => {
      const { per } = row;
      if (per === 'factor' || per === 'job' || per === 'room' || per === 'opening') return [];
      const times = per === 'foot' ? factorFor(rows) : 1;
      const count = planned.byPlan.counts[per] * times;
      const name = nameKey(row.work);
      return [{ row, count, isPaid: names.has(name) || ofJob.has(name) }];
    });
  });
  if (profile !== undefined) return own;
  const once = countJob(plan.job.openings, plan.rooms);
  const ofAll = jobRows(works).map((row): Candidate => {
    return { row, count: once[row.per], isPaid: everyName.has(nameKey(row.work)) };
  });
  return [...own, ...ofAll];
}

function namesOf(lines: JobPlan['jobWork']['lines']): ReadonlySet<string> {
  return new Set(lines.map(({ row }) => nameKey(row.work)));
}

/** By how much a present rate may be off. Of one that is 0, by all that its hours come to. */
function spreadOf(
  row: WorkRow,
  rate: number,
  observed: readonly { readonly sum: SumOfRows; readonly counts: CountsOfRows }[],
): number {
  if (rate > 0) return rate * (isUsualRate(row) ? USUAL_SHARE : OWN_SHARE);
  const its = observed.filter(({ counts }) => counts.has(row));
  const hours = its.reduce((sum, one) => sum + one.sum.hours, 0);
  return hours / its.reduce((sum, { counts }) => sum + (counts.get(row) ?? 0), 0);
}
