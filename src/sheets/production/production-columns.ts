/**
 * The tables of the production sheet, one below the other on one grid, each with its columns. The first of
 * them are printed, as wide as a page lying on its side; what sums alone go by stands beside these, on the screen.
 */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** How many of the columns are printed. */
export const PRINTED = 11;

/** The head's lists, side by side: labels and what belongs to them. */
export const HEAD = columns({
  total: bare(2),
  totalValue: bare(2),
  besideTotals: bare(),
  ticked: bare(4),
  tickedValue: bare(2),
});

export const ORDER = columns({
  step: right('Step'),
  work: left('Work', 2),
  how: left('How', 3),
  count: right('How many'),
  of: left('of what'),
  cuts: right('Passes or cuts'),
  hours: right('Hours'),
  done: left('Done'),
  see: left('See'),
  each: right(({ unit }) => `Passes each; outline (${unit})`),
});

/** By profile: what is to make, and how long it takes. */
export const QUANTITIES = columns({
  number: right('No.'),
  profile: left('Profile'),
  make: left('Made or bought'),
  pieces: right('Pieces'),
  sticks: right('Sticks, blanks'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  boardFeet: right(({ unit }) => `${VOLUME[unit].name}, net`),
  boardFeetWithAllowance: right('with allowance'),
  boardFeetBought: right('as bought'),
  passes: right('Passes'),
  hours: right('Hours'),
  length: right(({ unit }) => `Net length (${unit})`),
  stickLength: right(({ unit }) => `Sticks, length (${unit})`),
  thickness: right(({ unit }) => `Thickness as sold (${unit})`),
  blankWidth: right(({ unit }) => `Blank width (${unit})`),
  allowance: right(({ allowanceOf = 'net' }) => `Allowance, % of ${allowanceOf}`),
});

export const LUMBER = columns({
  blank: bare(),
  for: left('For'),
  stockOf: left('Stock of'),
  what: left('What', 4),
  fromRack: right('From the rack'),
  pulled: left('Pulled'),
  toBuy: right('To buy'),
  bought: left('Bought'),
  boardFeet: right(({ unit }) => VOLUME[unit].name),
});

/** What openings take out of the runs on their walls. */
export const CUT_AWAYS = columns({
  blank: bare(),
  room: left('Room'),
  wall: left('Wall', 3),
  profile: left('Out of', 2),
  opening: left('For', 2),
  takenText: right('Taken', 2),
  taken: right(({ unit }) => `Taken (${unit})`),
});

export const ROOMS = columns({
  line: right('Line'),
  room: left('Room'),
  profile: left('Profile'),
  pieces: right('Pieces'),
  passes: right('Passes'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  boardFeet: right(({ unit }) => `${VOLUME[unit].name}, net`),
  boardFeetWithAllowance: right('with allowance'),
  boardFeetBought: right('as bought'),
  hours: right('Hours', 2),
  length: right(({ unit }) => `Net length (${unit})`),
  profileNumber: right('Profile no.'),
});

export const GRID = gridFor(
  [6, 20, 16, 8, 9, 11, 11, 11, 11, 9, 9, 14, 14, 13, 13, 13],
  [HEAD, ORDER, QUANTITIES, LUMBER, CUT_AWAYS, ROOMS],
);
