/**
 * Rows that stay together on a page. Who adds a block also gives rows that say what it belongs to; they
 * are put first where a page begins inside it.
 */
import type { CellDescription, ColumnDescription } from './description.ts';
import { FILLED_SHARE, MOST_BREAKS } from './page-size.ts';
import { closeHeight } from './row-height.ts';
import { cell, type DraftCell, type SheetDraft, type SheetRow } from './sheet-draft.ts';
import type { StyleName } from './styles.ts';

export class PagedRows {
  readonly #draft: SheetDraft;
  readonly #columns: readonly ColumnDescription[];
  readonly #most: number;
  #repeated = 0;
  #used = 0;
  #isFresh = true;
  #breaks = 0;
  #held: readonly SheetRow[] = [];

  /** @param room Points of rows that a page has room for, at the sheet's own size. */
  constructor(draft: SheetDraft, columns: readonly ColumnDescription[], room: number) {
    this.#draft = draft;
    this.#columns = columns;
    this.#most = room * FILLED_SHARE;
  }

  /** How many pages the rows take so far. */
  get pages(): number {
    return this.#breaks + 1;
  }

  /** Adds a row that is repeated at the top of every later page. */
  addRepeated(row: SheetRow): number {
    const points = this.#pointsOf(row);
    const at = this.#place(row, points);
    this.#repeated = points;
    return at;
  }

  /** Keeps rows, headings say, on the page of the block that is added next. */
  hold(...rows: readonly SheetRow[]): void {
    this.#held = [...this.#held, ...rows];
  }

  /**
   * Adds rows that stay on one page, if a page has room for them.
   *
   * @param again Rows that are put before them where a page begins with them: whose they are.
   * @returns The number of each row, from 1.
   */
  add(rows: readonly SheetRow[], again: readonly SheetRow[] = []): readonly number[] {
    const held = this.#held;
    this.#held = [];
    const all = [...held, ...rows].map((row) => ({ row, points: this.#pointsOf(row) }));
    const high = all.reduce((sum, { points }) => sum + points, 0);
    // A page that begins with a heading needs no other.
    if (!this.#fits(high)) this.#turn(held.length > 0 ? [] : again);
    const places = all.map(({ row, points }, index) => {
      if (!this.#fits(points)) this.#turn(index > 0 ? again : []);
      return this.#place(row, points);
    });
    return places.slice(held.length);
  }

  /** Adds two rows that stay on one page, and gives the number of each. */
  addBoth(
    first: SheetRow,
    second: SheetRow,
    again: readonly SheetRow[] = [],
  ): readonly [first: number, second: number] {
    const [one, other] = this.add([first, second], again);
    if (one === undefined || other === undefined) throw new RangeError('A row has no place.');
    return [one, other];
  }

  /** Begins a page, unless one has just begun. */
  turnPage(): void {
    if (!this.#isFresh) this.#turn([]);
  }

  /** Whether rows, with those that are held, have room on one page, be it a new one. */
  fitOnPage(rows: readonly SheetRow[]): boolean {
    return this.#repeated + this.#highOf(rows) <= this.#most;
  }

  /** Whether they have room on the page as it is. */
  hasRoomFor(rows: readonly SheetRow[]): boolean {
    return this.#used + this.#highOf(rows) <= this.#most;
  }

  #highOf(rows: readonly SheetRow[]): number {
    return [...this.#held, ...rows].reduce((sum, row) => sum + this.#pointsOf(row), 0);
  }

  #fits(points: number): boolean {
    return this.#isFresh || this.#used + points <= this.#most;
  }

  #turn(again: readonly SheetRow[]): void {
    this.#breaks += 1;
    this.#used = this.#repeated;
    if (this.#breaks <= MOST_BREAKS) {
      this.#draft.breakPage();
      for (const row of again) this.#place(row, this.#pointsOf(row));
    }
    this.#isFresh = true;
  }

  #place(row: SheetRow, points: number): number {
    const at = this.#draft.put({ ...row, points });
    this.#used += points;
    this.#isFresh = false;
    return at;
  }

  #pointsOf({ cells, joins = [], points }: SheetRow): number {
    if (points !== undefined) return points;
    const known = cells.map((one) =>
      one === null || typeof one.formula === 'function' ? null : (one as CellDescription),
    );
    return closeHeight(known, this.#columns, joins);
  }
}

/** A row whose one text spreads over all columns, or over some: first and last, from 0. */
export function spreadRow(
  text: string,
  style: StyleName,
  [from, to]: readonly [number, number],
): SheetRow {
  const blank: DraftCell[] = Array.from({ length: from }, () => null);
  return { cells: [...blank, cell(text, style)], joins: [[from, to]] };
}
