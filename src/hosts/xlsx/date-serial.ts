/** Days as workbooks count them, from the dates that the reader makes of them. */

/** ECMA-376 part 1, 18.17.4.1: day 1 is the first of 1900, and a 29th of February 1900 is counted as day 60. */
const DAY_ZERO = Date.UTC(1899, 11, 31);
const MS_PER_DAY = 86_400_000;
const DAY_NEVER = 60;

/** The number that the cell of a file with the usual dates holds; to the millisecond. */
export function serialOf(date: Date): number {
  const days = (date.getTime() - DAY_ZERO) / MS_PER_DAY;
  return days < DAY_NEVER ? days : days + 1;
}
