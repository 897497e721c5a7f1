/** The columns of the sheet of formulas: a label, the number by formula, the planned one, words. */
import { bare, columns, gridFor, left, right } from '../grammar/columns.ts';

/** Sizes to type over, beside what was planned; their unit stands over them. */
export const SIZES = columns({
  label: left('Sizes'),
  value: right(null),
  planned: right('as planned'),
  gap: left(null),
  note: left(null),
});

/** What they come to. */
export const RESULTS = columns({
  label: left('Set-up'),
  value: right('by formula'),
  planned: right('as planned'),
  gap: left(null),
  note: left(null),
});

/** A label, and words over all the other columns. */
export const VERDICTS = columns({ label: bare(), words: bare(4) });

export const FORMULA_GRID = gridFor([41, 13, 13, 2, 44], [SIZES, RESULTS, VERDICTS]);
