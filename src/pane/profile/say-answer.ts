import { toDegrees, type Radians } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import { count } from '../../sheets/words/print-length.ts';
import type { ProfileAnswer } from './answer-profile.ts';

/** The answer in one sentence, to be heard. */
export function sayAnswer({ setUp, faults, shop }: ProfileAnswer): string {
  if (setUp === undefined) return faults.map(({ message }) => message).join(' ');
  const { approach, tilt } = setUp.setting;
  const say = (angle: Radians): string => formatDegrees(toDegrees(angle), shop.decimalSign);
  return `Approach ${say(approach)} from the blade line, tilt ${say(tilt)} from upright, ${count(setUp.passHeights.length, 'pass', 'passes')}.`;
}
