/** How wide text is in the standard font, without a font at hand: no layer below the hosts has one. */

/**
 * Advance widths in thousandths of the font's size, from the space (32) to the tilde (126). Adobe,
 * font metrics of Helvetica and Helvetica-Bold (1989); Arial and Liberation Sans are as wide, against
 * which tests/sheets/cells-fit.test.ts measures them.
 */
const REGULAR =
  '278 278 355 556 556 889 667 191 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 ' +
  '556 556 278 278 584 584 584 556 1015 667 667 722 722 667 611 778 722 278 500 667 556 833 722 778 ' +
  '667 778 722 667 611 722 667 944 667 667 611 278 278 278 469 556 333 556 556 500 556 556 278 556 ' +
  '556 222 222 500 222 833 556 556 556 556 333 500 278 556 500 722 500 500 500 334 260 334 584';
const BOLD =
  '278 333 474 556 556 889 722 238 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 ' +
  '556 556 333 333 584 584 584 611 975 722 722 722 722 667 611 778 722 278 556 722 611 833 722 778 ' +
  '667 778 722 667 611 722 667 944 667 667 611 333 278 333 584 556 333 556 611 556 611 556 333 611 ' +
  '611 278 278 556 278 889 611 611 611 611 389 556 333 611 556 778 556 556 500 389 280 389 584';

const SPACE = 32;
const ofLetters = (table: string): readonly number[] =>
  table.split(' ').map((width) => Number(width) / 1000);
const WIDTHS = { regular: ofLetters(REGULAR), bold: ofLetters(BOLD) } as const;

/** Signs of other fonts, rounded up by kinds [M]. */
const OTHERS: readonly (readonly [RegExp, number])[] = [
  // Marks over other letters, and signs that only say how others are joined.
  [/\p{M}|[\u200B-\u200F\u2060-\u2064]/u, 0],
  [/\p{Extended_Pictographic}/u, 1.4],
  [/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}…—]/u, 1],
  [/\p{Lu}/u, 1],
  [/[\p{Script=Latin}\p{No}]/u, 0.9],
];
const OTHER = 0.65;

/** Width of text on one line, in ems: multiples of the font's size. */
export function textEms(text: string, bold = false): number {
  const widths = bold ? WIDTHS.bold : WIDTHS.regular;
  let ems = 0;
  for (const character of text.normalize('NFD')) {
    ems +=
      widths[(character.codePointAt(0) ?? 0) - SPACE] ??
      OTHERS.find(([kind]) => kind.test(character))?.[1] ??
      OTHER;
  }
  return ems;
}
