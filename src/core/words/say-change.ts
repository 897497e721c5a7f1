/** What becomes of a cove that can't be made as asked, in words. */
import { COVE_SIZES } from '../cove/cove-sizes.ts';
import type { Change } from '../cove/nearest.ts';

const SIZES: Readonly<Record<Change, string>> = {
  narrower: `${COVE_SIZES.width.label}, narrower`,
  wider: `${COVE_SIZES.width.label}, wider`,
  shallower: `${COVE_SIZES.depth.label}, shallower`,
  deeper: `${COVE_SIZES.depth.label}, deeper`,
  'less off center': `${COVE_SIZES.offCenter.label}, less`,
  'another blade': 'Another blade',
  'thicker stock': `${COVE_SIZES.blankThickness.label}, more`,
  'wider stock': `${COVE_SIZES.blankWidth.label}, more`,
};

export function sayChange(change: Change): string {
  return SIZES[change];
}
