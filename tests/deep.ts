/** How much of what is drawn by chance a run looks at: all of it after `npm run tests:deep`, else a part. */

/** One in so many is enough to see each kind; the rare ones are for the deep run. */
const SHARE = 10;

/** So many of a seeded draw: all of them in a deep run, else the first of them. */
export function count(all: number, part = Math.ceil(all / SHARE)): number {
  return process.env['TESTS_DEEP'] === undefined ? part : all;
}
