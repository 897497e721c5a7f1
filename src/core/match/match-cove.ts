/**
 * From a trace of an existing molding to the setting that comes nearest to it, what that misses, and how
 * sure the angles are. What is matched is the outline: an angle may be unsure by degrees and the outline
 * still right to a few thousandths.
 */
import type { Blade, Setting } from '../cove/cove.ts';
import { computeCut } from '../cove/cut.ts';
import { checkCove } from '../cove/feasibility.ts';
import type { SawLimits } from '../cove/saw-limits.ts';
import { failed, fault, ok, type Caution, type Fault, type Outcome } from '../faults/fault.ts';
import { degrees } from '../units/angle.ts';
import { fitOutline, type Loss, type OutlineFit, type Passes } from './fit-outline.ts';
import { intervalsOf, type Intervals, type NotTold } from './intervals.ts';
import { settingOf, type PlacedBlade } from './outline-of.ts';
import { readTrace, type FaceLine, type Trace, type TracePoint } from './trace.ts';
import { fitTrueArc, sizeOfMisses, type TrueArc } from './true-arc.ts';

export interface MatchAsk {
  /** Inches, along any two square directions of the board's end. */
  readonly points: readonly TracePoint[];
  /** Where the first and last point don't lie on the face themselves. */
  readonly face?: FaceLine;
  /** The shop's: one or more. The one that comes nearest is chosen. */
  readonly blades: readonly [Blade, ...Blade[]];
  readonly saw?: SawLimits;
  /** What a miss may be before two settings on one blank are looked for; inches. 1/32 where absent. */
  readonly tolerance?: number;
  readonly loss?: Loss;
}

/** One setting on the blank. */
export interface MatchedSetting {
  readonly setting: Setting;
  /** Toward more or less `across` as measured; undefined of a blade that stands upright. */
  readonly deepSide?: 'right' | 'left';
  /** Of what it cuts, along the face from the first point of the face line; inches. */
  readonly leftEdge: number;
  readonly rightEdge: number;
  readonly width: number;
  readonly depth: number;
  /** From the middle of its own width to its deepest line; 0 or more. */
  readonly offCenter: number;
}

export interface Matched {
  readonly settings: readonly MatchedSetting[];
  /** As the outline was fitted, for drawings. */
  readonly placed: readonly PlacedBlade[];
  /** Of the points on the outline; inches. */
  readonly rms: number;
  /** The farthest: inches, and above 0 where the cut leaves wood that the molding doesn't have. */
  readonly worst: { readonly inches: number; readonly point: number };
}

export interface MatchAnswer {
  readonly trace: Trace;
  readonly blade: Blade;
  readonly best: Matched;
  /** 95 % each, or why they can't be told. */
  readonly intervals: Intervals | NotTold;
  /** Upright was taken, since the trace doesn't tell its tilt from it. */
  readonly isUprightByChoice: boolean;
  /** Two settings on one blank, where one misses by more than the tolerance and two miss by less. */
  readonly two?: Matched & { readonly passes: Passes };
  readonly arc: TrueArc;
  /** What the other blades miss, in the order given. */
  readonly others: readonly {
    readonly blade: Blade;
    readonly rms: number;
    readonly worst: number;
  }[];
  /** What stands against cutting the best one on this saw. */
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

export const USUAL_MATCH_TOLERANCE_INCHES = 1 / 32;
/** A trace of less of the cove than that doesn't tell the rest. */
const LEAST_SHARE = 0.6;
/** Of the rms: upright costs no more than that where the tilt isn't told. */
const AS_GOOD = 1.05;

export function matchCove(ask: MatchAsk): Outcome<MatchAnswer> {
  const trace = readTrace(ask.points, ask.face);
  if (!trace.ok) return trace;
  const { points } = trace.value;
  const saw = ask.saw ?? {};
  const loss = ask.loss ?? 'even';
  const fits = ask.blades.map((blade) => {
    const fit = fitOutline({ points, blade, saw, passes: 'one', loss });
    return { blade, fit, matched: matchedOf(fit, blade, trace.value) };
  });
  const [first, ...rest] = fits;
  if (first === undefined) throw new RangeError('matchCove needs a blade');
  const nearest = rest.reduce(
    (best, one) => (one.matched.rms < best.matched.rms ? one : best),
    first,
  );
  const { blade } = nearest;
  const short = checkShare(trace.value, nearest.matched);
  if (short !== undefined) return failed(short);
  const intervals = intervalsOf(nearest.fit, blade, saw, loss === 'paint');
  const upright = uprightInstead(nearest, intervals, ask, trace.value);
  const best = upright ?? nearest.matched;
  const [{ width, depth, offCenter } = { width: 0, depth: 0, offCenter: 0 }] = best.settings;
  const { faults, cautions } = checkCove({ width, depth, offCenter }, blade, saw);
  const two = twoInstead(best, nearest.blade, ask, trace.value);
  return ok({
    trace: trace.value,
    blade,
    best,
    intervals,
    isUprightByChoice: upright !== undefined,
    ...(two === undefined ? {} : { two }),
    arc: fitTrueArc(points.filter((_, at) => isOnOutline(nearest.fit, at))),
    others: fits
      .filter((one) => one !== nearest)
      .map(({ blade: other, matched: { rms, worst } }) => ({
        blade: other,
        rms,
        worst: Math.abs(worst.inches),
      })),
    faults,
    cautions,
  });
}

function isOnOutline({ fit }: OutlineFit, at: number): boolean {
  return fit.residuals[at]?.slopes.some((slope) => slope !== 0) ?? false;
}

function matchedOf(fit: OutlineFit, blade: Blade, trace: Trace): Matched {
  const settings = fit.placed.map((placed): MatchedSetting => {
    const setting = settingOf(placed, blade);
    const { near, far, width, depth, offCenter } = computeCut(blade, setting);
    const isMirrored = placed.lean < 0;
    const [left, right] = isMirrored ? [-far, -near] : [near, far];
    return {
      setting,
      ...(setting.tilt === 0 ? {} : { deepSide: isMirrored ? 'left' : 'right' }),
      leftEdge: placed.shift + left,
      rightEdge: placed.shift + right,
      width,
      depth,
      offCenter,
    };
  });
  const on = fit.misses.filter((_, at) => isOnOutline(fit, at));
  let worst = { inches: 0, point: 0 };
  fit.misses.forEach((inches, at) => {
    if (isOnOutline(fit, at) && Math.abs(inches) >= Math.abs(worst.inches)) {
      worst = { inches, point: trace.numbers[at] ?? 0 };
    }
  });
  return { settings, placed: fit.placed, rms: sizeOfMisses(on).rms, worst };
}

/** The trace must show most of the cove that it is matched by. */
function checkShare({ points }: Trace, { settings }: Matched): Fault | undefined {
  const [only] = settings;
  if (only === undefined) return undefined;
  const within = points.map(({ u }) => Math.min(only.rightEdge, Math.max(only.leftEdge, u)));
  const share = (Math.max(...within) - Math.min(...within)) / only.width;
  if (share >= LEAST_SHARE) return undefined;
  const limit = { inches: LEAST_SHARE * only.width };
  return fault('match.too-little', 'points', { inches: share * only.width }, { limit });
}

/** Upright, where the trace can't tell its tilt from it and it comes as near. */
function uprightInstead(
  { blade, matched, fit }: { blade: Blade; matched: Matched; fit: OutlineFit },
  intervals: Intervals | NotTold,
  { saw = {}, loss = 'even' }: MatchAsk,
  trace: Trace,
): Matched | undefined {
  const isTold = typeof intervals !== 'object' || intervals.tilt[0] > 0;
  if (isTold || fit.placed.every(({ lean }) => lean === 0)) return undefined;
  const upright = { ...saw, tiltStop: degrees(0) };
  const refit = fitOutline({ points: trace.points, blade, saw: upright, passes: 'one', loss });
  const instead = matchedOf(refit, blade, trace);
  return instead.rms <= AS_GOOD * matched.rms ? instead : undefined;
}

function twoInstead(
  best: Matched,
  blade: Blade,
  ask: MatchAsk,
  trace: Trace,
): (Matched & { passes: Passes }) | undefined {
  const tolerance = ask.tolerance ?? USUAL_MATCH_TOLERANCE_INCHES;
  if (Math.abs(best.worst.inches) <= tolerance) return undefined;
  const saw = ask.saw ?? {};
  const tries = (['two mirrored', 'two apart'] as const).map((passes) => {
    const fit = fitOutline({ points: trace.points, blade, saw, passes, loss: ask.loss ?? 'even' });
    return { ...matchedOf(fit, blade, trace), passes };
  });
  // Apart is more to set than mirrored: it must be worth it.
  const [mirrored, apart] = tries;
  if (mirrored === undefined || apart === undefined) return undefined;
  const two = apart.rms < 0.8 * mirrored.rms ? apart : mirrored;
  return two.rms < 0.8 * best.rms ? two : undefined;
}
