/** Turns what Excel throws into faults; what is a bug of ours stays an exception. */
import type { Argument } from '../../core/faults/argument.ts';
import { failed, fault, type Fault, type Outcome } from '../../core/faults/fault.ts';

const EDITING = 'InvalidOperationInCellEditMode';
/** What a block of cells fails with that is too large for one request or answer. */
const TOO_LARGE = new Set([
  'RequestPayloadSizeLimitExceeded',
  'ResponsePayloadSizeLimitExceeded',
  'PayloadLimitExceeded',
]);
const BUGS = [RangeError, TypeError, ReferenceError, SyntaxError];

/**
 * The fault for what Excel threw: host.editing-cell or host.refused.
 *
 * @param what What was being done.
 * @throws the error itself where it is no refusal of Excel's but a bug.
 */
export function refusal(what: Argument, error: unknown): Fault {
  if (BUGS.some((kind) => error instanceof kind)) throw error;
  const code = codeOf(error);
  if (code === EDITING) return fault('host.editing-cell', what, null);
  return fault('host.refused', what, code ?? (error instanceof Error ? error.message : ''));
}

export function isTooLarge(error: unknown): boolean {
  return TOO_LARGE.has(codeOf(error) ?? '');
}

/** Does `work`; what Excel refuses is a fault. */
export async function attempt<T>(
  what: Argument,
  work: () => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (error) {
    return failed(refusal(what, error));
  }
}

function codeOf(error: unknown): string | undefined {
  if (typeof error !== 'object' || error === null || !('code' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}
