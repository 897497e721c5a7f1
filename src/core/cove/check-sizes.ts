/** Sizes that no cove or blade can have, refused by name before any arithmetic. */
import type { Argument } from '../faults/argument.ts';
import { fault, type Fault } from '../faults/fault.ts';
import { inchesGiven } from '../faults/quantity.ts';
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import type { Blade, Cove } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';

/** Faults of the sizes alone; none means that the forward and inverse models may be asked. */
export function checkSizes(cove: Cove, blade: Blade): Fault[] {
  const faults: Fault[] = [];
  const positive = (argument: Argument, inches: number): void => {
    if (!(inches > 0) || !Number.isFinite(inches)) {
      faults.push(fault('cove.size-missing', argument, inchesGiven(inches)));
    }
  };
  positive(COVE_SIZES.width.key, cove.width);
  positive(COVE_SIZES.depth.key, cove.depth);
  positive(COVE_SIZES.bladeDiameter.key, blade.diameter);
  faults.push(...checkKerf(blade));
  if (!(cove.offCenter >= 0)) {
    faults.push(
      fault('cove.off-center-negative', COVE_SIZES.offCenter.key, inchesGiven(cove.offCenter)),
    );
  } else if (cove.width > 0 && cove.offCenter > cove.width / 2 + LIMIT_SLACK_INCHES) {
    faults.push(
      fault('cove.off-center-beyond-half', COVE_SIZES.offCenter.key, inchesGiven(cove.offCenter), {
        limit: { inches: cove.width / 2 },
      }),
    );
  }
  return faults;
}

/** The fault of a kerf below 0, or too thick for the blade's diameter, if it is one. */
export function checkKerf(blade: Blade): Fault[] {
  // A cutter as thick as a quarter of its diameter is no saw blade any more.
  const mostKerf = blade.diameter / 4;
  if (blade.kerf >= 0 && !(blade.diameter > 0 && blade.kerf > mostKerf)) return [];
  const limit = { inches: mostKerf };
  return [fault('cove.kerf-too-thick', COVE_SIZES.kerf.key, inchesGiven(blade.kerf), { limit })];
}
