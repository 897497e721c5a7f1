/** Rows of Work in words, and what of them is not in the price. */
import { nameKey, type Job } from '../../planning/job.ts';
import { USUAL_WORK } from '../../planning/work/usual-work.ts';
import { isNotIncluded, type WorkRow } from '../../planning/work/work-row.ts';

/** What the shop's Work says is not in the price; and the usual kinds of work that it says nothing of. */
export function workNotIncluded({ work }: Pick<Job, 'work'>): {
  readonly said: readonly WorkRow[];
  readonly unsaid: readonly WorkRow[];
} {
  const typed = new Set(work.flatMap((row) => (row.typed === undefined ? [] : nameKey(row.work))));
  const not = work.filter(isNotIncluded);
  return {
    said: not.filter((row) => row.typed !== undefined),
    unsaid: not.filter((row) => row.typed === undefined && !typed.has(nameKey(row.work))),
  };
}

/** Whether it is a kind of work that every shop has, by its name. */
export function isUsual(row: WorkRow): boolean {
  return USUAL_WORK.some(({ work }) => nameKey(work) === nameKey(row.work));
}

/** Those that a client sees done or not. */
export function isService(row: WorkRow): boolean {
  return USUAL_WORK.some(
    (one) => one.isService === true && nameKey(one.work) === nameKey(row.work),
  );
}
