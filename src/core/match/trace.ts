/**
 * A trace: points measured along an existing molding, brought to the face line, in order, without doubles.
 * The face line must be given, by two points of the flats or by the first and last point lying on it:
 * nothing tells the tilt of a trace that may be turned, nor the height of one whose face may lie anywhere
 * (both derived in tests/core/match/unknown-face.test.ts).
 */
import { failed, fault, ok, type Fault, type Outcome } from '../faults/fault.ts';
import { phrase } from '../faults/argument.ts';
import type { OutlinePoint } from '../cove/outline.ts';

/** As measured, in inches along any two square directions of the board's end. */
export interface TracePoint {
  readonly across: number;
  readonly out: number;
}

/** Two points of the flats on either side of the cove. */
export type FaceLine = readonly [TracePoint, TracePoint];

export interface Trace {
  /**
   * u grows with `across` as measured, along the face; depth from the face into the wood. In order along
   * the cove, from its least u.
   */
  readonly points: readonly OutlinePoint[];
  /** For each point, its number in what was given: from 1. */
  readonly numbers: readonly number[];
  /** Points that were left out, since they repeat the one before. */
  readonly doubles: number;
  /** Whether they were taken in order across the face, since the way along them as given crosses itself. */
  readonly isReordered: boolean;
}

export const LEAST_POINTS = 8;
/** Points nearer than this are one point measured twice. */
const DOUBLE_INCHES = 1 / 256;
/** Two points of the flats closer than this don't tell a direction. */
const LEAST_FACE_INCHES = 1 / 4;
/** A trace that goes no deeper shows no cove; one that lies as far on the other side has no face. */
const LEAST_DEPTH_INCHES = 1 / 32;
/** Of the points, a slip of the hand each; more of them are another side. */
const MOST_STRAYS = 0.05;
/** A cove bulges one way: points in order lie along their own hull, but for a hand's noise. */
const MOST_OF_HULL = 1.5;
/** A loop no larger than this is the hand's, or the noise of points that lie close. */
const LOOP_INCHES = 1 / 8;
/** More than any profile: a pixel's count that was taken for inches, say. */
const MOST_POINTS = 20_000;

/** @param face where the first and last point don't lie on the face themselves */
export function readTrace(measured: readonly TracePoint[], face?: FaceLine): Outcome<Trace> {
  if (measured.length > MOST_POINTS) {
    return failed(
      fault('match.too-many-points', 'points', measured.length, { limit: MOST_POINTS }),
    );
  }
  const kept = dropDoubles(measured);
  if (kept.length < LEAST_POINTS) {
    return failed(fault('match.too-few-points', 'points', kept.length, { limit: LEAST_POINTS }));
  }
  const ends = face ?? endsOf(measured);
  if (ends === undefined)
    return failed(fault('match.too-few-points', 'points', 0, { limit: LEAST_POINTS }));
  const laid = layOnFace(kept, ends);
  if (!laid.ok) return laid;
  const along = orderAlong(laid.value);
  if (!along.ok) return along;
  return ok({
    points: along.value.points.map(({ u, depth }) => ({ u, depth })),
    numbers: along.value.points.map(({ number }) => number),
    doubles: measured.length - kept.length,
    isReordered: along.value.isReordered,
  });
}

interface Numbered {
  readonly number: number;
}

function dropDoubles(measured: readonly TracePoint[]): (TracePoint & Numbered)[] {
  const kept: (TracePoint & Numbered)[] = [];
  measured.forEach((point, index) => {
    const before = kept.at(-1);
    const isDouble =
      before !== undefined &&
      Math.hypot(point.across - before.across, point.out - before.out) < DOUBLE_INCHES;
    if (!isDouble) kept.push({ ...point, number: index + 1 });
  });
  return kept;
}

function endsOf(measured: readonly TracePoint[]): FaceLine | undefined {
  const [first] = measured;
  const last = measured.at(-1);
  return first === undefined || last === undefined ? undefined : [first, last];
}

type Laid = OutlinePoint & Numbered;

/** Into u along the face and depth square to it, on the side where the points lie. */
function layOnFace(points: readonly (TracePoint & Numbered)[], ends: FaceLine): Outcome<Laid[]> {
  const [one, other] = ends;
  const long = Math.hypot(other.across - one.across, other.out - one.out);
  if (long < LEAST_FACE_INCHES) {
    return failed(
      fault(
        'match.face-too-short',
        'points',
        { inches: long },
        { limit: { inches: LEAST_FACE_INCHES } },
      ),
    );
  }
  const turn = other.across < one.across ? -1 : 1;
  const cos = (turn * (other.across - one.across)) / long;
  const sin = (turn * (other.out - one.out)) / long;
  const laid = points.map(({ across, out, number }) => {
    const [right, up] = [across - one.across, out - one.out];
    return { u: right * cos + up * sin, depth: up * cos - right * sin, number };
  });
  const most = Math.max(...laid.map(({ depth }) => depth));
  const least = Math.min(...laid.map(({ depth }) => depth));
  const side = most >= -least ? 1 : -1;
  const deep = Math.max(most, -least);
  if (deep < LEAST_DEPTH_INCHES) {
    const limit = { inches: LEAST_DEPTH_INCHES };
    return failed(fault('match.no-depth', 'points', { inches: deep }, { limit }));
  }
  const beyond = Math.max(LEAST_DEPTH_INCHES, deep / 10);
  const strays = laid.filter(({ depth }) => -side * depth > beyond);
  if (strays.length > MOST_STRAYS * laid.length) {
    const other = Math.max(...strays.map(({ depth }) => -side * depth));
    const details = { deep: { inches: deep } };
    return failed(fault('match.both-sides', 'points', { inches: other }, { details }));
  }
  return ok(laid.map((point) => ({ ...point, depth: side * point.depth })));
}

/**
 * As given where the way along them crosses itself nowhere; else along the face, where they lie like one
 * cove so. Small loops are a hand's, and stay.
 */
function orderAlong(points: readonly Laid[]): Outcome<{ points: Laid[]; isReordered: boolean }> {
  const given = [...points];
  const [first] = given;
  const last = given.at(-1);
  const isBackward = first !== undefined && last !== undefined && last.u < first.u;
  if (isBackward) given.reverse();
  const crossing = findCrossing(given);
  if (crossing === undefined) return ok({ points: given, isReordered: false });
  const sorted = [...points].sort((a, b) => a.u - b.u || a.depth - b.depth);
  if (lengthAlong(sorted) <= MOST_OF_HULL * lengthAlong(outerOf(sorted))) {
    return ok({ points: sorted, isReordered: true });
  }
  return failed(crossing);
}

/** Those of points sorted by u that no straight line from one to another passes over. */
function outerOf(sorted: readonly Laid[]): Laid[] {
  const outer: Laid[] = [];
  for (const point of sorted) {
    for (;;) {
      const [one, other] = [outer.at(-2), outer.at(-1)];
      if (one === undefined || other === undefined || turnOf(one, other, point) < 0) break;
      outer.pop();
    }
    outer.push(point);
  }
  return outer;
}

function lengthAlong(points: readonly Laid[]): number {
  let length = 0;
  let before: Laid | undefined;
  for (const point of points) {
    if (before !== undefined) length += Math.hypot(point.u - before.u, point.depth - before.depth);
    before = point;
  }
  return length;
}

function findCrossing(points: readonly Laid[]): Fault | undefined {
  for (let at = 0; at + 1 < points.length; at++) {
    for (let later = at + 2; later + 1 < points.length; later++) {
      const [a, b, c, d] = [points[at], points[at + 1], points[later], points[later + 1]];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      if (!doCross(a, b, c, d)) continue;
      if (sizeOf(points.slice(at + 1, later + 1)) <= LOOP_INCHES) continue;
      const argument = phrase('pointsAt', { one: b.number, other: c.number });
      return fault('match.crosses', argument, null);
    }
  }
  return undefined;
}

function sizeOf(points: readonly Laid[]): number {
  const us = points.map(({ u }) => u);
  const depths = points.map(({ depth }) => depth);
  return Math.hypot(Math.max(...us) - Math.min(...us), Math.max(...depths) - Math.min(...depths));
}

function doCross(a: Laid, b: Laid, c: Laid, d: Laid): boolean {
  return turnOf(a, b, c) * turnOf(a, b, d) < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0;
}

/** Above 0 where the way from p over q to r turns toward the depth. */
function turnOf(p: Laid, q: Laid, r: Laid): number {
  return (q.u - p.u) * (r.depth - p.depth) - (q.depth - p.depth) * (r.u - p.u);
}
