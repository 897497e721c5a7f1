/** A text that is nothing but a number, and would be written so again. */

const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/u;
/** Digits that a number holds without rounding. */
const MOST_DIGITS = 15;

/** Null for text: 007 keeps its zeros, and a number too long for one its last digits. */
export function plainNumber(text: string): number | null {
  const trimmed = text.trim();
  if (!NUMBER.test(trimmed)) return null;
  return trimmed.replace(/\D/gu, '').length > MOST_DIGITS ? null : Number(trimmed);
}
