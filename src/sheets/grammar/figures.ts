/** Figures as cells hold them. */

/** Whole cents as money in a cell. */
export function money(cents: number): number {
  return cents / 100;
}

/** The numbers' own sum, in their order, as a spreadsheet adds them. */
export function total(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
