/** The tables of the sheet Changes: each under its heading, over as many pages as it takes. */
import { spreadRow, type PagedRows } from '../grammar/paged-rows.ts';
import type { SheetRow } from '../grammar/sheet-draft.ts';
import { ALL } from './changes-columns.ts';

export const CHANGES_SHEET = 'Changes';

/** A table of the sheet: its heading, its rows, each with formulas that ask for its place. */
export interface Table {
  readonly title: string;
  readonly headings: SheetRow;
  readonly rows: readonly ((row: () => number) => SheetRow)[];
  /** The row that adds them up, given the first and the last of them. */
  readonly together?: (first: () => number, last: () => number) => SheetRow;
}

export function addTable(
  { pages }: { readonly pages: PagedRows },
  { title, headings, rows, together }: Table,
): void {
  if (rows.length === 0) return;
  const again = [spreadRow(`${title}, continued`, 'section', ALL), headings];
  const places: number[] = [];
  const at = (index: number) => (): number => places.at(index) ?? 0;
  pages.hold({ cells: [] }, spreadRow(title, 'section', ALL), headings);
  rows.forEach((make, index) => {
    places.push(...pages.add([make(at(index))], again));
  });
  // A page that begins inside the table has its heading between the rows, which adds nothing.
  if (together !== undefined) pages.add([together(at(0), at(rows.length - 1))], again);
}

/** Cents in the currency's own unit. */
export const units = (cents: number | undefined): number => (cents ?? 0) / 100;
