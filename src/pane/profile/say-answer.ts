import { toDegrees } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import { count } from '../../sheets/print-length.ts';
import type { ProfileAnswer } from './answer-profile.ts';

/** The answer in one sentence, to be heard. */
export function sayAnswer({ setUp, faults }: ProfileAnswer): string {
  if (setUp === undefined) return faults.map(({ message }) => message).join(' ');
  const { approach, tilt } = setUp.setting;
  return `Approach ${formatDegrees(toDegrees(approach))} from the blade line, tilt ${formatDegrees(toDegrees(tilt))} from upright, ${count(setUp.passHeights.length, 'pass', 'passes')}.`;
}
