/**
 * What a fault is about, as data: words of ours by their key, and names that are said as they stand.
 * The words are in argument-words.ts alone.
 */
import { NAMES, PHRASES } from './argument-words.ts';
import type { HEADINGS } from './heading-argument-words.ts';

/** One word of ours: a heading, a size, a setting, an argument of a function. */
export type ArgumentKey = keyof typeof NAMES;
/** Of these the heading of a column: by it a row's cell is read. */
export type HeadingKey = keyof typeof HEADINGS;
export type PhraseKey = keyof typeof PHRASES;

/** Words of ours around others, as in `Stock for Oak crown`. Made by `phrase`. */
export interface Phrase {
  readonly phrase: PhraseKey;
  readonly slots: Readonly<Record<string, Argument | number>>;
}

/** A name as the person has it: of a profile, a run, a sheet, a file. Never a word of ours. */
export interface OwnName {
  readonly own: string;
}

/** What is typed the same in any language: an option, a command, a function. */
export interface Syntax {
  readonly syntax: string;
}

export type Argument = ArgumentKey | Phrase | OwnName | Syntax;

type SlotsOf<Text extends string> = Text extends `${string}{${infer Slot}}${infer Rest}`
  ? Slot | SlotsOf<Rest>
  : never;

export function phrase<Key extends PhraseKey>(
  key: Key,
  slots: Readonly<Record<SlotsOf<(typeof PHRASES)[Key]>, Argument | number>>,
): Phrase {
  return { phrase: key, slots };
}

export function own(name: string): OwnName {
  return { own: name };
}

export function syntax(text: string): Syntax {
  return { syntax: text };
}

/** The words of every argument; another language would be another such table. */
export interface ArgumentWords {
  readonly names: Readonly<Record<ArgumentKey, string>>;
  readonly phrases: Readonly<Record<PhraseKey, string>>;
}

export const ENGLISH_ARGUMENTS: ArgumentWords = { names: NAMES, phrases: PHRASES };

export function sayArgument(argument: Argument, words: ArgumentWords = ENGLISH_ARGUMENTS): string {
  if (typeof argument === 'string') return words.names[argument];
  if ('own' in argument) return argument.own;
  if ('syntax' in argument) return argument.syntax;
  const { slots } = argument;
  return words.phrases[argument.phrase].replace(/\{(\w+)\}/gu, (_, slot: string) => {
    const filled = slots[slot];
    if (filled === undefined) throw new RangeError(`Nothing fills ${slot} of ${argument.phrase}.`);
    return typeof filled === 'number' ? String(filled) : sayArgument(filled, words);
  });
}
