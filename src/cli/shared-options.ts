/** Options that several commands take, in the same words each time. */
import type { OptionDefinition } from './command.ts';

export const JSON_OPTION: OptionDefinition = {
  name: '--json',
  says: 'Answer as JSON, faults and cautions included, and say nothing else.',
};

export const FORCE_OPTION: OptionDefinition = {
  name: '--force',
  short: '-f',
  says: 'Replace the file if it is there already.',
  elsewhere: ['--overwrite', '--replace', '--yes'],
};

export const QUIET_OPTION: OptionDefinition = {
  name: '--quiet',
  short: '-q',
  says: 'Say nothing of what is done; cautions go to the error output.',
  elsewhere: ['--silent'],
};

export const VERBOSE_OPTION: OptionDefinition = {
  name: '--verbose',
  says: 'Name every usual value that stands in for a setting.',
};

/** What a file that is written is called by others. */
export const OUT_ELSEWHERE = ['--output', '--outfile', '--to', '--file'] as const;

export const HELP_OPTION: OptionDefinition & { readonly short: string } = {
  name: '--help',
  short: '-h',
  says: 'Show this.',
};
