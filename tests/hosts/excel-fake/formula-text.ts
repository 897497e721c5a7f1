/**
 * A formula that follows the sheets and tables it names: Excel rewrites formulas when these are
 * renamed and breaks them when they are deleted. Read letter by letter; unknown sheets, tables and
 * names and a stranger's separators are refused, as Excel refuses them.
 */
import { invalid } from './office-error.ts';
import type { FakeSheet, FakeTable, FakeWorkbook } from './workbook-model.ts';

type Piece = string | { readonly sheet: FakeSheet; readonly quoted: boolean } | FakeTable;

const LONGEST_FORMULA = 8_192;
const LETTER = /[\p{L}_\\]/u;
const WORD = /[\p{L}\p{N}_.\\$]/u;
const PLAIN_SHEET = /^[\p{L}_][\p{L}\p{N}_.]*$/u;
/** A cell, a whole column, a truth value. */
const NO_NAME = /^\$?(?:[A-Z]{1,3}\$?\d{0,7}|TRUE|FALSE)$/iu;

export class FormulaText {
  readonly #pieces: readonly Piece[];

  constructor(pieces: readonly Piece[]) {
    this.#pieces = pieces;
  }

  /** Without the equals sign. */
  get text(): string {
    return this.#pieces
      .map((piece) => {
        if (typeof piece === 'string') return piece;
        if ('box' in piece) return piece.sheet.deleted ? '#REF!' : piece.name;
        if (piece.sheet.deleted) return '#REF!';
        const { name } = piece.sheet;
        const bare = !piece.quoted && PLAIN_SHEET.test(name);
        return `${bare ? name : `'${name.replaceAll("'", "''")}'`}!`;
      })
      .join('');
  }
}

/** Reads a formula that begins with an equals sign. */
export function readFormula(text: string, workbook: FakeWorkbook): FormulaText {
  if (!text.startsWith('=')) throw invalid(`no formula: ${text}`);
  if (text.length > LONGEST_FORMULA) throw invalid('a formula of more than 8,192 characters');
  const source = text.slice(1);
  const pieces: Piece[] = [];
  let [at, open, braces] = [0, 0, 0];
  while (at < source.length) {
    const letter = source.charAt(at);
    if (letter === '"') {
      const end = closing(source, at, '"');
      pieces.push(source.slice(at, end));
      at = end;
    } else if (letter === "'") {
      const end = closing(source, at, "'");
      if (source.charAt(end) !== '!') throw invalid(`a quoted name alone in ${text}`);
      const name = source.slice(at + 1, end - 1).replaceAll("''", "'");
      pieces.push({ sheet: known(workbook, name, text), quoted: true });
      at = end + 1;
    } else if (letter === '[') {
      const end = source.indexOf(']', at) + 1;
      if (end === 0) throw invalid(`an open bracket in ${text}`);
      pieces.push(source.slice(at, end));
      at = end;
    } else if (LETTER.test(letter)) {
      let end = at;
      while (end < source.length && WORD.test(source.charAt(end))) end += 1;
      pieces.push(...word(source.slice(at, end), source.charAt(end), workbook, text));
      at = source.charAt(end) === '!' ? end + 1 : end;
    } else if (/\d/u.test(letter)) {
      const number = /^[\d.]+(?:[eE][+-]?\d+)?/u.exec(source.slice(at))?.[0] ?? letter;
      pieces.push(number);
      at += number.length;
    } else {
      if (letter === '(') open += 1;
      if (letter === ')') open -= 1;
      if (letter === '{') braces += 1;
      if (letter === '}') braces -= 1;
      if (open < 0 || (letter === ';' && braces === 0))
        throw invalid(`a stray ${letter} in ${text}`);
      pieces.push(letter);
      at += 1;
    }
  }
  if (open !== 0) throw invalid(`an open parenthesis in ${text}`);
  return new FormulaText(pieces);
}

function word(text: string, next: string, workbook: FakeWorkbook, formula: string): Piece[] {
  if (next === '!') return [{ sheet: known(workbook, text, formula), quoted: false }];
  if (next === '(') return [text];
  if (next === '[') {
    const table = workbook.tables.find(({ name }) => name.toLowerCase() === text.toLowerCase());
    if (table === undefined) throw invalid(`no table ${text}, in ${formula}`);
    return [table];
  }
  const isName = workbook.names.some(({ name }) => name.toLowerCase() === text.toLowerCase());
  if (!isName && !NO_NAME.test(text)) throw invalid(`no name ${text}, in ${formula}`);
  return [text];
}

function known(workbook: FakeWorkbook, name: string, formula: string): FakeSheet {
  const sheet = workbook.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (sheet === undefined) throw invalid(`no sheet ${name}, in ${formula}`);
  return sheet;
}

/** Just behind the quote that closes the one at `from`; doubled ones stand for themselves. */
function closing(source: string, from: number, quote: string): number {
  for (let at = from + 1; at < source.length; at++) {
    if (source.charAt(at) !== quote) continue;
    if (source.charAt(at + 1) === quote) at += 1;
    else return at + 1;
  }
  throw invalid(`an open ${quote} in ${source}`);
}
