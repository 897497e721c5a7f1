/**
 * A file that is opened can't be written into: what is said of its tables is kept on this machine, by
 * the file's name. What the file itself says of them goes first once it says something new.
 */
import { CHOICE_NOTES, OLD_CHOICES_NOTE, type Notes } from '../../planning/input/table-choices.ts';
import type { PaneServices } from '../services.ts';

type Preferences = PaneServices['preferences'];

interface Kept {
  /** What the file said when this was kept. */
  readonly file: string;
  readonly notes: Notes;
}

const keyOf = (fileName: string): string => `columns of ${fileName}`;

/**
 * The notes kept for a file that is opened, to be remembered over its own; none where it says otherwise
 * by now.
 */
export function keptNotes(preferences: Preferences, fileName: string, ofFile: Notes): Notes {
  const kept = read(preferences.get(keyOf(fileName)));
  const file = textOf(ofFile);
  if ((kept?.file ?? textOf({})) === file) return kept?.notes ?? {};
  preferences.set(keyOf(fileName), JSON.stringify({ file, notes: {} }));
  return {};
}

export function keepNotes(preferences: Preferences, fileName: string, notes: Notes): void {
  const file = read(preferences.get(keyOf(fileName)))?.file ?? textOf({});
  const forgotten = CHOICE_NOTES.map((key) => [key, notes[key] ?? null] as const);
  preferences.set(keyOf(fileName), JSON.stringify({ file, notes: Object.fromEntries(forgotten) }));
}

function textOf(notes: Notes): string {
  return JSON.stringify(CHOICE_NOTES.map((key) => notes[key] ?? null));
}

function read(text: string | undefined): Kept | undefined {
  const kept = parse(text);
  if (typeof kept !== 'object' || kept === null) return undefined;
  // Kept by an earlier version: the choices themselves, of a file that said nothing.
  if ('version' in kept) return { file: textOf({}), notes: { [OLD_CHOICES_NOTE]: text } };
  const { file, notes } = kept as Partial<Record<keyof Kept, unknown>>;
  if (typeof file !== 'string' || typeof notes !== 'object' || notes === null) return undefined;
  const texts = Object.entries(notes).map(
    ([key, value]: [string, unknown]) =>
      [key, typeof value === 'string' ? value : undefined] as const,
  );
  return { file, notes: Object.fromEntries(texts) };
}

function parse(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}
