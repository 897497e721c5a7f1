/** Text as a file stores it. */

/** ECMA-376 part 1, 22.9.2.19: _x0041_ stands for a character, so a typed one is escaped. */
export function escapeText(text: string): string {
  return text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
}
