/** Reading plain numbers as people type them. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import type { DecimalSign } from './format-number.ts';

/**
 * Reads a plain number as a person types it into a cell: `3.5`, ` 1200 `, `3,5` where the decimal
 * sign is a comma, `12 %` or `$4.10` with the sign ignored. No exponents, no thousands signs.
 * Faults: `number.unreadable` for anything else, NaN and infinities included.
 */
export function parseNumber(
  given: unknown,
  argument: string,
  decimalSign: DecimalSign = '.',
): Outcome<number> {
  if (typeof given === 'number') {
    return Number.isFinite(given)
      ? ok(given)
      : failed(fault('number.unreadable', argument, String(given)));
  }
  const text = typeof given === 'string' ? given.trim() : '';
  const match = /^([+-]?)\s*[$€£]?\s*(\d{1,12}(?:[.,]\d{0,20})?|[.,]\d{1,20})\s*[%€$£°]?$/u.exec(
    text,
  );
  const digits = match?.[2] ?? '';
  const wrongSign = decimalSign === '.' ? ',' : '.';
  if (match === null || digits.includes(wrongSign)) {
    return failed(fault('number.unreadable', argument, sayGiven(given)));
  }
  const size = Number(digits.replace(',', '.'));
  return ok(match[1] === '-' ? 0 - size : size);
}

/** A cell's content as text for a fault, whatever it was. */
export function sayGiven(given: unknown): string | number | boolean | null {
  if (given === null || given === undefined) return null;
  if (typeof given === 'string' || typeof given === 'boolean') return given;
  if (typeof given === 'number') return Number.isFinite(given) ? given : String(given);
  if (given instanceof Date) return 'a date';
  return 'something that is no text or number';
}
