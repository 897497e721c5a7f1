/** Splits a formula where it names sheets, tables and ranges, so that these can be found or renamed. */
import { quoteSheet } from '../../core/cells/cell-range.ts';

export interface FormulaPart {
  readonly kind: 'sheet' | 'table' | 'name' | 'other';
  /** As it stands in the formula; a sheet's with its exclamation mark. */
  readonly text: string;
  /** Without quotes or mark. */
  readonly name: string;
}

/** New names by old ones in lower case, as `nameKey` makes them. */
export interface Renamed {
  readonly sheets: ReadonlyMap<string, string>;
  readonly tables: ReadonlyMap<string, string>;
  readonly names: ReadonlyMap<string, string>;
}

/** Excel's names match whatever their case. */
export function nameKey(name: string): string {
  return name.toLowerCase();
}

const TEXT = /"(?:[^"]|"")*"/uy;
const QUOTED_SHEET = /'((?:[^']|'')*)'!/uy;
const ERROR = /#[A-Z/0-9_]+[!?]?/uy;
const NUMBER = /\d+(?:\.\d*)?(?:E[+-]?\d+)?/iuy;
const WORD = /[\p{L}_\\][\p{L}\p{N}_.?\\]*/uy;

/** All parts of a formula, in order; together their texts are the formula. */
export function formulaParts(formula: string): FormulaPart[] {
  const parts: FormulaPart[] = [];
  let at = 0;
  const other = (text: string): FormulaPart => ({ kind: 'other', text, name: '' });
  while (at < formula.length) {
    const rest = (pattern: RegExp): RegExpExecArray | null => {
      pattern.lastIndex = at;
      return pattern.exec(formula);
    };
    const quoted = rest(QUOTED_SHEET);
    const plain = rest(TEXT) ?? rest(ERROR) ?? rest(NUMBER);
    const word = rest(WORD)?.[0];
    let part: FormulaPart;
    if (quoted !== null) {
      part = {
        kind: 'sheet',
        text: quoted[0],
        name: quoted[1]?.replaceAll("''", "'") ?? '',
      };
    } else if (plain !== null) part = other(plain[0]);
    else if (word !== undefined) {
      // [Book.xlsx]Sheet!A1 names a sheet of another workbook.
      const elsewhere = parts.at(-1)?.text.endsWith(']') === true;
      part = elsewhere ? other(word) : wordPart(word, formula[at + word.length]);
    } else if (formula[at] === '[') part = other(formula.slice(at, bracketEnd(formula, at)));
    else part = other(formula[at] ?? '');
    parts.push(part);
    at += part.text.length;
  }
  return parts;
}

/** The formula with every sheet, table and range by its new name. */
export function renameIn(formula: string, { sheets, tables, names }: Renamed): string {
  return formulaParts(formula)
    .map(({ kind, text, name }) => {
      if (kind === 'sheet') {
        const renamed = sheets.get(nameKey(name));
        return renamed === undefined ? text : `${quoteSheet(renamed)}!`;
      }
      if (kind === 'table') return tables.get(nameKey(name)) ?? text;
      return kind === 'name' ? (names.get(nameKey(name)) ?? text) : text;
    })
    .join('');
}

function wordPart(word: string, next: string | undefined): FormulaPart {
  if (next === '!') return { kind: 'sheet', text: `${word}!`, name: word };
  if (next === '[') return { kind: 'table', text: word, name: word };
  return { kind: next === '(' ? 'other' : 'name', text: word, name: word };
}

/** Where the bracket that opens at `from` is closed: in it an apostrophe spares what follows. */
function bracketEnd(formula: string, from: number): number {
  let depth = 0;
  for (let at = from; at < formula.length; at++) {
    if (formula[at] === "'") at += 1;
    else if (formula[at] === '[') depth += 1;
    else if (formula[at] === ']') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return formula.length;
}
