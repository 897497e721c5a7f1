/**
 * The nearest cove that can be made where one can't: for each size alone, the least change that passes
 * every limit. Found by trying, in sixty-fourths from the size outward, each by checkCove itself: what
 * lies nearer was tried and refused. (No limit is taken to hold on one side of a border alone.)
 */
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import { checkSizes } from './check-sizes.ts';
import type { Blade, Cove } from './cove.ts';
import { checkCove } from './feasibility.ts';
import type { SawLimits } from './saw-limits.ts';
import type { CoveStock } from './stock.ts';
import { isReached } from './too-wide.ts';

/** One size, changed alone, the others as asked. */
export type Change =
  | 'narrower'
  | 'wider'
  | 'shallower'
  | 'deeper'
  | 'less off center'
  | 'another blade'
  | 'thicker stock'
  | 'wider stock';

export interface Nearest {
  readonly change: Change;
  /** What the size becomes; inches. Undefined: no change of this size alone helps. */
  readonly to?: number;
  /** Where it is the blade that changes. */
  readonly blade?: Blade;
}

const STEP_INCHES = 1 / 64;
/** So much more stock is thought of. */
const MOST_MORE_STOCK_INCHES = 4;

/**
 * @param blades others that the shop has; none is suggested that isn't among them
 * @returns a row for each direction, the least changes first, those that don't help last; none where the
 *   cove can be made as asked. Sizes must be sound (see checkSizes).
 */
export function findNearest(
  cove: Cove,
  blade: Blade,
  saw: SawLimits = {},
  stock?: CoveStock,
  blades: readonly Blade[] = [],
): Nearest[] {
  const isPossible = (
    other: Partial<Cove>,
    more: Partial<CoveStock> = {},
    by: Blade = blade,
  ): boolean => {
    const changed = { ...cove, ...other };
    // What angles and rise don't reach is refused without asking for every reason.
    if (checkSizes(changed, by).length > 0 || !isReached(changed, by, saw)) return false;
    const on = stock === undefined ? undefined : { ...stock, ...more };
    return checkCove(changed, by, saw, on).faults.length === 0;
  };
  if (isPossible({})) return [];
  const { width, depth, offCenter } = cove;
  const widest = Math.hypot(2 * Math.sqrt(depth * Math.max(0, blade.diameter - depth)), blade.kerf);
  const found: { change: Change; from: number; to: number | undefined }[] = [
    {
      change: 'narrower',
      from: width,
      to: firstFrom(width, 0, (one) => isPossible({ width: one })),
    },
    {
      change: 'wider',
      from: width,
      to: firstFrom(width, 2 * Math.max(width, widest), (one) => isPossible({ width: one })),
    },
    {
      change: 'shallower',
      from: depth,
      to: firstFrom(depth, 0, (one) => isPossible({ depth: one })),
    },
    {
      change: 'deeper',
      from: depth,
      to: firstFrom(depth, blade.diameter / 2, (one) => isPossible({ depth: one })),
    },
    {
      change: 'less off center',
      from: offCenter,
      to:
        offCenter === 0
          ? undefined
          : firstFrom(offCenter, 0, (one) => isPossible({ offCenter: one })),
    },
    ...stockChanges(stock, isPossible),
  ];
  const nearest = found.map(({ change, from, to }) => ({
    change,
    to,
    by: Math.abs((to ?? from) - from),
  }));
  nearest.sort(
    (a, b) => (a.to === undefined ? 1 : 0) - (b.to === undefined ? 1 : 0) || a.by - b.by,
  );
  const other = blades.find((one) => isPossible({}, {}, one));
  return [
    ...nearest.map(({ change, to }) => (to === undefined ? { change } : { change, to })),
    ...(blades.length === 0
      ? []
      : [{ change: 'another blade' as const, ...(other === undefined ? {} : { blade: other }) }]),
  ];
}

function stockChanges(
  stock: CoveStock | undefined,
  isPossible: (other: Partial<Cove>, more?: Partial<CoveStock>) => boolean,
): { change: Change; from: number; to: number | undefined }[] {
  if (stock === undefined) return [];
  const { blankThickness, blankWidth } = stock;
  const more = (from: number, holds: (one: number) => boolean): number | undefined =>
    firstFrom(from, from + MOST_MORE_STOCK_INCHES, holds);
  return [
    {
      change: 'thicker stock',
      from: blankThickness,
      to: more(blankThickness, (one) => isPossible({}, { blankThickness: one })),
    },
    {
      change: 'wider stock',
      from: blankWidth,
      to: more(blankWidth, (one) => isPossible({}, { blankWidth: one })),
    },
  ];
}

/** The first sixty-fourth from here toward there, here and 0 left out, that will do. */
function firstFrom(
  from: number,
  to: number,
  holds: (inches: number) => boolean,
): number | undefined {
  const sign = to < from ? -1 : 1;
  const start =
    sign < 0
      ? Math.ceil(from / STEP_INCHES - LIMIT_SLACK_INCHES) - 1
      : Math.floor(from / STEP_INCHES + LIMIT_SLACK_INCHES) + 1;
  const end = to / STEP_INCHES;
  const least = sign < 0 && to === 0 ? 0 : end;
  for (let at = start; sign < 0 ? at >= least : at <= end; at += sign) {
    // A centered cove is one; a cove of no width or depth is none.
    if (holds(at * STEP_INCHES)) return at * STEP_INCHES;
  }
  return undefined;
}
