import type { OffcutCredit, StickProblem, StickProfile } from './problem.ts';

/** The profiles of a problem; the one without a name where it lists none. */
export function profilesOf(problem: StickProblem): readonly StickProfile[] {
  return problem.profiles ?? [{ id: '', blank: '' }];
}

/**
 * What an offcut is worth in whole cents: 0 where it is too short to be kept.
 *
 * @param offcut its length, in the planner's units, 0 or more
 * @param keepOffcutsOver kept from this length on, in the same units
 */
export function offcutCents(
  offcut: number,
  keepOffcutsOver: number,
  credit: OffcutCredit | undefined,
): number {
  if (credit === undefined || offcut <= 0 || offcut < keepOffcutsOver) return 0;
  return Math.min(credit.mostCents, Math.floor(credit.centsPerUnit * offcut));
}
