/** What hours say of rates, in words: for the office alone. */
import { sayWhere } from '../../core/faults/fault.ts';
import { formatNumber, type DecimalSign } from '../../core/units/format-number.ts';
import type { Job } from '../../planning/job.ts';
import { settingOf } from '../../planning/shop.ts';
import { homeOfRate } from '../../planning/work/home-of-rate.ts';
import type { HoursOfJob, WorkLearned } from '../../planning/work/learn-from-hours.ts';
import { sayWork } from '../../planning/work/work-row.ts';

const MINUTES_PER_HOUR = 60;
const MOST_DECIMALS = 6;

/** `smooth, for Crown, per square foot`. */
export function sayKind({ row }: Pick<WorkLearned, 'row'>): string {
  return `${sayWork(row)}, per ${row.per}`;
}

/** Where whoever takes the rate over writes it. */
export function sayHome({ row, rate }: WorkLearned, job: Job): string {
  const home = homeOfRate(job, row, rate.rate * MINUTES_PER_HOUR);
  switch (home.kind) {
    case 'cell':
      return `${sayWhere(home.where)}: Minutes of Work`;
    case 'setting': {
      const { name } = settingOf(home.setting);
      const value = formatNumber(home.value, MOST_DECIMALS, job.shop.decimalSign);
      return `${sayWhere(home.where)}: ${name} ${value} ${home.unit}`;
    }
    case 'row':
      return 'a new row of Work';
  }
}

/** Of one kind of work, or of all: `11.5 h; 9.25 h by the rates until now`. */
export function sayHours(
  { hours, atPresent, isOdd, off }: HoursOfJob,
  decimalSign: DecimalSign,
): string {
  const say = (value: number): string => `${formatNumber(value, 2, decimalSign)} h`;
  const odd = isOdd
    ? `; odd: ${formatNumber(Math.abs(off), 1, decimalSign)} spreads ${off > 0 ? 'above' : 'below'} the learned rates`
    : '';
  return `${say(hours)}, ${say(atPresent)} by the rates until now${odd}`;
}

/** `smooth, Crown`; `all that is in the price`. */
export function sayHoursOf({ work, profile }: Pick<HoursOfJob, 'work' | 'profile'>): string {
  return [work ?? 'all that is in the price', ...(profile === undefined ? [] : [profile])].join(
    ', ',
  );
}

export const HOURS_ARE_NOT_IN_PRICE =
  'They are in no price until you take them over: by themselves they change neither Work nor Shop.';
