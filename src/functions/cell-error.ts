/**
 * The one place that decides which error a fault becomes in a cell: bad input is #VALUE!, sound
 * input that has no answer is #N/A. There is no default: a fault that a function can give and that
 * isn't listed here is a bug, and tests/functions/cell-error.test.ts looks for it.
 */
import type { Fault, FaultCode } from '../core/faults/fault.ts';
import type { CellError } from './cell.ts';

const BAD_INPUT = '#VALUE!';
const NO_ANSWER = '#N/A';

export const CELL_ERRORS = {
  'length.missing': BAD_INPUT,
  'length.unreadable': BAD_INPUT,
  'length.zero-denominator': BAD_INPUT,
  'length.too-long': BAD_INPUT,
  'length.date': BAD_INPUT,
  'length.date-number': BAD_INPUT,
  'length.beyond-shop': BAD_INPUT,
  'length.not-positive': BAD_INPUT,
  'length.negative': BAD_INPUT,
  'length.inches-over-foot': BAD_INPUT,
  'number.too-many-characters': BAD_INPUT,
  'number.two-readings': BAD_INPUT,
  'number.other-sign': BAD_INPUT,
  'number.percent': BAD_INPUT,
  'number.other-unit': BAD_INPUT,
  'number.unreadable': BAD_INPUT,
  'number.not-whole': BAD_INPUT,
  'number.too-small': BAD_INPUT,
  'number.too-large': BAD_INPUT,
  'angle.corner-tiny': BAD_INPUT,
  'angle.out-of-range': BAD_INPUT,
  'angle.spring-tiny': BAD_INPUT,
  'word.unknown': BAD_INPUT,
  'text.missing': BAD_INPUT,
  'table.error-cell': BAD_INPUT,

  'function.shape': BAD_INPUT,
  'function.one-column': BAD_INPUT,
  'function.one-cell': BAD_INPUT,
  'function.too-many-cells': BAD_INPUT,
  'function.more-faults': BAD_INPUT,
  'function.bug': BAD_INPUT,

  'cove.size-missing': BAD_INPUT,
  'cove.kerf-too-thick': BAD_INPUT,
  'cove.off-center-negative': BAD_INPUT,
  'cove.off-center-beyond-half': BAD_INPUT,
  'cove.step-too-high': BAD_INPUT,
  'crown.spring-out-of-range': BAD_INPUT,
  'crown.corner-out-of-range': BAD_INPUT,
  'crown.pitch-out-of-range': BAD_INPUT,
  'crown.slope-out-of-range': BAD_INPUT,
  'cutting.too-many-pieces': BAD_INPUT,
  'match.too-few-points': BAD_INPUT,
  'match.too-many-points': BAD_INPUT,
  'match.face-too-short': BAD_INPUT,
  'match.no-depth': BAD_INPUT,
  'match.both-sides': BAD_INPUT,
  'match.crosses': BAD_INPUT,
  'match.too-little': BAD_INPUT,
  'match.point-half': BAD_INPUT,
  'trial.no-set-up': NO_ANSWER,
  'trial.not-this-blade': NO_ANSWER,
  'trial.another-cove': NO_ANSWER,
  'match.two-columns': BAD_INPUT,

  'cove.too-wide': NO_ANSWER,
  'cove.no-wider-than-kerf': NO_ANSWER,
  'cove.too-deep-for-blade': NO_ANSWER,
  'cove.no-tilt-enough': NO_ANSWER,
  'cove.corner-alone': NO_ANSWER,
  'cove.tilt-beyond-stop': NO_ANSWER,
  'cove.blade-cannot-rise-unstated-saw': NO_ANSWER,
  'cove.height-below-corner': NO_ANSWER,
  'cove.web-too-thin': NO_ANSWER,
  'cove.flat-too-narrow': NO_ANSWER,
  'cove.undercut-eats-flat': NO_ANSWER,
  'cove.undercut-meets-rail': NO_ANSWER,
  'cove.too-many-passes': NO_ANSWER,
  'rails.off-table': NO_ANSWER,
  'rails.miss-table': NO_ANSWER,
  'rails.corner-alone': NO_ANSWER,
  'cutting.piece-too-long': NO_ANSWER,
  'cutting.kerf-longer-than-piece': NO_ANSWER,
  'cutting.stick-shorter-than-trim': NO_ANSWER,
} as const satisfies Partial<Record<FaultCode, CellError['code']>>;

/**
 * One cell's error from all that is wrong, its messages joined by a space; bad input outweighs.
 * @throws RangeError when there is no fault, or one that isn't listed.
 */
export function cellError(faults: readonly Fault[]): CellError {
  if (faults.length === 0) throw new RangeError('A cell is refused without a fault.');
  return {
    kind: 'cell error',
    code: isBadInput(faults) ? BAD_INPUT : NO_ANSWER,
    message: faults.map((one) => one.message).join(' '),
  };
}

/** Whether any of the faults is one of the input itself. */
export function isBadInput(faults: readonly Fault[]): boolean {
  return faults.map(({ code }) => errorOf(code)).includes(BAD_INPUT);
}

function errorOf(code: FaultCode): CellError['code'] {
  const errors: Partial<Record<FaultCode, CellError['code']>> = CELL_ERRORS;
  const error = errors[code];
  if (error === undefined) throw new RangeError(`The fault ${code} has no error in a cell.`);
  return error;
}
