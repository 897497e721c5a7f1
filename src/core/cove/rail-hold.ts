/**
 * Can both rails be clamped to this table? A rail is held at its two ends, where its face crosses the
 * table's edges. The blank is pushed past the blade between them, so each rail must lie on the table
 * all along the blade, and past it at both ends by what a clamp takes: then each clamp holds the rail
 * on its own side of the blade. A rail that misses the table has nothing to be clamped to; one that
 * cuts only a corner of it is held on one side of the blade and turns about that clamp.
 *
 * Derived: with v along the feed, x = u sin a + v cos a and, to the deep side's own hand,
 * y = v sin a - u cos a. The blade reaches to v = ± k cos a, k half its chord at the table; a rail at u
 * holds where the points (u, ± V), V = k cos a + the clamp's lip, are both on the table, which is
 * convex. That bounds u on both sides, each rail by itself.
 */
import { fault, type Fault } from '../faults/fault.ts';
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import type { Blade, Setting } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';
import { slopeHeight, type CutCove } from './cut.ts';
import { USUAL_HALF_TABLE_INCHES, type TableSize } from './rails.ts';

/** What a clamp takes of a rail at least: 2 in, 4 to 6 better. Common practice [C]. */
export const LEAST_CLAMP_LIP_INCHES = 2;

/** Furthest from the blade that a rail may lie and still be held; inches, below 0 where none may. */
export interface RailReach {
  readonly near: number;
  readonly far: number;
}

/** How far to each side of the blade's middle, across the feed, this table holds a rail. */
export function computeRailReach(blade: Blade, setting: Setting, table: TableSize): RailReach {
  const sine = Math.sin(setting.approach);
  const cosine = Math.cos(setting.approach);
  const slope = slopeHeight(blade, setting);
  const halfChord = Math.sqrt(Math.max(0, slope * (blade.diameter - slope)));
  const along = halfChord * cosine + LEAST_CLAMP_LIP_INCHES;
  const half = (table.width ?? 2 * USUAL_HALF_TABLE_INCHES) / 2;
  const reach = (toTheEdge: number): number =>
    Math.min((toTheEdge - along * cosine) / sine, (half - along * sine) / cosine);
  return { near: reach(table.front), far: reach(table.back) };
}

/** The flats of a blank beside its cove, and whether the cove sits midway because no near flat is given. */
export interface RailFlats {
  readonly near: number;
  readonly far: number;
  readonly midway: boolean;
}

/** A fault for each rail that this table doesn't hold, with the widest blank that it does. */
export function checkRails(
  blade: Blade,
  setting: Setting,
  cut: CutCove,
  flats: RailFlats,
  table: TableSize,
): Fault[] {
  const reach = computeRailReach(blade, setting, table);
  const most = { near: reach.near + cut.near, far: reach.far - cut.far };
  return (['near', 'far'] as const).flatMap((rail) => {
    const flat = flats[rail];
    if (flat <= most[rail] + LIMIT_SLACK_INCHES) return [];
    const other = rail === 'near' ? flats.far : flats.near;
    const flatsThatWould = flats.midway ? 2 * Math.min(most.near, most.far) : most[rail] + other;
    const widest = downTo64th(cut.width + flatsThatWould);
    const u = rail === 'near' ? cut.near - flats.near : cut.far + flats.far;
    const onTable = lengthOnTable(u, setting, table);
    const argument = rail === 'near' && !flats.midway ? COVE_SIZES.nearFlat : COVE_SIZES.blankWidth;
    return [
      fault(
        onTable > 0 ? 'rails.corner-alone' : 'rails.miss-table',
        argument.key,
        { inches: cut.width + flats.near + flats.far },
        {
          limit: { inches: onTable },
          details: {
            rail,
            ...(Math.min(most[rail], flatsThatWould) > 0 ? { widest: { inches: widest } } : {}),
            ...(rail === 'near' && !flats.midway && most.near > 0
              ? { nearFlat: { inches: downTo64th(most.near) } }
              : {}),
          },
        },
      ),
    ];
  });
}

/** Length of the rail's face from table edge to table edge: the line u cut off at all four; 0 where it misses. */
function lengthOnTable(u: number, { approach }: Setting, table: TableSize): number {
  const sine = Math.sin(approach);
  const cosine = Math.cos(approach);
  const half = (table.width ?? 2 * USUAL_HALF_TABLE_INCHES) / 2;
  const from = Math.max((-table.front - u * sine) / cosine, (u * cosine - half) / sine);
  const to = Math.min((table.back - u * sine) / cosine, (u * cosine + half) / sine);
  return Math.max(0, to - from);
}

function downTo64th(inches: number): number {
  return Math.floor(inches * 64 + LIMIT_SLACK_INCHES) / 64;
}
