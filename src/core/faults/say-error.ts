/** What was thrown, in its own words: for what is no fault of the person's. */
export function sayError(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
