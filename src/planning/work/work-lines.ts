/** Work as lines: how many of what, and what it comes to in hours and in money. */
import type { Hours } from './hours.ts';
import {
  isNotIncluded,
  isOfTheJob,
  type Counts,
  type JobPer,
  type WorkLine,
  type WorkRow,
} from './work-row.ts';
import { factorFor, jobRows } from './works-of.ts';

/** @param works the rows that hold for the profile, see worksOf */
export function profileLines(works: readonly WorkRow[], counts: Counts): WorkLine[] {
  const byTheFoot = factorFor(works);
  return works.flatMap((row) => {
    const { per } = row;
    if (per === 'factor' || isOfTheJob(per) || isNotIncluded(row)) return [];
    return lineOf(row, counts[per], per === 'foot' ? byTheFoot : 1);
  });
}

/** Those of the whole job; none where nothing of it is left. */
export function jobLines(
  works: readonly WorkRow[],
  counts: Readonly<Record<JobPer, number>>,
): WorkLine[] {
  return jobRows(works).flatMap((row) =>
    isNotIncluded(row) ? [] : lineOf(row, counts[row.per], 1),
  );
}

/** A line with nothing to do is none. */
function lineOf(row: WorkRow, count: number, factor: number): WorkLine[] {
  if (count === 0) return [];
  const hours = (count * row.minutes * factor) / 60;
  return [{ row, count, factor, hours, money: count * row.money }];
}

/** In which sum of a profile's hours each count's work is; in `other` where it isn't named. */
const SUM_OF: Readonly<Partial<Record<WorkRow['per'], Exclude<keyof Hours, 'other'>>>> = {
  'set-up': 'setUp',
  pass: 'passes',
  'foot a pass': 'passes',
  'square foot': 'smoothing',
  crosscut: 'crosscuts',
  joint: 'joints',
};

export function sumOf({ row }: WorkLine): keyof Hours {
  return SUM_OF[row.per] ?? 'other';
}

export function hoursOfLines(lines: readonly WorkLine[]): Hours {
  const hours = { setUp: 0, passes: 0, smoothing: 0, crosscuts: 0, joints: 0, other: 0 };
  for (const line of lines) hours[sumOf(line)] += line.hours;
  return hours;
}

export function moneyOfLines(lines: readonly WorkLine[]): number {
  return lines.reduce((sum, { money }) => sum + money, 0);
}
