/** Angles that can be read and are hardly meant: radians for degrees, a miter for the corner that it is half of. */
import type { Argument } from '../faults/argument.ts';
import { fault, type Caution, type Fault } from '../faults/fault.ts';

/** No two walls meet so sharply, in degrees. Common practice [C]. */
const SHARPEST_CORNER = 10;
/** Corners below are rare, in degrees, and usual miters are among them: 45, 22.5, 30. Common practice [C]. */
const USUAL_CORNER = 60;
/** No crown's back stands nearer its wall, in degrees. Common practice [C]. */
const LEAST_SPRING = 2;
/** Radians of a half turn, and of a right angle, as they are rounded up. */
export const MOST_CORNER_RADIANS = 3.2;
const MOST_SPRING_RADIANS = 1.6;
/** A wall's corner of less than that, in radians, is none. */
const LEAST_RADIANS = 0.1;

/** Why a corner of two walls, in degrees, can't be meant; undefined where it can. */
export function askAboutCorner(argument: Argument, corner: number): Fault | undefined {
  if (!(corner < SHARPEST_CORNER)) return undefined;
  const more = { limit: { degrees: SHARPEST_CORNER }, ...radiansOf(corner, MOST_CORNER_RADIANS) };
  return fault('angle.corner-tiny', argument, corner, more);
}

/** Why a spring angle from the wall, in degrees, can't be meant; undefined where it can. */
export function askAboutSpring(argument: Argument, spring: number): Fault | undefined {
  if (!(spring < LEAST_SPRING)) return undefined;
  const more = { limit: { degrees: LEAST_SPRING }, ...radiansOf(spring, MOST_SPRING_RADIANS) };
  return fault('angle.spring-tiny', argument, spring, more);
}

/** What to say of a corner of two walls, in degrees, that may be the miter at it, from a square cut. */
export function cautionCorner(argument: Argument, corner: number): Caution | undefined {
  if (!(corner < USUAL_CORNER)) return undefined;
  const details = { meant: { degrees: 180 - 2 * corner } };
  return fault('angle.corner-sharp', argument, { degrees: corner }, { details });
}

function radiansOf(value: number, most: number) {
  if (value < LEAST_RADIANS || value > most) return {};
  return { details: { radians: { degrees: (value * 180) / Math.PI } } };
}
