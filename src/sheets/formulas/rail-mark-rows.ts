/** The tape marks of both rails by formula, as core/cove/rails.ts derives them. */
import type { TiltSide } from '../../core/cove/rails.ts';
import type { BlockResults, PlannedMark } from './block-results.ts';
import type { SizeTerms } from './block-sizes.ts';
import { markLabel } from '../words/say-marks.ts';
import type { Answer } from './newton-steps.ts';
import { cosine, minus, number, over, plus, sine, times, type Term } from '../grammar/term.ts';

/** A rail lies along a line u = const, crossed at x before or behind the arbor. */
export function addRailMarks(
  results: BlockResults,
  { nearFlat, farFlat }: SizeTerms,
  { front, back, halfWidth }: NonNullable<SizeTerms['table']>,
  { approach, near, far }: Answer,
  tiltSide: TiltSide,
  planned: Readonly<Record<PlannedMark, number>>,
): void {
  const nearFace = minus(near, nearFlat);
  const farFace = plus(far, farFlat);
  const mark = (u: Term, x: Term): Term => {
    const along = times(x, sine(approach));
    const right = tiltSide === 'left' ? minus(along, u) : minus(u, along);
    return over(right, cosine(approach));
  };
  const before = minus(number(0), front);
  for (const [rail, edge, u, x, key] of [
    ['near', 'front', nearFace, before, 'nearFront'],
    ['near', 'back', nearFace, back, 'nearBack'],
    ['far', 'front', farFace, before, 'farFront'],
    ['far', 'back', farFace, back, 'farBack'],
  ] as const) {
    results.mark(markLabel(rail, edge), mark(u, x), planned[key], halfWidth);
  }
}
