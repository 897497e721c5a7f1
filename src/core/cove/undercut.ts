/**
 * How far the deep side leans past its edge at the face. Derived: seen along the feed a face of the disc
 * is an ellipse, u = u₀ + R (sin θ sin a + cos θ sin b cos a) with θ from the disc's top and
 * u₀ = ((s - R) sin b ± (t/2) cos b) cos a its center (letters as in cut.ts). The outer face, on the
 * side of the lean, reaches furthest, by R w with w² = sin² a + sin² b cos² a, where
 * cos θ = sin b cos a / w. That place lies at the level (s - R + R cos θ) cos b - (t/2) sin b. Above the
 * face the wall is undercut there; below it, since the far edge is concave in the level, the cove is
 * nowhere wider than at its face.
 */
import type { Blade, Setting } from './cove.ts';
import { computeCut, slopeHeight } from './cut.ts';

export interface Undercut {
  /** How far past upright the deep side leans in all, across the feed. */
  readonly beyondFace: number;
  /** Width of the cove at its widest, inside. */
  readonly widestInside: number;
}

/** Under a ten-thousandth of an inch nobody can see or sand it. */
export const LEAST_UNDERCUT_INCHES = 1e-4;

/** The undercut of the deep side, or undefined when the cove is widest at its face. */
export function computeUndercut(blade: Blade, setting: Setting): Undercut | undefined {
  const sinA = Math.sin(setting.approach);
  const cosA = Math.cos(setting.approach);
  const sinB = Math.sin(setting.tilt);
  const cosB = Math.cos(setting.tilt);
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const below = radius - slopeHeight(blade, setting);
  const reach = Math.hypot(sinA, sinB * cosA);
  const level = ((radius * sinB * cosA) / reach - below) * cosB - half * sinB;
  if (!(level > 0)) return undefined;
  const furthest = (half * cosB - below * sinB) * cosA + radius * reach;
  const face = computeCut(blade, setting);
  const beyondFace = furthest - face.far;
  if (beyondFace < LEAST_UNDERCUT_INCHES) return undefined;
  return { beyondFace, widestInside: furthest - face.near };
}
