/** Options that several commands take, in the same words each time. */
import { dayOf, parseDay } from '../core/units/calendar-day.ts';
import { syntax } from '../core/faults/argument.ts';
import type { Fault } from '../core/faults/fault.ts';
import type { Stamp } from '../sheets/stamp.ts';
import type { Call, OptionDefinition } from './command.ts';
import { SECONDS_OPTION, STEPS_OPTION } from './effort.ts';

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

/** Where the file goes that a command writes. @param value as shown in the usage: FILE.zip */
export function outOption(value: string, says: string): OptionDefinition {
  const elsewhere = ['--output', '--outfile', '--to', '--file'];
  return { name: '--out', short: '-o', elsewhere, value, says };
}

export const HELP_OPTION: OptionDefinition & { readonly short: string } = {
  name: '--help',
  short: '-h',
  says: 'Show this.',
};

export const DATE_OPTION: OptionDefinition = {
  name: '--date',
  value: 'YYYY-MM-DD',
  says: 'The day that what is written bears (today). With --steps, the same bytes on every machine.',
};

/** Of every command that plans a job: how long it is looked for, how much is said, which day it bears. */
export const PLANNING_OPTIONS: readonly OptionDefinition[] = [
  SECONDS_OPTION,
  STEPS_OPTION,
  QUIET_OPTION,
  VERBOSE_OPTION,
  DATE_OPTION,
];

/** The day that --date gives, or today and the moment by this machine's clock. */
export function readDay({ values }: Call, faults: Fault[]): Pick<Stamp, 'day' | 'moment'> {
  const typed = values.get(DATE_OPTION.name);
  if (typed === undefined) {
    const now = new Date();
    return { day: dayOf(now), moment: now.toISOString() };
  }
  const day = parseDay(typed, syntax(DATE_OPTION.name));
  if (day.ok) return { day: day.value };
  faults.push(...day.faults);
  return { day: '' };
}
