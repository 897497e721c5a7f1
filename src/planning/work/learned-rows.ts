/** Learned rates as rows of Work, for whoever takes them over. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { roundRate } from './home-of-rate.ts';
import type { WorkLearned } from './learn-from-hours.ts';

const MINUTES_PER_HOUR = 60;

/**
 * What stands under each heading of Work, blank where nothing does. The row is in the price, or not, as it
 * was; Low and High go where the new minutes lie outside of them.
 */
export function cellsOfLearned({
  row,
  rate,
}: WorkLearned): ReadonlyMap<HeadingKey, string | number> {
  const minutes = roundRate(rate.rate * MINUTES_PER_HOUR);
  const cells = new Map<HeadingKey, string | number>([
    ['workDone', row.work],
    ['per', row.per],
    ['minutes', minutes],
    ['ours', row.isOurs ? 'yes' : 'no'],
  ]);
  if (row.money > 0) cells.set('moneyEach', row.money);
  if (row.for !== undefined) cells.set('for', 'make' in row.for ? row.for.make : row.for.profile);
  const { range } = row;
  if (range !== undefined && range.low <= minutes && minutes <= range.high) {
    cells.set('minutesLow', range.low);
    cells.set('minutesHigh', range.high);
  }
  return cells;
}
