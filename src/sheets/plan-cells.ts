/** Where the figures stand that one sheet of a plan takes over from another by formula. */
export interface PlanCells {
  /** Per profile, in the order of the plan: on Production and on Cutting. */
  readonly lumber: string[];
  readonly sticks: string[];
  boughtOnCutting: string;
  lumberOnCutting: string;
  priceOnClient: string;
}

export function newPlanCells(): PlanCells {
  return { lumber: [], sticks: [], boughtOnCutting: '', lumberOnCutting: '', priceOnClient: '' };
}

export const SHEET_NAMES = {
  production: 'Production',
  setUps: 'Set-ups',
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
