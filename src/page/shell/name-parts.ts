/** Names for what the grid's library draws without any: a screen reader would hear "button" alone. */

/** By how the library marks them; those that have a name keep it. */
const NAMES: readonly (readonly [selector: string, name: string])[] = [
  ['[contenteditable="true"]', 'Cell'],
];

/** From now on, whatever comes up in the place. */
export function nameParts(place: HTMLElement): void {
  const name = (): void => {
    for (const [selector, words] of NAMES) {
      for (const part of place.querySelectorAll(selector)) {
        if (!part.hasAttribute('aria-label')) part.setAttribute('aria-label', words);
      }
    }
  };
  let waiting = false;
  new MutationObserver(() => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      name();
    });
  }).observe(place, { childList: true, subtree: true });
  name();
}
