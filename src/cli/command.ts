/** What a command is, what a person's call of it holds, and what it answers. */

export interface ArgumentDefinition {
  /** As shown in the usage: FILE.csv. */
  readonly name: string;
  readonly says: string;
  /** More of the same may follow; of the last one alone. */
  readonly repeats?: true;
}

export interface OptionDefinition {
  /** With its dashes: --kerf. */
  readonly name: string;
  /** The same in one letter: -o. */
  readonly short?: string;
  /** What others call it, for whoever types that: --output. Never read as it. */
  readonly elsewhere?: readonly string[];
  /** What it takes, as shown in the usage: LENGTH. Absent where it takes nothing. */
  readonly value?: string;
  readonly says: string;
  /** The command can't do without it; absent: it may be left out. */
  readonly needed?: true;
}

export interface Command {
  readonly name: string;
  readonly summary: string;
  /** All needed, in this order. */
  readonly arguments: readonly ArgumentDefinition[];
  readonly options: readonly OptionDefinition[];
  /** Further paragraphs of its help. */
  readonly notes: readonly string[];
  readonly examples: readonly string[];
  /** What the exit codes 0, 1 and 2 mean here; absent where the code is never given. */
  readonly exits: { readonly 0: string; readonly 1?: string; readonly 2: string };
  readonly run: (call: Call) => Promise<Report>;
}

export interface Call {
  readonly arguments: readonly string[];
  /** By name with dashes. */
  readonly values: ReadonlyMap<string, string>;
  readonly flags: ReadonlySet<string>;
}

/** 0 done, 1 the job can't be made as asked, 2 a bad call or bad input. */
export type Exit = 0 | 1 | 2;

/** A bug of ours, as against anything that a person can do about. */
export const BUG_EXIT = 3;

export interface Report {
  readonly exit: Exit;
  /** For the standard output and the error output, line ends included. */
  readonly output: string;
  readonly errors: string;
}

/** The argument at a place that the reading of the call has made sure of. */
export function argumentAt(call: Call, index: number): string {
  const value = call.arguments[index];
  if (value === undefined) throw new RangeError(`The call has no argument ${index + 1}.`);
  return value;
}
