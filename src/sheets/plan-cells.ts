/** Where the figures stand that one sheet of a plan takes over from another by formula. */
export interface PlanCells {
  /** Per profile, in the order of the plan, on Production: what lumber it bears. */
  readonly lumber: string[];
  /** Per profile, on Cutting: how many sticks and blanks are cut up. */
  readonly sticks: string[];
  /** Per profile, on Cutting: how many lengths are cut from them, parts and spares included. */
  readonly cuts: string[];
  /** Per profile, on Cutting: length of its sticks and blanks together. */
  readonly bought: string[];
  boughtOnCutting: string;
  lumberOnCutting: string;
  priceOnClient: string;
  /** On Pieces, row by row: in which line of Production a piece counts, and its length to cut. */
  linesOnPieces: string;
  lengthsOnPieces: string;
}

export function newPlanCells(): PlanCells {
  return {
    lumber: [],
    sticks: [],
    cuts: [],
    bought: [],
    boughtOnCutting: '',
    lumberOnCutting: '',
    priceOnClient: '',
    linesOnPieces: '',
    lengthsOnPieces: '',
  };
}

export const SHEET_NAMES = {
  production: 'Production',
  pieces: 'Pieces',
  setUps: 'Set-ups',
  outlines: 'Outlines',
  cutting: 'Cutting',
  client: 'Client',
} as const;

/** `SUM(B4:B9)`, or 0 where there is no row. */
export function sumOf(column: string, first: number, last: number): string {
  return last < first ? '0' : `SUM(${column}${first}:${column}${last})`;
}

/** Whole cents as money in a cell. */
export function money(cents: number): number {
  return cents / 100;
}

/** The numbers' own sum, in their order, as a spreadsheet adds them. */
export function total(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
