/** The arguments of the functions about crown, and the two angles that they ask for. */
import { computeCrownCut, type CrownCut } from '../core/crown/crown-cut.ts';
import type { Outcome } from '../core/faults/fault.ts';
import { degrees, toRadians } from '../core/units/angle.ts';
import type { AngleArgument, Values } from './argument.ts';

/** Their ranges are the core's to judge, in its own words. */
export const CROWN = {
  spring: { name: 'spring', kind: 'angle', from: 'the wall', blank: 'refused' },
  corner: { name: 'corner', kind: 'angle', from: 'wall to wall', blank: 90, zero: 'left out' },
} as const satisfies Readonly<Record<string, AngleArgument>>;

/** Miter and bevel, crown lying flat. Faults as core/crown/crown-cut.ts gives them. */
export function crownCutOf({ spring, corner }: Values<typeof CROWN>): Outcome<CrownCut> {
  return computeCrownCut({
    spring: toRadians(degrees(spring)),
    corner: toRadians(degrees(corner)),
  });
}
