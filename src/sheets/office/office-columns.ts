/** The tables of the office sheet, one below the other on one grid, each with its columns. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** What the tables below go by: a label, its figure, and what it is. */
export const TERMS = columns({ label: bare(2), figure: bare(), says: bare(5) });

/** Molding by molding. */
export const LENGTHS = columns({
  profile: left('Molding'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  price: right(({ currency }) => `Price (${currency})`),
  perLong: right(({ unit }) => `A ${LONG_UNIT[unit].name}, as planned`),
  withoutSetUp: right(({ unit }) => `A ${LONG_UNIT[unit].name} without set-up`),
  setUp: right('Of the price: set-up'),
  share: right('That is, %'),
  more: right('More, as above'),
});

/** Openings by kind, and molding by molding under each. */
export const OPENINGS = columns({
  kind: left('Openings'),
  profile: left('Molding', 2),
  openings: right('How many'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  price: right(({ currency }) => `Price (${currency})`),
  each: right('Each'),
});

export const ROOMS = columns({
  room: left('Room', 3),
  price: right(({ currency }) => `Price (${currency})`),
  walls: right(({ unit }) => `Its walls (${LONG_UNIT[unit].name})`),
  perWall: right(({ unit }) => `A ${LONG_UNIT[unit].name} of wall`),
});

export const JOINTS = columns({
  profile: left('Molding', 3),
  joints: right('Joints'),
  price: right(({ currency }) => `Price (${currency})`),
  each: right('Each'),
});

/** What each comes to more than the job without it. */
export const OPTIONS = columns({
  option: left('Option', 4),
  price: right(({ currency }) => `More price (${currency})`),
  tax: right(({ currency }) => `More tax (${currency})`),
  cost: right(({ currency }) => `More cost (${currency})`),
  hours: right('More hours'),
});

/** What moves the price by itself. */
export const DRIVERS = columns({
  name: left('What moves it', 2),
  value: left('Price from low to high', 2),
  note: left('How much', 4),
});

export const GRID = gridFor(
  [24, 11, 12, 11, 11, 11, 10, 11],
  [TERMS, LENGTHS, OPENINGS, ROOMS, JOINTS, OPTIONS, DRIVERS],
);
