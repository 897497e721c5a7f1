/** The tables of the cutting sheet, one below the other on one grid, each with its columns. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { bare, columns, columnsOver, gridFor, left, noted, right } from '../grammar/columns.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';

/** By which the columns of the boxes, of the numbers and of the pieces are found again. */
export const CUTTING_HEADINGS = { cut: 'Cut', number: 'No.', piece: 'Piece' } as const;

/** The pieces of a stick. Their headings are the sheet's own, and name the columns of the stick's row too. */
export const PIECES = columns({
  cut: left(CUTTING_HEADINGS.cut),
  number: left(CUTTING_HEADINGS.number),
  piece: left(CUTTING_HEADINGS.piece),
  onPieces: right('No. on Pieces'),
  length: right(({ unit }) => `Length (${unit})`),
  part: left(({ unit }) => `Mark, part; or stick (${unit})`),
  leftEnd: left('Left end, angle from square'),
  leftPoint: left('Left, length is to the'),
  rightEnd: left('Right end, angle from square'),
  rightPoint: left('Right, length is to the'),
  lie: left(({ unit }) => `Lay it; or offcut kept (${unit})`),
  off: right(({ unit }) => `Less Pieces (${unit}), or cut`),
});

/** A stick's own row, over its pieces; sums take both by the same columns. */
export const STICKS = columnsOver(PIECES, {
  tick: ['cut'],
  id: ['number', 'piece'],
  lengthText: ['onPieces', 'length'],
  length: ['part'],
  which: ['leftEnd', 'leftPoint'],
  rest: ['rightEnd', 'rightPoint'],
  kept: ['lie'],
  cutSoFar: ['off'],
});

/** What the sticks and pieces of a profile come to. */
export const SUMS = columnsOver(PIECES, {
  tick: ['cut'],
  label: ['number', 'piece'],
  cuts: ['onPieces'],
  pieceLength: ['length'],
  stickLength: ['part'],
  sticksLabel: ['leftEnd'],
  sticks: ['leftPoint'],
  keptLabel: ['rightEnd'],
  kept: ['rightPoint'],
  keptLength: ['lie'],
  off: ['off'],
});

/** How much of a profile is cut, under what its sticks come to. */
export const CUT_SO_FAR = columnsOver(PIECES, {
  sticksCutLabel: ['leftEnd'],
  sticksCut: ['leftPoint'],
  lengthsCutLabel: ['rightEnd'],
  lengthsCut: ['rightPoint'],
});

/** A choice that the shop makes once. */
export const CHOICE = columns({
  tickUpper: bare(),
  upper: bare(2),
  tickLower: bare(),
  lower: bare(),
  words: bare(7),
});

/** How boards are ripped. */
export const RIPS = columns({ tick: bare(), words: bare(11) });

/** What is pulled and bought. */
export const PICKS = columns({
  tick: noted(null),
  lot: noted('Lot'),
  what: noted('What', 2),
  count: noted('How many'),
  from: noted('From'),
  numbers: noted('Chalk these numbers on them', 2),
  profiles: noted('To cut', 3),
  off: noted('Less Production'),
});

export const OFFCUTS = columns({
  tick: left('Kept'),
  number: left('No.'),
  label: left('Write on it'),
  wide: left('Wide'),
  length: right(({ unit }) => `Length (${unit})`),
  thick: left('Thick'),
  of: left('Of'),
  what: left('What it is'),
  from: left('Cut from'),
  place: left('Kept where'),
});

/** All profiles, at the end. */
export const SUMMARY = columns({
  tick: bare(),
  profile: left('Profile', 2),
  sticks: right('Sticks'),
  stickLength: right(({ unit }) => `Sticks (${unit})`),
  keptLength: right(({ unit }) => `Offcuts kept (${unit})`),
  off: right(({ unit }) => `Lengths, less those on Pieces (${unit})`),
  sticksOff: right(({ unit }) => `Sticks, less those planned (${unit})`),
  sticksCut: right('Sticks cut or begun'),
  lengthsCut: right('Lengths cut'),
});

export const GRID = gridFor(
  [4, 4, 23, 8.5, 11, 11.5, 16, 17.5, 16, 17.5, 16.5, 10.5],
  [PIECES, STICKS, SUMS, CUT_SO_FAR, CHOICE, RIPS, PICKS, OFFCUTS, SUMMARY],
);

/** First and last column of the sheet, from 0. */
export const ALL = [0, GRID.length - 1] as const;

/** Programs round the widths of columns; a drawing that reached past the last would shrink the page. */
const AIR_MM = 1.5;

const WIDTH_POINTS = GRID.reduce((all, { width }) => all + columnPoints(width), 0);

/** Width of a drawing over all columns, in millimetres. */
export const BAR_WIDTH_MM = (WIDTH_POINTS / POINTS_PER_INCH) * MM_PER_INCH - AIR_MM;
