/**
 * The words of a cove cut. Lengths are in one unit throughout (inches in this program).
 *
 * Frame: table top z = 0, z up; x along the blade line from front to back, zero where the blade's
 * entry and exit at the table are equally far; y to the operator's right. `u` is the distance across
 * the feed, positive toward the far rail (the one behind the blade). The blade leans toward +u when
 * a left-tilt saw is fed left to right, or a right-tilt saw right to left.
 */
import type { Radians } from '../units/angle.ts';

export interface Cove {
  /** At the face, across the feed; more than 0. */
  readonly width: number;
  /** From the face to the deepest line; more than 0. */
  readonly depth: number;
  /** From the middle of the cove at its face to the line that offCenterTo names; 0 or more. */
  readonly offCenter: number;
  /** The deepest line on the wood where absent. */
  readonly offCenterTo?: OffCenterTo;
}

/**
 * What an off-center leads to: the deepest line on the wood (deepest-line.ts says which that is), or
 * the line where the blade's middle plane tops out.
 */
export const OFF_CENTER_TO = ['deepest line', 'blade middle'] as const;
export type OffCenterTo = (typeof OFF_CENTER_TO)[number];

export interface Blade {
  /** As measured: a resharpened 10 in blade can be 9 7/8. */
  readonly diameter: number;
  /** Thickness of the cut; 0 for a blade without thickness. */
  readonly kerf: number;
}

export interface Setting {
  /** Between the blade line and the direction of feed: 0 is a rip cut, a quarter turn straight across. */
  readonly approach: Radians;
  /** From upright. */
  readonly tilt: Radians;
  /** Of the highest tooth above the table: the depth of the cove. */
  readonly height: number;
}

/** Where the caller says nothing else. Common practice [C]: a 10 in blade with a full kerf. */
export const USUAL_BLADE: Blade = { diameter: 10, kerf: 1 / 8 };
