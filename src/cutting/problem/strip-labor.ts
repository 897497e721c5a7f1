import type { StripLabor } from './problem.ts';

/**
 * What putting one more strip to use costs in labor, in whole cents, halves up: rounded once a strip,
 * so that the costs of plans are whole.
 *
 * @param length of the strip, its end trims included, in the planner's units
 */
export function laborCents(labor: StripLabor | undefined, length: number): number {
  if (labor === undefined) return 0;
  return Math.floor(labor.cents + labor.centsPerUnit * length + 0.5);
}

/** The same before it is rounded. */
export function exactLaborCents(labor: StripLabor | undefined, length: number): number {
  return labor === undefined ? 0 : labor.cents + labor.centsPerUnit * length;
}

/** Whether any strip's labor depends on which sticks are put to use. */
export function hasLabor(profiles: readonly { readonly labor?: StripLabor }[]): boolean {
  return profiles.some(({ labor }) => labor !== undefined);
}
