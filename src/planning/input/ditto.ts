/** Marks by which lists by hand say that a cell is as the one above. */
import type { HeadingKey } from '../../core/faults/argument.ts';

/** Common practice [C]. */
const DITTO = /^(?:-?\s*["“”„″〃]\s*-?|''|ditto\.?|do\.|dto\.?)$/iu;
/** Texts that are compared with nothing. */
const REMARKS: ReadonlySet<HeadingKey> = new Set(['note', 'label']);

export function isDitto(heading: HeadingKey, text: string): boolean {
  return DITTO.test(text) && !REMARKS.has(heading);
}
