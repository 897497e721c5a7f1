/** What one tilt allows: the widest cove, and the approaches that give a width. */
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import { STRAIGHT_ACROSS_MARGIN_RADIANS } from '../units/tolerance.ts';
import { bisectLast } from './bisect.ts';
import type { Blade, Setting } from './cove.ts';
import { clamp, slopeHeight } from './cut.ts';

/** Halvings and steps of Newton together, until a double has no more digits to give. */
const STEPS = 60;
/** Where the far edge goes from one face of the blade to the other, the slope is looked at so often. */
const LOOKS = 2;

interface WidthAt {
  readonly width: number;
  /** How the width grows with the approach, per radian. */
  readonly slope: number;
  /** Where the width is at its peak if both edges stay where on the blade they are: closed form. */
  readonly peak: number;
}

interface Widths {
  readonly at: (approach: number) => WidthAt;
  /**
   * The approaches, from 0 to a quarter turn, between which the width grows, falls, and grows again:
   * even places grow. Mostly it grows throughout, or falls once near straight across.
   */
  readonly turns: readonly number[];
}

/**
 * The width at the face by the approach, at one height and tilt: cut.ts at level 0. By the envelope
 * theorem an edge's slope is taken with its offset held still.
 *
 * Derived: while the far edge is cut by the upper face the width is a sine, which may fall after its
 * peak; once it is cut by the lower face, as the near edge is, the kerf adds nothing and the width
 * grows again, up to straight across. Those two come where inner = base ± (t/2) tan b of cut.ts, at
 * tan a = sqrt(R² - inner²) / (inner sin b).
 */
function widthsAt(blade: Blade, height: number, tilt: Radians): Widths {
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const sinB = Math.sin(tilt);
  const cosB = Math.cos(tilt);
  const base = radius - slopeHeight(blade, { approach: radians(0), tilt, height });
  const at = (approach: number): WidthAt => {
    const sinA = Math.sin(approach);
    const cosA = Math.cos(approach);
    const inner = (radius * cosA) / Math.sqrt(cosA * cosA + sinA * sinA * sinB * sinB);
    let kerfs = 0;
    let reaches = 0;
    for (const sign of [1, -1]) {
      const offset =
        sinB === 0 ? sign * half : clamp(((sign * inner - base) * cosB) / sinB, -half, half);
      const p = base + (offset * sinB) / cosB;
      kerfs += (sign * offset) / cosB;
      reaches += Math.sqrt(Math.max(0, (radius - p) * (radius + p)));
    }
    return {
      width: kerfs * cosA + reaches * sinA,
      slope: reaches * cosA - kerfs * sinA,
      peak: Math.atan2(reaches, kerfs),
    };
  };
  const approachOf = (inner: number): number =>
    inner <= 0
      ? QUARTER_TURN
      : Math.atan2(Math.sqrt(Math.max(0, (radius - inner) * (radius + inner))), inner * sinB);
  const faces = (half * sinB) / cosB;
  const [upper, lower] = [approachOf(base + faces), approachOf(base - faces)];
  const looks = Array.from({ length: LOOKS + 1 }, (_, look) => {
    return upper + ((lower - upper) * look) / LOOKS;
  });
  const grows = (approach: number): boolean => at(approach).slope > 0;
  const last = QUARTER_TURN - STRAIGHT_ACROSS_MARGIN_RADIANS;
  const turns = [0];
  let before = 0;
  for (const look of [...looks.filter((one) => one < last), last]) {
    const isGrowing = turns.length % 2 === 1;
    if (grows(look) !== isGrowing) {
      const { peak } = at(before);
      const isPeak = peak > before && peak < look && at(peak).peak === peak;
      turns.push(isPeak ? peak : bisectLast((one) => grows(one) === isGrowing, before, look));
    }
    before = look;
  }
  return { at, turns: [...turns, QUARTER_TURN] };
}

/** The approach, up to the steepest, that cuts the widest cove at this height and tilt. */
export function approachOfWidest(
  blade: Blade,
  height: number,
  tilt: Radians,
  steepest: Radians = QUARTER_TURN,
): Radians {
  const { at, turns } = widthsAt(blade, height, tilt);
  const within = [...turns.filter((turn) => turn < steepest), steepest];
  const widths = within.map((approach) => at(approach).width);
  return radians(within[widths.indexOf(Math.max(...widths))] ?? steepest);
}

/** The widest cove at this height and tilt, whatever the approach. */
export function computeWidestCove(blade: Blade, height: number, tilt: Radians): number {
  const { at, turns } = widthsAt(blade, height, tilt);
  return Math.max(...turns.map((turn) => at(turn).width));
}

/** Whether the width grows with the approach all the way from 0 to a setting's own. */
export function isWhereFirstGrowing(blade: Blade, { approach, tilt, height }: Setting): boolean {
  const [, firstTurn = QUARTER_TURN] = widthsAt(blade, height, tilt).turns;
  return approach <= firstTurn;
}

/**
 * The approaches that cut a width at this height and tilt, by stretch: where the width first grows
 * with the angle, where it then falls, where it grows again. Undefined where a stretch has none.
 */
export function approachesForWidth(
  blade: Blade,
  height: number,
  tilt: Radians,
  width: number,
): readonly (Radians | undefined)[] {
  const { at, turns } = widthsAt(blade, height, tilt);
  return turns.slice(1).map((to, stretch) => {
    const from = turns[stretch] ?? 0;
    const [narrow, wide] = stretch % 2 === 0 ? [from, to] : [to, from];
    if (width > at(wide).width || width <= at(narrow).width) return undefined;
    return radians(rootBetween(at, width, narrow, wide));
  });
}

/** Newton's steps toward a width, halved wherever one leaves what is left between both ends. */
function rootBetween(
  widthAt: (approach: number) => WidthAt,
  width: number,
  narrow: number,
  wide: number,
): number {
  let [tooNarrow, tooWide] = [narrow, wide];
  let approach = (narrow + wide) / 2;
  for (let step = 0; step < STEPS; step++) {
    const at = widthAt(approach);
    const miss = at.width - width;
    if (miss < 0) tooNarrow = approach;
    else tooWide = approach;
    const next = approach - miss / at.slope;
    if (next === approach) break;
    const isBetween = (next - tooNarrow) * (next - tooWide) < 0;
    approach = isBetween ? next : (tooNarrow + tooWide) / 2;
  }
  return approach;
}
