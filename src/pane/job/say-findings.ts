/** Counts of problems and cautions, and what was written, in words. */
import { count } from '../../sheets/words/print-length.ts';

/** `3 problems, 2 cautions`; `no problems` where there are none. */
export function sayFindings(faults: number, cautions: number): string {
  const problems = faults === 0 ? 'no problems' : count(faults, 'problem');
  return cautions === 0 ? problems : `${problems}, ${count(cautions, 'caution')}`;
}

/** `Production, Set-ups and Client`. */
export function sayList(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

export function sayWritten(sheets: readonly string[], file: string | undefined): string {
  const what = sheets.length === 0 ? 'No sheet' : sayList(sheets);
  const were = sheets.length > 1 ? 'were' : 'was';
  return file === undefined ? `${what} ${were} written.` : `${what} ${were} written to ${file}.`;
}
