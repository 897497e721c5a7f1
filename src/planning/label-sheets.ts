/** What a shop's labels may be printed on. */

/** Ways to lay labels on paper: `plain` has lines to cut along; the others are sheets of labels, across x down. */
export const LABEL_SHEETS = [
  'none',
  'plain',
  'letter 3 x 10',
  'letter 2 x 7',
  'a4 3 x 8',
  'a4 3 x 7',
] as const;
