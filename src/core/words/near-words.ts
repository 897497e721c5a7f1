/**
 * Which known names one that isn't known may be meant for: a slip of the fingers, or a name that holds
 * the other (blade kerf, kerf) or shortens its words (blade dia., blade diameter).
 */

/** Letters of the longer name from which one letter off, and two letters off, are a slip. */
const LEAST_FOR_ONE = 4;
const LEAST_FOR_TWO = 8;
/** A shorter beginning of a word is no abbreviation of it. */
const LEAST_ABBREVIATION = 3;

/** A name's words: small letters and digits. */
export function wordsOf(name: string): readonly string[] {
  return name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

/**
 * The fewest letters put in, left out, put for another, or swapped with their neighbor between two
 * words, no letter being touched twice (optimal string alignment: Damerau, Comm. ACM 7, 1964).
 */
export function letterDistance(one: string, other: string): number {
  const [from, to] = [Array.from(one), Array.from(other)];
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (const [at, letter] of from.entries()) {
    const row = [at + 1];
    for (const [place, wanted] of to.entries()) {
      const change = (last[place] ?? 0) + (letter === wanted ? 0 : 1);
      const leftOut = (last[place + 1] ?? 0) + 1;
      const putIn = (row[place] ?? 0) + 1;
      const isSwap = letter === to[place - 1] && wanted === from[at - 1];
      const swap = isSwap ? (beforeLast[place - 1] ?? 0) + 1 : Infinity;
      row.push(Math.min(change, leftOut, putIn, swap));
    }
    [beforeLast, last] = [last, row];
  }
  return last[to.length] ?? 0;
}

/** Whether one word is the other but for a slip; of short words the first letter is seldom missed. */
export function isSlipOf(one: string, other: string): boolean {
  const longer = Math.max(one.length, other.length);
  const most = longer < LEAST_FOR_ONE ? 0 : longer < LEAST_FOR_TWO ? 1 : 2;
  if (Math.abs(one.length - other.length) > most) return false;
  if (longer < LEAST_FOR_TWO && one[0] !== other[0]) return false;
  return letterDistance(one, other) <= most;
}

/** Whether all words of one name stand in the other, in order, whole or shortened or with a slip. */
export function holdsOther(one: string, other: string): boolean {
  const [few, many] = [wordsOf(one), wordsOf(other)].sort((a, b) => a.length - b.length);
  if (few === undefined || many === undefined || few.length === 0) return false;
  let at = 0;
  for (const word of many) {
    const wanted = few[at];
    if (wanted !== undefined && isWordFor(wanted, word)) at += 1;
  }
  return at === few.length;
}

/** The known names that `given` is a slip of; where there are none, those that hold it or that it holds. */
export function findNearNames(given: string, known: readonly string[]): readonly string[] {
  const joined = (name: string): string => wordsOf(name).join('');
  const slips = known.filter((name) => isSlipOf(joined(given), joined(name)));
  return slips.length > 0 ? slips : known.filter((name) => holdsOther(given, name));
}

function isWordFor(one: string, other: string): boolean {
  if (one === other || isSlipOf(one, other)) return true;
  const [short, long] = one.length < other.length ? [one, other] : [other, one];
  return short.length >= LEAST_ABBREVIATION && long.startsWith(short);
}
