/** What openings take out of the runs on their walls, in words. */
import type { LengthReading } from '../../core/units/length.ts';
import type { CutAway } from '../../planning/pieces/cut-away.ts';
import { printExact } from './print-length.ts';

export const CUT_AWAYS_TITLE = 'Cut away for openings';

/** `Hall, North: 42 3/8" taken out of Base for the door`. */
export function sayCutAway(
  { room, wall, profile, opening, taken }: CutAway,
  shop: LengthReading,
): string {
  // The only one of its kind on a wall has no number.
  const said = /\d$/u.test(opening) ? opening : `the ${opening}`;
  return `${room}, ${wall}: ${printExact(taken, shop)} taken out of ${profile} for ${said}`;
}
