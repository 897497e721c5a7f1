/**
 * Formulas as files store them and as people write them. A function of an add-in's is stored with
 * _xldudf_ before it and _ for its dot [M], one newer than the format with _xlfn. and _xlws., a name
 * bound by LET or LAMBDA with _xlpm. ([MS-XLSX] section 2.2.2.2).
 */
import { markBoundNames } from './bound-names.ts';
import { bareFormula, outsideQuotes } from './outside-quotes.ts';
import { NEWER_FUNCTIONS, SHEET_FUNCTIONS } from './newer-functions.ts';

/** Before the bracket that opens its arguments. */
const CALL = /(?<![\p{L}\p{N}_.!])([\p{L}_][\p{L}\p{N}_.]*)(?=\()/gu;
const OUR_FUNCTION = /^COVE\./iu;

/** @param stored Without the equals sign, as the functions below all take and give it. */
export function formulaFromFile(stored: string): string {
  return outsideQuotes(stored, (part) =>
    part
      .replace(/_xl(?:fn|ws|pm|udf)\./giu, '')
      .replace(/_xldudf_([\p{L}\p{N}]+)_([\p{L}\p{N}_.]+)(?=\()/giu, (_, space, name) =>
        `${String(space)}.${String(name)}`.toUpperCase(),
      ),
  );
}

export function formulaForFile(written: string): string {
  return outsideQuotes(markBoundNames(written), (part) =>
    part.replace(CALL, (name: string) => {
      const upper = name.toUpperCase();
      if (OUR_FUNCTION.test(name)) return `_xldudf_${upper.replaceAll('.', '_')}`;
      if (SHEET_FUNCTIONS.has(upper)) return `_xlfn._xlws.${upper}`;
      return NEWER_FUNCTIONS.has(upper) ? `_xlfn.${upper}` : name;
    }),
  );
}

export function callsOurs(formula: string): boolean {
  return functionsOf(formula).some((name) => OUR_FUNCTION.test(name));
}

/** Names of the functions that it calls, in capitals. */
export function functionsOf(formula: string): string[] {
  return [...bareFormula(formula).matchAll(CALL)].map(([, name = '']) => name.toUpperCase());
}

/** Whether it reads another workbook: [1]Sheet!A1, '[1]My sheet'!A1, or [1]!Name. */
export function readsOtherWorkbook(stored: string): boolean {
  return /\[\d+\][^![\]"]*!/u.test(stored.replace(/"(?:[^"]|"")*"/gu, '""'));
}

/**
 * Whether it reckons with ranges cell by cell, so that a spreadsheet that takes one cell of each
 * must be told: an operator beside a range, outside functions that always reckon so.
 */
export function reckonsWithRanges(formula: string): boolean {
  const text = bareFormula(formula);
  const range = String.raw`\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+`;
  const beside = new RegExp(
    String.raw`${range}\)*\s*[-+*/^&=<>]|[-+*/^&=<>]\s*\(*(?:[\p{L}\p{N}_.]+!)?${range}`,
    'iu',
  );
  return beside.test(text) && !/\b(?:SUMPRODUCT|MMULT|LOOKUP)\(/iu.test(text);
}
