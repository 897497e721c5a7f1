/** Hours of a profile by what they are for, and their sums. */

export interface Hours {
  readonly setUp: number;
  /** Passing blanks over the blade and carrying them round. */
  readonly passes: number;
  readonly smoothing: number;
  readonly crosscuts: number;
  /** Fitting and gluing the joints of spliced pieces. */
  readonly joints: number;
  /** All else that Work counts. */
  readonly other: number;
}

/** At the table saw: set-ups and passes. */
export function machineHoursOf(hours: Hours): number {
  return hours.setUp + hours.passes;
}

/** Smoothing, cutting to length, joining, and what else Work counts. */
export function benchHoursOf(hours: Hours): number {
  return hours.smoothing + hours.crosscuts + hours.joints + hours.other;
}

export function hoursOf(hours: Hours): number {
  return machineHoursOf(hours) + benchHoursOf(hours);
}
