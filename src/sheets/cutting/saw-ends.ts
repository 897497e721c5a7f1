/** The two ends of a piece as a saw stands for them: a glyph, and its angles. */
import { computeCrownCut } from '../../core/crown/crown-cut.ts';
import { degrees, toDegrees, toRadians } from '../../core/units/angle.ts';
import { formatDegrees } from '../../core/units/format-mark.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { Profile } from '../../planning/job.ts';
import type { PieceEnd } from '../../planning/piece.ts';
import { drawEnd } from '../words/say-ends.ts';
import type { PieceWords } from './cutting-stick.ts';

/**
 * `◥ miter 45°`; of what leans against its wall `◥ miter 31.62° bevel 33.86°`, as it lies flat on its back.
 *
 * @param joints of the piece, where it is spliced: only its own outer ends turn a corner
 */
export function sayOnSaw(
  { cut, left, right }: PieceWords,
  profile: Profile,
  joints: readonly Joint[],
  decimalSign: DecimalSign,
): { readonly left: string; readonly right: string } {
  const { piece, part } = cut;
  const own = (end: PieceEnd | undefined, isOuter: boolean): string | undefined =>
    end === undefined || !isOuter ? undefined : sayLeaning(end, profile, decimalSign);
  const atLeft = own(piece?.left, part === undefined || part === 1);
  const atRight = own(piece?.right, part === undefined || part === joints.length + 1);
  return {
    left: drawEnd('left', { ...left, least: atLeft ?? left.least }),
    right: drawEnd('right', { ...right, least: atRight ?? right.least }),
  };
}

/** A cope begins as an inside miter; a return turns a right angle. Undefined where nothing leans. */
function sayLeaning(
  { kind, cornerDeg }: PieceEnd,
  { spring }: Profile,
  decimalSign: DecimalSign,
): string | undefined {
  if (spring === undefined || kind === 'square') return undefined;
  const corner = toRadians(degrees(kind === 'return' ? 90 : cornerDeg));
  const found = computeCrownCut({ spring: toRadians(spring), corner });
  if (!found.ok) return undefined;
  const { miter, bevel } = found.value;
  const [turn, tilt] = [miter, bevel].map((angle) => formatDegrees(toDegrees(angle), decimalSign));
  return `${kind === 'cope' ? 'cope: ' : ''}miter ${turn} bevel ${tilt}`;
}
