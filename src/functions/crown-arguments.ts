/** The arguments of the functions about crown, and the angles that they ask for. */
import { computeCrownCut, type CrownCut } from '../core/crown/crown-cut.ts';
import { computeSlopedCut } from '../core/crown/sloped-cut.ts';
import type { Outcome } from '../core/faults/fault.ts';
import { degrees, toRadians } from '../core/units/angle.ts';
import {
  askAboutCorner,
  askAboutSpring,
  MOST_CORNER_RADIANS,
} from '../core/units/plausible-angle.ts';
import type { AngleArgument, ArgumentTable, Values } from './argument.ts';

/** Their ranges are the core's to judge, in its own words. */
export const CROWN = {
  spring: {
    name: 'spring',
    kind: 'angle',
    from: 'the wall',
    asked: (name, angle) => (angle > 0 ? askAboutSpring(name, angle) : undefined),
    blank: 'refused',
  },
  corner: {
    name: 'corner',
    kind: 'angle',
    from: 'wall to wall',
    // Other small corners are computed: charts go down to where no walls meet.
    asked: (name, angle) =>
      angle > 0 && angle < MOST_CORNER_RADIANS ? askAboutCorner(name, angle) : undefined,
    blank: 90,
    zero: 'left out',
  },
} as const satisfies Readonly<Record<string, AngleArgument>>;

export const SLOPED_CROWN = {
  spring: CROWN.spring,
  pitch: { name: 'pitch', kind: 'angle', from: 'level', blank: 'refused' },
  meets: { name: 'meets', kind: 'word', allowed: ['level', 'slope'] },
} as const satisfies ArgumentTable;

/** Miter and bevel, crown lying flat. Faults as core/crown/crown-cut.ts gives them. */
export function crownCutOf({ spring, corner }: Values<typeof CROWN>): Outcome<CrownCut> {
  return computeCrownCut({
    spring: toRadians(degrees(spring)),
    corner: toRadians(degrees(corner)),
  });
}

/** The same where the ceiling slopes along the wall. Faults as core/crown/sloped-cut.ts gives them. */
export function slopedCutOf(given: Values<typeof SLOPED_CROWN>): Outcome<CrownCut> {
  return computeSlopedCut({
    spring: toRadians(degrees(given.spring)),
    pitch: toRadians(degrees(given.pitch)),
    meets: given.meets,
  });
}
