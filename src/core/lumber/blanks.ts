/** Blanks ripped from a board. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { faultsOf, readAllowance, readSize, type Inches } from './size.ts';

/**
 * How many blanks of one width rip from a board, a kerf lost between each two of them: the most n
 * with n · blank + (n - 1) · kerf <= board. Exact: three of 3 in with two kerfs fit 9 in and those.
 * @param boardWidth in inches above 0, its edges straight.
 * @param blankWidth in inches above 0.
 * @param kerf of the ripping blade in inches, 0 or more.
 * @returns a whole number from 1; faults `lumber.board-too-narrow`, `length.not-positive`,
 * `length.negative`, `length.unreadable`.
 */
export function countBlanks(given: {
  readonly boardWidth: Inches;
  readonly blankWidth: Inches;
  readonly kerf: Inches;
}): Outcome<number> {
  const board = readSize(given.boardWidth, 'board');
  const blank = readSize(given.blankWidth, 'blankWidth');
  const kerf = readAllowance(given.kerf, 'kerf');
  if (!board.ok || !blank.ok || !kerf.ok) return failed(...faultsOf(board, blank, kerf));
  const blanks = board.value.add(kerf.value).div(blank.value.add(kerf.value)).floor();
  if (blanks.gte(1)) return ok(Number(blanks));
  const limit = { inches: Number(blank.value) };
  const wide = { inches: Number(board.value) };
  return failed(fault('lumber.board-too-narrow', 'board', wide, { limit }));
}
