/**
 * A description of sheets as plain data: no host's object, nothing that can't be stored as JSON.
 * Every host (file, Excel, browser grid) writes any description: it cleans its texts
 * (clean-text.ts), refuses what no workbook can hold (check-description.ts), then writes.
 */
import type { Drawing } from '../../drawings/drawing.ts';
import type { StyleName } from './styles.ts';

export const DESCRIPTION_VERSION = 1;

export interface WorkbookDescription {
  readonly version: typeof DESCRIPTION_VERSION;
  readonly title: string;
  readonly sheets: readonly SheetDescription[];
  readonly names?: readonly NameDescription[];
  /** When it was made: a day, `2026-11-30`, or a moment, `2026-11-30T09:12:00.000Z`. Absent, its file tells of none. */
  readonly made?: string;
  /** What the workbook says of itself, as custom document properties: kept with it wherever it goes. */
  readonly properties?: Readonly<Record<string, string>>;
}

/** A workbook name for a range, such as Species -> Lists!$A$2:$A$9. */
export interface NameDescription {
  readonly name: string;
  readonly sheet: string;
  readonly range: string;
}

export interface SheetDescription {
  /** 1 to 31 characters, none of \ / ? * [ ] : and no apostrophe at either end. */
  readonly name: string;
  readonly columns: readonly ColumnDescription[];
  /** Row by row from A1; a null cell, or one past the row's end, is left blank. */
  readonly rows: readonly RowDescription[];
  /** Only the first cell of a merge holds anything; the others take its style. */
  readonly merges?: readonly string[];
  readonly tables?: readonly TableDescription[];
  readonly validations?: readonly ValidationDescription[];
  readonly highlights?: readonly HighlightDescription[];
  /** Rows and columns that stay in sight. */
  readonly freeze?: { readonly rows: number; readonly columns: number };
  readonly drawings?: readonly PlacedDrawing[];
  /**
   * Of a sheet that goes to others, as a file: nothing but cells of open styles may be typed over, until
   * a person takes the protection off; there is no password. Excel and the grid, in which the person
   * works, write the sheet without.
   */
  readonly isProtected?: true;
  readonly print: PrintDescription;
}

/** A drawing at its true size, its top left corner at that of cell `at`; the rows make room for it. */
export interface PlacedDrawing {
  readonly at: string;
  readonly drawing: Drawing;
  /** Whose drawing it is, and of what, in a few words: names its file where it is saved as one. */
  readonly name?: string;
}

export interface ColumnDescription {
  /** Width in characters of the standard font. */
  readonly width: number;
  /**
   * Style of the column's null cells in the rows described (text format for lengths to be typed,
   * say): rows that are to be filled in are described too, as blank ones.
   */
  readonly style?: StyleName;
}

export interface RowDescription {
  readonly cells: readonly (CellDescription | null)[];
  /** Height in points, when the host's own (by the lines that its text needs) won't do. */
  readonly height?: number;
}

export type CellValue = string | number | boolean;

export interface CellDescription {
  /**
   * What is shown; with a formula, its cached value. Text stays text, whatever it begins with or
   * looks like; empty text without a formula is a blank cell.
   */
  readonly value: CellValue | null;
  /** Without the equals sign; English, commas, functions of Excel 2010 at most. */
  readonly formula?: string;
  readonly style?: StyleName;
}

/**
 * A table proper: the first row of `range` holds its headings (text, none twice), and at least one
 * described row follows. Names are unique in the workbook.
 */
export interface TableDescription {
  readonly name: string;
  readonly range: string;
}

export interface ValidationDescription {
  readonly range: string;
  readonly allow:
    /** 255 characters in all, no comma or quote in a value; longer lists stand in cells. */
    | { readonly kind: 'list'; readonly values: readonly string[] }
    | { readonly kind: 'list from'; readonly formula: string }
    | { readonly kind: 'whole'; readonly least: number; readonly most: number };
  /** Refuse anything else, or only warn. */
  readonly strict: boolean;
  /** What is said then: 32 and 225 characters at most. */
  readonly title: string;
  readonly message: string;
}

/**
 * Cells of `range` take color, fill, border, bold and italic of `style` where the formula (relative
 * to its first cell) is true; earlier highlights go before later ones.
 */
export interface HighlightDescription {
  readonly range: string;
  readonly formula: string;
  readonly style: StyleName;
}

export interface PrintDescription {
  readonly paper: 'letter' | 'a4';
  readonly orientation: 'portrait' | 'landscape';
  /** First and last row (from 1) repeated at the top of each page. */
  readonly titleRows?: readonly [number, number];
  /** A new page begins after each of these rows (from 1). */
  readonly breaksAfter?: readonly number[];
  /** Shrink so that all columns fit on one page's width; else all is printed at its true size. */
  readonly fitWidth: boolean;
  /** As many columns are printed, from the first; those after them are for the screen. Absent: all. */
  readonly printedColumns?: number;
  /**
   * Where the page's first cell stands, in inches from the paper's left and top edge, for what must lie
   * in places of the paper: nothing is kept free at its right and at its foot, and it has no
   * footer. Absent: the usual margins, see MARGIN_INCHES.
   */
  readonly start?: { readonly left: number; readonly top: number };
  /**
   * Plain text of the header's middle and the footer's left, 235 characters at most; the footer's
   * right always says "Page 1 of 3".
   */
  readonly header: string;
  readonly footer: string;
}
