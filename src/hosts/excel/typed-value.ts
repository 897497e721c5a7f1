/** A value as it must be typed into a cell of no format so that it stays what it is. */
import { MOST_CELL_TEXT } from '../../sheets/grammar/check/clean-text.ts';
import type { CellValue } from '../../sheets/grammar/description.ts';

/** Excel takes letters alone for a truth value in its own language, and for nothing else. */
const TRUTH_VALUES = new Set(
  // [M] English, German, French, Italian, Spanish, Portuguese, Dutch, Polish, Swedish, Danish,
  // Norwegian, Finnish, Turkish, Czech, Hungarian, Russian.
  (
    'true false wahr falsch vrai faux vero falso verdadero verdadeiro waar onwaar prawda fałsz ' +
    'sant falskt sand falsk sann usann tosi epätosi doğru yanliş yanlış pravda nepravda igaz hamis ' +
    'истина ложь'
  ).split(' '),
);
/** A letter first and no digit after it: no number, date, error or formula. */
const PLAIN = /^\p{L}\P{N}*$/u;
const PREFIX = "'";

/**
 * Text that could be taken for something else is typed behind an apostrophe, which Excel keeps to
 * itself: so it stays text letter for letter, under any number format.
 */
export function typedValue(value: CellValue | null): CellValue {
  if (value === null) return '';
  return typeof value === 'string' && value !== '' && !isPlain(value) ? PREFIX + value : value;
}

/** Whether the apostrophe has no room, so that the cell must be formatted as text before. */
export function needsTextFormat(value: CellValue | null): boolean {
  return typeof value === 'string' && !isPlain(value) && value.length >= MOST_CELL_TEXT;
}

function isPlain(text: string): boolean {
  return PLAIN.test(text) && !TRUTH_VALUES.has(text.toLowerCase());
}
