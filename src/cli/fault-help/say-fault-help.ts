/** Help on one code, in the terminal. */
import type { FaultCode } from '../../core/faults/fault.ts';
import { join, wrap } from '../help-text.ts';
import type { Example } from './example.ts';
import { FAULT_HELP } from './fault-help.ts';
import { messageOf } from './raise.ts';
import { TABLE_NAMES } from './sound-job.ts';

/** What stands over an example, what was typed, and how it is said. */
export interface ExampleWords {
  /** `A row of Runs`; `A call`; absent where nothing is typed. */
  readonly where?: string;
  readonly given?: readonly string[];
  readonly mended?: readonly string[];
}

/** The lines that differ, with a table's headings over them. */
export function wordsOfExample(example: Example): ExampleWords {
  if (example.kind === 'told') return {};
  if (example.kind === 'call') {
    const line = (args: readonly string[]): string[] => [`coveledger ${args.join(' ')}`];
    return { where: 'A call', given: line(example.given), mended: line(example.mended) };
  }
  const [given, mended] = [example.given.split('\n'), example.mended.split('\n')];
  const table = TABLE_NAMES[example.table];
  return { where: `In ${table} (${example.table}.csv)`, given, mended };
}

export async function sayFaultHelp(code: FaultCode): Promise<string> {
  const [means, example, instead] = FAULT_HELP[code];
  const { where, given, mended } = wordsOfExample(example);
  const message = await messageOf(code, example);
  const lines = (some: readonly string[]): string => some.map((one) => `  ${one}`).join('\n');
  return join([
    `${code}\n${wrap(means)}`,
    ...(given === undefined ? [] : [`${where ?? ''}:\n${lines(given)}`]),
    `${given === undefined ? 'It says, for example' : 'It says'}:\n${wrap(message)}`,
    ...(mended === undefined ? [] : [`Type instead:\n${lines(mended)}`]),
    ...(instead === undefined ? [] : [`What to do:\n${wrap(instead)}`]),
  ]);
}
