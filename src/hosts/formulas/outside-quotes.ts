/** Looks at a formula only where it is neither a text, nor a sheet's name in quotes, nor in brackets. */

const PARTS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^\]]*\]|[^"'[]+|./gsu;

/** The formula with each such part changed. */
export function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula.replace(PARTS, (part) => (/^["'[]/u.test(part) ? part : change(part)));
}

/** The formula with nothing in the place of all else: what is left names functions and cells. */
export function bareFormula(formula: string): string {
  return formula.replace(PARTS, (part) => (/^["'[]/u.test(part) ? '' : part));
}
