/** Board feet of hardwood, by surface measure. */
import Fraction from 'fraction.js';
import { phrase } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { countedThickness, type BoardSize, type ExactBoardFeet } from './board-feet.ts';
import { faultsOf, readSize } from './size.ts';

/** Which way the next exact half of a foot goes; they take turns. */
export type HalfGoes = 'up' | 'down';

const INCHES_PER_FOOT = 12;

export interface MeasuredBoard {
  /** Whole square feet of the board's face. */
  readonly surfaceMeasureFeet: number;
  /** Surface measure times nominal thickness (under 1 in counts as 1 in). */
  readonly boardFeet: ExactBoardFeet;
  /** Which way the next board's exact half goes. */
  readonly nextHalf: HalfGoes;
}

/**
 * Measures a hardwood board: width, with its fraction, times length in whole feet, a fraction of a
 * foot dropped, over 12, to the nearest whole foot; then times the nominal thickness. A board of
 * less than half a square foot counts 0 by this rule.
 * Source: NHLA rule book, surface measure; that exact halves go up the first time, down the next:
 * E. Wengert, "Rounding Numbers when Figuring Board Feet", WoodWeb, 2007.
 * @param board nominal thickness, width and length in inches above 0; at least a foot long.
 * @param nextHalf which way an exact half goes here.
 * @returns faults `length.unreadable`, `length.not-positive`, `number.too-small` (under a foot long).
 */
export function measureBoard(board: BoardSize, nextHalf: HalfGoes): Outcome<MeasuredBoard> {
  const thickness = readSize(board.thickness, 'thickness');
  const width = readSize(board.width, 'width');
  const length = readSize(board.length, 'length');
  if (!thickness.ok || !width.ok || !length.ok) {
    return failed(...faultsOf(thickness, width, length));
  }
  const wholeFeet = length.value.div(INCHES_PER_FOOT).floor();
  if (wholeFeet.lt(1)) {
    const limit = { inches: INCHES_PER_FOOT };
    return failed(fault('number.too-small', 'length', { inches: Number(board.length) }, { limit }));
  }
  const squareFeet = width.value.mul(wholeFeet).div(INCHES_PER_FOOT);
  const isHalf = squareFeet.mod(1).equals(new Fraction(1, 2));
  const goesUp = isHalf ? nextHalf === 'up' : squareFeet.mod(1).gt(new Fraction(1, 2));
  const feet = goesUp ? squareFeet.ceil() : squareFeet.floor();
  return ok({
    surfaceMeasureFeet: Number(feet),
    boardFeet: feet.mul(countedThickness(thickness.value)),
    nextHalf: isHalf ? (nextHalf === 'up' ? 'down' : 'up') : nextHalf,
  });
}

export interface HardwoodTally {
  /** In the order of the list. */
  readonly boards: readonly MeasuredBoard[];
  readonly boardFeet: ExactBoardFeet;
  /** Which way the next exact half goes, for a list that goes on. */
  readonly nextHalf: HalfGoes;
}

/**
 * Tallies a list of hardwood boards by surface measure, exact halves taking turns down the list.
 * @param boards as for `measureBoard`.
 * @param firstHalf which way the first exact half goes; up by the rule.
 * @returns faults as for `measureBoard`, of all boards, each argument with its place in the list.
 */
export function tallyHardwood(
  boards: readonly BoardSize[],
  firstHalf: HalfGoes = 'up',
): Outcome<HardwoodTally> {
  const outcomes: Outcome<MeasuredBoard>[] = [];
  const measured: MeasuredBoard[] = [];
  let nextHalf = firstHalf;
  for (const board of boards) {
    const outcome = measureBoard(board, nextHalf);
    outcomes.push(outcome);
    if (!outcome.ok) continue;
    measured.push(outcome.value);
    nextHalf = outcome.value.nextHalf;
  }
  const faults = outcomes.flatMap((outcome, index) =>
    faultsOf(outcome).map((one) =>
      fault(one.code, phrase('boardPart', { number: index + 1, part: one.argument }), one.given, {
        ...(one.limit && { limit: one.limit }),
      }),
    ),
  );
  if (faults.length > 0) return failed(...faults);
  const boardFeet = measured.reduce((sum, board) => sum.add(board.boardFeet), new Fraction(0));
  return ok({ boards: measured, boardFeet, nextHalf });
}
