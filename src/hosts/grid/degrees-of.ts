/** Which formulas answer an angle, and how a cell without a format of its own shows it. */
import type { Nullable } from '@univerjs/core';
import { STYLES } from '../../sheets/grammar/styles.ts';
import type { GridFunctionEntry } from './grid-function.ts';

const GENERAL = 'General';

/** The call of one function and nothing beside it: what is worked out further is no plain angle. */
const ONE_CALL = /^=\s*([A-Z][A-Z0-9.]*)\s*\((.*)\)\s*$/isu;

export type DegreesOf = (formula: Nullable<string>, format: string | undefined) => Degrees | null;
interface Degrees {
  readonly n: { readonly pattern: string };
}

/** The style that such a formula gives a cell of that format; null where it gives none. */
export function degreesOf(functions: readonly GridFunctionEntry[]): DegreesOf {
  const angles = new Set(
    functions.filter(({ answersDegrees }) => answersDegrees).map(({ name }) => name),
  );
  return (formula, format = GENERAL) => {
    if (format !== GENERAL && format !== '') return null;
    const [, name = '', given = ''] = ONE_CALL.exec(formula ?? '') ?? [];
    if (!angles.has(name.toUpperCase()) || !isWhole(given)) return null;
    return { n: { pattern: STYLES.degrees.format } };
  };
}

/** Whether no bracket closes that wasn't opened: in F(1)+G(2) the first one does. */
function isWhole(given: string): boolean {
  let depth = 0;
  for (const letter of given.replace(/"[^"]*"|'[^']*'/gu, '')) {
    if (letter === '(') depth += 1;
    if (letter === ')') depth -= 1;
    if (depth < 0) return false;
  }
  return true;
}
