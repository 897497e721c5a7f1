/**
 * The entry at a place where one must stand. For code outside the innermost loops: a miss there is a
 * bug of ours, which is to be seen rather than computed on with.
 *
 * @throws RangeError where there is none
 */
export function entryAt<Entry>(list: ArrayLike<Entry>, place: number): Entry {
  const entry = list[place];
  if (entry === undefined) {
    throw new RangeError(`Nothing stands at place ${place} of ${list.length}.`);
  }
  return entry;
}
