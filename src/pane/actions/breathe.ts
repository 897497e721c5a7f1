/** Lets the browser draw and hear a click between the steps of a long reckoning. */

/** A screen is drawn about every 16 ms: yielding more often only costs time. */
const YIELD_AFTER_MS = 24;

/** Until the browser has done what waits. */
export function rest(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

/** @param now A clock in milliseconds. */
export function breathe(now: () => number): () => Promise<void> {
  let last = now();
  return async () => {
    if (now() - last < YIELD_AFTER_MS) return;
    await rest();
    last = now();
  };
}
