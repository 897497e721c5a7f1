/** What is said beside the labels of a page. */
import { JUDGMENT_CAUTION } from '../words/standing-cautions.ts';
import type { Label } from './list-labels.ts';

export interface LabelPage {
  /** The first label's number, from 1. */
  readonly first: number;
  readonly labels: readonly Label[];
  /** Where nothing can be said beside the labels, it is said on one. */
  readonly saysOnLabel: boolean;
}

export const JUDGMENT = JUDGMENT_CAUTION;
/** What left, right and the arrow are seen from. */
export const HOW_SHORT =
  'Left and right are as you face the molding on its wall; the arrow points to the edge that goes up it.';
export const FOOT = `${HOW_SHORT} ${JUDGMENT}`;

/** `Labels 1 to 30 of 45, page 1 of 2. Print at 100 %.` */
export function sayHead(
  { first, labels }: LabelPage,
  [printed, all]: readonly [printed: number, all: number],
  [page, pages]: readonly [page: number, pages: number],
): string {
  const which = `Labels ${first} to ${first + labels.length - 1} of ${all}, page ${page} of ${pages}.`;
  const rest =
    printed < all ? ` The first ${printed} are printed; the list labels.csv has all.` : '';
  return `${which}${rest} Print at 100 %.`;
}
