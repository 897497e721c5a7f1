/** Learned rates for machines. */
import type { Job } from '../job.ts';
import { SETTINGS } from '../shop.ts';
import { homeOfRate } from './home-of-rate.ts';
import type { LearnedFromHours, WorkLearned } from './learn-from-hours.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
export const RATES_JSON_VERSION = 1;

const MINUTES_PER_HOUR = 60;

/** @param names of the jobs, in their order; @param present the last of them, whose rates these are until now */
export function learnedToJson(
  { works, hours, ofNothing }: LearnedFromHours,
  names: readonly string[],
  present: Job,
) {
  return {
    version: RATES_JSON_VERSION,
    jobs: names,
    rates: works.map((one) => rateToJson(one, present)),
    hours: [
      ...hours.map(({ job, work, profile, hours: spent, atPresent, atLearned, off, isOdd }) => ({
        ...{ job, work: work ?? null, profile: profile ?? null, hours: spent },
        ...{ atPresent, atLearned, spreadsOff: off, odd: isOdd },
      })),
      ...ofNothing.map(({ job, work, profile, hours: spent }) => ({
        ...{ job, work: work ?? null, profile: profile ?? null, hours: spent },
        ...{ atPresent: 0, atLearned: 0, spreadsOff: null, odd: true },
      })),
    ],
  };
}

function rateToJson({ row, count, rate }: WorkLearned, present: Job) {
  const { work, per, for: whom, isOurs } = row;
  const minutes = (hours: number): number => hours * MINUTES_PER_HOUR;
  const home = homeOfRate(present, row, minutes(rate.rate));
  return {
    ...{ work, per },
    for: whom === undefined ? null : 'make' in whom ? whom.make : whom.profile,
    ours: isOurs,
    count,
    minutes: { old: minutes(rate.old), new: minutes(rate.rate) },
    interval80: { low: minutes(rate.low), high: minutes(rate.high) },
    takeOver:
      home.kind === 'row'
        ? { table: 'Work', setting: null, value: null, where: null }
        : home.kind === 'cell'
          ? { table: 'Work', setting: null, value: null, where: home.where }
          : {
              table: 'Shop',
              setting: SETTINGS[home.setting].name,
              value: home.value,
              where: home.where,
            },
  };
}
