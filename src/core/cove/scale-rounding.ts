/** Scales are read to a half or a whole degree: the cove that the rounded setting cuts. */
import { degrees, toDegrees, toRadians, type Degrees } from '../units/angle.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { computeCut, type CutCove } from './cut.ts';
import { offCenterAsAsked } from './deepest-line.ts';

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
  /** Of the rounded setting, led to the line that the cove's own leads to. */
  readonly offCenter: number;
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

/**
 * The effect of reading the setting off the saw's scales. An approach never rounds to 0.
 *
 * @param asked where off-centers lead to: the deepest line unless it says otherwise
 */
export function computeScaleEffect(
  blade: Blade,
  setting: Setting,
  scale: ScaleSteps = USUAL_SCALE,
  asked: Pick<Cove, 'offCenterTo'> = {},
): ScaleEffect {
  const at = (one: Setting): { cut: CutCove; offCenter: number } => {
    const cut = computeCut(blade, one);
    return { cut, offCenter: offCenterAsAsked(cut, asked) };
  };
  const exact = at(setting);
  const rounded: Setting = {
    ...setting,
    approach: toRadians(roundTo(toDegrees(setting.approach), scale.approach, scale.approach)),
    tilt: toRadians(roundTo(toDegrees(setting.tilt), scale.tilt, 0)),
  };
  const change = (other: Setting): { width: number; offCenter: number } => {
    const { cut, offCenter } = at(other);
    return { width: cut.width - exact.cut.width, offCenter: offCenter - exact.offCenter };
  };
  const changed = change(rounded);
  return {
    rounded,
    ...at(rounded),
    widthChange: changed.width,
    offCenterChange: changed.offCenter,
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
