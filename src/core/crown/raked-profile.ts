/** The profile of a molding that rises or falls along its wall and meets a level one round an outside corner. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { QUARTER_TURN, radians, toDegrees, type Radians } from '../units/angle.ts';
import { checkCorner } from './crown-angles.ts';

/** Which way a raked molding goes as it leaves the outside corner. */
export type RakedWay = 'rising' | 'falling';

/** A point of a profile as it stands on the wall. */
export interface ProfilePoint {
  /** How far it stands out from the wall, inches. */
  readonly out: number;
  /** How far up, square to the molding's length, inches. */
  readonly up: number;
}

/**
 * The point of the raked profile that meets a level molding's point in the miter: it stands out as far,
 * and up · cos θ + out · cot(C / 2) · sin θ up, square to the slope; (out, up cos θ + out sin θ) round a
 * square corner.
 *
 * Derived: the miter halves the corner, so a point that stands out by p is p · cot(C / 2) beyond the corner, on
 * both walls. Along the raked wall it lies so far back and up by z: in that wall's plane its distance from
 * a line of slope θ through the corner is z cos θ + p cot(C / 2) sin θ.
 * @param point of the level molding, measured from the wall and from the height of the corner.
 * @param slope from level, away from the corner: above 0 where it rises, below 0 where it falls; less
 * than a right angle either way. Round an inside corner the miter lies on the other side: the sign turns.
 * @param corner between the two walls, above 0 and below a half turn.
 * @returns faults `crown.slope-out-of-range`, `crown.corner-out-of-range`, both where both are.
 */
export function computeRakedPoint(given: {
  readonly point: ProfilePoint;
  readonly slope: Radians;
  readonly corner: Radians;
}): Outcome<ProfilePoint> {
  const { point, slope, corner } = given;
  const faults = [...checkCorner(corner)];
  if (!(Math.abs(slope) < Math.PI / 2)) {
    const said = Number.isFinite(slope) ? { degrees: toDegrees(slope) } : String(slope);
    faults.unshift(fault('crown.slope-out-of-range', 'slope', said));
  }
  if (faults.length > 0) return failed(...faults);
  const { out, up } = point;
  return ok({ out, up: up * Math.cos(slope) + (out / Math.tan(corner / 2)) * Math.sin(slope) });
}

/**
 * The raked sections that meet one of a level molding round a square outside corner, point by point:
 * rising away from the corner, and falling. Falling it stands F cos(s + θ) high, F the face and s its
 * spring: from s + θ = 90° on the face would lie on its back, and there is no such profile.
 * @param slope from level, above 0 and less than a right angle.
 * @param spring of the molding from the wall; absent, or 0, for one that stands upright.
 */
export function rakedWays(
  slope: Radians,
  spring: Radians = radians(0),
): readonly { readonly way: RakedWay; readonly slope: Radians }[] {
  const rising = { way: 'rising', slope } as const;
  if (spring + slope >= QUARTER_TURN) return [rising];
  return [rising, { way: 'falling', slope: radians(0 - slope) }];
}
