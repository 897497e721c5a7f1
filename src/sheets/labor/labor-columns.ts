/** The tables of the labor sheet, one below the other on one grid, each with its columns. */
import { columns, gridFor, left, right } from '../grammar/columns.ts';

/** Each row of Work that is in the price: what one takes. */
export const RATES = columns({
  number: right('No.'),
  work: left('Work'),
  for: left('For'),
  per: left('Per'),
  minutes: right('Minutes each; factor'),
  money: right(({ currency }) => `Each, beside the time (${currency})`),
});

/** What it comes to, molding by molding and for the whole job. */
export const LINES = columns({
  number: right('No.'),
  work: left('Work'),
  profile: left('Molding'),
  per: left('Per'),
  minutes: right('Minutes each'),
  factor: right('Times'),
  count: right('How many'),
  hours: right('Hours'),
  money: right(({ currency }) => `Beside the time (${currency})`),
});

/** What lumber comes to by the allowance and as planned, a row a molding. */
export const ALLOWED = columns({
  number: right('No.'),
  molding: left('Molding'),
  stock: left('Priced by'),
  net: right('Net'),
  per: left('Of it'),
  allowance: right('Allowed, % of net'),
  planned: right('Planned, % of net'),
  each: right(({ currency }) => `Each (${currency})`),
  allowed: right(({ currency }) => `By the allowance (${currency})`),
  asPlanned: right(({ currency }) => `As planned, less credit (${currency})`),
  more: right(({ currency }) => `More as planned (${currency})`),
  morePercent: right('More, %'),
});

export const GRID = gridFor(
  [6, 24, 20, 15, 12, 12, 12, 12, 13, 13, 13, 11],
  [RATES, LINES, ALLOWED],
);
