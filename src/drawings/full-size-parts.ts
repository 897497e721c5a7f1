/** An outline at full size, such as a board's end, shared out over drawings that the paper takes. */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import { SCALE_BARS_WIDTH_MM } from './scale-bars.ts';

/** The stretch of the outline that one drawing shows, in millimetres from its left side. */
export interface FullSizePart {
  readonly from: number;
  readonly to: number;
  /** From 1. */
  readonly number: number;
  readonly count: number;
  /** Where it is laid on its neighbors. */
  readonly joins: readonly { readonly at: number; readonly name: string }[];
}

/** At both sides of the outline, in millimetres. */
export const AIR = 2;
/** The strip that two neighboring parts both show. */
export const OVERLAP_MM = 20;
/** Narrower paper has no room for the scale bars. */
export const LEAST_FULL_SIZE_MM = SCALE_BARS_WIDTH_MM + 2 * AIR;

/**
 * As few parts as the paper takes, all of one width, each overlapping the next.
 *
 * @param width Of the outline, in inches.
 * @param widest Of the paper's room, in millimetres.
 * @throws RangeError for paper too narrow for the bars (a bug of the caller's).
 */
export function partsOf({ width }: { readonly width: number }, widest: number): FullSizePart[] {
  if (!(widest >= LEAST_FULL_SIZE_MM)) {
    throw new RangeError(`Paper ${widest} mm wide has no room for the scale bars.`);
  }
  const room = widest - 2 * AIR;
  const all = width * MM_PER_INCH;
  const count = Math.max(1, Math.ceil((all - OVERLAP_MM) / (room - OVERLAP_MM)));
  const step = (all - OVERLAP_MM) / count;
  if (count === 1) return [{ from: 0, to: all, number: 1, count, joins: [] }];
  const joinAfter = (index: number) => ({
    at: (index + 1) * step + OVERLAP_MM / 2,
    name: `joining line ${index + 1}`,
  });
  return Array.from({ length: count }, (_, index) => ({
    from: index * step,
    to: index * step + step + OVERLAP_MM,
    number: index + 1,
    count,
    joins: [
      ...(index === 0 ? [] : [joinAfter(index - 1)]),
      ...(index === count - 1 ? [] : [joinAfter(index)]),
    ],
  }));
}
