/** From a length as it was measured to the length to cut. */
import Fraction from 'fraction.js';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { sayArgument } from '../../core/faults/argument.ts';
import {
  fault,
  failed,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { toRadians } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { IRRATIONAL_GRID_INCHES } from '../../core/units/tolerance.ts';
import { crownSizeOf } from '../crown-size-of.ts';
import type { EndKind, Profile, ProfileCell, Run, RunEnd } from '../job.ts';
import type { MeasurePoint, PieceEnd } from '../piece.ts';
import type { Shop } from '../shop.ts';
import { springInOf } from './spring-in.ts';
import { CUT_LENGTH_SLACK_INCHES } from '../tolerance.ts';

export interface CutLength {
  readonly cutLength: ExactInches;
  readonly left: PieceEnd;
  readonly right: PieceEnd;
  readonly sprungIn?: ExactInches;
}

/** Ends that are cut alike at any corner, which is square to them. */
export const ENDS_WITHOUT_CORNER: ReadonlySet<EndKind> = new Set(['square', 'return']);

const ZERO = new Fraction(0);
const SLACK = new Fraction(CUT_LENGTH_SLACK_INCHES);

/**
 * The cut length of a run, from long point to long point. Derived: a miter across a thickness or
 * width `across`, half a corner C from the wall, moves its long point by across · cot(C / 2).
 * - wall: inside miter, cope, return and square add 0; an outside miter turns past the wall's corner
 *   by across · cot(C / 2). The shop's end allowance comes on at each end, to trim at the wall.
 * - short point: each mitered end adds across · cot(C / 2).
 * - opening: each mitered end adds (reveal + across) · cot(C / 2). The molding's far edge lies reveal and
 *   width outside the opening's, and its corner is where two such edges meet.
 * - long point, finished: nothing.
 * `across` is the profile's projection, but the blank's width where an outside miter crosses the face:
 * where Profiles says so, and else for what lies flat around an opening (measured as one, or by its
 * short point). A molding at a spring angle never lies flat.
 * Base between two walls may be cut longer yet, see `springInOf`.
 * The sum is rounded up to the shop's precision. Faults: a size of the profile that a miter needs.
 */
export function computeCutLength(run: Run, profile: Profile, shop: Shop): Outcome<CutLength> {
  const ends = [run.left, run.right].map((end) => computeEnd(end, run, profile, shop));
  const faults = ends.flatMap((end) => (end.ok ? [] : end.faults));
  const [left, right] = ends;
  if (left?.ok !== true || right?.ok !== true) return failed(...faults);
  const sprungIn = springInOf(run, shop);
  const length = run.length.add(left.value.added).add(right.value.added).add(sprungIn);
  const cutLength = roundUp(length, shop.lengthPrecision);
  const sprung = sprungIn.gt(0) ? { sprungIn } : {};
  return ok({ cutLength, left: left.value, right: right.value, ...sprung });
}

/** The next whole multiple of `precision` that is shorter by no more than arithmetic may be off. */
export function roundUp(length: ExactInches, precision: ExactInches): ExactInches {
  return length.sub(SLACK).div(precision).ceil().mul(precision);
}

/** How far the molding stands out from the wall: the crown's projection, or the thickness. */
export function projectionOf(profile: Profile): Outcome<number> {
  if (profile.spring !== undefined) {
    const { projection } = crownSizeOf(profile);
    return projection === undefined
      ? failed(sizeNeeded(profile, COVE_SIZES.blankWidth.key))
      : ok(projection);
  }
  if (profile.blankThickness === undefined)
    return failed(sizeNeeded(profile, COVE_SIZES.blankThickness.key));
  return ok(Number(profile.blankThickness));
}

function computeEnd(end: RunEnd, run: Run, profile: Profile, shop: Shop): Outcome<PieceEnd> {
  const { kind, corner } = end;
  const around = run.measuredAs === 'opening' || run.measuredAs === 'short point';
  const flat = kind === 'outside miter' && crossesFace(profile, around);
  const known = { kind, cornerDeg: Number(corner), point: pointOf(kind, flat) };
  const allowance = run.measuredAs === 'wall' ? shop.endAllowance : ZERO;
  const toLongPoint = run.measuredAs === 'long point' || run.measuredAs === 'finished';
  const turns = kind === 'outside miter' || (kind === 'inside miter' && around);
  if (toLongPoint || !turns) return ok({ ...known, added: allowance });
  const across = flat ? widthOf(profile) : projectionOf(profile);
  if (!across.ok) return across;
  const cotangent = 1 / Math.tan(toRadians(corner) / 2);
  const reveal = run.measuredAs === 'opening' ? run.reveal.mul(snap(cotangent)) : ZERO;
  return ok({ ...known, added: allowance.add(reveal).add(snap(across.value * cotangent)) });
}

function crossesFace(profile: Profile, around: boolean): boolean {
  if (profile.spring !== undefined) return false;
  return profile.miterAcross === undefined ? around : profile.miterAcross === 'face';
}

function widthOf(profile: Profile): Outcome<number> {
  if (profile.blankWidth === undefined)
    return failed(sizeNeeded(profile, COVE_SIZES.blankWidth.key));
  return ok(Number(profile.blankWidth));
}

function pointOf(kind: RunEnd['kind'], flat: boolean): MeasurePoint {
  switch (kind) {
    case 'square':
      return 'square end';
    case 'inside miter':
      return 'long point at the wall';
    case 'outside miter':
      return flat ? 'long point at the outer edge' : 'long point at the face';
    case 'cope':
      return 'tip of the cope at the wall';
    case 'return':
      return 'long point of the return miter';
  }
}

/** An irrational addition, or share, joins exact arithmetic on a grid far below any tape. */
function snap(inches: number): Fraction {
  return new Fraction(Math.round(inches / IRRATIONAL_GRID_INCHES), 1 / IRRATIONAL_GRID_INCHES);
}

function sizeNeeded(profile: Profile, heading: ProfileCell): Fault {
  const details = { needed: sayArgument(heading) };
  const one = fault('job.projection-unknown', 'miter', profile.name, { details });
  return placeFault(one, profile.cells[heading]);
}
