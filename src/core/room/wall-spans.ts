/** Stretches of a wall, as exact lengths from its left corner: openings on it, and what they leave. */
import Fraction from 'fraction.js';
import { phrase, sayArgument, type Argument } from '../faults/argument.ts';
import { fault, type Fault } from '../faults/fault.ts';
import type { ExactInches } from '../units/length.ts';

/** A stretch of a wall from its left corner, as one faces it from inside; to is beyond from. */
export interface Span {
  readonly from: ExactInches;
  readonly to: ExactInches;
}

/** An opening on a wall: the opening itself, without reveal and casing. */
export interface OpeningOnWall {
  /** What faults call it: door on 2 in Den. */
  readonly argument: Argument;
  /** From the wall's left corner to its left edge; absent where it isn't known. */
  readonly position?: ExactInches;
  readonly width: ExactInches;
}

/** A fault with the opening, from 0, and the one of its cells that must change. */
export interface OpeningFault {
  readonly fault: Fault;
  readonly opening: number;
  readonly cell: 'position' | 'width';
}

/**
 * What is left of a wall by what is cut away of it, from left to right. Cut-aways may come in any order,
 * lap each other and reach beyond the wall's ends (a casing scribed at the corner does); what they only
 * touch stays whole.
 * @param length of the wall, above 0.
 */
export function keptSpans(length: ExactInches, cutAways: readonly Span[]): Span[] {
  const kept: Span[] = [];
  let at = new Fraction(0);
  for (const { from, to } of [...cutAways].sort((one, other) => one.from.compare(other.from))) {
    if (at.gte(length)) break;
    const end = from.lt(length) ? from : length;
    if (end.gt(at)) kept.push({ from: at, to: end });
    if (to.gt(at)) at = to;
  }
  if (length.gt(at)) kept.push({ from: at, to: length });
  return kept;
}

/**
 * Openings that don't fit on their wall: each must lie within its ends and clear of the others, which it
 * may touch; all of them must fit beside each other, where positions are unknown too.
 * @param wall its name in its room, and its length, above 0.
 * @param openings widths above 0.
 * @returns faults `room.opening-wider-than-wall`, `length.negative`, `job.opening-outside-wall`,
 * `room.openings-overlap`, `room.openings-fill-wall`, in the order of the openings.
 */
export function checkOpeningsOnWall(
  wall: { readonly name: string; readonly length: ExactInches },
  openings: readonly OpeningOnWall[],
): OpeningFault[] {
  const found = openings.flatMap((one, at) => checkOpening(wall, one, at));
  if (found.length > 0) return found;
  const placed = openings
    .flatMap(({ argument, position, width }, at) =>
      position === undefined ? [] : [{ at, argument, from: position, to: position.add(width) }],
    )
    .sort((one, other) => one.from.compare(other.from) || one.at - other.at);
  let furthest = placed[0];
  for (const one of placed.slice(1)) {
    if (furthest !== undefined && one.from.lt(furthest.to)) {
      const details = {
        wall: wall.name,
        other: sayArgument(furthest.argument),
        otherFrom: inches(furthest.from),
      };
      const more = { limit: inches(furthest.to), details };
      const lap = fault('room.openings-overlap', one.argument, inches(one.from), more);
      found.push({ fault: lap, opening: one.at, cell: 'position' });
    }
    if (furthest === undefined || one.to.gt(furthest.to)) furthest = one;
  }
  const total = openings.reduce((sum, { width }) => sum.add(width), new Fraction(0));
  const last = openings[openings.length - 1];
  if (found.length === 0 && last !== undefined && total.gt(wall.length)) {
    const more = { limit: inches(wall.length), details: { wall: wall.name } };
    const full = fault('room.openings-fill-wall', last.argument, inches(total), more);
    found.push({ fault: full, opening: openings.length - 1, cell: 'width' });
  }
  return found.sort((one, other) => one.opening - other.opening);
}

function checkOpening(
  wall: { readonly name: string; readonly length: ExactInches },
  { argument, position, width }: OpeningOnWall,
  opening: number,
): OpeningFault[] {
  const limit = inches(wall.length);
  if (width.gt(wall.length)) {
    const more = { limit, details: { wall: wall.name } };
    const wide = fault('room.opening-wider-than-wall', argument, inches(width), more);
    return [{ fault: wide, opening, cell: 'width' }];
  }
  if (position === undefined) return [];
  if (position.lt(0)) {
    const before = fault(
      'length.negative',
      phrase('sizeOf', { size: 'position', profile: argument }),
      inches(position),
    );
    return [{ fault: before, opening, cell: 'position' }];
  }
  const to = position.add(width);
  if (to.lte(wall.length)) return [];
  const beyond = fault('job.opening-outside-wall', argument, inches(to), { limit });
  return [{ fault: beyond, opening, cell: 'position' }];
}

function inches(length: ExactInches): { readonly inches: number } {
  return { inches: Number(length) };
}
