/** Keeps a formula with a bracket too many from spoiling those that are read after it. */
import { LexerTreeBuilder } from '@univerjs/engine-formula';

/** What is touched of the engine's reader of formulas, which it keeps to itself. */
interface Reader {
  /** Begins a formula. */
  _resetTemp: (this: Reader) => void;
  /** Brackets that are open: [ and ]. */
  _squareBracketState: number;
}

const MENDED = Symbol('mended');

/**
 * The engine's reader forgets, when it begins a formula, to close the brackets of the one before:
 * after =SUM(A1]) it takes every colon and operator for a part of a name, and all goes #NAME?.
 * Seen with version 0.25.1; does nothing where it was called before.
 */
export function beginFormulasAfresh(): void {
  const reader = LexerTreeBuilder.prototype as unknown as Reader & { [MENDED]?: true };
  if (reader[MENDED] === true) return;
  reader[MENDED] = true;
  const begin = reader._resetTemp;
  reader._resetTemp = function (): void {
    begin.call(this);
    this._squareBracketState = 0;
  };
}
