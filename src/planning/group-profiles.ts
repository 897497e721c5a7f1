/** Which profiles are planned together. */
import type { ExactInches } from '../core/units/length.ts';
import type { CarriedStick } from './cut/carry-over.ts';
import type { PartLeft } from './cut/match-pieces.ts';
import type { Profile, StockItem } from './job.ts';
import type { Piece } from './piece.ts';
import type { StockUnit } from './stock-units.ts';
import type { WorkRow } from './work/work-row.ts';

/** A profile with pieces to cut, and all that its planning needs. */
export interface PreparedProfile {
  readonly profile: Profile;
  /** All that count in the plan. */
  readonly pieces: readonly Piece[];
  /** Those of them that are still to be planned: what is cut, or on a stick that is begun, is not. */
  readonly toPlan: readonly Piece[];
  readonly partsLeft: readonly PartLeft[];
  /** Sticks that are cut already, or begun. */
  readonly cut: readonly CarriedStick[];
  /** Whether a set-up spare is still to be cut. */
  readonly needsSpare: boolean;
  readonly units: readonly StockUnit[];
  /** Over the blade, of each blank; 0 for what is bought. */
  readonly passes: number;
  /** The rows of Work that hold for it. */
  readonly works: readonly WorkRow[];
}

export type PreparedGroup = readonly [PreparedProfile, ...PreparedProfile[]];

/**
 * Profiles that have a row of Stock in common, directly or through others, are planned as one
 * problem where that can matter: the row is limited, or one of its boards is wide enough for a blank
 * of each. Any number of the same sticks can be bought for each by itself. Profiles that one board was
 * ripped for already stay together.
 *
 * A limited row without Class that is priced by the board foot may cost two profiles two prices. Such
 * profiles can't share it within a problem: they are kept apart, and the later takes what is left.
 *
 * @param kerf of the ripping blade, inches
 * @returns groups in the order of their first profiles, profiles in theirs
 */
export function groupProfiles(
  prepared: readonly PreparedProfile[],
  kerf: ExactInches,
): readonly PreparedGroup[] {
  return connect(prepared, kerf).flatMap((group) => {
    const parts = splitByPrice(group);
    return parts.length === 1 ? [group] : parts.flatMap((part) => groupProfiles(part, kerf));
  });
}

function connect(prepared: readonly PreparedProfile[], kerf: ExactInches): PreparedGroup[] {
  const left = new Set(prepared);
  const groups: PreparedGroup[] = [];
  for (const first of prepared) {
    if (!left.delete(first)) continue;
    const found = new Set([first]);
    // The loop also reaches what is added to the set while it runs.
    for (const one of found) {
      for (const other of left) {
        if (!sharesStock(one, other, kerf)) continue;
        left.delete(other);
        found.add(other);
      }
    }
    const others = prepared.filter((one) => one !== first && found.has(one));
    groups.push([first, ...others]);
  }
  return groups;
}

function sharesStock(one: PreparedProfile, other: PreparedProfile, kerf: ExactInches): boolean {
  if (liesOnCutBoard(one, other) || liesOnCutBoard(other, one)) return true;
  const prices = new Map(other.units.map(({ item, priceCents }) => [item, priceCents]));
  return one.units.some(
    ({ item, priceCents }) =>
      prices.get(item) === priceCents &&
      (item.buyMost !== null || liesBeside(item, one.profile, other.profile, kerf)),
  );
}

/** Whether a board of which one profile's pieces are cut has a blank as wide as the other's. */
function liesOnCutBoard(one: PreparedProfile, other: PreparedProfile): boolean {
  const { blankWidth } = other.profile;
  const items = new Set(other.units.map(({ item }) => item));
  return one.cut.some(
    ({ stick, blankWidths }) =>
      items.has(stick.item) &&
      blankWidths.length > 1 &&
      blankWidths.some((width) => blankWidth?.equals(width) === true),
  );
}

/** Whether a board gives a blank of each. */
function liesBeside(
  item: StockItem,
  { blankWidth: one }: Profile,
  { blankWidth: other }: Profile,
  kerf: ExactInches,
): boolean {
  if (item.kind !== 'board' || item.width === undefined) return false;
  if (one === undefined || other === undefined) return false;
  return one.add(other).add(kerf).lte(item.width);
}

/**
 * Splits by the prices of the first limited row that has several, a part each. Profiles that don't
 * use that row go with its first price.
 */
function splitByPrice(group: PreparedGroup): readonly (readonly PreparedProfile[])[] {
  const seen = new Map<StockItem, number>();
  for (const { units } of group) {
    for (const { item, priceCents } of units) {
      const before = seen.get(item) ?? priceCents;
      seen.set(item, before);
      if (item.buyMost === null || before === priceCents) continue;
      const parts = new Map<number, PreparedProfile[]>();
      for (const one of group) {
        const price = one.units.find((unit) => unit.item === item)?.priceCents ?? before;
        parts.set(price, [...(parts.get(price) ?? []), one]);
      }
      return [...parts.values()];
    }
  }
  return [group];
}
