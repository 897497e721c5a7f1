/** Learned rates in words, for a terminal. */
import { formatNumber } from '../core/units/format-number.ts';
import type { Job } from '../planning/job.ts';
import type { LearnedFromHours } from '../planning/work/learn-from-hours.ts';
import { sayMinutes } from '../sheets/words/say-bid.ts';
import {
  HOURS_ARE_NOT_IN_PRICE,
  sayHome,
  sayHours,
  sayHoursOf,
} from '../sheets/words/say-hours.ts';
import { sayWork } from '../planning/work/work-row.ts';
import type { Paragraph } from './report.ts';
import { drawTable } from './text-table.ts';

const RATES = [
  { heading: 'Work' },
  { heading: 'Per' },
  { heading: 'How many', align: 'right' },
  { heading: 'Until now', align: 'right' },
  { heading: 'Learned', align: 'right' },
  { heading: 'In eight cases of ten' },
  { heading: 'To take it over' },
] as const;

const HOURS = [{ heading: 'Job' }, { heading: 'Work' }, { heading: 'Hours' }] as const;

/** @param names of the jobs, in their order; @param present the last of them */
export function sayRates(
  { works, hours }: LearnedFromHours,
  names: readonly string[],
  present: Job,
): Paragraph[] {
  const { decimalSign } = present.shop;
  if (works.length === 0) return ['No hours are for work that their job has: nothing is learned.'];
  const say = (value: number): string => sayMinutes(value, decimalSign);
  return [
    drawTable(
      HOURS,
      hours.map((one) => [names[one.job] ?? '', sayHoursOf(one), sayHours(one, decimalSign)]),
    ),
    drawTable(
      RATES,
      works.map((one) => [
        sayWork(one.row),
        one.row.per,
        formatNumber(one.count, 1, decimalSign),
        say(one.rate.old),
        say(one.rate.rate),
        `${say(one.rate.low)} to ${say(one.rate.high)}`,
        sayHome(one, present),
      ]),
    ),
    HOURS_ARE_NOT_IN_PRICE,
  ];
}
