/**
 * Names that a formula gives to its own steps: LET(width, A1, width * 2). Files store them with _xlpm.
 * before them ([MS-XLSX] section 2.2.2.2, future functions and their parameters); without it a
 * spreadsheet looks for a range of that name.
 */
import { formulaParts, nameKey, type FormulaPart } from './formula-parts.ts';

const MARK = '_xlpm.';

/** A bracket that is open, and where its arguments begin. */
interface Call {
  /** In capitals; nothing for a bracket without a function. */
  readonly name: string;
  readonly starts: number[];
}

/** @param formula Without the equals sign. */
export function markBoundNames(formula: string): string {
  if (!/\b(?:LET|LAMBDA)\s*\(/iu.test(formula)) return formula;
  const parts = formulaParts(formula);
  const marked = new Set<number>();
  const open: Call[] = [];
  parts.forEach(({ text }, at) => {
    if (text === '(' || text === '{') {
      const before = parts[at - 1]?.name ?? '';
      open.push({ name: text === '(' ? before.toUpperCase() : '', starts: [at + 1] });
    } else if (text === ',' || text === ';') open.at(-1)?.starts.push(at + 1);
    else if (text === ')' || text === '}') {
      const call = open.pop();
      if (call === undefined) return;
      for (const place of boundIn(parts, call)) {
        const name = nameKey(parts[place]?.name ?? '');
        for (let within = place; within < at; within++) {
          const part = parts[within];
          const isWord = part?.kind === 'name' || part?.kind === 'other';
          const ofSheet = parts[within - 1]?.kind === 'sheet';
          if (isWord && !ofSheet && nameKey(part.name) === name) marked.add(within);
        }
      }
    }
  });
  return parts.map(({ text }, at) => (marked.has(at) ? `${MARK}${text}` : text)).join('');
}

/** Where names stand that it binds: LET's first of every two arguments, LAMBDA's all but the last. */
function boundIn(parts: readonly FormulaPart[], { name, starts }: Call): number[] {
  if (name !== 'LET' && name !== 'LAMBDA') return [];
  return starts.slice(0, -1).flatMap((start, index) => {
    if (name === 'LET' && index % 2 === 1) return [];
    const own = parts.slice(start, (starts[index + 1] ?? 0) - 1);
    const words = own.filter(({ text }) => text.trim() !== '');
    const [only, ...more] = words;
    return only?.kind === 'name' && more.length === 0 ? [start + own.indexOf(only)] : [];
  });
}
