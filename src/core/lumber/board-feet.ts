/** Board feet by the plain rule, and what they are in cubic metres. */
import Fraction from 'fraction.js';
import { failed, ok, type Outcome } from '../faults/fault.ts';
import type { ExactInches } from '../units/length.ts';
import { faultsOf, readSize, type Inches } from './size.ts';

/** Board feet as an exact rational: a 2×10 16 ft long has 80/3, not 26.67. */
export type ExactBoardFeet = Fraction;

/** Cubic inches in a board foot: 12 by 12 by 1. */
export const CUBIC_INCHES_PER_BOARD_FOOT = 144;

/** An inch is 0.0254 m exactly (1959), so a board foot is exactly 0.002359737216 m³. */
const CUBIC_METRES_PER_BOARD_FOOT = new Fraction(127, 5000).pow(3).mul(CUBIC_INCHES_PER_BOARD_FOOT);

/** 423.776…: the same as a number, for what is counted in decimals. */
export const BOARD_FEET_PER_CUBIC_METRE = 1 / Number(CUBIC_METRES_PER_BOARD_FOOT);

/** Nominal thickness and width, and length, in inches above 0. */
export interface BoardSize {
  readonly thickness: Inches;
  readonly width: Inches;
  readonly length: Inches;
}

/**
 * Board feet of a board by the plain rule: nominal thickness (under 1 in counts as 1 in) times width
 * times length, over 144, unrounded. Source: Navy Engineering Aid manual, 6-3.
 * @returns exact board feet; faults `length.unreadable`, `length.not-positive`, one a size.
 */
export function computeBoardFeet(board: BoardSize): Outcome<ExactBoardFeet> {
  const thickness = readSize(board.thickness, 'thickness');
  const width = readSize(board.width, 'width');
  const length = readSize(board.length, 'length');
  if (!thickness.ok || !width.ok || !length.ok) {
    return failed(...faultsOf(thickness, width, length));
  }
  const counted = countedThickness(thickness.value);
  return ok(counted.mul(width.value).mul(length.value).div(CUBIC_INCHES_PER_BOARD_FOOT));
}

/** The thickness that a board is sold by: under 1 in counts as 1 in. */
export function countedThickness(thickness: ExactInches): ExactInches {
  return thickness.lt(1) ? new Fraction(1) : thickness;
}

/** Cubic metres of so many board feet, exact. */
export function toCubicMetres(boardFeet: ExactBoardFeet): Fraction {
  return boardFeet.mul(CUBIC_METRES_PER_BOARD_FOOT);
}

/** Board feet of so many cubic metres, exact. */
export function toBoardFeet(cubicMetres: Fraction): ExactBoardFeet {
  return cubicMetres.div(CUBIC_METRES_PER_BOARD_FOOT);
}
