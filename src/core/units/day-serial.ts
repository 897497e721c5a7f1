/** Days as spreadsheets count them. */

/** ECMA-376 part 1, 18.17.4.1: day 1 is the first of 1900, and a 29th of February 1900 is counted as day 60. */
const DAY_ZERO = Date.UTC(1899, 11, 31);
const DAY_MILLISECONDS = 86_400_000;
const DAY_NEVER = 60;
/** The last of 9999. */
const LAST_DAY = 2_958_465;

/** The day as 2026-03-04; undefined for a time without a day, and for what is no date. */
export function dayOfSerial(serial: number): string | undefined {
  const days = Math.floor(serial);
  if (!(days >= 1 && days <= LAST_DAY) || days === DAY_NEVER) return undefined;
  const since = days < DAY_NEVER ? days : days - 1;
  return new Date(DAY_ZERO + since * DAY_MILLISECONDS).toISOString().slice(0, 10);
}

/** The number that the cell of a workbook with the usual dates holds; to the millisecond. */
export function serialOf(date: Date): number {
  const days = (date.getTime() - DAY_ZERO) / DAY_MILLISECONDS;
  return days < DAY_NEVER ? days : days + 1;
}
