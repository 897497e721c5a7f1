/**
 * Faults are values: what was wrong, with which argument, what was given and what is allowed.
 * The wording lives in wording.ts and, of arguments, in argument-words.ts; nobody else writes a message.
 */
import { sayArgument, ENGLISH_ARGUMENTS, type Argument, type ArgumentWords } from './argument.ts';
import { WORDING, type Wording } from './wording.ts';
import { writeDecimal, type DecimalSign } from '../units/format-number.ts';
import type { LengthUnit } from '../units/length-unit.ts';
import { clip, sayQuantity, type Quantity } from './quantity.ts';

export type FaultCode = keyof typeof WORDING;

/** Where in the person's own input the fault sits: a cell of a sheet, or a line of a file (1-based). */
export type Where =
  | { readonly sheet: string; readonly cell: string }
  | { readonly file: string; readonly line: number; readonly column: number };

export interface Fault {
  readonly code: FaultCode;
  /**
   * The argument, heading or setting at fault: a key of NAMES or a phrase with its slots filled, so that
   * code compares keys and no words; a name of the person's own; or syntax. `sayArgument` words it.
   */
  readonly argument: Argument;
  /** What was given, with its unit. */
  readonly given: Quantity;
  /** What is allowed: the number that the limit stands at. */
  readonly limit?: Quantity;
  /** Further quantities that the wording needs (what would help, say). */
  readonly details?: Readonly<Record<string, Quantity>>;
  readonly where?: Where;
  readonly message: string;
}

/** A caution has the shape of a fault; the list it stands in says that it stops nothing. */
export type Caution = Fault;

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export interface FaultMore {
  readonly limit?: Quantity;
  readonly details?: Readonly<Record<string, Quantity>>;
  readonly where?: Where;
}

/** Makes a fault, worded in inches with a point; `rewordFault` gives it as the shop reads it. */
export function fault(
  code: FaultCode,
  argument: Argument,
  given: Quantity,
  more: FaultMore = {},
): Fault {
  const facts = { code, argument, given, ...more };
  return { ...facts, message: word(facts, 'in', '.', ENGLISH) };
}

/** All that faults are said in. */
export interface FaultWords extends ArgumentWords {
  readonly messages: Readonly<Record<FaultCode, Wording>>;
}

const ENGLISH: FaultWords = { ...ENGLISH_ARGUMENTS, messages: WORDING };

/** The same fault worded for a shop that measures in `unit` and writes decimals with that sign. */
export function rewordFault(
  original: Fault,
  unit: LengthUnit,
  decimalSign: DecimalSign = '.',
  words: FaultWords = ENGLISH,
): Fault {
  return { ...original, message: word(original, unit, decimalSign, words) };
}

/** The same fault with its place in the person's input. */
export function placeFault(original: Fault, where: Where): Fault {
  return { ...original, where };
}

export function ok<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function failed(...faults: readonly Fault[]): { ok: false; faults: readonly Fault[] } {
  return { ok: false, faults };
}

/** One line for a person: the place first, then the message. */
export function sayFault(one: Fault): string {
  return one.where === undefined ? one.message : `${sayWhere(one.where)}: ${one.message}`;
}

export function sayWhere(where: Where): string {
  return 'sheet' in where
    ? `${where.sheet}!${where.cell}`
    : `${where.file}, line ${where.line}, column ${where.column}`;
}

/** A name of the person's own, or a list of ours: a message is read, not stored. */
const LONGEST_ARGUMENT = 300;
const LONGEST_DETAIL = 1_500;

function word(
  facts: Omit<Fault, 'message'>,
  unit: LengthUnit,
  decimalSign: DecimalSign,
  words: FaultWords,
): string {
  const say = (quantity: Quantity | undefined): string =>
    quantity === undefined ? '' : sayQuantity(quantity, unit, decimalSign);
  return words.messages[facts.code]({
    argument: clip(sayArgument(facts.argument, words), LONGEST_ARGUMENT),
    given: say(facts.given),
    limit: say(facts.limit),
    detail: (name) => {
      const quantity = facts.details?.[name];
      return typeof quantity === 'string' ? clip(quantity, LONGEST_DETAIL) : say(quantity);
    },
    decimal: (digits) => writeDecimal(digits, decimalSign),
  });
}
