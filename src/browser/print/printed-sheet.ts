/** A sheet as it is to be printed: sizes in points, texts as they are shown, pictures at their true size. */
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import type { PlainStyle } from '../../hosts/workbook/plain-workbook.ts';

export interface PrintedSheet {
  readonly name: string;
  /** Widths of the columns that hold anything. */
  readonly columns: readonly number[];
  readonly rows: readonly PrintedRow[];
  readonly merges: readonly CellRange[];
  readonly pictures: readonly PrintedPicture[];
  readonly print: PrintDescription;
}

export interface PrintedRow {
  readonly height: number;
  /** By column; null for a blank cell without a style. */
  readonly cells: readonly (PrintedCell | null)[];
}

export interface PrintedCell {
  readonly text: string;
  readonly style: PlainStyle;
  /** Numbers stand at the right where nothing else is said. */
  readonly isNumber: boolean;
}

/** Its top left corner at that of a cell, row and column from 0. */
export interface PrintedPicture {
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  /** As it was painted, or the drawing itself as SVG. */
  readonly image: { readonly png: Uint8Array } | { readonly svg: string };
}
