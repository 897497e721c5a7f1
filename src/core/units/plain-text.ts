/** One spelling for the characters that numbers and lengths are typed in, and how long they may be. */

/** Longer texts are no number and no length: they are refused before anything looks for one. */
export const LONGEST_NUMBER_TEXT = 60;

const SAME: readonly (readonly [RegExp, string])[] = [
  // What is not seen: joiners, soft hyphens, the mark of a file's beginning.
  [/[\u00ad\u200b-\u200d\u2060\ufeff]/gu, ''],
  // Full width, as East Asian keyboards write: the same letters 0xFEE0 further up.
  [/\u3000/gu, ' '],
  [/㎜/gu, 'mm'],
  [/㎝/gu, 'cm'],
  [/[′’‘`´ʹʼ]/gu, "'"],
  [/[″”“ʺ]/gu, '"'],
  [/''/gu, '"'],
  [/[‐‑‒–−]/gu, '-'],
  [/[⁄∕]/gu, '/'],
];
const FULL_WIDTH = /[\uff01-\uff5e]/gu;
const FULL_WIDTH_BEGINS = 0xfee0;
/** Blanks that don't break a line, as programs put them between groups of digits. */
export const UNBREAKING = /[\u00a0\u2007\u2009\u202f]/gu;

/** @param text At most `LONGEST_NUMBER_TEXT` characters; vulgar fractions (½) stay as they are. */
export function plainText(text: string): string {
  const narrow = text.replace(FULL_WIDTH, (one) =>
    String.fromCharCode(one.charCodeAt(0) - FULL_WIDTH_BEGINS),
  );
  return SAME.reduce((plain, [mark, usual]) => plain.replace(mark, usual), narrow)
    .trim()
    .toLowerCase();
}
