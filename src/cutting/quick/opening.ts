import { centsPerUnit, sticksToHave, type StickKind } from '../stick-kind.ts';

/**
 * One way to go about it: where a piece goes (into the stick begun first, or the one with the least
 * room that does; or stick after stick is filled as full as can be), and which stick is begun next.
 */
export interface Opening {
  readonly fit: 'first' | 'best' | 'fullest';
  /** Places in the list of kinds, in the order in which they are tried when a stick is begun. */
  readonly preference: readonly number[];
  /** Places of the kinds whose sticks are all begun before the first piece is placed. */
  readonly begunFirst: readonly number[];
}

/** Up to so many stick lengths every set of them is tried, and up to so many every pair. */
const MOST_LENGTHS_FOR_SETS = 5;
const MOST_LENGTHS_FOR_PAIRS = 12;
/** Past so many stick lengths, only so many of them are tried alone. */
const MOST_LENGTHS_ALONE = 40;

/**
 * The ways to go about a list of blocks: the shortest stick that does of each set of stick lengths,
 * the kind that is cheapest by length, and the limited sticks used up first.
 *
 * The sets for some stick lengths are among those for more, so that (with unlimited sticks of up to
 * five lengths) a longer stock list never makes the plan dearer.
 */
export function openings(
  kinds: readonly StickKind[],
  heaviestBlock: number,
): readonly [Opening, ...Opening[]] {
  const all = kinds.map((_, place) => place);
  const byRate = [...all].sort((a, b) => rate(kinds, a) - rate(kinds, b) || b - a);
  const preferences = [byRate, all, ...sets(kinds, heaviestBlock)].map((set) => [
    ...set,
    ...all.filter((place) => !set.includes(place)),
  ]);
  const distinct = new Map<string, readonly number[]>();
  for (const preference of preferences) {
    const real = withoutIdle(kinds, preference);
    distinct.set(real.join(), real);
  }
  const rack = worthUsingUp(kinds);
  const ways = [...distinct.values()].flatMap((preference) => eachFit(preference, []));
  const rackWays = rack.length === 0 ? [] : [byRate, all].flatMap((set) => eachFit(set, rack));
  const [first = { fit: 'best', preference: all, begunFirst: [] }, ...rest] = [
    ...ways,
    ...rackWays,
  ];
  return [first, ...rest];
}

function eachFit(preference: readonly number[], begunFirst: readonly number[]): readonly Opening[] {
  return [
    { fit: 'best', preference, begunFirst },
    { fit: 'first', preference, begunFirst },
    { fit: 'fullest', preference, begunFirst },
  ];
}

function rate(kinds: readonly StickKind[], place: number): number {
  const kind = kinds[place];
  return kind === undefined ? Infinity : centsPerUnit(kind);
}

/** Sets of stick lengths, shortest first, each with one that holds the heaviest block. */
function sets(kinds: readonly StickKind[], heaviestBlock: number): readonly (readonly number[])[] {
  const capacities = [...new Set(kinds.map((kind) => kind.capacity))];
  const chosen: (readonly number[])[] = [];
  if (capacities.length <= MOST_LENGTHS_FOR_SETS) {
    for (let bits = 1; bits < 2 ** capacities.length; bits += 1) {
      chosen.push(capacities.filter((_, bit) => (bits >> bit) % 2 === 1));
    }
  } else {
    const stride = Math.ceil(capacities.length / MOST_LENGTHS_ALONE);
    capacities.forEach((one, at) => {
      if (at % stride !== 0) return;
      const others = capacities.length <= MOST_LENGTHS_FOR_PAIRS ? capacities.slice(at + 1) : [];
      chosen.push([one, capacities.at(-1) ?? one], ...others.map((other) => [one, other]));
    });
  }
  return chosen
    .filter((set) => set.some((capacity) => capacity >= heaviestBlock))
    .map((set) => {
      const members = new Set(set);
      return kinds.flatMap((kind, place) => (members.has(kind.capacity) ? [place] : []));
    });
}

/** Leaves out kinds that are never begun, for an unlimited one no shorter stands before them. */
function withoutIdle(kinds: readonly StickKind[], preference: readonly number[]): number[] {
  let covered = 0;
  return preference.filter((place) => {
    const kind = kinds[place];
    if (kind === undefined || kind.capacity <= covered) return false;
    if (kind.count === Infinity) covered = kind.capacity;
    return true;
  });
}

/** Limited kinds that cost less by length than anything that can be bought without limit. */
function worthUsingUp(kinds: readonly StickKind[]): readonly number[] {
  const unlimited = kinds.filter((kind) => kind.count === Infinity).map(centsPerUnit);
  const cheapest = unlimited.reduce((least, cents) => Math.min(least, cents), Infinity);
  return kinds.flatMap((kind, place) =>
    Number.isFinite(sticksToHave(kind)) && centsPerUnit(kind) < cheapest ? [place] : [],
  );
}
