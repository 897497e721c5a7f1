/** One profile's pieces and stock as a problem of whole numbers for the stick planner. */
import Fraction from 'fraction.js';
import { fault, type Fault } from '../core/faults/fault.ts';
import { toRadians, degrees } from '../core/units/angle.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { StickProblem } from '../cutting/problem.ts';
import { nameKey, type Profile } from './job.ts';
import type { Piece } from './piece.ts';
import { roundUp } from './pieces/cut-length.ts';
import type { Shop } from './shop.ts';
import type { StockUnit } from './stock-units.ts';

/** A trial cut is a cove too: its blank is never shorter than the shop's least. None where it is 0. */
export function spareLength(shop: Shop): ExactInches | undefined {
  if (shop.setUpSpare.lte(0)) return undefined;
  const least = shop.setUpSpare.lt(shop.leastBlankLength) ? shop.leastBlankLength : shop.setUpSpare;
  return roundUp(least, shop.lengthPrecision);
}

/** A million units an inch: finer than any tape, and a mile of it is still a safe whole number. */
export const FINEST_UNIT = 1_000_000;

/** What has been used of each row of Stock by the profiles planned before. */
export type UsedStock = ReadonlyMap<StockUnit['item'], number>;

/** The id under which a cove's set-up spare is planned. */
export function spareId(profile: Profile): string {
  return `${profile.name} / set-up spare`;
}

export function stateProblem(
  profile: Profile,
  pieces: readonly Piece[],
  units: readonly StockUnit[],
  used: UsedStock,
  shop: Shop,
): { problem: StickProblem } | { fault: Fault } {
  const overlap = spliceOverlap(profile, shop);
  const spare = profile.make === 'buy' ? undefined : spareLength(shop);
  const lengths = [
    shop.crosscutKerf,
    shop.endTrim,
    shop.keepOffcutsOver,
    shop.lengthPrecision,
    ...units.map(({ item }) => item.length),
    ...pieces.map((piece) => piece.cutLength),
    ...(overlap === undefined ? [] : [overlap]),
    ...(spare === undefined ? [] : [spare]),
  ];
  const unitsPerInch = commonUnit(lengths);
  if (unitsPerInch > FINEST_UNIT) {
    const limit = FINEST_UNIT;
    return { fault: fault('cutting.unit-too-fine', profile.name, unitsPerInch, { limit }) };
  }
  const whole = (length: ExactInches): number => Number(length.mul(unitsPerInch));
  const demands = pieces.map((piece) => ({
    id: piece.id,
    length: whole(piece.cutLength),
    onePiece: piece.onePiece,
    ...(piece.match === '' ? {} : { match: nameKey(piece.match) }),
  }));
  if (spare !== undefined) {
    demands.push({ id: spareId(profile), length: whole(spare), onePiece: true });
  }
  return {
    problem: {
      unitsPerInch,
      kerf: whole(shop.crosscutKerf),
      endTrim: whole(shop.endTrim),
      demands,
      supplies: units.map(({ item, strips, priceCents }, index) => ({
        id: String(index),
        length: whole(item.length),
        priceCents,
        strips,
        ...remaining(item, used.get(item) ?? 0),
      })),
      ...(overlap === undefined
        ? {}
        : { splice: { overlap: whole(overlap), grid: whole(shop.lengthPrecision) } }),
      keepOffcutsOver: whole(shop.keepOffcutsOver),
    },
  };
}

/** The coarsest unit, as units an inch, that divides every length: least common denominator. */
export function commonUnit(lengths: readonly ExactInches[]): number {
  let common = 1n;
  for (const { d } of lengths) common = (common / gcd(common, d)) * d;
  return Number(common);
}

function gcd(one: bigint, other: bigint): bigint {
  return other === 0n ? one : gcd(other, one % other);
}

/** Derived: a scarf at an angle from square runs over thickness · tan(angle). */
function spliceOverlap(profile: Profile, shop: Shop): ExactInches | undefined {
  if (profile.blankThickness === undefined) return undefined;
  const overlap = Number(profile.blankThickness) * Math.tan(toRadians(degrees(shop.spliceAngle)));
  const exact = new Fraction(Math.round(overlap * 2 ** 20), 2 ** 20);
  return roundUp(exact, shop.lengthPrecision);
}

/** The rack is emptied first, then the most that may be bought. */
function remaining(
  item: StockUnit['item'],
  used: number,
): { have: number; buyMost: number | null } {
  const bought = Math.max(0, used - item.have);
  return {
    have: Math.max(0, item.have - used),
    buyMost: item.buyMost === null ? null : item.buyMost - bought,
  };
}
