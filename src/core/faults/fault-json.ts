/** Faults as other programs read them: what each is about is said in words. */
import { sayArgument } from './argument.ts';
import type { Fault } from './fault.ts';

export interface FaultJson extends Omit<Fault, 'argument'> {
  readonly argument: string;
}

export function faultsToJson(faults: readonly Fault[]): readonly FaultJson[] {
  return faults.map((one) => ({ ...one, argument: sayArgument(one.argument) }));
}
