/** The tables of the office sheet, one below the other on one grid, each with its columns. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** What the tables below go by: a label, its figure, and what it is. */
export const TERMS = columns({ label: bare(2), figure: bare(), says: bare(5) });

/** What lumber comes to by the offcut allowance, a row a molding. */
export const ALLOWED = columns({
  molding: left('Molding'),
  stock: left('Priced by'),
  net: right('Net'),
  per: left('Of it'),
  allowance: right(({ allowanceOf = 'net' }) => `Allowed, % of ${allowanceOf}`),
  planned: right(({ allowanceOf = 'net' }) => `Planned, % of ${allowanceOf}`),
  each: right(({ currency }) => `Each (${currency})`),
  cost: right(({ currency }) => `Lumber allowed (${currency})`),
});

/** What work by the allowance is counted by; lumber and labor by the one and the other. */
export const SPENT = columns({
  molding: left('Molding'),
  length: right(({ unit }) => `Length allowed (${unit})`),
  stick: right(({ unit }) => `A stick of it (${unit})`),
  sticks: right('Sticks, blanks'),
  laborAllowed: right(({ currency }) => `Labor allowed (${currency})`),
  laborPlanned: right(({ currency }) => `Labor planned (${currency})`),
  lumberAllowed: right(({ currency }) => `Lumber allowed (${currency})`),
  lumberPlanned: right(({ currency }) => `Lumber planned (${currency})`),
});

/** Prices by the one and the other. */
export const BASES = columns({
  molding: left('Price of', 2),
  allowed: right(({ currency }) => `By the allowance (${currency})`, 2),
  planned: right(({ currency }) => `By the plan (${currency})`, 2),
  more: right(({ currency }) => `More by the plan (${currency})`),
  morePercent: right('More, %'),
});

/** Molding by molding. */
export const LENGTHS = columns({
  profile: left('Molding'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  price: right(({ currency }) => `Price (${currency})`),
  perLong: right(({ unit }) => `A ${LONG_UNIT[unit].name}`),
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

/** What moves the price by itself. */
export const DRIVERS = columns({
  name: left('What moves it', 2),
  value: left('Price from low to high', 2),
  note: left('How much', 4),
});

export const GRID = gridFor(
  [24, 11, 12, 11, 11, 11, 10, 11],
  [TERMS, ALLOWED, SPENT, BASES, LENGTHS, OPENINGS, ROOMS, JOINTS, DRIVERS],
);
