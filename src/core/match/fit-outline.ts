/**
 * The setting, or two on one blank, whose outline lies nearest to a trace.
 * A trace's residual is its distance to what is left of the board: the least of its distance into the wood
 * below the face and of its distances off each blade's outline (the air is their union; distances to a union
 * are the least of them, near its edge). So points of the flats and of the edges need no choosing.
 * Starts from several tilts to both hands; Huber's loss at three times the spread of the misses, which is
 * measured by their median (1.4826 times it; Hampel 1974).
 */
import type { Blade } from '../cove/cove.ts';
import { angleLimits, type SawLimits } from '../cove/saw-limits.ts';
import type { OutlinePoint } from '../cove/outline.ts';
import { degrees, toRadians } from '../units/angle.ts';
import { fitLeastSquares, type Fit, type FitTask, type Residual } from './least-squares.ts';
import { outlineOf, UNKNOWNS, type PlacedBlade } from './outline-of.ts';

/** How the settings that share a blank are tied. */
export type Passes = 'one' | 'two mirrored' | 'two apart';

export interface FitAsk {
  readonly points: readonly OutlinePoint[];
  readonly blade: Blade;
  readonly saw: SawLimits;
  readonly passes: Passes;
  /**
   * 'even' for measured points. 'paint' where paint or dirt only adds to the wood: points in the cut count a
   * tenth. 'least worst' for points of an exact form: what is lessened is the farthest miss.
   */
  readonly loss: Loss;
}

export type Loss = 'even' | 'paint' | 'least worst';

export interface OutlineFit {
  readonly placed: readonly PlacedBlade[];
  readonly fit: Fit;
  /** Distance of each point, as in outline-of.ts; inches. */
  readonly misses: readonly number[];
  /** Of the misses, robustly; inches. */
  readonly spread: number;
  /** Points that an outline, not the face, decides. */
  readonly onOutline: number;
}

const LEAST_APPROACH = 0.005;
const LEAST_SLOPE_HEIGHT = 0.005;
/** Of the radius: the blade's middle stays below the table. */
const MOST_OF_RADIUS = 0.98;
const LEANS = [0, 15, -15, 32, -32].map((each) => toRadians(degrees(each)));
const LEAST_SPREAD_INCHES = 1 / 4096;
const FIRST_SPREAD_INCHES = 1 / 64;
const SPREADS_TO_HUBER = 3;
const MEDIAN_TO_SPREAD = 1.4826;
/** After so many steps the starts that lie farthest are left. */
const ROUGH_STEPS = 8;
const GO_ON = 2;
const PAINT_WEIGHT = 0.1;
/** The farthest miss is neared by ever higher powers of the misses. */
const POWERS = [4, 8, 16, 32, 64];

export function fitOutline(ask: FitAsk): OutlineFit {
  const starts = ask.passes === 'one' ? startsOf(ask) : startsOfTwo(ask);
  const first = huber(ask, SPREADS_TO_HUBER * FIRST_SPREAD_INCHES);
  const rough = starts.map((start) => fitLeastSquares(first, start, ROUGH_STEPS));
  rough.sort((one, other) => one.cost - other.cost);
  const fine = rough.slice(0, GO_ON).map(({ unknowns }) => fitLeastSquares(first, unknowns));
  let best = bestOf(fine);
  let spread = spreadOf(best);
  if (ask.loss === 'least worst') {
    for (const power of POWERS)
      best = fitLeastSquares(powerLoss(ask, power, worstOf(best)), best.unknowns);
    spread = spreadOf(best);
  } else {
    for (let round = 0; round < 2; round++) {
      best = fitLeastSquares(huber(ask, SPREADS_TO_HUBER * spread), best.unknowns);
      spread = spreadOf(best);
    }
  }
  return {
    placed: placedOf(ask.passes, best.unknowns),
    fit: best,
    misses: best.residuals.map(({ value }) => value),
    spread,
    onOutline: best.residuals.filter(isOnOutline).length,
  };
}

function bestOf(fits: readonly Fit[]): Fit {
  const [first, ...others] = fits;
  if (first === undefined) throw new RangeError('no start');
  return others.reduce((best, fit) => (fit.cost < best.cost ? fit : best), first);
}

const isOnOutline = ({ slopes }: Residual): boolean => slopes.some((slope) => slope !== 0);

function spreadOf({ residuals }: Fit): number {
  const sizes = residuals.filter(isOnOutline).map(({ value }) => Math.abs(value));
  sizes.sort((a, b) => a - b);
  const middle = sizes[Math.floor(sizes.length / 2)] ?? 0;
  return Math.max(LEAST_SPREAD_INCHES, MEDIAN_TO_SPREAD * middle);
}

const worstOf = ({ residuals }: Fit): number =>
  Math.max(LEAST_SPREAD_INCHES, ...residuals.map(({ value }) => Math.abs(value)));

function taskOf(ask: FitAsk, loss: Pick<FitTask, 'weigh' | 'cost'>): FitTask {
  const { points, blade } = ask;
  return {
    residualsAt: (unknowns) => residualsOf(points, blade, ask.passes, unknowns),
    confine: (unknowns) => confine(ask, unknowns),
    ...loss,
  };
}

function huber(ask: FitAsk, limit: number): FitTask {
  const share = (miss: number): number => (ask.loss === 'paint' && miss < 0 ? PAINT_WEIGHT : 1);
  const bound = (miss: number): boolean => Math.abs(miss) <= limit;
  return taskOf(ask, {
    weigh: (miss) => share(miss) * (bound(miss) ? 1 : limit / Math.abs(miss)),
    cost: (miss) =>
      share(miss) * (bound(miss) ? miss ** 2 / 2 : limit * (Math.abs(miss) - limit / 2)),
  });
}

function powerLoss(ask: FitAsk, power: number, worst: number): FitTask {
  return taskOf(ask, {
    weigh: (miss) => (Math.abs(miss) / worst) ** (power - 2),
    cost: (miss) => (worst ** 2 * (Math.abs(miss) / worst) ** power) / power,
  });
}

/** Unknowns: of one, its own four; of two apart, four and four; of two mirrored, four and the mirror's place. */
function placedOf(passes: Passes, unknowns: readonly number[]): PlacedBlade[] {
  const placed = (from: number): PlacedBlade => {
    const [approach = 0, lean = 0, slopeHeight = 0, shift = 0] = unknowns.slice(
      from,
      from + UNKNOWNS,
    );
    return { approach, lean, slopeHeight, shift };
  };
  const first = placed(0);
  if (passes === 'one') return [first];
  if (passes === 'two apart') return [first, placed(UNKNOWNS)];
  const mirror = unknowns[UNKNOWNS] ?? 0;
  return [
    { ...first, shift: mirror + first.shift },
    { ...first, lean: -first.lean, shift: mirror - first.shift },
  ];
}

function residualsOf(
  points: readonly OutlinePoint[],
  blade: Blade,
  passes: Passes,
  unknowns: readonly number[],
): Residual[] {
  const placed = placedOf(passes, unknowns);
  const outlines = placed.map((one) => outlineOf(blade, one));
  const none = unknowns.map(() => 0);
  return points.map((point) => {
    let value = point.depth;
    let slopes: readonly number[] = none;
    outlines.forEach((off, which) => {
      const { distance, slopes: own } = off(point);
      if (distance >= value) return;
      value = distance;
      slopes = spreadSlopes(passes, which, own);
    });
    return { value, slopes };
  });
}

/** The slopes of one blade's four as those of all unknowns. */
function spreadSlopes(passes: Passes, which: number, own: readonly number[]): readonly number[] {
  if (passes === 'one') return own;
  const none = [0, 0, 0, 0];
  if (passes === 'two apart') return which === 0 ? [...own, ...none] : [...none, ...own];
  const [approach = 0, lean = 0, slopeHeight = 0, shift = 0] = own;
  const sign = which === 0 ? 1 : -1;
  return [approach, sign * lean, slopeHeight, sign * shift, shift];
}

function confine({ blade, saw, passes }: FitAsk, unknowns: readonly number[]): number[] {
  const { stop, steepest } = angleLimits(saw);
  const limits: readonly [number, number][] = [
    [LEAST_APPROACH, steepest],
    [-Number(stop), stop],
    [LEAST_SLOPE_HEIGHT, (blade.diameter / 2) * MOST_OF_RADIUS],
    [-Infinity, Infinity],
  ];
  return unknowns.map((value, at) => {
    const own = passes === 'two mirrored' && at === UNKNOWNS ? undefined : limits[at % UNKNOWNS];
    return own === undefined ? value : Math.min(own[1], Math.max(own[0], value));
  });
}

/** As an untilted, and as some leaning, blade would cut the trace's own width and depth. */
function startsOf({ points, blade }: FitAsk): number[][] {
  const { middle, width, depth } = sizeOfTrace(points);
  return LEANS.map((lean) => {
    const slope = Math.min(depth / Math.cos(lean), blade.diameter / 3);
    const chord = 2 * Math.sqrt(slope * (blade.diameter - slope));
    const sine = Math.min(0.97, width / Math.hypot(chord, blade.kerf));
    const approach = Math.max(0.05, Math.asin(sine) - Math.atan2(blade.kerf, chord));
    return [approach, lean, slope, middle];
  });
}

function startsOfTwo(ask: FitAsk): number[][] {
  const { passes, points } = ask;
  const { width, middle } = sizeOfTrace(points);
  const single = fitOutline({ ...ask, passes: 'one', loss: 'even' }).fit.unknowns;
  const [approach = 0, , slope = 0, shift = middle] = single;
  const leans = [0.05, 0.15, 0.4, -0.05, -0.15, -0.4];
  return leans.flatMap((lean) =>
    [-0.08, 0.08].map((part) =>
      passes === 'two mirrored'
        ? [approach * 0.95, lean, slope, part * width, shift]
        : [
            approach * 0.95,
            lean,
            slope,
            shift + part * width,
            approach * 0.95,
            -lean,
            slope,
            shift - part * width,
          ],
    ),
  );
}

/** Width where the trace leaves the face; inches. */
function sizeOfTrace(points: readonly OutlinePoint[]): {
  middle: number;
  width: number;
  depth: number;
} {
  const depth = Math.max(...points.map((point) => point.depth));
  const inside = points.filter((point) => point.depth > depth / 50);
  const left = Math.min(...inside.map(({ u }) => u));
  const right = Math.max(...inside.map(({ u }) => u));
  return { middle: (left + right) / 2, width: right - left, depth };
}
