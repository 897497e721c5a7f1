/** A written workbook as anyone could read it back, the same for every host. */
export interface WorkbookView {
  readonly title: string;
  readonly sheets: readonly SheetView[];
  /** Name to what it refers to, written like 'Sheet'!$A$1:$B$2. */
  readonly names: Readonly<Record<string, string>>;
  /** Custom document properties. */
  readonly properties: Readonly<Record<string, unknown>>;
}

export interface SheetView {
  readonly name: string;
  /** Cells that hold something or have a look of their own, by A1. */
  readonly cells: Readonly<Record<string, CellView>>;
  readonly merges: readonly string[];
  readonly tables: readonly TableView[];
  readonly validations: readonly ValidationView[];
  readonly highlights: readonly HighlightView[];
  readonly freeze: { readonly rows: number; readonly columns: number } | null;
  /** Characters of the standard font, rounded to a hundredth. */
  readonly widths: readonly number[];
  /** Points, by row from 1. */
  readonly heights: Readonly<Record<number, number>>;
  readonly print: PrintView;
  readonly drawings: readonly DrawingView[];
}

/** A drawing as a picture on a sheet. */
export interface DrawingView {
  /** The cell at whose top left corner it begins. */
  readonly at: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  readonly alt: string;
  readonly isPng: boolean;
}

export interface CellView {
  readonly kind: 'blank' | 'text' | 'number' | 'boolean' | 'error';
  readonly value: string | number | boolean | null;
  readonly formula: string | null;
  readonly look: LookView;
}

export interface LookView {
  readonly format: string;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly size: number;
  readonly color: string | null;
  readonly fill: string | null;
  readonly align: string | null;
  readonly wrap: boolean;
  /** Such as top: thin. */
  readonly border: Readonly<Record<string, string>>;
}

export interface TableView {
  readonly name: string;
  readonly range: string;
  readonly headings: readonly string[];
}

export interface ValidationView {
  readonly range: string;
  readonly kind: 'list' | 'list from' | 'whole';
  readonly allowed: readonly string[];
  readonly strict: boolean;
  readonly title: string;
  readonly message: string;
}

export interface HighlightView {
  readonly range: string;
  readonly formula: string;
  readonly bold: boolean;
  readonly color: string | null;
  readonly fill: string | null;
}

export interface PrintView {
  readonly paper: string;
  readonly orientation: string;
  readonly fitWidth: boolean;
  readonly titleRows: string | null;
  /** Whole columns from the first: `$A:$L`; null where all are printed. */
  readonly printedColumns: string | null;
  readonly breaksAfter: readonly number[];
  /** With their codes: && is a typed &, &P the page's number. */
  readonly headerMiddle: string;
  readonly footerLeft: string;
  readonly footerRight: string;
}
