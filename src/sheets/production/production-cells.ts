/** Cells of the production sheet that other rows of it point to; filled while it is drafted. */
export interface ProductionCells {
  /** First and last row of the piece list. */
  pieces: readonly [number, number];
  /** Per profile, in the order of the plan: its hours, and the sum of its stock. */
  readonly hours: string[];
  readonly lumber: string[];
  readonly totals: Map<TotalName, string>;
  rates: Readonly<Record<'hourlyRate' | 'overhead' | 'margin' | 'tax', string>>;
}

export type TotalName =
  | 'pieces'
  | 'sticks'
  | 'lengthNet'
  | 'boardFeetNet'
  | 'boardFeetWithAllowance'
  | 'passes'
  | 'machineHours'
  | 'benchHours'
  | 'hours'
  | 'lumber'
  | 'cost'
  | 'price'
  | 'priceWithTax';

export function newProductionCells(): ProductionCells {
  const rates = { hourlyRate: '', overhead: '', margin: '', tax: '' };
  return { pieces: [1, 1], hours: [], lumber: [], totals: new Map(), rates };
}

/** Asked once the sheet is drafted. */
export function totalCell(cells: ProductionCells, name: TotalName): string {
  const at = cells.totals.get(name);
  if (at === undefined) throw new RangeError(`The production sheet has no total of ${name}.`);
  return at;
}
