/** What formulas of the production sheet take from other rows of it. */
import { Anchors } from '../grammar/anchors.ts';

/** A rate of the shop that formulas go by. */
export type RateName =
  | 'hourlyRate'
  | 'overhead'
  | 'contingency'
  | 'materialMarkup'
  | 'laborMarkup'
  | 'margin'
  | 'minimumCharge'
  | 'delivery'
  | 'rounding'
  | 'tax'
  | 'taxOn';

export type TotalName =
  | 'pieces'
  | 'sticks'
  | 'lengthNet'
  | 'lengthBought'
  | 'boardFeetNet'
  | 'boardFeetWithAllowance'
  | 'boardFeetBought'
  | 'boardFeetOfStock'
  | 'passes'
  | 'hours'
  | 'hoursInOrder'
  | 'fromRack'
  | 'toBuy'
  | 'lumber'
  | 'cost'
  | 'lines'
  | 'price'
  | 'priceWithTax'
  | 'piecesByRoom'
  | 'lengthByRoom'
  | 'boardFeetByRoom'
  | 'passesByRoom'
  | 'hoursByRoom'
  | 'priceByRoom';

type Cells = Readonly<Record<RateName | `total ${TotalName}`, string>>;

interface ProductionPlaces extends Cells {
  /** All checks in a sentence. */
  readonly verdict: string;
  /** Of a profile's plan: its row among the quantities, and among the money. */
  readonly quantityRow: number;
  readonly moneyRow: number;
  /** What the whole job's work comes to: hours and price, as cells to be added; 0 where there is none. */
  readonly jobHours: string;
  readonly jobPrice: string;
  /** Of a profile's plan, in the order of work: its passes; its hours, the sum of several rows. */
  readonly passesInOrder: string;
  readonly hoursInOrder: string;
  /** Of a profile's plan, what lumber it bears: all of its group's, or its share of it. */
  readonly lumberBorne: string;
  /** Of the plan of a profile that is alone in its group: the sum of its stock's board feet. */
  readonly boardFeetBorne: string;
  /** First and last row of the lines by room. */
  readonly roomRows: readonly [first: number, last: number];
}

export type ProductionAnchors = Anchors<ProductionPlaces>;

export function newProductionAnchors(): ProductionAnchors {
  return new Anchors('Production');
}
