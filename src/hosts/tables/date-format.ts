/** Tells from a number format whether its cell shows a date or a time. */

/** Texts in quotes, spared characters, fillers and spaces of a character's width. */
const SPOKEN = /"[^"]*"?|\\.|[_*]./gu;
/** [Red], [$€-407], [>=100]: anything in brackets but elapsed time. */
const BRACKETS = /\[(?!(?:h+|m+|s+)\])[^\]]*\]/giu;
const EXPONENT = /e[+-]/giu;
const DATE_LETTER = /[ymdhs]/iu;

/**
 * Whether a number format (in English, as Excel gives it) shows a date or a time in any section.
 *
 * Source: ECMA-376 part 1, 18.8.31 (number format codes).
 */
export function isDateFormat(format: string): boolean {
  const codes = format.replace(SPOKEN, '').replace(BRACKETS, '');
  return codes
    .split(';')
    .map((section) => section.replace(/general/giu, '').replace(EXPONENT, ''))
    .some((section) => DATE_LETTER.test(section));
}
