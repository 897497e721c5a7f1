/**
 * Any workbook as a file holds it, as plain data: what the grid opens and saves. Our own sheets are
 * described (sheets/description.ts); a person's can hold more styles than ours.
 */
import type { Sheet } from 'hucre/xlsx';

import type { CellRange } from '../../core/cells/cell-range.ts';
import type { TableDescription } from '../../sheets/grammar/description.ts';

export interface FileWorkbook {
  readonly title: string;
  /** Of cells without a style of their own. */
  readonly font: FileFont;
  /** Cells name theirs by its place in here. */
  readonly styles: readonly FileStyle[];
  readonly sheets: readonly FileSheet[];
  readonly names: readonly FileName[];
}

export interface FileFont {
  readonly name: string;
  /** Points. */
  readonly size: number;
}

/** A name for a range or a formula: Species, Lists!$A$2:$A$9. */
export interface FileName {
  readonly name: string;
  readonly refersTo: string;
  /** The sheet in which alone it is known. */
  readonly sheet?: string;
}

export interface FileSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** Made here, under the name that it still bears. */
  readonly ours: boolean;
  /** By row and column from 0; what is missing is blank. */
  readonly cells: Readonly<Record<number, Readonly<Record<number, FileCell>>>>;
  /** By column from 0. */
  readonly columns: Readonly<Record<number, FileColumn>>;
  /** By row from 0. */
  readonly rows: Readonly<Record<number, FileRow>>;
  readonly merges: readonly CellRange[];
  readonly freeze: { readonly rows: number; readonly columns: number };
  readonly gridLines: boolean;
  readonly rightToLeft: boolean;
  /** RRGGBB. */
  readonly tabColor?: string;
  readonly tables: readonly TableDescription[];
  readonly extras: FileExtras;
  /** Only written: pictures of an opened file are left out. */
  readonly pictures: readonly FilePicture[];
}

export interface FileCell {
  /** With a formula, its cached value. */
  readonly value: string | number | boolean | null;
  /** The value is an error's code: #N/A. */
  readonly error?: boolean;
  /** As a person writes it, without the equals sign. */
  readonly formula?: string;
  /** Where the answers of a formula with several stand, its own cell first; A1 or A1:B3. */
  readonly spill?: string;
  /** Index into the workbook's styles. */
  readonly style?: number;
}

export interface FileColumn {
  readonly pixels?: number;
  readonly hidden?: boolean;
}

export interface FileRow {
  readonly points?: number;
  readonly hidden?: boolean;
}

/** Page, rules and highlights as the file has them: nothing but whoever reads and writes files looks in. */
export type FileExtras = Pick<
  Sheet,
  'dataValidations' | 'conditionalRules' | 'pageSetup' | 'headerFooter' | 'rowBreaks' | 'colBreaks'
>;

/** A picture at its true size, its top left corner at that of a cell. */
export interface FilePicture {
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
export interface FileStyle {
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
  readonly lines?: Readonly<Partial<Record<LineSide, FileLine>>>;
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

export interface FileLine {
  readonly kind: (typeof LINE_KINDS)[number];
  readonly color: string;
}
