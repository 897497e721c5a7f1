/** The tables of the cutting sheet, one below the other on one grid, each with its columns. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import {
  bare,
  columns,
  columnsOver,
  gridFor,
  left,
  middle,
  noted,
  right,
  type Column,
  type Columns,
  type HeadingFacts,
} from '../grammar/columns.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';

/**
 * By which the columns of the boxes, and of sticks with their pieces' marks, are found again: each stands
 * twice in either half. The profile whose sticks they are stands on the screen alone.
 */
export const CUTTING_HEADINGS = { cut: '✓', stick: 'Stick', profile: 'Profile' } as const;

/** Of the sheet as it was before sticks that are cut alike shared their rows: its ticks mean nothing here. */
export const EARLIER_HEADINGS: readonly string[] = ['Cut', 'No.', 'Piece'];

const inUnit =
  (words: string) =>
  ({ unit }: HeadingFacts): string =>
    `${words} (${unit})`;

/** For sums on the screen, without a line of its own in the headings that are printed. */
function quiet(heading: Column['heading']): Column {
  return { heading, style: 'quiet', wide: 1 };
}

/** Two halves side by side, a lay-out in each, and what their sums go by, which isn't printed. */
export const HALVES = columns({
  numberA: right('#'),
  lengthA: right(inUnit('Length')),
  leftA: left('Left end'),
  rightA: left('Right end'),
  cutA1: middle(CUTTING_HEADINGS.cut),
  stickA1: left(CUTTING_HEADINGS.stick),
  cutA2: middle(CUTTING_HEADINGS.cut),
  stickA2: left(CUTTING_HEADINGS.stick),
  gap: bare(),
  numberB: right('#'),
  lengthB: right(inUnit('Length')),
  leftB: left('Left end'),
  rightB: left('Right end'),
  cutB1: middle(CUTTING_HEADINGS.cut),
  stickB1: left(CUTTING_HEADINGS.stick),
  cutB2: middle(CUTTING_HEADINGS.cut),
  stickB2: left(CUTTING_HEADINGS.stick),
  profile: quiet(CUTTING_HEADINGS.profile),
  offA: quiet(inUnit('Less Pieces')),
  sticksA: quiet('Sticks alike'),
  stickLengthA: quiet(inUnit('Stick')),
  keptA: quiet(inUnit('Offcut kept')),
  timesA: quiet('Times'),
  openA: quiet('To cut yet'),
  doneA1: quiet('Cut'),
  doneA2: quiet('Cut'),
  offB: quiet(inUnit('Less Pieces')),
  sticksB: quiet('Sticks alike'),
  stickLengthB: quiet(inUnit('Stick')),
  keptB: quiet(inUnit('Offcut kept')),
  timesB: quiet('Times'),
  openB: quiet('To cut yet'),
  doneB1: quiet('Cut'),
  doneB2: quiet('Cut'),
});

type HalfColumn =
  | 'number'
  | 'length'
  | 'left'
  | 'right'
  | 'cut1'
  | 'stick1'
  | 'cut2'
  | 'stick2'
  | 'profile'
  | 'off'
  | 'sticks'
  | 'stickLength'
  | 'kept'
  | 'times'
  | 'open'
  | 'done1'
  | 'done2';

/** One half's columns by the same names as the other's. */
export interface Half {
  readonly table: Columns<HalfColumn>;
  /** Over its bars. */
  readonly first: number;
  /** A stick's box, its name with the marks of its pieces below it, and how many of them are cut. */
  readonly pairs: readonly (readonly [cut: HalfColumn, stick: HalfColumn, done: HalfColumn])[];
}

const PAIRS = [
  ['cut1', 'stick1', 'done1'],
  ['cut2', 'stick2', 'done2'],
] as const;

/** Sticks that have room beside each other in a half, and in both. */
export const STICKS_A_HALF = PAIRS.length;

const A: Half = {
  table: columnsOver(HALVES, {
    number: ['numberA'],
    length: ['lengthA'],
    left: ['leftA'],
    right: ['rightA'],
    cut1: ['cutA1'],
    stick1: ['stickA1'],
    cut2: ['cutA2'],
    stick2: ['stickA2'],
    profile: ['profile'],
    off: ['offA'],
    sticks: ['sticksA'],
    stickLength: ['stickLengthA'],
    kept: ['keptA'],
    times: ['timesA'],
    open: ['openA'],
    done1: ['doneA1'],
    done2: ['doneA2'],
  }),
  first: HALVES.start('numberA'),
  pairs: PAIRS,
};
const B: Half = {
  table: columnsOver(HALVES, {
    number: ['numberB'],
    length: ['lengthB'],
    left: ['leftB'],
    right: ['rightB'],
    cut1: ['cutB1'],
    stick1: ['stickB1'],
    cut2: ['cutB2'],
    stick2: ['stickB2'],
    profile: ['profile'],
    off: ['offB'],
    sticks: ['sticksB'],
    stickLength: ['stickLengthB'],
    kept: ['keptB'],
    times: ['timesB'],
    open: ['openB'],
    done1: ['doneB1'],
    done2: ['doneB2'],
  }),
  first: HALVES.start('numberB'),
  pairs: PAIRS,
};
export const BOTH = [A, B] as const;

/** What is printed ends here. */
export const PRINTED_COLUMNS = HALVES.end('stickB2') + 1;

/** First and last column of the page, from 0. */
export const ALL = [0, PRINTED_COLUMNS - 1] as const;

/** A choice that the shop makes once. */
export const CHOICE = columns({
  tickUpper: bare(),
  upper: bare(3),
  tickLower: bare(),
  lower: bare(3),
  words: bare(9),
});

/** How boards are ripped, and what is said of a lay-out. */
export const RIPS = columns({ tick: bare(), words: bare(16) });

/** Lengths to stop at, and how often: five side by side. */
export const STOPS = columnsOver(HALVES, {
  length1: ['numberA', 'lengthA'],
  times1: ['leftA'],
  length2: ['rightA'],
  times2: ['cutA1', 'stickA1'],
  length3: ['cutA2', 'stickA2'],
  times3: ['gap', 'lengthB'],
  length4: ['leftB'],
  times4: ['rightB'],
  length5: ['cutB1', 'stickB1'],
  times5: ['cutB2', 'stickB2'],
});
export const STOPS_ACROSS = [
  ['length1', 'times1'],
  ['length2', 'times2'],
  ['length3', 'times3'],
  ['length4', 'times4'],
  ['length5', 'times5'],
] as const;

/** What is pulled and bought. */
export const PICKS = columns({
  tick: noted(null),
  lot: noted('Lot'),
  what: noted('What', 4),
  count: noted('How many', 2),
  from: noted('From', 3),
  numbers: noted('Chalk on them', 2),
  profiles: noted('To cut', 4),
  off: quiet('Less Production'),
});

export const OFFCUTS = columns({
  tick: noted(null),
  label: noted('Write on it', 2),
  what: noted('What it is'),
  wide: noted('Wide', 2),
  length: { ...noted(inUnit('Length'), 2), style: 'stickRight' },
  thick: noted('Thick', 3),
  of: noted('Of'),
  from: noted('Cut from', 3),
  place: noted('Kept where', 2),
});

/** All profiles, at the end; what other sheets and its own checks go by isn't printed. */
export const SUMMARY = columns({
  profile: left('Profile', 4),
  sticks: right('Sticks', 2),
  stickLength: right(inUnit('Sticks'), 2),
  kept: right('Offcuts kept', 3),
  keptLength: right(inUnit('Offcuts')),
  cuts: right('Lengths'),
  sticksCut: right('Begun or cut', 2),
  lengthsCut: right('Lengths cut', 2),
  underProfile: bare(),
  // Under what lay-outs differ by, in their column.
  off: quiet('Less Pieces'),
  pieceLength: quiet(inUnit('Lengths')),
  sticksOff: quiet('Less planned'),
});

/**
 * As wide as a page lying on its side, at its full size: what is read at arm's length. The narrowest paper has
 * 960 pixels between its margins, of which LibreOffice takes some more for so many columns.
 */
const HALF = [2.2, 10.3, 11.6, 11.6, 2.7, 8.6, 2.7, 8.6] as const;
const GAP = 0.2;
const ON_SCREEN = 12;
export const GRID = gridFor([...HALF, GAP, ...HALF, ON_SCREEN] as [number, ...number[]], [
  HALVES,
  CHOICE,
  RIPS,
  PICKS,
  OFFCUTS,
  SUMMARY,
]);
export const PRINTED_GRID = GRID.slice(0, PRINTED_COLUMNS);

/** Programs round the widths of columns; a drawing that reached past the last would shrink the page. */
const AIR_MM = 1.5;

const HALF_POINTS = HALF.reduce((all, width) => all + columnPoints(width), 0);

/** Width of a drawing over all columns of a half, in millimetres. */
export const BAR_WIDTH_MM = (HALF_POINTS / POINTS_PER_INCH) * MM_PER_INCH - AIR_MM;
