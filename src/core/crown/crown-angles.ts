/** The angles that a crown is placed by, and the ranges they may have. */
import { fault, type Fault, type FaultCode } from '../faults/fault.ts';
import { toDegrees, type Radians } from '../units/angle.ts';

const LIMITS = {
  spring: { code: 'crown.spring-out-of-range', below: Math.PI / 2 },
  corner: { code: 'crown.corner-out-of-range', below: Math.PI },
  pitch: { code: 'crown.pitch-out-of-range', below: Math.PI / 2 },
} as const satisfies Readonly<Record<string, { code: FaultCode; below: number }>>;

/** The fault of a spring angle that is not between 0° and 90° from the wall, if it is one. */
export function checkSpring(spring: Radians): readonly Fault[] {
  return checkBetween('spring', spring);
}

/** The fault of a wall corner that is not between 0° and 180°, if it is one. */
export function checkCorner(corner: Radians): readonly Fault[] {
  return checkBetween('corner', corner);
}

/** The fault of a ceiling's pitch that is not between 0° and 90° from level, if it is one. */
export function checkPitch(pitch: Radians): readonly Fault[] {
  return checkBetween('pitch', pitch);
}

function checkBetween(angle: keyof typeof LIMITS, given: Radians): readonly Fault[] {
  const { code, below } = LIMITS[angle];
  if (given > 0 && given < below) return [];
  const said = Number.isFinite(given) ? { degrees: toDegrees(given) } : String(given);
  return [fault(code, angle, said)];
}
