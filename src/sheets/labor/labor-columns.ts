/** The tables of the labor sheet, one below the other on one grid, each with its columns. */
import { columns, gridFor, left, right } from '../grammar/columns.ts';

/** Each row of Work that is in the price: what one takes. */
export const RATES = columns({
  number: right('No.'),
  work: left('Work'),
  for: left('For'),
  per: left('Per'),
  minutes: right('Minutes each'),
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

export const GRID = gridFor([7, 26, 22, 20, 14, 16, 14, 12, 16], [RATES, LINES]);
