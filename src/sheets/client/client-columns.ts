/** The tables of a client's sheet, one below the other on one grid, each with its columns. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';
import { LONG_UNIT } from '../words/print-length.ts';

/** A room's lines; the room's name stands over the moldings. */
export const LINES = columns({
  molding: bare(),
  length: right('Length each'),
  quantity: right('Quantity'),
  asQuoted: right('As quoted'),
  together: right(({ unit }) => `Together (${LONG_UNIT[unit].name})`),
  priceEach: right(({ currency }) => `Price each, about (${currency})`),
  price: right(({ currency }) => `Price (${currency})`),
});

/** What may be taken up: quantities stand in the columns of those of the lines. */
export const OPTIONS = columns({
  option: left('Option', 2),
  quantity: right('Taken up'),
  asQuoted: right('As quoted'),
  each: right(({ currency }) => `Its price (${currency})`, 2),
  price: right(({ currency }) => `Price (${currency})`),
});

/** The price at a glance: names, then pieces or a rate, then amounts. */
export const PRICE = columns({
  name: left('Room', 5),
  pieces: right('Pieces'),
  amount: right(({ currency }) => `Price (${currency})`),
});

export const DATE = columns({ label: bare(), date: bare(2) });

/** What names the job; a text may be long. */
export const NAMED = columns({ label: bare(), text: bare(6) });

/** The line to sign on. */
export const SIGNED = columns({ label: bare(), name: bare(4), dateLabel: bare(), date: bare() });

/** As wide as the page of A4 upright; its halves end after the second column and after the last. */
export const GRID = gridFor(
  [33, 13, 8, 8, 9, 11, 12],
  [LINES, OPTIONS, PRICE, DATE, NAMED, SIGNED],
);
