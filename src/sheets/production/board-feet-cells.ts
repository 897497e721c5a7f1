/** What board feet by formula have in common, by profile and by room. */
import type { LengthUnit } from '../../core/units/length-unit.ts';

/** What 144 cubic inches are in the shop's unit, cubed, at 25.4 mm to the inch; as a formula writes it. */
export const CUBIC_PER_BOARD_FOOT: Readonly<Record<LengthUnit, string>> = {
  in: '144',
  mm: '2359737.216',
};

/** Of a profile without a blank's width or thickness; sums pass over text. */
export const UNKNOWN = 'not known';
