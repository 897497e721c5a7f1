/** How many of what work is counted by there are by the offcut allowance: of the inputs alone, no stick is asked. */
import type { ExactInches } from '../../core/units/length.ts';
import { fewestParts } from '../../cutting/problem/splice-parts.ts';
import type { Profile } from '../job.ts';
import type { Piece } from '../piece.ts';
import type { Shop } from '../shop.ts';
import type { AllowedLumber } from '../stock-units.ts';
import { spliceOverlap } from '../splice-overlap.ts';
import { backBevelsOf, countPieces, type Counted } from './counts.ts';
import type { Counts } from './work-row.ts';

const INCHES_PER_FOOT = 12;

/**
 * What depends on sticks in `countWork` goes by the lumber that is allowed, net and allowance, and by the
 * row of Stock that prices it:
 * - pass: passes of one blank, times the sticks or blanks that this is of the row, rounded up
 * - foot a pass, foot a cut, foot a rip: along the allowed length; a rip only where the row is a board
 * - crosscut: one for each length, parts of joined ones too, and one more for each of those sticks
 * - board: those sticks over the blanks that a board of the row gives, rounded up
 * - joint: the fewest parts of what is longer than the longest stick that it could be priced by, less one each
 *
 * Set-up spares are in none of them. All else is as it is in any plan. Each grows, or stays, with every
 * piece and its length.
 */
export function countAllowedWork(
  counted: Omit<Counted, 'sticks' | 'boards'>,
  { unit, sticks, inches, longestStick }: AllowedLumber,
  shop: Shop,
): Counts {
  const { profile, pieces, setUp } = counted;
  const feet = inches / INCHES_PER_FOOT;
  const passes = setUp?.passHeights.length ?? 0;
  const joints = countAllowedJoints(profile, pieces, longestStick, shop);
  return {
    ...countPieces(counted),
    'set-up': setUp === undefined || pieces.length === 0 ? 0 : 1,
    pass: passes * sticks,
    'foot a pass': passes * feet,
    'foot a cut': backBevelsOf(profile) * feet,
    'foot a rip': unit.item.kind === 'board' ? feet : 0,
    crosscut: pieces.length + joints + sticks,
    joint: joints,
    board: Math.ceil(sticks / unit.strips),
  };
}

/** Of one that may not be joined none: then a stick must be there for it. */
function countAllowedJoints(
  profile: Profile,
  pieces: readonly Piece[],
  longestStick: ExactInches,
  shop: Shop,
): number {
  const { endTrim, lengthPrecision } = shop;
  const overlap = spliceOverlap(profile, shop);
  if (overlap === undefined) return 0;
  const steps = (length: ExactInches): number => Number(length.div(lengthPrecision).floor());
  const longest = steps(longestStick.sub(endTrim.mul(2)));
  const lap = steps(overlap);
  if (lap >= longest) return 0;
  return pieces
    .filter(({ onePiece, match }) => !onePiece && match === '')
    .map(({ cutLength }) => steps(cutLength))
    .filter((length) => length > longest)
    .reduce((sum, length) => sum + fewestParts(length, longest, lap) - 1, 0);
}
