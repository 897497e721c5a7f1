/** What formulas of the office sheet take from other rows of it. */
import { Anchors } from '../grammar/anchors.ts';
import type { RateName } from '../plan-anchors.ts';

export type TotalName = 'cost' | 'lines' | 'price' | 'priceWithTax' | 'priceByRoom' | 'moreByPlan';

interface OfficePlaces extends Readonly<Record<RateName | `total ${TotalName}`, string>> {
  /** Of a profile's plan: its row of money. */
  readonly moneyRow: number;
  /** What the work for the whole job is to be paid; 0 where there is none. */
  readonly jobPrice: string;
  /** Of a profile's plan, what lumber it bears: all of its group's, or its share of it. */
  readonly lumberBorne: string;
  /** Of a line by room: its price. */
  readonly linePrice: string;
}

export type OfficeAnchors = Anchors<OfficePlaces>;

export function newOfficeAnchors(): OfficeAnchors {
  return new Anchors('Office');
}
