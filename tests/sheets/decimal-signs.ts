/** The words of what is described, and the signs of the numbers in them. */

/** Names of the job "comma", which a person typed: no sign in them is ours. */
export const TYPED = ['Stube 1.5', 'Nord 2,5', 'Cove 7.5', 'Stück 0.5 of 2,25'];
/** A thousand and more in money, and the most passes: there the comma's shop has points. */
const GROUPED = /^(?:\d{1,3}(?:\.\d{3})+,\d\d|1\.000)$/u;
const NUMBER = /\d+(?:[.,]\d+)+/gu;

/** Typed names out, so that what is left is worded here. */
export function worded(text: string): string {
  return TYPED.reduce((left, name) => left.replaceAll(name, '<typed>'), text);
}

/** Every point between digits a comma, and the other way about. */
export function swapSigns(text: string): string {
  const signs: Readonly<Record<string, string>> = { '.': ',', ',': '.' };
  return worded(text).replace(/(?<=\d)[.,](?=\d)/gu, (sign) => signs[sign] ?? sign);
}

/** A copy whose words are made anew: all texts but formulas, and of those what stands in quotes. */
export function reworded<Thing>(thing: Thing, reword: (text: string) => string, key = ''): Thing {
  const again = (value: unknown, name: string): unknown => reworded(value, reword, name);
  if (typeof thing === 'string') {
    if (key !== 'formula') return reword(thing) as Thing;
    return thing.replace(/"(?:[^"]|"")*"/gu, reword) as Thing;
  }
  if (Array.isArray(thing)) return thing.map((value) => again(value, key)) as Thing;
  if (typeof thing !== 'object' || thing === null) return thing;
  return Object.fromEntries(
    Object.entries(thing).map(([name, value]) => [name, again(value, name)]),
  ) as Thing;
}

/** All that is worded in a description, without typed names. */
function wordsOf(thing: unknown): string[] {
  const words: string[] = [];
  reworded(thing, (text) => {
    words.push(worded(text));
    return text;
  });
  return words;
}

/** Numbers in words that have a point, but for those that part thousands with it. */
export function pointed(thing: unknown): string[] {
  return wordsOf(thing).filter((text) =>
    (text.match(NUMBER) ?? []).some((number) => number.includes('.') && !GROUPED.test(number)),
  );
}
