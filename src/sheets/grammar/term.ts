/**
 * A piece of a worksheet formula with what it comes to, so that a cell's formula and its cached value
 * are one definition. What a spreadsheet calls an error is NaN here; a blank text stands for it in a
 * cell, since a cell that goes on with it comes to nothing as well.
 */
import type { CellDescription } from './description.ts';
import type { StyleName } from './styles.ts';

export interface Term {
  readonly formula: string;
  readonly value: number;
}

export interface Condition {
  readonly formula: string;
  readonly value: boolean;
}

/** What gives a text, in the end. */
export interface Words {
  readonly formula: string;
  readonly value: string;
}

export function number(value: number): Term {
  const written = String(value).toUpperCase();
  return { formula: value < 0 ? `(${written})` : written, value };
}

type Binary = (one: Term, other: Term) => Term;
const binary =
  (sign: string, work: (one: number, other: number) => number): Binary =>
  (one, other) => ({
    formula: `(${one.formula}${sign}${other.formula})`,
    value: work(one.value, other.value),
  });

export const plus = binary('+', (one, other) => one + other);
export const minus = binary('-', (one, other) => one - other);
export const times = binary('*', (one, other) => one * other);
/** By 0 a spreadsheet gives an error, not infinity. */
export const over = binary('/', (one, other) => (other === 0 ? NaN : one / other));

type Call = (...given: readonly Term[]) => Term;
const call =
  (name: string, work: (...given: number[]) => number): Call =>
  (...given) => ({
    formula: `${name}(${given.map(({ formula }) => formula).join(',')})`,
    value: work(...given.map(({ value }) => value)),
  });

export const sine = call('SIN', Math.sin);
export const cosine = call('COS', Math.cos);
export const root = call('SQRT', Math.sqrt);
export const arcsine = call('ASIN', Math.asin);
export const arccosine = call('ACOS', Math.acos);
/** Of (x, y), as spreadsheets have it. */
export const arctangent = call('ATAN2', (x = NaN, y = NaN) =>
  x === 0 && y === 0 ? NaN : Math.atan2(y, x),
);
export const least = call('MIN', Math.min);
export const most = call('MAX', Math.max);
export const absolute = call('ABS', Math.abs);
export const degreesOf = call('DEGREES', (angle = NaN) => (angle * 180) / Math.PI);
export const roundedUp = call(
  'ROUNDUP',
  (value = NaN) => Math.sign(value) * Math.ceil(Math.abs(value)),
);
export const PI: Term = { formula: 'PI()', value: Math.PI };

type Comparison = (one: Term, other: Term) => Condition;
const comparison =
  (sign: string, holds: (one: number, other: number) => boolean): Comparison =>
  (one, other) => ({
    formula: `${one.formula}${sign}${other.formula}`,
    value: holds(one.value, other.value),
  });

export const less = comparison('<', (one, other) => one < other);
export const more = comparison('>', (one, other) => one > other);
export const equals = comparison('=', (one, other) => one === other);

/** Not more than 0. */
export function notMore({ formula, value }: Term): Condition {
  return { formula: `NOT(${formula}>0)`, value: !(value > 0) };
}

export function isNoNumber({ formula, value }: Term): Condition {
  return { formula: `NOT(ISNUMBER(${formula}))`, value: !Number.isFinite(value) };
}

export function not({ formula, value }: Condition): Condition {
  return { formula: `NOT(${formula})`, value: !value };
}

export function either(...conditions: readonly Condition[]): Condition {
  return {
    formula: `OR(${conditions.map(({ formula }) => formula).join(',')})`,
    value: conditions.some(({ value }) => value),
  };
}

/** Of all of them. */
export function both(...conditions: readonly Condition[]): Condition {
  return {
    formula: `AND(${conditions.map(({ formula }) => formula).join(',')})`,
    value: conditions.every(({ value }) => value),
  };
}

/** The one that isn't chosen may be an error. */
export function choose(when: Condition, then: Term, otherwise: Term): Term {
  return {
    formula: `IF(${when.formula},${then.formula},${otherwise.formula})`,
    value: when.value ? then.value : otherwise.value,
  };
}

/** The words of the first condition that holds; `otherwise` where none does. */
export function chooseWords(
  cases: readonly (readonly [when: Condition, words: string])[],
  otherwise: string,
): Words {
  const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
  return {
    formula: cases.reduceRight(
      (rest, [when, words]) => `IF(${when.formula},${quoted(words)},${rest})`,
      quoted(otherwise),
    ),
    value: cases.find(([when]) => when.value)?.[1] ?? otherwise,
  };
}

/** A number in a cell; blank where it comes to an error. */
export function termCell({ formula, value }: Term, style: StyleName): CellDescription {
  return {
    formula: `IFERROR(${formula},"")`,
    value: Number.isFinite(value) ? value : '',
    style,
  };
}
