import { entryAt } from '../entry-at.ts';
import { sticksToHave, type StickKind } from '../stick-kind.ts';

/**
 * How many sticks need at least each kind: `need[k]` sticks fit kind k (kinds stand shortest first)
 * and no shorter one. Whatever fits kind k fits every kind after it.
 */
export type Need = number[];

export interface Exchange {
  readonly costCents: number;
  /** `take[k][j]`: of the sticks that need kind k, how many are cut from kind j. Empty where none need k. */
  readonly take: readonly (readonly number[])[];
}

/** The shortest kind that holds `weight`, by its place; kinds stand shortest first. */
export function shortestKind(kinds: readonly StickKind[], weight: number): number {
  return kinds.findIndex((kind) => kind.capacity >= weight);
}

/** Whether there are sticks enough: from the longest down, no more are needed than can be had. */
export function canServe(kinds: readonly StickKind[], need: Need): boolean {
  let spare = 0;
  for (let place = kinds.length - 1; place >= 0; place -= 1) {
    spare += sticksToHave(entryAt(kinds, place)) - entryAt(need, place);
    if (spare < 0) return false;
  }
  return true;
}

/**
 * Exchanges every stick for the cheapest that still holds its pieces, counts respected: exactly so
 * for sticks; for boards, whose strips come together at one price, by trying a board more or less of
 * each kind until nothing is gained.
 *
 * @returns undefined where there are not sticks enough
 */
export function exchange(kinds: readonly StickKind[], need: Need): Exchange | undefined {
  if (!canServe(kinds, need)) return undefined;
  const perStrip = allot(
    kinds,
    need,
    kinds.map(sticksToHave),
    (kind) => kind.priceCents / kind.strips + kind.laborCents,
  );
  if (perStrip === undefined || kinds.every((kind) => kind.strips === 1)) return perStrip;
  const boards = kinds.flatMap((kind, place) => (kind.strips > 1 ? [place] : []));
  let opened = kinds.map((kind, place) =>
    Math.ceil(perStrip.take.reduce((sum, row) => sum + (row[place] ?? 0), 0) / kind.strips),
  );
  let best = withBoards(kinds, need, opened);
  for (let gained = true; gained;) {
    gained = false;
    for (const tried of changes(kinds, boards, opened)) {
      const one = withBoards(kinds, need, tried);
      if (one === undefined || (best !== undefined && one.costCents >= best.costCents)) continue;
      best = one;
      opened = tried;
      gained = true;
      break;
    }
  }
  return best;
}

/** A board more or less, or several at once, of one kind or from one kind to another; or none of it. */
const BOARDS_AT_ONCE = [1, 8, 64, 512];
const MOST_BOARDS_FOR_SWAPS = 12;

function* changes(
  kinds: readonly StickKind[],
  boards: readonly number[],
  opened: readonly number[],
): Generator<number[]> {
  const swaps = boards.length <= MOST_BOARDS_FOR_SWAPS;
  for (const from of [undefined, ...boards]) {
    for (const to of [undefined, ...boards]) {
      if (from === to || (!swaps && from !== undefined && to !== undefined)) continue;
      for (const step of [...BOARDS_AT_ONCE, from === undefined ? 0 : entryAt(opened, from)]) {
        const tried = opened.map(
          (count, place) => count - (place === from ? step : 0) + (place === to ? step : 0),
        );
        const possible = boards.every((place) => {
          const count = entryAt(tried, place);
          return count >= 0 && count <= entryAt(kinds, place).count;
        });
        if (step > 0 && possible) yield tried;
      }
    }
  }
}

/** The cheapest with just so many boards of each kind: their strips are then free to use. */
function withBoards(
  kinds: readonly StickKind[],
  need: Need,
  opened: readonly number[],
): Exchange | undefined {
  const stock = kinds.map((kind, place) =>
    kind.strips > 1 ? entryAt(opened, place) * kind.strips : kind.count,
  );
  const one = allot(
    kinds,
    need,
    stock,
    (kind) => (kind.strips > 1 ? 0 : kind.priceCents) + kind.laborCents,
  );
  if (one === undefined) return undefined;
  const boardCents = kinds.reduce(
    (sum, kind, place) => sum + (kind.strips > 1 ? entryAt(opened, place) * kind.priceCents : 0),
    0,
  );
  return { costCents: one.costCents + boardCents, take: one.take };
}

/**
 * Gives each stick the cheapest kind in stock, those that need the longest kinds first.
 *
 * That is the least sum there is: what a stick needing a longer kind may take, one needing a shorter
 * may take too, so a plan where the first leaves its cheapest kind to another can swap the two.
 */
function allot(
  kinds: readonly StickKind[],
  need: Need,
  stock: readonly number[],
  centsOf: (kind: StickKind) => number,
): Exchange | undefined {
  const left = [...stock];
  const cheapestFirst = kinds
    .map((kind, place) => ({ place, cents: centsOf(kind) }))
    .sort((a, b) => a.cents - b.cents || a.place - b.place);
  const take: number[][] = kinds.map(() => []);
  let costCents = 0;
  for (let needed = kinds.length - 1; needed >= 0; needed -= 1) {
    let open = entryAt(need, needed);
    if (open === 0) continue;
    const row = kinds.map(() => 0);
    take[needed] = row;
    for (const { place, cents } of cheapestFirst) {
      if (open === 0) break;
      if (place < needed) continue;
      const some = Math.min(open, entryAt(left, place));
      row[place] = some;
      left[place] = entryAt(left, place) - some;
      open -= some;
      costCents += some * cents;
    }
    if (open > 0) return undefined;
  }
  return { costCents, take };
}
