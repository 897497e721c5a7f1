/** What any host makes of a page and of a column: margins, and the widths of columns. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { ColumnDescription, PrintDescription } from './description.ts';

/** In inches, on every side of every sheet's pages; header and footer from the paper's edge. */
export const MARGIN_INCHES = {
  left: 0.5,
  right: 0.5,
  top: 0.55,
  bottom: 0.65,
  header: 0.3,
  footer: 0.3,
} as const;

type Margins = Readonly<Record<keyof typeof MARGIN_INCHES, number>>;

/** Margins of a sheet's pages, in inches. */
export function marginsOf({ start }: Pick<PrintDescription, 'start'>): Margins {
  return start === undefined
    ? MARGIN_INCHES
    : { ...start, right: 0, bottom: 0, header: 0, footer: 0 };
}

export const POINTS_PER_INCH = 72;
export const POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;

/** Programs differ a little in the heights of rows: so much of a page is left to them. */
export const FILLED_SHARE = 0.97;
/** A little below the 1,026 that Excel takes (check-sheet.ts). Pages beyond them break where the program likes. */
export const MOST_BREAKS = 1_000;

/** Pixels of the standard font's widest digit, and of a cell's padding, at 96 to the inch [M]. */
export const DIGIT_PIXELS = 7;
const PADDING_PIXELS = 5;
export const PIXELS_PER_INCH = 96;

/** Upright, in inches: ANSI/ASME Y14.1 size A; ISO 216. */
const PAPER_INCHES = { letter: [8.5, 11], a4: [210 / MM_PER_INCH, 297 / MM_PER_INCH] } as const;

/** Width of a column without one, in characters (ECMA-376 part 1, 18.3.1.81). */
export const STANDARD_COLUMN = 8.43;

/** Width of a column on the screen, in pixels, for a width in characters. */
export function columnPixels(characters: number): number {
  return characters * DIGIT_PIXELS + PADDING_PIXELS;
}

/** Width of a column in points, for a width in characters. */
export function columnPoints(characters: number): number {
  return (columnPixels(characters) / PIXELS_PER_INCH) * POINTS_PER_INCH;
}

/** Width in whole characters of the widest column that so many points hold. */
export function columnWithin(points: number): number {
  const pixels = (points / POINTS_PER_INCH) * PIXELS_PER_INCH;
  return Math.floor((pixels - PADDING_PIXELS) / DIGIT_PIXELS);
}

/** Points of the paper itself, upright, from edge to edge. */
export function roomOnPaper(paper: PrintDescription['paper']): {
  readonly width: number;
  readonly height: number;
} {
  const [width, height] = PAPER_INCHES[paper];
  return { width: width * POINTS_PER_INCH, height: height * POINTS_PER_INCH };
}

/** Points between the margins of a page. */
export function roomOnPage(
  paper: PrintDescription['paper'],
  orientation: PrintDescription['orientation'],
): { readonly width: number; readonly height: number } {
  const [short, long] = PAPER_INCHES[paper];
  const [width, height] = orientation === 'portrait' ? [short, long] : [long, short];
  const { left, right, top, bottom } = MARGIN_INCHES;
  return {
    width: (width - left - right) * POINTS_PER_INCH,
    height: (height - top - bottom) * POINTS_PER_INCH,
  };
}

/** Points of rows that a page has room for, shrunk so that all columns fit on its width. */
export function roomForRows(
  paper: PrintDescription['paper'],
  columns: readonly ColumnDescription[],
  orientation: PrintDescription['orientation'] = 'portrait',
): number {
  const { width, height } = roomOnPage(paper, orientation);
  const wide = columns.reduce((all, column) => all + columnPoints(column.width), 0);
  return height / Math.min(1, width / wide);
}
