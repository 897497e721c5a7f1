/** What a match has to say besides its numbers, as cautions: wording.ts has the words. */
import { fault, type Caution } from '../faults/fault.ts';
import { toDegrees } from '../units/angle.ts';
import type { NotTold } from './intervals.ts';
import { USUAL_MATCH_TOLERANCE_INCHES, type MatchAnswer } from './match-cove.ts';

const NOT_TOLD = {
  waves: 'match.not-told-waves',
  paint: 'match.not-told-paint',
  'at the limit': 'match.not-told-limit',
  'too few': 'match.not-told-points',
  'too alike': 'match.not-told-points',
} as const satisfies Record<NotTold, string>;

/** @param tolerance inches: a miss up to it isn't spoken of */
export function cautionsOfMatch(
  answer: MatchAnswer,
  tolerance = USUAL_MATCH_TOLERANCE_INCHES,
): Caution[] {
  const { best, trace, intervals, two } = answer;
  const said: Caution[] = [];
  const [only] = best.settings;
  if (only?.deepSide !== undefined) said.push(fault('match.deep-side', 'points', only.deepSide));
  const { inches, point } = best.worst;
  if (Math.abs(inches) > tolerance) {
    const details = { point, leaves: inches > 0 ? 'too much wood' : 'too little wood' };
    const limit = { inches: tolerance };
    said.push(fault('match.misses', 'points', { inches: Math.abs(inches) }, { limit, details }));
  }
  said.push(...cautionsOfTwo(two));
  if (typeof intervals === 'string') said.push(fault(NOT_TOLD[intervals], 'points', null));
  else {
    const { approach, tilt } = intervals;
    said.push(intervalOf('approach', approach));
    if (answer.isUprightByChoice) said.push(fault('match.upright', 'tilt', { degrees: tilt[1] }));
    else said.push(intervalOf('tilt', tilt));
  }
  if (trace.doubles > 0) said.push(fault('match.doubles', 'points', trace.doubles));
  if (trace.isReordered) said.push(fault('match.reordered', 'points', null));
  return [...said, ...answer.cautions];
}

function intervalOf(what: 'approach' | 'tilt', [from, to]: readonly [number, number]): Caution {
  return fault('match.interval', what, { degrees: from }, { limit: { degrees: to } });
}

function cautionsOfTwo(two: MatchAnswer['two']): Caution[] {
  const [one, other] = two?.settings ?? [];
  if (two === undefined || one === undefined || other === undefined) return [];
  const { approach, tilt, height } = other.setting;
  const details = {
    approach: { degrees: toDegrees(one.setting.approach) },
    tilt: { degrees: toDegrees(one.setting.tilt) },
    height: { inches: one.setting.height },
    ...(two.passes === 'two mirrored'
      ? { isMirrored: true }
      : {
          otherApproach: { degrees: toDegrees(approach) },
          otherTilt: { degrees: toDegrees(tilt) },
          otherHeight: { inches: height },
        }),
    between: { inches: (other.leftEdge + other.rightEdge - one.leftEdge - one.rightEdge) / 2 },
  };
  return [
    fault('match.two-settings', 'points', { inches: Math.abs(two.worst.inches) }, { details }),
  ];
}
