/** What stands in a box that is ticked, what stands in one that is not, and how sheets count them. */

/** Of a stick or a piece that is cut when the sheet is written. */
export const TICK = 'x';

/** Under Done on Pieces: Cutting says that the piece is cut. */
export const CUT_MARK = 'cut';

/** What somebody puts into a box that is not to be ticked, in whatever case; blanks beside it don't count. */
export const NOT_TICKED: readonly string[] = ['no', 'n', 'false', '0', '-', '–', '—'];

const UNTICKED = ['""', '" "', 'FALSE', '0', ...NOT_TICKED.map((word) => `"${word}"`)];

/**
 * As a formula: 1 for each box that is ticked as `read-ticks.ts` has it, else 0. Of several boxes it is
 * one of those that SUMPRODUCT adds up.
 */
export function isTickedFormula(boxes: string): string {
  return UNTICKED.map((one) => `(${boxes}<>${one})`).join('*');
}

/** How many boxes of a list are ticked, in words: `3 of 24 done`. */
export function tickedFormula(boxes: string, of: number, as: string): string {
  return `SUMPRODUCT(${isTickedFormula(boxes)})&" of ${of}${as}"`;
}

export function sayTicked(ticked: number, of: number, as: string): string {
  return `${ticked} of ${of}${as}`;
}

/** `3 of 14 sticks cut or begun`; a stick is begun once one of its pieces is cut. */
export function sayCutSticks(cut: number, all: number): string {
  return `${cut} of ${all} ${all === 1 ? 'stick' : 'sticks'} cut or begun`;
}

/** The same as a formula, given where the two numbers stand. */
export function cutSticksFormula(cut: string, all: string): string {
  return `${cut}&" of "&${all}&IF(${all}=1," stick"," sticks")&" cut or begun"`;
}
