/**
 * What a trace tells of the angles, and what it can't. The 95 % intervals are those of least squares
 * (covariance = spread² times the inverse of the weighted slopes' products), by Student's t.
 * They hold where the misses are chance. Where they lie in waves (von Neumann's ratio of the squared steps
 * between neighbors to the squares is far below 2; von Neumann 1941: mean 2, standard deviation 2 / sqrt(n)),
 * the hand that traced wandered or the profile is no such cove, and nothing is told.
 */
import type { Blade } from '../cove/cove.ts';
import { angleLimits, type SawLimits } from '../cove/saw-limits.ts';
import { QUARTER_TURN, radians, toDegrees, type Degrees } from '../units/angle.ts';
import type { OutlineFit } from './fit-outline.ts';
import { invertSymmetric } from './least-squares.ts';
import { sizeOfMisses } from './true-arc.ts';

/** From, to. */
export type Interval<Value extends number = number> = readonly [Value, Value];

export interface Intervals {
  /** From the blade line. */
  readonly approach: Interval<Degrees>;
  /** From upright; from 0 where upright lies within, on whichever side. */
  readonly tilt: Interval<Degrees>;
  /** Inches. */
  readonly height: Interval;
}

/** Why none are told. */
export type NotTold = 'waves' | 'at the limit' | 'paint' | 'too few' | 'too alike';

const UNKNOWNS = 4;
/** Standard deviations of von Neumann's ratio: chance goes below once in some thousand traces. */
const WAVES = 3.3;
const AT_LIMIT = 1e-6;
/** Misses so small are arithmetic's, in whatever order they lie. */
const EXACT_INCHES = 1e-4;

export function intervalsOf(
  { fit, placed, misses, onOutline }: OutlineFit,
  blade: Blade,
  saw: SawLimits,
  isPainted: boolean,
): Intervals | NotTold {
  const [one] = placed;
  if (one === undefined) throw new RangeError('a fit places a blade');
  if (isPainted) return 'paint';
  const freedom = onOutline - UNKNOWNS;
  if (freedom < 3) return 'too few';
  const { stop, steepest } = angleLimits(saw);
  const { approach, lean, slopeHeight } = one;
  if (stop - Math.abs(lean) < AT_LIMIT || steepest - approach < AT_LIMIT) return 'at the limit';
  const along = misses.filter((_, at) => fit.residuals[at]?.slopes.some((slope) => slope !== 0));
  if (sizeOfMisses(along).rms > EXACT_INCHES && liesInWaves(along)) return 'waves';
  const squares = fit.residuals.reduce(
    (sum, { value, slopes }, at) =>
      slopes.some((slope) => slope !== 0) ? sum + (fit.weights[at] ?? 1) * value ** 2 : sum,
    0,
  );
  const inverse = invertSymmetric(fit.normal);
  if (inverse === undefined) return 'too alike';
  const variance = squares / freedom;
  const wide = studentT(freedom);
  const halfOf = (slopes: readonly number[]): number => {
    let sum = 0;
    slopes.forEach((slope, at) => {
      slopes.forEach((other, to) => {
        sum += slope * other * (inverse[at]?.[to] ?? 0);
      });
    });
    return wide * Math.sqrt(variance * sum);
  };
  const tilt = Math.abs(lean);
  const height = slopeHeight * Math.cos(tilt) + (blade.kerf / 2) * Math.sin(tilt);
  const sign = lean < 0 ? -1 : 1;
  const byLean = sign * ((blade.kerf / 2) * Math.cos(tilt) - slopeHeight * Math.sin(tilt));
  const halfApproach = halfOf([1, 0, 0, 0]);
  const halfTilt = halfOf([0, 1, 0, 0]);
  const halfHeight = halfOf([0, byLean, Math.cos(tilt), 0]);
  return {
    approach: [
      inDegrees(Math.max(0, approach - halfApproach)),
      inDegrees(Math.min(QUARTER_TURN, approach + halfApproach)),
    ],
    tilt: [
      inDegrees(Math.max(0, tilt - halfTilt)),
      inDegrees(Math.min(QUARTER_TURN, tilt + halfTilt)),
    ],
    height: [Math.max(0, height - halfHeight), height + halfHeight],
  };
}

const inDegrees = (angle: number): Degrees => toDegrees(radians(angle));

function liesInWaves(misses: readonly number[]): boolean {
  let squares = 0;
  let steps = 0;
  misses.forEach((miss, at) => {
    squares += miss ** 2;
    if (at > 0) steps += (miss - (misses[at - 1] ?? 0)) ** 2;
  });
  return squares > 0 && steps / squares < 2 - (WAVES * 2) / Math.sqrt(misses.length);
}

/** Two-sided 95 % of Student's t: Abramowitz and Stegun (1964), 26.7.5, good to .005 from 3 on. */
function studentT(freedom: number): number {
  const x = 1.959964;
  const g1 = (x ** 3 + x) / 4;
  const g2 = (5 * x ** 5 + 16 * x ** 3 + 3 * x) / 96;
  const g3 = (3 * x ** 7 + 19 * x ** 5 + 17 * x ** 3 - 15 * x) / 384;
  return x + g1 / freedom + g2 / freedom ** 2 + g3 / freedom ** 3;
}
