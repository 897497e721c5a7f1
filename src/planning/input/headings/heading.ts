/**
 * A column of an input table: what it is headed, which other words are read as that heading, and what
 * stands under it. Reading, the mapping of a person's own list, blank sheets, CSV files and the lists
 * of headings in the How to sheet and README all follow from it.
 */

import { NAMES } from '../../../core/faults/argument-words.ts';
import type { HeadingKey } from '../../../core/faults/argument.ts';

/** What a cell of the column holds. A bare length is in the shop's unit. */
export type Holds =
  | 'name'
  | 'length'
  | 'degrees'
  | 'slope'
  | 'count'
  | 'number'
  | 'money'
  | 'percent'
  | 'word'
  | 'yes or no'
  | 'day'
  | 'hours'
  | 'note';

export interface Heading {
  /** By which code and faults know it. */
  readonly key: HeadingKey;
  /** As it is typed above the column. */
  readonly heading: string;
  readonly required?: boolean;
  readonly holds: Holds;
  /** The words that may stand there; where it holds a word. */
  readonly allowed?: readonly string[];
  /** In a sentence or two: what it says, and what a blank stands for. */
  readonly meaning: string;
  /**
   * Other words that are read as this heading wherever they stand. None that could mean two columns
   * of its table. Common practice [C].
   */
  readonly also?: readonly string[];
  /** Words that may mean it: guessed when a person maps a list, who then sees it. Common practice [C]. */
  readonly often?: readonly string[];
}

/** A heading's key, with its text from where the words of faults are. */
export function headed<Key extends HeadingKey>(
  key: Key,
): { readonly key: Key; readonly heading: (typeof NAMES)[Key] } {
  return { key, heading: NAMES[key] };
}
