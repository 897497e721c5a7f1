/** Two lists of rows, of which some were taken out, put in or typed over: which of one is which of the other. */

/** Places in the first list and in the second, from 0; undefined where the other list lacks it. */
export type RowPair = readonly [one: number | undefined, other: number | undefined];

/** Of a longest common run as a table of as many numbers; past it rows are found by their keys alone. */
const MOST_CELLS = 4_000_000;

/**
 * Rows of equal keys are each other's, as many as can be in their order. Between them rows that stand
 * alone in both lists are each other's too where they are equally many: their keys were typed over.
 * What was moved is found by its key in the end.
 */
export function alignRows(one: readonly string[], other: readonly string[]): RowPair[] {
  const same = commonRows(one, other);
  const pairs: [number | undefined, number | undefined][] = [];
  let [from, to] = [0, 0];
  for (const [at, place] of [...same, [one.length, other.length] as const]) {
    const gap = at - from;
    const isTyped = gap === place - to;
    for (let step = 0; step < gap; step++) {
      pairs.push([from + step, isTyped ? to + step : undefined]);
    }
    if (!isTyped) for (; to < place; to++) pairs.push([undefined, to]);
    if (at < one.length) pairs.push([at, place]);
    [from, to] = [at + 1, place + 1];
  }
  return joinMoved(pairs, one, other);
}

function joinMoved(
  pairs: readonly RowPair[],
  one: readonly string[],
  other: readonly string[],
): RowPair[] {
  const added = new Map<string, number[]>();
  for (const [at, place] of pairs) {
    if (at !== undefined || place === undefined) continue;
    const key = other[place] ?? '';
    added.set(key, [...(added.get(key) ?? []), place]);
  }
  const moved = new Set<number>();
  const joined = pairs.map(([at, place]): RowPair => {
    const found = at === undefined || place !== undefined ? undefined : added.get(one[at] ?? '');
    const to = found?.shift();
    if (to === undefined) return [at, place];
    moved.add(to);
    return [at, to];
  });
  return joined.filter(
    ([at, place]) => at !== undefined || place === undefined || !moved.has(place),
  );
}

/** Pairs of places with equal keys, both rising. */
function commonRows(
  one: readonly string[],
  other: readonly string[],
): (readonly [number, number])[] {
  let head = 0;
  while (head < one.length && head < other.length && one[head] === other[head]) head += 1;
  let tail = 0;
  const most = Math.min(one.length, other.length) - head;
  while (tail < most && one.at(-1 - tail) === other.at(-1 - tail)) tail += 1;
  const within = longestCommon(
    one.slice(head, one.length - tail),
    other.slice(head, other.length - tail),
  );
  return [
    ...Array.from({ length: head }, (_, at) => [at, at] as const),
    ...within.map(([at, place]) => [at + head, place + head] as const),
    ...Array.from({ length: tail }, (_, at) => {
      const left = tail - at;
      return [one.length - left, other.length - left] as const;
    }),
  ];
}

function longestCommon(
  one: readonly string[],
  other: readonly string[],
): (readonly [number, number])[] {
  const width = other.length + 1;
  if (one.length * width > MOST_CELLS) return [];
  const longest = new Uint32Array((one.length + 1) * width);
  const at = (row: number, column: number): number => longest[row * width + column] ?? 0;
  for (let row = one.length - 1; row >= 0; row--) {
    for (let column = other.length - 1; column >= 0; column--) {
      longest[row * width + column] =
        one[row] === other[column]
          ? at(row + 1, column + 1) + 1
          : Math.max(at(row + 1, column), at(row, column + 1));
    }
  }
  const found: (readonly [number, number])[] = [];
  let [row, column] = [0, 0];
  while (row < one.length && column < other.length) {
    if (one[row] === other[column]) found.push([row++, column++]);
    else if (at(row + 1, column) >= at(row, column + 1)) row += 1;
    else column += 1;
  }
  return found;
}
