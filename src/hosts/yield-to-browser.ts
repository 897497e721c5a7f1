/** How long work lets the browser draw, and hear a click, between its steps. */

/** A screen is drawn about every 16 ms: yielding more often only costs time. */
const YIELD_AFTER_MS = 24;

/** Waits until the browser has done what is due. */
export function yieldToBrowser(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

/**
 * A pause for long work: it may be called after each step, and yields only when it is time.
 *
 * @param now A clock in milliseconds.
 */
export function yieldNowAndThen(now: () => number): () => Promise<void> {
  let last = now();
  return async () => {
    if (now() - last < YIELD_AFTER_MS) return;
    await yieldToBrowser();
    last = now();
  };
}
