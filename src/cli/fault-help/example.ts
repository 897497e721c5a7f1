/** What help on a fault is made of: what it means, and an example that is run whenever it is shown. */
import type { Argument } from '../../core/faults/argument.ts';
import { own } from '../../core/faults/argument.ts';
import type { Quantity } from '../../core/faults/quantity.ts';
import type { TableName } from './sound-job.ts';

/** Each table as the CSV text that a person would keep. */
export type Tables = Readonly<Partial<Record<TableName, string>>>;

export type Example =
  /** A table of a small sound job, with something wrong in it, and mended; `beside` are tables of both. */
  | {
      readonly kind: 'job';
      readonly table: TableName;
      readonly given: string;
      readonly mended: string;
      readonly beside: Tables;
    }
  /** What was typed after coveledger. */
  | { readonly kind: 'call'; readonly given: readonly string[]; readonly mended: readonly string[] }
  /** What no typing alone brings about: a file, a program, a plan of before. It is said of these. */
  | {
      readonly kind: 'told';
      readonly argument: Argument;
      readonly given: Quantity;
      readonly limit?: Quantity;
      readonly details?: Readonly<Record<string, Quantity>>;
    };

/** Its meaning, its example, and what to do instead where that is more than the mended example. */
export type FaultHelp = readonly [means: string, example: Example, instead?: string];

export function job(table: TableName, given: string, mended: string, beside: Tables = {}): Example {
  return { kind: 'job', table, given, mended, beside };
}

export function shop(given: string, mended: string, beside: Tables = {}): Example {
  return job('shop', `Setting,Value\n${given}`, `Setting,Value\n${mended}`, beside);
}

export function call(given: string, mended: string): Example {
  return { kind: 'call', given: given.split(' '), mended: mended.split(' ') };
}

export function told(
  argument: Argument | { readonly name: string },
  given: Quantity,
  details: Readonly<Record<string, Quantity>> = {},
  limit?: Quantity,
): Example {
  const about = typeof argument === 'object' && 'name' in argument ? own(argument.name) : argument;
  return {
    kind: 'told',
    argument: about,
    given,
    details,
    ...(limit === undefined ? {} : { limit }),
  };
}

export const inches = (length: number): Quantity => ({ inches: length });
export const degrees = (angle: number): Quantity => ({ degrees: angle });
