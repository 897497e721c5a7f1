import type { Caution, Fault } from '../core/faults/fault.ts';

/** All that is to be said of an answer, a line each: what stands against it, then its cautions. */
export function sayReasons(faults: readonly Fault[], cautions: readonly Caution[]): string {
  const lines = [
    ...faults.map(({ message }) => message),
    ...cautions.map(({ message }) => `Caution: ${message}`),
  ];
  return [...new Set(lines)].join('\n');
}
