/** What the sheet of formulas asks of saw and wood beyond the setting itself, as the core has it. */
import {
  choose,
  cosine,
  least,
  less,
  minus,
  more,
  number,
  over,
  PI,
  plus,
  root,
  sine,
  times,
  type Term,
} from '../grammar/term.ts';
import type { SizeTerms } from './block-sizes.ts';
import { chordOf, type Answer } from './newton-steps.ts';

const TWO = number(2);
const ZERO = number(0);

/** Upright, by the steepest approach: chord · sin a + kerf · cos a, as core/cove/too-wide.ts has it. */
export function widestUpright(sizes: SizeTerms): Term {
  const angle = times(sizes.steepestDeg, over(PI, number(180)));
  return plus(times(chordOf(sizes), sine(angle)), times(sizes.kerf, cosine(angle)));
}

/** How far the deep side leans past its edge at the face, 0 where it doesn't: core/cove/undercut.ts. */
export function undercutOf(
  { depth, diameter, kerf }: SizeTerms,
  { approach, tilt, far }: Answer,
  leastSeen: Term,
): Term {
  const radius = over(diameter, TWO);
  const half = over(kerf, TWO);
  const below = minus(radius, slopeOf({ depth, kerf }, tilt));
  const lean = times(sine(tilt), cosine(approach));
  const reach = root(plus(times(sine(approach), sine(approach)), times(lean, lean)));
  const level = minus(
    times(minus(over(times(radius, lean), reach), below), cosine(tilt)),
    times(half, sine(tilt)),
  );
  const center = times(
    minus(times(half, cosine(tilt)), times(below, sine(tilt))),
    cosine(approach),
  );
  const beyond = minus(plus(center, times(radius, reach)), far);
  return choose(more(level, ZERO), choose(less(beyond, leastSeen), ZERO, beyond), ZERO);
}

/** Furthest from the middle that the table holds the near and the far rail: core/cove/rail-hold.ts. */
export function railReachOf(
  sizes: SizeTerms,
  { front, back, halfWidth }: NonNullable<SizeTerms['table']>,
  { approach, tilt }: Answer,
  clampLip: Term,
): { readonly near: Term; readonly far: Term } {
  const slope = slopeOf(sizes, tilt);
  const halfChord = root(times(slope, minus(sizes.diameter, slope)));
  const along = plus(times(halfChord, cosine(approach)), clampLip);
  const toTheSide = over(minus(halfWidth, times(along, sine(approach))), cosine(approach));
  const reach = (edge: Term): Term =>
    least(over(minus(edge, times(along, cosine(approach))), sine(approach)), toTheSide);
  return { near: reach(front), far: reach(back) };
}

/** Of the blade's middle plane. */
function slopeOf({ depth, kerf }: Pick<SizeTerms, 'depth' | 'kerf'>, tilt: Term): Term {
  return over(minus(depth, times(over(kerf, TWO), sine(tilt))), cosine(tilt));
}
