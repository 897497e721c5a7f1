/**
 * Forward: the cove that a setting cuts. Derived:
 * a plane of the disc at offset n from its middle (-t/2 <= n <= t/2) meets level z where
 * u = (z tan b + n / cos b) cos a ± sqrt(R² - p²) sin a, with p = R - s + (z + n sin b) / cos b,
 * a the approach, b the tilt, R the radius, t the kerf and s the slope height of the middle plane.
 * The cove's edges at z are the least and greatest u over n. The greatest is concave in n and the
 * least convex, so each lies at an end of the range or at the one inner point where
 * p = ± R cos a / sqrt(cos² a + sin² a sin² b) (derivative by n set to zero).
 * Checked against the silhouette of a solid-geometry library in tests/core/cove/silhouette.test.ts.
 */
import type { Blade, Setting } from './cove.ts';
import { offCenterOfDeepest } from './deepest-line.ts';

export interface CoveEdges {
  /** Toward the near rail and the far rail, as u. */
  readonly near: number;
  readonly far: number;
}

export interface CutCove extends CoveEdges {
  readonly width: number;
  readonly depth: number;
  /** The deepest line on the wood, as u, by the rule of deepest-line.ts: even and smooth through upright. */
  readonly deepestLine: number;
  /** Deepest line less the middle of the face. */
  readonly offCenter: number;
  /** The line where the blade's middle plane tops out, as u. It is no mark on the wood: the corner cuts deeper. */
  readonly middleLine: number;
  /** Middle line less the middle of the face; never less than the deepest line is off center. */
  readonly bladeMiddle: number;
  /**
   * The very deepest point, a top corner of the tilted blade, as u: the deepest line itself from one
   * kerf off center on. Of an upright blade, whose bottom is level, the middle.
   */
  readonly deepestPoint: number;
}

/** Slope height of the blade's middle plane; below 0 a corner alone stands above the table. */
export function slopeHeight(blade: Blade, setting: Setting): number {
  return (setting.height - (blade.kerf / 2) * Math.sin(setting.tilt)) / Math.cos(setting.tilt);
}

/** The cove's edges at a level from 0 (face) to the setting's height (deepest). */
export function edgesAt(blade: Blade, setting: Setting, level: number): CoveEdges {
  return edgesOf(blade, setting)(level);
}

/** As edgesAt, for many levels of one setting. */
export function edgesOf(blade: Blade, setting: Setting): (level: number) => CoveEdges {
  const { approach, tilt } = setting;
  const sinA = Math.sin(approach);
  const cosA = Math.cos(approach);
  const sinB = Math.sin(tilt);
  const cosB = Math.cos(tilt);
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const middle = radius - slopeHeight(blade, setting);
  const inner = (radius * cosA) / Math.hypot(cosA, sinA * sinB);
  return (level) => {
    const base = middle + level / cosB;
    const shift = level * (sinB / cosB) * cosA;
    const offset = (sign: 1 | -1): number =>
      sinB === 0 ? sign * half : clamp(((sign * inner - base) * cosB) / sinB, -half, half);
    const edge = (sign: 1 | -1): number => {
      const n = offset(sign);
      const p = base + (n * sinB) / cosB;
      const reach = Math.sqrt(Math.max(0, (radius - p) * (radius + p)));
      return shift + (n * cosA) / cosB + sign * reach * sinA;
    };
    return { near: edge(-1), far: edge(1) };
  };
}

/** The cove that a setting cuts; `setting.height` more than 0 and below the blade's middle. */
export function computeCut(blade: Blade, setting: Setting): CutCove {
  const { near, far } = edgesAt(blade, setting, 0);
  const middleLine =
    slopeHeight(blade, setting) * Math.sin(setting.tilt) * Math.cos(setting.approach);
  const lean = Math.cos(setting.tilt) * Math.cos(setting.approach);
  const middle = (near + far) / 2;
  const bladeMiddle = middleLine - middle;
  const offCenter = offCenterOfDeepest(bladeMiddle, lean, blade.kerf);
  return {
    near,
    far,
    width: far - near,
    depth: setting.height,
    deepestLine: middle + offCenter,
    offCenter,
    middleLine,
    bladeMiddle,
    deepestPoint: setting.tilt === 0 ? middleLine : middleLine - (blade.kerf / 2) * lean,
  };
}

/** The value, or the limit that it lies past. */
export function clamp(value: number, least: number, most: number): number {
  return value < least ? least : value > most ? most : value;
}
