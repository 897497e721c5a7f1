/** Whether an opening cuts a molding on its wall away. */
import Fraction from 'fraction.js';
import { own, phrase, type Argument } from '../../core/faults/argument.ts';
import type { Where } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { Profile } from '../job.ts';
import type { OpeningSide } from './opening-sides.ts';

export type Verdict =
  | { readonly is: 'cut' }
  | { readonly is: 'clear' }
  /** Nothing is cut, though the opening with its casing reaches so far into the molding. */
  | { readonly is: 'lapped'; readonly by: ExactInches }
  /** Nothing is cut, since this isn't given, in this cell. */
  | { readonly is: 'unknown'; readonly needed: Argument; readonly cell: Where };

const CLEAR: Verdict = { is: 'clear' };
const CUT: Verdict = { is: 'cut' };
const ZERO = new Fraction(0);

/**
 * What stands on the floor is cut away by doors and cased openings; a rail by any opening whose span
 * holds its Height, the lower edge; what is at the ceiling or round an opening never is. A horn of a stool
 * reaches beyond the casing and is let into the rail.
 */
export function judgeCut(
  side: OpeningSide,
  profile: Profile,
  profileOf: (name: string) => Profile | undefined,
): Verdict {
  const { place } = profile;
  const { kind, sill } = side.opening;
  if (place.at === 'ceiling' || place.at === 'opening') return CLEAR;
  if (place.at === 'floor') {
    if (kind !== 'window') return CUT;
    // A window stands above the base, so that its sill need not be known.
    const span = sill === undefined ? undefined : spanOf(side, profileOf);
    return span === undefined || 'needed' in span ? CLEAR : lap(span, ZERO, profile);
  }
  const { height } = place;
  if (height === undefined) return { is: 'unknown', needed: 'height', cell: place.cell };
  const span = spanOf(side, profileOf);
  if ('needed' in span) return { is: 'unknown', ...span };
  const isIn = height.gte(span.from) && height.lt(span.to);
  return isIn ? CUT : lap(span, height, profile);
}

interface Span {
  readonly from: ExactInches;
  readonly to: ExactInches;
}

/**
 * From the floor: a door from 0, a window from the lowest of its casing, stool and apron, to the top of
 * the head's casing. A stool lies under the legs, an apron under the stool or the legs. The second side
 * has neither.
 */
function spanOf(
  side: OpeningSide,
  profileOf: (name: string) => Profile | undefined,
): Span | { readonly needed: Argument; readonly cell: Where } {
  const { opening, margin } = side;
  if (opening.kind !== 'window') return { from: ZERO, to: opening.height.add(margin) };
  const { sill, stool, apron, cells } = opening;
  if (sill === undefined) return { needed: 'sill', cell: cells.sill };
  const to = sill.add(opening.height).add(margin);
  if (stool === undefined && apron === undefined) return { from: sill.sub(margin), to };
  if (side.side === 2) return { from: sill, to };
  const parts = [
    [stool, 'blankThickness'],
    [apron, 'blankWidth'],
  ] as const;
  let from = sill;
  for (const [name, size] of parts) {
    const part = name === undefined ? undefined : profileOf(name);
    if (part === undefined) continue;
    const high = part[size];
    if (high === undefined)
      return {
        needed: phrase('sizeOf', { size, profile: own(part.name) }),
        cell: part.cells[size],
      };
    from = from.sub(high);
  }
  return { from, to };
}

/** A molding whose lower edge is below the span and whose upper edge is in it. */
function lap(span: Span, height: ExactInches, { blankWidth }: Profile): Verdict {
  if (blankWidth === undefined || height.gte(span.to)) return CLEAR;
  const by = height.add(blankWidth).sub(span.from);
  return by.gt(0) ? { is: 'lapped', by } : CLEAR;
}
