/** Lengths that the stick planner works with, freed of decimals that no saw knows. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../core/units/length.ts';

/** Denominators up to this were typed; finer ones were calculated (=2440/25.4). */
const FINEST_TYPED = 10_000n;
/** Divides 1/32 in, 0.2 mm and hundredths of either's tenfold: 20320 = 2^5 · 5 · 127. */
const GRID_PER_INCH = 20_320;
/** What a calculated decimal may be off. */
const SLACK_GRID_STEPS = new Fraction(1, 1_000_000);

/**
 * A typed length as it is; a calculated one on the planner's grid, `down` for what is had (a stick)
 * and `up` for what is lost (a kerf, a trim), at most 1/20320 in away.
 */
export function plannerLength(length: ExactInches, rounding: 'down' | 'up'): ExactInches {
  if (length.d <= FINEST_TYPED) return length;
  const steps = length.mul(GRID_PER_INCH);
  const whole =
    rounding === 'down' ? steps.add(SLACK_GRID_STEPS).floor() : steps.sub(SLACK_GRID_STEPS).ceil();
  return whole.div(GRID_PER_INCH);
}
