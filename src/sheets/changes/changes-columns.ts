/** The tables of the sheet Changes, one below the other. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';

export const RUNS = columns({
  is: left('What'),
  room: left('Room'),
  run: left('Run'),
  profile: left('Profile'),
  piecesBefore: right('Pieces before'),
  piecesAfter: right('Pieces after'),
  lengthBefore: right(({ unit }) => `Length before (${unit})`),
  lengthAfter: right(({ unit }) => `Length after (${unit})`),
  longer: right(({ unit }) => `Difference (${unit})`),
  differs: left('What is otherwise', 3),
});

export const TOTALS = columns({
  what: left('In all', 3),
  before: right('Before'),
  after: right('After', 2),
  more: right('Difference', 2),
});

export const LINES = columns({
  room: left('Room', 2),
  profile: left('Profile', 2),
  piecesBefore: right('Pieces before'),
  piecesAfter: right('Pieces after'),
  lengthBefore: right(({ unit }) => `Length before (${unit})`),
  lengthAfter: right(({ unit }) => `Length after (${unit})`),
  priceBefore: right(({ currency }) => `Price before (${currency})`),
  priceAfter: right(({ currency }) => `Price after (${currency})`),
  more: right(({ currency }) => `Difference (${currency})`),
  rest: bare(),
});

export const PROFILES = columns({
  profile: left('Profile', 3),
  piecesBefore: right('Pieces before'),
  piecesAfter: right('Pieces after'),
  hoursBefore: right('Hours before'),
  hoursAfter: right('Hours after'),
  costBefore: right(({ currency }) => `Cost before (${currency})`),
  costAfter: right(({ currency }) => `Cost after (${currency})`),
  priceBefore: right(({ currency }) => `Price before (${currency})`),
  priceAfter: right(({ currency }) => `Price after (${currency})`),
  more: right(({ currency }) => `Difference (${currency})`),
});

export const CUT = columns({
  mark: left('Piece'),
  id: left('Room, run and number', 2),
  profile: left('Profile'),
  length: right(({ unit }) => `Length (${unit})`),
  stick: left('Cut from', 3),
  need: left('What the job has of it now', 4),
});

/** A client's copy that came back: lines with another quantity. */
export const QUANTITIES = columns({
  room: left('Room'),
  molding: left('Molding', 2),
  length: right('Length each'),
  quoted: right('As quoted'),
  now: right('Now'),
  priceEach: right(({ currency }) => `Price each, about (${currency})`),
  priceQuoted: right(({ currency }) => `Price quoted (${currency})`),
  priceNow: right(({ currency }) => `Price now (${currency})`),
  more: right(({ currency }) => `Difference (${currency})`),
  rows: left('Rows to change', 2),
});

/** What else of it is not as it was handed over. */
export const OTHERWISE = columns({
  at: left('Cell'),
  says: left('What is not as handed over', 11),
});

export const GRID = gridFor(
  [11, 15, 18, 15, 11, 11, 12, 12, 12, 12, 12, 12],
  [RUNS, TOTALS, LINES, PROFILES, CUT, QUANTITIES, OTHERWISE],
);

/** All columns of the sheet: first and last, from 0. */
export const ALL = [0, GRID.length - 1] as const;
