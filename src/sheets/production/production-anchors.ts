/** What formulas of the production sheet take from other rows of it. */
import { Anchors } from '../grammar/anchors.ts';
import type { ProductionTotal } from '../plan-anchors.ts';

type Cells = Readonly<Record<`total ${ProductionTotal}`, string>>;

interface ProductionPlaces extends Cells {
  /** Of a profile's plan: its row by profile. */
  readonly quantityRow: number;
  /** Of a profile's plan, in the order of work: its passes; its hours, the sum of several rows. */
  readonly passesInOrder: string;
  readonly hoursInOrder: string;
  /** Of the plan of a profile that is alone in its group: the sum of its stock's board feet. */
  readonly boardFeetBorne: string;
  /** First and last row of the lines by room. */
  readonly roomRows: readonly [first: number, last: number];
}

export type ProductionAnchors = Anchors<ProductionPlaces>;

export function newProductionAnchors(): ProductionAnchors {
  return new Anchors('Production');
}
