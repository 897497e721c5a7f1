/**
 * The slow and sure way to a setting, where Newton's steps (set-up.ts) stray or meet the larger of two
 * approaches. Along the tilts, the approaches that give the width (widest.ts) make branches, one for
 * each stretch on which the width grows or falls, and the off-center goes with the tilt on each. It
 * mostly grows, but not always: a blade thick against the depth, or nearly straight across, can turn
 * back, so a branch is sampled from upright on, and every change of sign, peak and end is followed.
 */
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import {
  FLAT_BLADE_MARGIN_RADIANS,
  SETUP_RESIDUAL_INCHES,
  TILT_MARGIN_RADIANS,
} from '../units/tolerance.ts';
import { bisect, bisectLast } from './bisect.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { computeCut } from './cut.ts';
import { offCenterAsAsked } from './deepest-line.ts';
import { approachesForWidth, computeWidestCove } from './widest.ts';

/** Tilts at which a branch is looked at; what happens between two of them is followed up. */
const SAMPLES = 24;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Golden cuts until the place of a peak is known as well as a double can tell it. */
const GOLDEN_CUTS = 40;

/** Where the width first grows with the approach, where it falls, where it grows again. */
const BRANCHES = [0, 1, 2] as const;
type Branch = (typeof BRANCHES)[number];
type Sizes = Pick<Cove, 'width' | 'depth' | 'offCenterTo'>;

/**
 * The largest tilt at which the blade's middle plane cuts at all and its middle stays below the table:
 * h = R cos b + (t/2) sin b for the second, h = (t/2) sin b for the first. Leaning further, a corner
 * of a blade thick against the depth would cut alone.
 */
export function greatestTilt(blade: Blade, height: number): Radians {
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const tilt = Math.atan2(half, radius) + Math.acos(height / Math.hypot(radius, half));
  const most = Math.min(
    tilt,
    QUARTER_TURN - FLAT_BLADE_MARGIN_RADIANS,
    tiltOfCorner(blade, height),
  );
  return radians(most - TILT_MARGIN_RADIANS);
}

/** The tilt from which on a corner of the blade alone cuts this depth; a quarter turn where none does. */
export function tiltOfCorner(blade: Blade, height: number): Radians {
  return height >= blade.kerf / 2 ? QUARTER_TURN : radians(Math.asin((2 * height) / blade.kerf));
}

/**
 * The largest tilt worth trying for a cove: below greatestTilt, and below the one at which the blade
 * lying along the feed already cuts as wide as the cove. Only a cove little wider than the kerf
 * meets the second.
 */
export function greatestTiltFor(cove: Pick<Cove, 'width' | 'depth'>, blade: Blade): Radians {
  const most = greatestTilt(blade, cove.depth);
  const cutsLess = (tilt: number): boolean =>
    computeCut(blade, { approach: radians(0), tilt: radians(tilt), height: cove.depth }).width <
    cove.width;
  return cutsLess(most) ? most : radians(bisectLast(cutsLess, 0, most) - TILT_MARGIN_RADIANS);
}

/**
 * A setting that cuts a cove, of a tilt up to `most`: on the first branch that has one, that of the
 * least tilt.
 */
export function searchSetting(
  cove: Cove,
  blade: Blade,
  most = greatestTiltFor(cove, blade),
): Setting | undefined {
  if (isBeyond(cove, blade, most)) return undefined;
  const settings = settingsOf(cove, blade);
  const tilts = tiltsFor(cove, blade, settings, most);
  for (const branch of BRANCHES) {
    const miss = (tilt: number): number | undefined => {
      const setting = settings(tilt, branch);
      return setting && offCenterAsAsked(computeCut(blade, setting), cove) - cove.offCenter;
    };
    for (const tilt of rootsOf(miss, tilts)) {
      const setting = settings(tilt, branch);
      if (setting !== undefined && meets(setting, cove, blade)) return setting;
    }
  }
  return undefined;
}

/**
 * The largest off-center that a cove of that width and depth can have up to a tilt, and the tilt that
 * gives it; undefined when it is too wide for every tilt.
 */
export function greatestOffCenter(
  cove: Sizes,
  blade: Blade,
  most: Radians,
): { readonly offCenter: number; readonly tilt: Radians } | undefined {
  if (isBeyond(cove, blade, most)) return undefined;
  const settings = settingsOf(cove, blade);
  const tilts = tiltsFor(cove, blade, settings, most);
  const found = BRANCHES.flatMap((branch) => {
    const off = (tilt: number): number | undefined => {
      const setting = settings(tilt, branch);
      return setting && offCenterAsAsked(computeCut(blade, setting), cove);
    };
    const places = placesOf(off, tilts);
    return [...places, ...peaksOf(off, places)];
  });
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  const best = others.reduce((one, other) => (other.value > one.value ? other : one), first);
  return { offCenter: best.value, tilt: radians(best.tilt) };
}

/** The widest cove of that depth that the blade cuts at any tilt up to one; inches. */
export function computeWidestUpTo(blade: Blade, depth: number, most: Radians): number {
  const widest = (tilt: number): number => computeWidestCove(blade, depth, radians(tilt));
  const tilts = evenTilts(most);
  const between = tiltOfWidest(widest, tilts);
  return Math.max(...tilts.map(widest), between === undefined ? 0 : widest(between));
}

/**
 * Whether a cove is plainly wider than any tilt cuts it, so that none need be searched. Derived: in
 * cut.ts every plane of the disc reaches R² - p² with p ≥ R - h / cos b, and both edges together lie
 * at most t / cos b apart by their planes; a sine and a cosine add up to no more than their hypotenuse.
 */
function isBeyond({ width, depth }: Sizes, { diameter, kerf }: Blade, most: Radians): boolean {
  const radius = diameter / 2;
  const inner = Math.max(0, radius - depth / Math.cos(most));
  const chord = 2 * Math.sqrt((radius - inner) * (radius + inner));
  return width > Math.hypot(chord, kerf / Math.cos(most));
}

/** Even tilts from upright to the largest, and one that the width reaches where it reaches none of them. */
function tiltsFor(cove: Sizes, blade: Blade, settings: SettingsOf, most: number): number[] {
  const tilts = evenTilts(most);
  const isReached = (tilt: number): boolean =>
    BRANCHES.some((branch) => settings(tilt, branch) !== undefined);
  if (tilts.some(isReached)) return tilts;
  // A window of tilts narrower than a step opens round the widest cove of all.
  const widest = (tilt: number): number => computeWidestCove(blade, cove.depth, radians(tilt));
  const tilt = tiltOfWidest(widest, tilts, cove.width);
  return tilt === undefined ? tilts : [...tilts, tilt].sort((one, other) => one - other);
}

function evenTilts(most: number): number[] {
  return Array.from({ length: SAMPLES + 1 }, (_, at) => (most * at) / SAMPLES);
}

/** The tilt between even ones that cuts the widest cove, where it may come up to a width. */
function tiltOfWidest(
  widest: (tilt: number) => number,
  tilts: readonly number[],
  wanted = 0,
): number | undefined {
  const widths = tilts.map(widest);
  const most = Math.max(...widths);
  const best = widths.indexOf(most);
  const [before, after] = [best - 1, best + 1].map((at) => ({
    tilt: tilts[at],
    width: widths[at],
  }));
  if (before?.tilt === undefined || before.width === undefined) return undefined;
  if (after?.tilt === undefined || after.width === undefined) return undefined;
  if (wanted - most > most - Math.min(before.width, after.width)) return undefined;
  return peakOf(widest, before.tilt, after.tilt);
}

/** The setting of a tilt on a branch; undefined where the branch has none. */
type SettingsOf = (tilt: number, branch: Branch) => Setting | undefined;

/** The branches are worked out together, and each tilt is asked about for one after the other. */
function settingsOf({ width, depth }: Sizes, blade: Blade): SettingsOf {
  const known = new Map<number, ReturnType<typeof approachesForWidth>>();
  return (tilt, branch) => {
    const leaning = radians(tilt);
    const approaches = known.get(tilt) ?? approachesForWidth(blade, depth, leaning, width);
    known.set(tilt, approaches);
    const approach = approaches[branch];
    return approach === undefined ? undefined : { approach, tilt: leaning, height: depth };
  };
}

function meets(setting: Setting, cove: Cove, blade: Blade): boolean {
  const cut = computeCut(blade, setting);
  const missed = offCenterAsAsked(cut, cove) - cove.offCenter;
  return Math.abs(cut.width - cove.width) + Math.abs(missed) <= SETUP_RESIDUAL_INCHES;
}

interface Place {
  readonly tilt: number;
  readonly value: number;
  /** Whether the branch runs on from the place before. */
  readonly runsOn: boolean;
  /** Whether the branch ends here, between two tilts, where it meets another. */
  readonly isFold?: boolean;
}

/** Where a branch has values, with the ends of each stretch of it. */
function placesOf(at: (tilt: number) => number | undefined, tilts: readonly number[]): Place[] {
  const places: Place[] = [];
  let before: { readonly tilt: number; readonly has: boolean } | undefined;
  for (const tilt of tilts) {
    const value = at(tilt);
    const has = value !== undefined;
    let runsOn = has && before?.has === true;
    if (before !== undefined && before.has !== has) {
      const [inside, outside] = has ? [tilt, before.tilt] : [before.tilt, tilt];
      const end = bisect((one) => at(one) !== undefined, inside, outside).holds;
      const atEnd = at(end);
      if (end !== inside && atEnd !== undefined) {
        places.push({ tilt: end, value: atEnd, runsOn: !has, isFold: true });
        runsOn = has;
      }
    }
    if (has) places.push({ tilt, value, runsOn });
    before = { tilt, has };
  }
  return places;
}

/** The tilts at which a branch's values pass 0, from upright on. */
function rootsOf(at: (tilt: number) => number | undefined, tilts: readonly number[]): number[] {
  const places = placesOf(at, tilts);
  const all = [...places, ...peaksOf(at, places, 0)].sort((one, other) => one.tilt - other.tilt);
  return all.flatMap((place, index) => {
    const before = all[index - 1];
    if (place.value === 0) return [place.tilt];
    if (before === undefined || !place.runsOn || before.value < 0 === place.value < 0) return [];
    const isBefore = (tilt: number): boolean => (at(tilt) ?? place.value) < 0 === before.value < 0;
    return [bisectLast(isBefore, before.tilt, place.tilt)];
  });
}

/**
 * The peaks between a branch's places; of those below a level only what may come up to it. Where a
 * branch folds into another it turns steeply, so that its peak may lie just before its end.
 */
function peaksOf(
  at: (tilt: number) => number | undefined,
  places: readonly Place[],
  level = -Infinity,
): Place[] {
  return places.flatMap((place, index) => {
    const next = places[index + 1];
    const before = place.runsOn ? places[index - 1] : undefined;
    const after = next?.runsOn === true ? next : undefined;
    const beside = [before, after].flatMap((one) => one ?? []);
    if (beside.length < (place.isFold === true ? 1 : 2)) return [];
    const rises = beside.map(({ value }) => place.value - value);
    if (!(Math.min(...rises) >= 0)) return [];
    if (level > -Infinity && place.value >= 0) return [];
    const isOutOfReach = level - place.value > Math.max(...rises);
    if (level > -Infinity && place.isFold !== true && isOutOfReach) return [];
    const from = before?.tilt ?? place.tilt;
    const tilt = peakOf((one) => at(one) ?? -Infinity, from, after?.tilt ?? place.tilt);
    const value = at(tilt);
    return value === undefined || tilt === place.tilt ? [] : [{ tilt, value, runsOn: true }];
  });
}

/** Where a function that has one peak between two places is greatest, by golden cuts. */
function peakOf(at: (tilt: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [left, right] = [to - GOLDEN * (to - from), from + GOLDEN * (to - from)];
  let [atLeft, atRight] = [at(left), at(right)];
  for (let cut = 0; cut < GOLDEN_CUTS; cut++) {
    if (atLeft > atRight) {
      [to, right, atRight] = [right, left, atLeft];
      left = to - GOLDEN * (to - from);
      atLeft = at(left);
    } else {
      [from, left, atLeft] = [left, right, atRight];
      right = from + GOLDEN * (to - from);
      atRight = at(right);
    }
  }
  return (from + to) / 2;
}
