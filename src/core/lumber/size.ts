/** A size of a board or blank as it is handed in: a double, or an exact rational. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../faults/fault.ts';
import { exactDecimal, type ExactInches } from '../units/length.ts';

/** Inches, exact where the person's own typing was. */
export type Inches = number | ExactInches;

/** Exact inches above 0; faults `length.unreadable` (no finite number), `length.not-positive`. */
export function readSize(size: Inches, argument: Argument): Outcome<ExactInches> {
  return readFrom(size, argument, 'length.not-positive');
}

/** Exact inches of 0 or more; faults `length.unreadable` (no finite number), `length.negative`. */
export function readAllowance(size: Inches, argument: Argument): Outcome<ExactInches> {
  return readFrom(size, argument, 'length.negative');
}

/** The faults of several readings, in order. */
export function faultsOf(...outcomes: readonly Outcome<unknown>[]): readonly Fault[] {
  return outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.faults));
}

function readFrom(
  size: Inches,
  argument: Argument,
  code: 'length.not-positive' | 'length.negative',
): Outcome<ExactInches> {
  if (typeof size === 'number' && !Number.isFinite(size)) {
    return failed(fault('length.unreadable', argument, String(size)));
  }
  const exact = typeof size === 'number' ? exactDecimal(size) : size;
  const allowed = code === 'length.negative' ? exact.gte(0) : exact.gt(0);
  return allowed ? ok(exact) : failed(fault(code, argument, { inches: Number(size) }));
}
