/**
 * Any workbook as plain data: what is described becomes one, and so does a person's file or grid, which
 * can hold more styles than ours. From it alone the grid is filled and .xlsx files are written.
 */
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { TableDescription } from '../../sheets/grammar/description.ts';
import type { Properties } from '../notes.ts';
import type { KeptTexts } from './kept-text.ts';
import type { SheetPage } from '../xlsx/sheet-page.ts';

/** Width of a column of which a file says nothing (ECMA-376 part 1, 18.3.1.81). */
export const STANDARD_PIXELS = 64;

export interface PlainWorkbook {
  readonly title: string;
  /** When it was made, as a description says it; absent, its file tells of none. */
  readonly made?: string;
  /** Of cells without a style of their own. */
  readonly font: PlainFont;
  /** By the names that cells call them. */
  readonly styles: Readonly<Record<string, PlainStyle>>;
  readonly sheets: readonly PlainSheet[];
  readonly names: readonly PlainName[];
  /** What its file says of itself besides the title: custom document properties. */
  readonly properties?: Properties;
  /** Long texts kept with it, out of sight. */
  readonly texts?: KeptTexts;
}

export interface PlainFont {
  readonly name: string;
  /** Points. */
  readonly size: number;
}

/** A name for a range or a formula: Species, Lists!$A$2:$A$9. */
export interface PlainName {
  readonly name: string;
  readonly refersTo: string;
  /** The sheet in which alone it is known. */
  readonly sheet?: string;
}

export interface PlainSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** Made here, under the name that it still bears. */
  readonly ours: boolean;
  /** By row and column from 0; what is missing is blank. A row that is there counts, be it empty. */
  readonly cells: Readonly<Record<number, Readonly<Record<number, PlainCell>>>>;
  /** By column from 0. */
  readonly columns: Readonly<Record<number, PlainColumn>>;
  /** Width of the columns that it says nothing of, where the grid shows them. */
  readonly otherPixels: number;
  /** By row from 0. */
  readonly rows: Readonly<Record<number, PlainRow>>;
  readonly merges: readonly CellRange[];
  readonly freeze: { readonly rows: number; readonly columns: number };
  readonly gridLines: boolean;
  readonly rightToLeft: boolean;
  /** RRGGBB. */
  readonly tabColor?: string;
  readonly tables: readonly TableDescription[];
  readonly page: SheetPage;
  /** In a file nothing but open cells may be typed over; without a password. */
  readonly isProtected?: boolean;
  /** Only written: pictures of an opened file are left out. */
  readonly pictures: readonly PlainPicture[];
}

export interface PlainCell {
  /** With a formula, its cached value. */
  readonly value: string | number | boolean | null;
  /** The value is an error's code: #N/A. */
  readonly error?: boolean;
  /** As a person writes it, without the equals sign. */
  readonly formula?: string;
  /** Where the answers of a formula that may have several stand, its own cell first; A1 or A1:B3. */
  readonly spill?: string;
  /** Among the workbook's styles. */
  readonly style?: string;
}

export interface PlainColumn {
  readonly pixels?: number;
  readonly hidden?: boolean;
}

export interface PlainRow {
  readonly points?: number;
  readonly hidden?: boolean;
}

/** A picture at its true size, its top left corner at that of a cell. */
export interface PlainPicture {
  /** A PNG's bytes. */
  readonly png: Uint8Array;
  readonly row: number;
  readonly column: number;
  /** Of 96 to the inch. */
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly alt: string;
}

/** Colors are RRGGBB; what is absent is as the workbook's font and a plain cell have it. */
export interface PlainStyle {
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: 'left' | 'center' | 'right' | 'justify';
  readonly vertical?: 'top' | 'center' | 'bottom';
  readonly wrap?: boolean;
  readonly lines?: Readonly<Partial<Record<LineSide, PlainLine>>>;
  /** May be typed over where its sheet is protected. */
  readonly open?: boolean;
  /** A number format. */
  readonly format?: string;
}

export type LineSide = 'top' | 'right' | 'bottom' | 'left';

export const LINE_KINDS = [
  'thin',
  'hair',
  'dotted',
  'dashed',
  'dashDot',
  'dashDotDot',
  'double',
  'medium',
  'mediumDashed',
  'mediumDashDot',
  'mediumDashDotDot',
  'slantDashDot',
  'thick',
] as const;

export interface PlainLine {
  readonly kind: (typeof LINE_KINDS)[number];
  readonly color: string;
}
