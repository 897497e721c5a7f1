/**
 * Text that every host can hold: what XML 1.0 forbids is replaced before a workbook is written, so
 * that a stray character from somebody's file costs one mark, not the workbook.
 */
import type { WorkbookDescription } from '../description.ts';

/** Characters that a cell holds at most (Microsoft, "Excel specifications and limits"). */
export const MOST_CELL_TEXT = 32_767;

/** Stands for a character that can't be held. */
const REPLACEMENT = '\uFFFD';

/** All but XML 1.0's own Char production (section 2.2): controls, lone surrogates, U+FFFE, U+FFFF. */
// eslint-disable-next-line no-control-regex -- control characters are what is looked for
const UNHELD = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;
// XML readers and spreadsheets disagree on a carriage return, so a line ends in a newline alone.
const LINE_ENDS = /\r\n?/g;

/** The same text with newlines alone as line ends and U+FFFD for each character XML can't hold. */
export function cleanText(text: string): string {
  return text.replace(LINE_ENDS, '\n').replace(UNHELD, REPLACEMENT);
}

/** Whether `cleanText` would leave the text as it is. */
export function isCleanText(text: string): boolean {
  return cleanText(text) === text;
}

/** At most `most` characters, the last an ellipsis where some were left out; no pair is split. */
export function clipText(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${text.slice(0, most - 1).replace(/\p{Surrogate}$/u, '')}…`;
}

/** The description with every text in it cleaned; hosts do this before they check and write. */
export function cleanDescription(description: WorkbookDescription): WorkbookDescription {
  return cleanAll(description) as WorkbookDescription;
}

/** What needs no cleaning is given back as it is: most of a description is drawings and numbers. */
function cleanAll(value: unknown): unknown {
  if (typeof value === 'string') return cleanText(value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    let copy: unknown[] | undefined;
    value.forEach((inner: unknown, index) => {
      const clean = cleanAll(inner);
      if (clean !== inner) (copy ??= [...(value as unknown[])])[index] = clean;
    });
    return copy ?? value;
  }
  let copy: Record<string, unknown> | undefined;
  for (const [key, inner] of Object.entries(value)) {
    const clean = cleanAll(inner);
    if (clean !== inner) (copy ??= { ...value })[key] = clean;
  }
  return copy ?? value;
}
