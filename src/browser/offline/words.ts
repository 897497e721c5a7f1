/** What a page and its service worker say to each other. */

/** From the page: the version that waits is wanted now. */
export const TAKE_OVER = 'take over';
/** Of the worker's address, where it is to keep saw.html alone. */
export const SAW_PART = 'saw';
