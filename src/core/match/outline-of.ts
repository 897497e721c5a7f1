/**
 * How far points lie off the outline that a setting cuts. Derived: seen along the feed the blade is the
 * shadow of a disc of radius R and of the kerf t square to it. With the approach a and the tilt b (below 0
 * where the blade leans toward -u), in (u, depth),
 * - the disc's level radius is R (sin a, 0), its radius up the slope R (sin b cos a, cos b),
 * - its thickness runs along (cos b cos a, -sin b).
 * So along (cos φ, sin φ) the shadow reaches H = (s - R) g + R sqrt((sin a cos φ)² + g²) + (t / 2) |m|, with
 * g = sin b cos a cos φ + cos b sin φ, m = cos b cos a cos φ - sin b sin φ and s the slope height of cut.ts.
 * A point lies off the outline by the most, over φ, of its own reach less H (a convex shape's signed
 * distance): above 0 in the wood that is left, below 0 in the cove. Its slopes are those of -H with φ held
 * still (envelope theorem). Where m = 0 the outline has its straight piece, met by an in-between share of m.
 * Below the face the outline goes on as the blade does.
 */
import type { Blade, Setting } from '../cove/cove.ts';
import { slopeHeight } from '../cove/cut.ts';
import type { OutlinePoint } from '../cove/outline.ts';
import { QUARTER_TURN, radians } from '../units/angle.ts';

/** A setting and where it lies among the points. The fit moves in these: the outline is smooth in them. */
export interface PlacedBlade {
  /** From the blade line; radians. */
  readonly approach: number;
  /** From upright; radians, below 0 where the blade leans toward -u. */
  readonly lean: number;
  /** Of the blade's middle plane along the slope above the table; inches. */
  readonly slopeHeight: number;
  /** Where the setting's own u = 0 lies; inches. */
  readonly shift: number;
}

/** Number of what a PlacedBlade holds, in its order: approach, lean, slope height, shift. */
export const UNKNOWNS = 4;

/** Of one point. */
export interface OffOutline {
  /** Inches; above 0 in the wood that is left, below 0 in the cove. */
  readonly distance: number;
  /** Its slopes by the unknowns, in their order. */
  readonly slopes: readonly [number, number, number, number];
  /** The direction square to the outline there: radians from +u toward the depth. */
  readonly direction: number;
}

/** Between two of them Newton's steps find the nearest. */
const LOOKS = 56;
/** Walls may lean past upright: their direction then points below the face. */
const LEAST_DIRECTION = -1.2;
const STEP = (Math.PI - 2 * LEAST_DIRECTION) / LOOKS;
const NEWTON_STEPS = 20;
const CLOSE_RADIANS = 1e-9;

const DIRECTIONS = Array.from({ length: LOOKS + 1 }, (_, look) => LEAST_DIRECTION + look * STEP);
const COSINES = DIRECTIONS.map(Math.cos);
const SINES = DIRECTIONS.map(Math.sin);

/** As a setting and, in u, where its own 0 lies. */
export function settingOf(
  { approach, lean, slopeHeight: slope }: PlacedBlade,
  { kerf }: Blade,
): Setting {
  const tilt = Math.abs(lean);
  const height = slope * Math.cos(tilt) + (kerf / 2) * Math.sin(tilt);
  return { approach: radians(approach), tilt: radians(tilt), height };
}

/** A setting whose blade leans toward +u, or toward -u where `mirrored`, with its own 0 at `shift`. */
export function placeBlade(
  setting: Setting,
  blade: Blade,
  { mirrored = false, shift = 0 } = {},
): PlacedBlade {
  const { approach, tilt } = setting;
  return {
    approach,
    lean: mirrored ? -Number(tilt) : tilt,
    slopeHeight: slopeHeight(blade, setting),
    shift,
  };
}

/** For many points of one setting. */
export function outlineOf(blade: Blade, placed: PlacedBlade): (point: OutlinePoint) => OffOutline {
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const sinA = Math.sin(placed.approach);
  const cosA = Math.cos(placed.approach);
  const sinB = Math.sin(placed.lean);
  const cosB = Math.cos(placed.lean);
  const below = placed.slopeHeight - radius;
  const reaches = DIRECTIONS.map((_, look) => {
    const c = COSINES[look] ?? 0;
    const s = SINES[look] ?? 0;
    const g = sinB * cosA * c + cosB * s;
    const m = cosB * cosA * c - sinB * s;
    return below * g + radius * Math.hypot(sinA * c, g) + half * Math.abs(m);
  });
  /** Where the straight piece looks. */
  const straight = Math.atan2(cosB * cosA, sinB);
  /** How the point's reach less the blade's grows with the direction; `side` is that of the thickness. */
  const growth = (u: number, z: number, phi: number, side: number): [number, number] => {
    const c = Math.cos(phi);
    const s = Math.sin(phi);
    const g = sinB * cosA * c + cosB * s;
    const gTurned = cosB * c - sinB * cosA * s;
    const m = cosB * cosA * c - sinB * s;
    const mTurned = -sinB * c - cosB * cosA * s;
    const e = sinA * c;
    const eTurned = -sinA * s;
    const q = Math.sqrt(e * e + g * g);
    const qTurned = (e * eTurned + g * gTurned) / q;
    const qBent = (eTurned * eTurned + gTurned * gTurned - qTurned * qTurned) / q - q;
    return [
      z * c - u * s - below * gTurned - radius * qTurned - side * half * mTurned,
      -u * c - z * s + below * g - radius * qBent + side * half * m,
    ];
  };
  const off = (u: number, z: number, phi: number, side: number): OffOutline => {
    const c = Math.cos(phi);
    const s = Math.sin(phi);
    const g = sinB * cosA * c + cosB * s;
    const m = cosB * cosA * c - sinB * s;
    const q = Math.sqrt(sinA * sinA * c * c + g * g);
    const thick = side * half;
    const gByApproach = -sinB * sinA * c;
    const qByApproach = (sinA * cosA * c * c + g * gByApproach) / q;
    return {
      distance: u * c + z * s - below * g - radius * q - thick * m,
      slopes: [
        -(below * gByApproach + radius * qByApproach - thick * cosB * sinA * c),
        -(below * m + (radius * g * m) / q - thick * g),
        -g,
        -c,
      ],
      direction: phi,
    };
  };
  return (point) => {
    const u = point.u - placed.shift;
    const z = point.depth;
    let nearest = 0;
    let most = -Infinity;
    for (let look = 0; look <= LOOKS; look++) {
      const away = u * (COSINES[look] ?? 0) + z * (SINES[look] ?? 0) - (reaches[look] ?? 0);
      if (away > most) {
        most = away;
        nearest = look;
      }
    }
    const middle = DIRECTIONS[nearest] ?? QUARTER_TURN;
    let low = Math.max(LEAST_DIRECTION, middle - STEP);
    let high = Math.min(Math.PI - LEAST_DIRECTION, middle + STEP);
    // The thickness reaches by its +u end before the straight piece's direction, by its other end after it.
    let side = middle < straight ? 1 : -1;
    if (straight > low && straight < high) {
      const [before] = growth(u, z, straight, 1);
      const [after] = growth(u, z, straight, -1);
      if (before >= 0 && after <= 0) {
        const share = before - after;
        return off(u, z, straight, share === 0 ? 0 : -(before + after) / share);
      }
      side = before < 0 ? 1 : -1;
      if (side === 1) high = straight;
      else low = straight;
    }
    let phi = Math.min(high, Math.max(low, middle));
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const [grows, bends] = growth(u, z, phi, side);
      if (grows > 0) low = phi;
      else high = phi;
      const next = bends < 0 ? phi - grows / bends : (low + high) / 2;
      const kept = next > low && next < high ? next : (low + high) / 2;
      if (Math.abs(kept - phi) < CLOSE_RADIANS) return off(u, z, kept, side);
      phi = kept;
    }
    return off(u, z, phi, side);
  };
}
