/** Lets the browser draw and hear a click between the steps of a long reckoning. */

/** A screen is drawn about every 16 ms: yielding more often only costs time. */
const YIELD_AFTER_MS = 24;

/** @param now A clock in milliseconds. */
export function breathe(now: () => number): () => Promise<void> {
  let last = now();
  return async () => {
    if (now() - last < YIELD_AFTER_MS) return;
    await new Promise<void>((resolve) => setTimeout(resolve));
    last = now();
  };
}
