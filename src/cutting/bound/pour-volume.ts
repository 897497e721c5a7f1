import { entryAt } from '../entry-at.ts';
import type { StickKind } from '../stick-kind.ts';

/** A price of length as an exact fraction: `cents` for each `units`, more than 0 of them. */
export interface Rate {
  readonly cents: bigint;
  readonly units: bigint;
}

/** What a kind's length costs where the whole stick or board is put to use. */
export function rateOf(kind: StickKind): Rate {
  return { cents: BigInt(kind.priceCents), units: BigInt(kind.strips) * BigInt(kind.capacity) };
}

/** Exact: a hair's error could put a price above an unlimited kind's, and a bound too high. */
export function compareRates(a: Rate, b: Rate): number {
  const difference = a.cents * b.units - b.cents * a.units;
  return difference === 0n ? 0 : difference < 0n ? -1 : 1;
}

/**
 * Pours volumes into kinds, shortest first in both, and says what one unit more of each would cost.
 *
 * @param volumes `volumes[k]` can go into kind k and any longer one; in the planner's units
 * @returns for each volume the price of length at its margin
 *
 * Derived: the volumes that only the longest kinds hold are poured first, each into the cheapest
 * kinds that have room; that is the least cost, for what a longer volume may use a shorter may not
 * need. One unit more goes into a kind with room, or takes the place of a unit poured into a full
 * kind, which then costs what one unit more of its own volume does.
 */
export function marginalRates(kinds: readonly StickKind[], volumes: readonly number[]): Rate[] {
  const rates = kinds.map(rateOf);
  const dearestFirst = [...rates].sort((a, b) => compareRates(b, a));
  // Where everything is full, any price from the dearest kind's up would do.
  const dearest = dearestFirst[0] ?? { cents: 0n, units: 1n };
  const { poured, room } = pour(kinds, volumes, rates);
  const marginal: (Rate | undefined)[] = kinds.map(() => undefined);
  for (let changed = true; changed;) {
    changed = false;
    kinds.forEach((_, volume) => {
      for (let kind = volume; kind < kinds.length; kind += 1) {
        const ways = entryAt(room, kind) > 0 ? [rates[kind]] : displaced(poured, marginal, kind);
        for (const way of ways) {
          const now = marginal[volume];
          if (way === undefined || (now !== undefined && compareRates(way, now) >= 0)) continue;
          marginal[volume] = way;
          changed = true;
        }
      }
    });
  }
  return marginal.map((rate) => rate ?? dearest);
}

function displaced(
  poured: readonly (readonly number[])[],
  marginal: readonly (Rate | undefined)[],
  kind: number,
): readonly (Rate | undefined)[] {
  return marginal.filter((_, volume) => (poured[volume]?.[kind] ?? 0) > 0);
}

function pour(
  kinds: readonly StickKind[],
  volumes: readonly number[],
  rates: readonly Rate[],
): { readonly poured: readonly (readonly number[])[]; readonly room: readonly number[] } {
  const room = kinds.map((kind) => kind.count * kind.strips * kind.capacity);
  const cheapestFirst = rates
    .map((rate, place) => ({ rate, place }))
    .sort((a, b) => compareRates(a.rate, b.rate) || a.place - b.place);
  const poured = kinds.map(() => kinds.map(() => 0));
  for (let volume = kinds.length - 1; volume >= 0; volume -= 1) {
    let left = entryAt(volumes, volume);
    for (const { place } of cheapestFirst) {
      if (place < volume) continue;
      const some = Math.min(left, entryAt(room, place));
      const row = poured[volume];
      if (row !== undefined) row[place] = some;
      room[place] = entryAt(room, place) - some;
      left -= some;
    }
  }
  return { poured, room };
}
