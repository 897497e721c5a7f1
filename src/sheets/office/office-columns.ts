/** The tables of the office sheet, one below the other on one grid, each with its columns. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** The head's lists, side by side: labels and what belongs to them. */
export const HEAD = columns({
  total: bare(2),
  totalValue: bare(),
  besideTotals: bare(),
  rate: bare(2),
  rateValue: bare(),
  price: bare(2),
  priceValue: bare(),
});

/** By profile: from lumber and labor to the price. */
export const MONEY = columns({
  profile: left('Molding'),
  hours: right('Hours'),
  lumber: right(({ currency }) => `Lumber (${currency})`),
  offcutCredit: right(({ currency }) => `Offcut credit (${currency})`),
  labor: right(({ currency }) => `Labor (${currency})`),
  overhead: right(({ currency }) => `Overhead (${currency})`),
  cost: right(({ currency }) => `Cost (${currency})`),
  contingency: right(({ currency }) => `Contingency (${currency})`),
  markup: right(({ currency }) => `Markup (${currency})`),
  price: right(({ currency }) => `Price (${currency})`),
});

/** What is pulled and bought, and what it costs. */
export const LUMBER = columns({
  for: left('For'),
  stockOf: left('Stock of', 2),
  what: left('What', 3),
  count: right('How many'),
  each: right(({ currency }) => `Each (${currency})`),
  cost: right(({ currency }) => `Cost (${currency})`),
});

/** What each profile bears of lumber that several have in common. */
export const SHARES = columns({ profile: bare(8), share: bare() });

/** A line for each profile of each room. */
export const LINES = columns({
  line: right('Line'),
  room: left('Room', 3),
  profile: left('Molding', 3),
  price: right(({ currency }) => `Price (${currency})`),
});

/** What must agree between the sheets: two figures each. */
export const CHECKS = columns({
  what: left('What', 5),
  one: right('One', 2),
  other: right('The other', 2),
  verdict: left('Verdict'),
});

/** What the tables below go by: a label, its figure, and what it is. */
export const TERMS = columns({ label: bare(2), figure: bare(), says: bare(7) });

/** What lumber comes to by the offcut allowance, a row a molding. */
export const ALLOWED = columns({
  molding: left('Molding'),
  stock: left('Priced by', 2),
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
  perLong: right(({ unit, currency }) => `A ${LONG_UNIT[unit].name} (${currency})`),
  withoutSetUp: right(
    ({ unit, currency }) => `A ${LONG_UNIT[unit].name} without set-up (${currency})`,
  ),
  setUp: right(({ currency }) => `Of the price: set-up (${currency})`),
  share: right('That is, %'),
  more: right(({ currency }) => `More, as above (${currency})`),
});

/** Openings by kind, and molding by molding under each. */
export const OPENINGS = columns({
  kind: left('Openings'),
  profile: left('Molding', 2),
  openings: right('How many'),
  long: right(({ unit }) => `Net length (${LONG_UNIT[unit].name})`),
  price: right(({ currency }) => `Price (${currency})`),
  each: right(({ currency }) => `Each (${currency})`),
});

export const ROOMS = columns({
  room: left('Room', 3),
  price: right(({ currency }) => `Price (${currency})`),
  walls: right(({ unit }) => `Its walls (${LONG_UNIT[unit].name})`),
  perWall: right(({ unit, currency }) => `A ${LONG_UNIT[unit].name} of wall (${currency})`),
});

export const JOINTS = columns({
  profile: left('Molding', 3),
  joints: right('Joints'),
  price: right(({ currency }) => `Price (${currency})`),
  each: right(({ currency }) => `Each (${currency})`),
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
  name: left('What moves it', 3),
  atLow: right(({ currency }) => `Price at its low (${currency})`),
  atHigh: right(({ currency }) => `At its high (${currency})`),
  swing: right(({ currency }) => `Moves it by (${currency})`),
  share: right('Of all that moves it, %', 2),
});

/** How many of the prices drawn lie where. */
export const PRICE_BARS = columns({
  from: right(({ currency }) => `Price from (${currency})`),
  to: right(({ currency }) => `to below (${currency})`, 2),
  draws: right('So many of the draws', 2),
});

/** What the job took, kind by kind. */
export const HOURS = columns({
  name: left('Work', 2),
  hours: left('Hours', 8),
});

/** What that says of the minutes for one. */
export const RATES = columns({
  name: left('Work', 2),
  value: right('Learned'),
  note: left('How sure', 3),
  home: left('To take it over', 4),
});

export const GRID = gridFor(
  [17, 9, 12, 12, 12, 12, 12, 12, 12, 12],
  [
    ...[
      HEAD,
      MONEY,
      LUMBER,
      SHARES,
      LINES,
      CHECKS,
      TERMS,
      ALLOWED,
      SPENT,
      BASES,
      LENGTHS,
      OPENINGS,
      ROOMS,
      JOINTS,
    ],
    ...[OPTIONS, DRIVERS, PRICE_BARS, HOURS, RATES],
  ],
);
