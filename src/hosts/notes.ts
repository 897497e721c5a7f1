/**
 * Notes as custom document properties (ECMA-376 part 1, 15.2.12.2 and 22.3), which every spreadsheet
 * keeps with a workbook and shows among what it knows of it. Excel cuts a property's text off after 255
 * characters: a longer one goes on in `… (2)`, `… (3)`.
 */
import type { Notes } from './host.ts';

export type Property = string | number | boolean;
export type Properties = Readonly<Record<string, Property>>;

const LONGEST_TEXT = 255;
/** More parts than any note of ours has; what stands beyond is not ours. */
const MOST_PARTS = 400;

const partName = (key: string, part: number): string => (part === 1 ? key : `${key} (${part})`);

/** The text under this key, joined; undefined where there is none, or it is no text. */
export function noteIn(properties: Properties, key: string): string | undefined {
  const parts = partsOf(properties, key).map((name) => properties[name]);
  const texts = parts.filter((part) => typeof part === 'string');
  return parts.length === 0 || texts.length < parts.length ? undefined : texts.join('');
}

export function notesIn(properties: Properties, keys: readonly string[]): Notes {
  return Object.fromEntries(keys.map((key) => [key, noteIn(properties, key)]));
}

/** The properties with these notes in place of what stood under their keys. */
export function withNotes(properties: Properties, notes: Notes): Properties {
  const old = new Set(Object.keys(notes).flatMap((key) => partsOf(properties, key)));
  const kept = Object.entries(properties).filter(([name]) => !old.has(name));
  const added = Object.entries(notes).flatMap(([key, text]) =>
    text === undefined
      ? []
      : split(text).map((part, index) => [partName(key, index + 1), part] as const),
  );
  return Object.fromEntries([...kept, ...added]);
}

function partsOf(properties: Properties, key: string): string[] {
  const names: string[] = [];
  for (let part = 1; part <= MOST_PARTS; part++) {
    const name = partName(key, part);
    if (!Object.hasOwn(properties, name)) break;
    names.push(name);
  }
  return names;
}

/** Not within a pair of surrogates; and where it can be, not at a space, which a program may take away. */
function split(text: string): string[] {
  const parts: string[] = [];
  let from = 0;
  while (text.length - from > LONGEST_TEXT) {
    const most = from + LONGEST_TEXT;
    const sound = isWithinPair(text, most) ? most - 1 : most;
    let to = sound;
    while (to > from && (isAtSpace(text, to) || isWithinPair(text, to))) to--;
    if (to === from) to = sound;
    parts.push(text.slice(from, to));
    from = to;
  }
  return [...parts, text.slice(from)];
}

function isWithinPair(text: string, at: number): boolean {
  return (text.codePointAt(at - 1) ?? 0) > 0xffff;
}

function isAtSpace(text: string, at: number): boolean {
  return /^\s|\s$/u.test(text.slice(at - 1, at + 1));
}
