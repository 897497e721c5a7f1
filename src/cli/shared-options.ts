/** Options that several commands take, in the same words each time. */
import type { OptionDefinition } from './command.ts';

export const JSON_OPTION: OptionDefinition = {
  name: '--json',
  says: 'Answer as JSON, faults and cautions included, and say nothing else.',
};

export const FORCE_OPTION: OptionDefinition = {
  name: '--force',
  says: 'Replace the file if it is there already.',
};

export const HELP_OPTION: OptionDefinition = { name: '--help', says: 'Show this.' };
