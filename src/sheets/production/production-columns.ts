/** The tables of the production sheet, one below the other on one grid, each with its columns. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { VOLUME } from '../words/lumber-volume.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** The head's lists, side by side: labels and what belongs to them. */
export const HEAD = columns({
  total: bare(2),
  totalValue: bare(2),
  besideTotals: bare(),
  rate: bare(2),
  rateValue: bare(),
  besideRates: bare(),
  ticked: bare(2),
  tickedValue: bare(2),
});

export const ORDER = columns({
  step: right('Step'),
  work: left('Work', 2),
  how: left('How', 3),
  each: right(({ unit }) => `Passes each; outline (${unit})`),
  count: right('How many'),
  of: left('of what'),
  cuts: right('Passes or cuts'),
  hours: right('Hours'),
  see: left('See'),
  done: left('Done'),
});

/** By profile: pieces, lengths and board feet. */
export const QUANTITIES = columns({
  number: right('No.'),
  profile: left('Profile'),
  make: left('Made or bought'),
  pieces: right('Pieces'),
  sticks: right('Sticks, blanks'),
  length: right(({ unit }) => `Net length (${unit})`),
  stickLength: right(({ unit }) => `Sticks, length (${unit})`),
  thickness: right(({ unit }) => `Thickness as sold (${unit})`),
  blankWidth: right(({ unit }) => `Blank width (${unit})`),
  boardFeet: right(({ unit }) => `${VOLUME[unit].name}, net`),
  allowance: right(({ allowanceOf = 'net' }) => `Allowance, % of ${allowanceOf}`),
  boardFeetWithAllowance: right('with allowance'),
  boardFeetBought: right('as bought'),
});

/** By profile: passes, hours and money. */
export const MONEY = columns({
  number: right('No.'),
  profile: left('Profile', 2),
  passes: right('Passes'),
  hours: right('Hours'),
  lumber: right('Lumber'),
  offcutCredit: right('Offcut credit'),
  labor: right('Labor'),
  overhead: right('Overhead'),
  cost: right('Cost'),
  contingency: right('Contingency'),
  markup: right('Markup'),
  price: right('Price'),
});

export const LUMBER = columns({
  blank: bare(),
  for: left('For'),
  stockOf: left('Stock of'),
  what: left('What', 3),
  fromRack: right('From the rack'),
  toBuy: right('To buy'),
  each: right(({ currency }) => `Each (${currency})`),
  cost: right(({ currency }) => `Cost (${currency})`),
  boardFeet: right(({ unit }) => VOLUME[unit].name),
  pulled: left('Pulled'),
  bought: left('Bought'),
});

/** What must agree between the sheets, and within this one: two figures each. */
export const CHECKS = columns({
  number: right('No.'),
  what: left('What', 7),
  one: right('Here', 2),
  other: right('There', 2),
  verdict: left('Verdict'),
});

/** What openings take out of the runs on their walls. */
export const CUT_AWAYS = columns({
  blank: bare(),
  room: left('Room'),
  wall: left('Wall', 2),
  profile: left('Out of', 2),
  opening: left('For', 2),
  takenText: right('Taken'),
  taken: right(({ unit }) => `Taken (${unit})`),
});

/** What each profile bears of lumber that several have in common. */
export const SHARES = columns({ blank: bare(), profile: bare(8), share: bare() });

export const ROOMS = columns({
  line: right('Line'),
  room: left('Room'),
  profile: left('Profile'),
  pieces: right('Pieces'),
  passes: right('Passes'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  length: right(({ unit }) => `Net length (${unit})`),
  boardFeet: right(({ unit }) => `${VOLUME[unit].name}, net`),
  boardFeetWithAllowance: right('with allowance'),
  boardFeetBought: right('as bought'),
  hours: right('Hours'),
  price: right(({ currency }) => `Price (${currency})`),
  profileNumber: right('Profile no.'),
});

export const GRID = gridFor(
  [7, 22, 17, 9, 10, 14, 13, 13, 13, 13, 13, 15, 13],
  [HEAD, ORDER, QUANTITIES, MONEY, LUMBER, SHARES, CHECKS, CUT_AWAYS, ROOMS],
);
