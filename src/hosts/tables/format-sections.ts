/**
 * A number format (in English, as Excel gives it) taken apart: up to four sections, each with its
 * condition and what it shows.
 *
 * Source: ECMA-376 part 1, 18.8.30 and 18.8.31 (number formats and their codes).
 */

export interface FormatSection {
  /** What a number must be for this section; absent where the usual order goes. */
  readonly condition?: { readonly sign: string; readonly than: number };
  readonly parts: readonly FormatPart[];
  /** It shows days or times. */
  readonly isDate: boolean;
  /** Sign or letters of money in brackets: [$€-407]. */
  readonly currency?: string;
}

export type FormatPart =
  /** Text as it is shown, in quotes, after a backslash or bare; a blank where a space is kept. */
  | { readonly kind: 'text'; readonly text: string }
  /** One of 0 # ?, the number's own digits. */
  | { readonly kind: 'digit'; readonly sign: string }
  /** The number in the usual form, or a cell's own text. */
  | { readonly kind: 'general' | 'cell-text' }
  /** . , % / or the exponent's E. */
  | { readonly kind: 'sign'; readonly sign: string };

/** Longer ones are no format that a program made: Excel's own limit is 255. */
export const LONGEST_FORMAT = 1024;

const CONDITION = /^(<=|>=|<>|<|>|=)\s*(-?[\d.]{1,20})$/u;
const ELAPSED = /^(?:h+|m+|s+)$/iu;
const LOCALE = /^[0-9a-f]{1,8}$/iu;
const DATE_LETTERS = 'ymdhs';

/** One look at each character, whatever they are; what is too long for a format has no sections. */
export function formatSections(format: string): readonly FormatSection[] {
  if (format.length > LONGEST_FORMAT) return [];
  const sections: FormatSection[] = [];
  let made = newSection();
  for (let at = 0; at < format.length;) {
    if (format[at] === ';') {
      sections.push(made);
      made = newSection();
      at += 1;
    } else at += readPart(format, at, made);
  }
  return [...sections, made];
}

interface Making {
  condition?: { readonly sign: string; readonly than: number };
  parts: FormatPart[];
  isDate: boolean;
  currency?: string;
}

const newSection = (): Making => ({ parts: [], isDate: false });

/** @returns How many characters were read. */
function readPart(format: string, at: number, made: Making): number {
  const sign = format[at] ?? '';
  const text = (shown: string, length: number): number => {
    made.parts.push({ kind: 'text', text: shown });
    return length;
  };
  const until = (end: string): string => {
    const found = format.indexOf(end, at + 1);
    return format.slice(at + 1, found < 0 ? undefined : found);
  };
  switch (sign) {
    case '"': {
      const quoted = until('"');
      return text(quoted, quoted.length + 2);
    }
    case '\\':
      return text(format[at + 1] ?? '', 2);
    case '_':
      return text(' ', 2);
    case '*':
      return 2;
    case '[': {
      const inside = until(']');
      readBrackets(inside, made);
      return inside.length + 2;
    }
    case '0':
    case '#':
    case '?':
      made.parts.push({ kind: 'digit', sign });
      return 1;
    case '.':
    case ',':
    case '%':
    case '/':
      made.parts.push({ kind: 'sign', sign });
      return 1;
    case '@':
      made.parts.push({ kind: 'cell-text' });
      return 1;
    default:
      return readLetter(format, at, made);
  }
}

function readLetter(format: string, at: number, made: Making): number {
  const sign = format[at] ?? '';
  const rest = format.slice(at, at + 'General'.length).toLowerCase();
  if (rest === 'general') {
    made.parts.push({ kind: 'general' });
    return rest.length;
  }
  if (rest.startsWith('e+') || rest.startsWith('e-')) {
    made.parts.push({ kind: 'sign', sign: 'E' });
    return 2;
  }
  const last = made.parts.at(-1);
  const isUnder = last?.kind === 'digit' || (last?.kind === 'sign' && last.sign === '/');
  if (DATE_LETTERS.includes(sign.toLowerCase())) made.isDate = true;
  // The denominator of # ??/16.
  else if (isUnder && /[1-9]/u.test(sign)) made.parts.push({ kind: 'digit', sign });
  else made.parts.push({ kind: 'text', text: sign });
  return 1;
}

function readBrackets(inside: string, made: Making): void {
  if (ELAPSED.test(inside)) made.isDate = true;
  if (inside.startsWith('$')) {
    const dash = inside.lastIndexOf('-');
    const named =
      dash > 0 && LOCALE.test(inside.slice(dash + 1)) ? inside.slice(1, dash) : inside.slice(1);
    if (named !== '') {
      made.currency = named;
      made.parts.push({ kind: 'text', text: named });
    }
    return;
  }
  const condition = CONDITION.exec(inside);
  if (condition !== null) {
    made.condition = { sign: condition[1] ?? '', than: Number(condition[2]) };
  }
}
