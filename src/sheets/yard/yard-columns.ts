/** The tables of the sheet Yard, one below the other on one grid, each with its columns: all but the last are printed. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** What to buy. */
export const ORDER = columns({
  got: left('Got'),
  of: left('Of'),
  what: left('What', 2),
  pieces: right('How many'),
  lineal: right(({ unit }) => `Together (${LONG_UNIT[unit].name})`),
  volume: right(({ unit }) => VOLUME[unit].name),
  other: right(({ unit }) => (unit === 'mm' ? '' : 'by surface measure')),
  longest: right('Longest cut from one'),
  each: right(({ currency }) => `Each (${currency})`),
  spend: right(({ currency }) => `To spend (${currency})`),
});

/** What came, board by board: sizes are typed, the rest follows. */
export const CAME = columns({
  number: right('No.'),
  of: left('Of'),
  note: left('Note', 2),
  thick: right(({ unit }) => `Thickness as sold (${unit})`),
  wide: right(({ unit }) => `Width (${unit})`),
  long: right(({ unit }) => `Length (${LONG_UNIT[unit].name})`),
  face: right(({ unit }) => (unit === 'mm' ? 'Face (m²)' : 'Surface measure')),
  bySurface: right(({ unit }) => (unit === 'mm' ? 'm³' : 'Board feet, by surface'), 2),
  plain: right(({ unit }) => (unit === 'mm' ? '' : 'by the plain rule')),
  isHalf: right(({ unit }) => (unit === 'mm' ? '' : 'Exact half')),
});

/** The tally against the invoice: a label, its figure, and what it is. */
export const INVOICE = columns({
  label: bare(4),
  figure: bare(),
  says: bare(6),
});

/** How many of the columns are printed. */
export const PRINTED = ORDER.width;

export const GRID = gridFor([5, 16, 14, 11, 10, 11, 11, 11, 11, 11, 12, 8], [ORDER, CAME, INVOICE]);
