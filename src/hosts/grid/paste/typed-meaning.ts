/** What a text means that is typed or pasted into a cell: a length is no date, whatever it looks like. */
import { getNumfmtParseValueFilter } from '@univerjs/core';
import { plainNumber } from './plain-number.ts';

export type TypedMeaning =
  | { readonly kind: 'text' }
  /** With the number format that the text was written in. */
  | { readonly kind: 'number'; readonly value: number; readonly format?: string }
  | { readonly kind: 'boolean'; readonly value: boolean };

const TEXT: TypedMeaning = { kind: 'text' };
/** Codes of days and times in a number format, outside quotes and brackets. */
const DAY_OR_TIME = /[dmyhs]/iu;
/** A year of four digits, three numbers, or a time with its colon: nothing that a length is written like. */
const SURELY_DAY_OR_TIME = /\b\d{4}\b|^\s*\d{1,2}([/.-])\d{1,2}\1\d{2}\s*$|\d:\d/u;

/**
 * 3/4, 1-2 and 3-1/2 stay text, as do numbers with leading zeros and 1E5; 3/4/2026, 10:30, 45 %,
 * 1,234.5 and $12 mean what a spreadsheet takes them for.
 */
export function typedMeaning(text: string): TypedMeaning {
  const trimmed = text.trim();
  const plain = plainNumber(trimmed);
  if (plain !== null) return { kind: 'number', value: plain };
  if (/^(?:true|false)$/iu.test(trimmed)) {
    return { kind: 'boolean', value: trimmed.toLowerCase() === 'true' };
  }
  const { v, z } = getNumfmtParseValueFilter(trimmed) ?? {};
  if (typeof v !== 'number' || /^[+-]?0\d|^\d+e\d+$/iu.test(trimmed)) return TEXT;
  if (z === undefined)
    return trimmed.replace(/\D/gu, '').length > 15 ? TEXT : { kind: 'number', value: v };
  const isDay = isDayOrTime(z);
  return isDay && !SURELY_DAY_OR_TIME.test(trimmed)
    ? TEXT
    : { kind: 'number', value: v, format: z };
}

/** Whether a number format shows a day or a time. */
export function isDayOrTime(format: string): boolean {
  return DAY_OR_TIME.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\./gu, ''));
}

/** A text that a spreadsheet would take for a day or a time, and we don't. */
export function looksLikeDay(typed: string): boolean {
  return (
    /^\d+\s*[/.-]\s*\d|\d\s*[ap]m?$/iu.test(typed.trim()) && typedMeaning(typed).kind === 'text'
  );
}
