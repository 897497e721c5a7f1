/**
 * The tightest curve of a cove's outline. Derived: seen along the feed each face of the disc is one
 * and the same ellipse, shifted along the kerf; the outline is the hull of both, so its curved parts
 * make up one stretch of that ellipse, parted by a straight piece that bends nothing. With θ from the
 * disc's top, R its radius, a the approach, b the tilt, the ellipse is
 * u = R (sin θ sin a + cos θ sin b cos a), z = R cos θ cos b, and its radius of curvature
 * R g^(3/2) / (sin a cos b), g = (cos θ sin a - sin θ sin b cos a)² + sin² θ cos² b.
 * The stretch ends where the near and the far edge lie at the face: at R cos θ = p of cut.ts there.
 * g, a constant and a cosine of 2θ, is least at its own lowest place or, where the stretch ends
 * before it, at an end. Checked against circles through three points of the outline in
 * tests/core/cove/least-radius.test.ts.
 */
import type { Blade, Setting } from './cove.ts';
import { slopeHeight } from './cut.ts';

/**
 * The least radius of curvature along a cove's outline: a dowel, or a curved scraper, of no larger
 * radius reaches every place of it.
 *
 * @returns in the blade's own unit, inches here
 */
export function computeLeastRadius(blade: Blade, setting: Setting): number {
  const sinA = Math.sin(setting.approach);
  const cosA = Math.cos(setting.approach);
  const sinB = Math.sin(setting.tilt);
  const cosB = Math.cos(setting.tilt);
  const radius = blade.diameter / 2;
  const middle = radius - slopeHeight(blade, setting);
  const faces = (blade.kerf / 2) * (sinB / cosB);
  const inner = (radius * cosA) / Math.hypot(cosA, sinA * sinB);
  const endAt = (sign: 1 | -1): number => {
    const p = Math.min(Math.max(sign * inner, middle - faces), middle + faces);
    return sign * Math.acos(Math.min(1, p / radius));
  };
  const [near, far] = [endAt(-1), endAt(1)];
  const bendAt = (theta: number): number =>
    (Math.cos(theta) * sinA - Math.sin(theta) * sinB * cosA) ** 2 + (Math.sin(theta) * cosB) ** 2;
  // g is a constant and a multiple of cos(2θ - turn): least half a turn on.
  const turn = Math.atan2(-sinA * sinB * cosA, (sinA ** 2 - (sinB * cosA) ** 2 - cosB ** 2) / 2);
  const lowest = [-3, -1, 1, 3].map((halves) => (turn + halves * Math.PI) / 2);
  const within = lowest.filter((theta) => theta > near && theta < far);
  const least = Math.min(...[near, far, ...within].map(bendAt));
  return (radius * least ** 1.5) / (sinA * cosB);
}
