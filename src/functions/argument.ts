/**
 * What a function takes, as data: what faults call each argument, how a cell is read, its limits, and
 * what a blank stands for. read-argument.ts is where it is enforced.
 */
import type { Argument as FaultArgument } from '../core/faults/argument.ts';
import type { Fault } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';

interface Named {
  /** What faults call it. */
  readonly name: FaultArgument;
  /**
   * A 0 is what some Excel hands over for a blank cell: it counts as left out wherever the limits rule it
   * out, and here too. (Where a 0 can be meant, as in quantities, it is one.)
   */
  readonly zero?: 'left out';
}

/** Inches, or a text such as 3 1/2 or 90 mm; 'exact length' keeps what was typed as a fraction. */
export interface LengthArgument extends Named {
  readonly kind: 'length' | 'exact length';
  readonly least: 'above 0' | 'from 0' | 'any';
  /** Inches for a blank cell; a blank is refused, or stays absent. */
  readonly blank: 'refused' | 'absent' | number;
  /** More than any shop has; inches. Absent: any length. */
  readonly most?: number;
}

/** Degrees. Without limits the core is the judge. */
export interface AngleArgument extends Named {
  readonly kind: 'angle';
  /** From what it is measured: the blade line. */
  readonly from: string;
  /** What a number of degrees that can't be meant is answered with; it may be one of radians. */
  readonly asked?: (name: FaultArgument, angle: number) => Fault | undefined;
  readonly limits?: { readonly above?: number; readonly least?: number; readonly most: number };
  readonly blank: 'refused' | number;
}

export interface WholeArgument extends Named {
  readonly kind: 'whole number';
  readonly least: number;
  readonly most: number;
  readonly blank: 'refused' | number;
}

/** One of a few words, whatever their case; the first stands for a blank. */
export interface WordArgument extends Named {
  readonly kind: 'word';
  readonly allowed: readonly [string, ...string[]];
}

export type Argument = LengthArgument | AngleArgument | WholeArgument | WordArgument;

/** The arguments of a function in the order in which it takes them. */
export type ArgumentTable = Readonly<Record<string, Argument>>;

type Read<One extends Argument> = One extends { kind: 'word' }
  ? One['allowed'][number]
  : One extends { kind: 'exact length' }
    ? ExactInches
    : number;

/** What an argument is once it is read. */
export type Value<One extends Argument> =
  Read<One> | (One extends { blank: 'absent' } ? undefined : never);

/** One row's or cell's worth of arguments. */
export type Values<Table extends ArgumentTable> = {
  readonly [Key in keyof Table]: Value<Table[Key]>;
};
