/**
 * The tables of the labor sheet, one below the other on one grid, each with its columns. The first of them
 * are printed; money, and the counts that prices alone go by, stand beside these, on the screen.
 */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';

/** How many of the columns are printed. */
export const PRINTED = 8;

/** Each row of Work that is in the price: what one takes. */
export const RATES = columns({
  number: right('No.'),
  work: left('Work'),
  for: left('For'),
  per: left('Per'),
  minutes: right('Minutes, or factor'),
  beside: bare(3),
  money: right(({ currency }) => `Each, beside the time (${currency})`),
});

/** What it comes to, molding by molding and for the whole job: as planned, and by the offcut allowance. */
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
  allowedCount: right('By the allowance: how many'),
  allowedHours: right('Hours by it'),
  allowedMoney: right(({ currency }) => `Beside the time by it (${currency})`),
});

export const GRID = gridFor([5, 18.5, 15, 12.5, 10, 8, 9.5, 9, 16, 20, 16, 18], [RATES, LINES]);
