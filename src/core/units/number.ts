/** Reading plain numbers as people type them. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../faults/fault.ts';
import type { DecimalSign } from './format-number.ts';
import { withoutGroups } from './grouped-digits.ts';
import { LONGEST_NUMBER_TEXT, plainText } from './plain-text.ts';
import { isSameCurrency } from './currency.ts';
import { sayStatedUnit, statedUnitOf, type StatedUnit } from './stated-unit.ts';

/** What may stand with a number besides nothing. */
export interface AllowedUnits {
  readonly percent?: boolean;
  readonly degrees?: boolean;
  /** Money: the shop's sign or letters, or any where it is empty. */
  readonly currency?: string;
  /** Words of its own, in small letters: min, pcs. */
  readonly words?: readonly string[];
}

const NUMBER = /^(?:\d{1,12}(?:\.\d{0,20})?|\.\d{1,20})$/u;
/** Points of words (kr.) are theirs. */
const PARTS = /^((?:[^\d.]|\.(?!\d))*)(\.?\d(?:[\d.]*\d)?\.?)((?:[^\d.]|\.(?!\d))*)$/u;

/**
 * Reads a plain number as a person types it into a cell: `3.5`, ` 1,200 `, `3,5` where the decimal
 * sign is a comma, `(4.10)` for one below 0; `12 %`, `38°` or `$4.10` where that is allowed. No exponents.
 * Faults: `number.unreadable` for anything else, NaN and infinities included; `number.too-many-characters`,
 * `number.two-readings`, `number.other-sign`, `number.percent`, `number.other-unit`, `number.other-currency`.
 */
export function parseNumber(
  given: unknown,
  argument: Argument,
  decimalSign: DecimalSign = '.',
  allowed: AllowedUnits = {},
): Outcome<number> {
  if (typeof given === 'number') {
    return Number.isFinite(given)
      ? ok(given)
      : failed(fault('number.unreadable', argument, String(given)));
  }
  const unreadable = failed(fault('number.unreadable', argument, sayGiven(given)));
  const trimmed = typeof given === 'string' ? given.trim() : '';
  if (trimmed === '') return unreadable;
  if (trimmed.length > LONGEST_NUMBER_TEXT) return failed(tooManyCharacters(argument, trimmed));
  const grouping = { decimalSign, blanks: decimalSign === ',', feet: false };
  const plain = withoutGroups(plainText(trimmed), grouping, argument, trimmed);
  if (!plain.ok) return plain;
  const [, before = '', digits = '', after = ''] = PARTS.exec(plain.value) ?? [];
  const around = `${before}${after}`;
  if (!NUMBER.test(digits) || !areSigns(before, after)) return unreadable;
  // Words keep their letters as they were typed: Kč, USD.
  const unit = statedUnitOf(around.replace(/[-+()]/gu, ''), allowed.currency);
  if (unit !== undefined && !isWord(unit)) return unreadable;
  const wrong = unit && checkUnit(unit, argument, trimmed, allowed);
  if (wrong !== undefined) return failed(wrong);
  const size = Number(digits);
  return ok(/[-(]/u.test(around) ? 0 - size : size);
}

/** One sign at most: before the number, or brackets round it. */
function areSigns(before: string, after: string): boolean {
  const signs = `${before}|${after}`.replace(/[^-+()|]/gu, '');
  return ['|', '-|', '+|', '(|)'].includes(signs);
}

/** Whether what stands with a number is a unit or a word that could be one, not stray signs. */
export function isWord(unit: StatedUnit): boolean {
  if (unit.kind !== 'other') return true;
  return /\p{L}/u.test(unit.text) && /^[\p{L}\p{Sc}/. ²³]+$/u.test(unit.text);
}

/** Why a unit can't stand with a number; undefined where it can. */
export function checkUnit(
  unit: StatedUnit,
  argument: Argument,
  given: string,
  { percent = false, degrees = false, currency, words = [] }: AllowedUnits,
): Fault | undefined {
  const said = sayStatedUnit(unit);
  if (words.includes(said.toLowerCase())) return undefined;
  if (unit.kind === 'percent') {
    return percent ? undefined : fault('number.percent', argument, given);
  }
  if (unit.kind === 'degrees' && degrees) return undefined;
  if (unit.kind === 'money' && currency !== undefined) {
    if (currency === '' || isSameCurrency(unit.currency, currency)) return undefined;
    return fault('number.other-currency', argument, given, { details: { said, currency } });
  }
  return fault('number.other-unit', argument, given, { details: { said } });
}

export function tooManyCharacters(argument: Argument, text: string): Fault {
  return fault('number.too-many-characters', argument, text.length, { limit: LONGEST_NUMBER_TEXT });
}

/** A cell's content as text for a fault, whatever it was. */
export function sayGiven(given: unknown): string | number | boolean | null {
  if (given === null || given === undefined) return null;
  if (typeof given === 'string' || typeof given === 'boolean') return given;
  if (typeof given === 'number') return Number.isFinite(given) ? given : String(given);
  if (given instanceof Date) return 'a date';
  return 'something that is no text or number';
}
