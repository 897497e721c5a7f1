/** Cells of the production sheet that other rows of it point to; filled while it is drafted. */

/** Rates of the shop that formulas go by, as absolute references. */
export type RateName =
  | 'hourlyRate'
  | 'overhead'
  | 'margin'
  | 'tax'
  | 'setUpMinutes'
  | 'feed'
  | 'handling'
  | 'smoothing'
  | 'crosscut';

export type TotalName =
  | 'pieces'
  | 'sticks'
  | 'lengthNet'
  | 'lengthBought'
  | 'boardFeetNet'
  | 'boardFeetWithAllowance'
  | 'passes'
  | 'hours'
  | 'hoursInOrder'
  | 'fromRack'
  | 'toBuy'
  | 'lumber'
  | 'cost'
  | 'price'
  | 'priceWithTax'
  | 'piecesByRoom'
  | 'lengthByRoom'
  | 'boardFeetByRoom'
  | 'passesByRoom'
  | 'hoursByRoom'
  | 'priceByRoom';

export interface ProductionCells {
  readonly rates: Map<RateName, string>;
  readonly totals: Map<TotalName, string>;
  /** Per profile, in the order of the plan: its row among the quantities, and among the money. */
  readonly quantityRows: number[];
  readonly moneyRows: number[];
  /** Per profile: cells of the order of work with its passes, and with the hours that it takes. */
  readonly passes: (string | undefined)[];
  readonly hours: string[][];
  /** Per profile: the sum of its stock. */
  readonly lumber: string[];
  /** First and last row of the lines by room. */
  rooms: readonly [number, number];
}

export function newProductionCells(): ProductionCells {
  return {
    rates: new Map(),
    totals: new Map(),
    quantityRows: [],
    moneyRows: [],
    passes: [],
    hours: [],
    lumber: [],
    rooms: [1, 1],
  };
}

/** Asked once the sheet is drafted. */
export function totalCell(cells: ProductionCells, name: TotalName): string {
  return placed(cells.totals.get(name), `total of ${name}`);
}

export function rateCell(cells: ProductionCells, name: RateName): string {
  return placed(cells.rates.get(name), `rate ${name}`);
}

/** A cell of the row of one profile: `G$12`. */
export function rowCell(rows: readonly number[], index: number, column: string): string {
  return placed(rows[index] === undefined ? undefined : `${column}$${rows[index]}`, 'such row');
}

function placed(at: string | undefined, what: string): string {
  if (at === undefined) throw new RangeError(`The production sheet has no ${what}.`);
  return at;
}
