/** Scales are read to a half or a whole degree: the cove that the rounded setting cuts. */
import { degrees, toDegrees, toRadians, type Degrees } from '../units/angle.ts';
import type { Blade, Setting } from './cove.ts';
import { computeCut, type CutCove } from './cut.ts';

export interface ScaleSteps {
  readonly approach: Degrees;
  readonly tilt: Degrees;
}

/** Half-degree scales where the shop says nothing else. Common practice [C]. */
export const USUAL_SCALE: ScaleSteps = { approach: degrees(0.5), tilt: degrees(0.5) };

export interface ScaleEffect {
  /** The setting as the scales can be read. */
  readonly rounded: Setting;
  /** What it cuts. */
  readonly cut: CutCove;
  /** Rounded less exact; inches. */
  readonly widthChange: number;
  readonly offCenterChange: number;
  /** What half a degree more of each angle changes, from the exact setting; inches. */
  readonly perHalfDegree: {
    readonly approach: { readonly width: number; readonly offCenter: number };
    readonly tilt: { readonly width: number; readonly offCenter: number };
  };
}

const HALF_DEGREE = toRadians(degrees(0.5));

/** The effect of reading the setting off the saw's scales. An approach never rounds to 0. */
export function computeScaleEffect(
  blade: Blade,
  setting: Setting,
  scale: ScaleSteps = USUAL_SCALE,
): ScaleEffect {
  const exact = computeCut(blade, setting);
  const rounded: Setting = {
    ...setting,
    approach: toRadians(roundTo(toDegrees(setting.approach), scale.approach, scale.approach)),
    tilt: toRadians(roundTo(toDegrees(setting.tilt), scale.tilt, 0)),
  };
  const change = (other: Setting): { width: number; offCenter: number } => {
    const cut = computeCut(blade, other);
    return { width: cut.width - exact.width, offCenter: cut.offCenter - exact.offCenter };
  };
  const cut = computeCut(blade, rounded);
  return {
    rounded,
    cut,
    widthChange: cut.width - exact.width,
    offCenterChange: cut.offCenter - exact.offCenter,
    perHalfDegree: {
      approach: change({ ...setting, approach: add(setting.approach) }),
      tilt: change({ ...setting, tilt: add(setting.tilt) }),
    },
  };
}

function add<Angle extends number>(angle: Angle): Angle {
  return (angle + HALF_DEGREE) as Angle;
}

function roundTo(value: number, step: Degrees, least: number): Degrees {
  return degrees(Math.max(least, Math.round(value / step) * step));
}
