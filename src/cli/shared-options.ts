/** Options that several commands take, in the same words each time. */
import { dayOf, parseDay, type CalendarDay } from '../core/units/calendar-day.ts';
import { syntax } from '../core/faults/argument.ts';
import type { Fault } from '../core/faults/fault.ts';
import type { Call, OptionDefinition } from './command.ts';

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

export const DATE_OPTION: OptionDefinition = {
  name: '--date',
  value: 'YYYY-MM-DD',
  says: 'The day that what is written bears (today). With --steps, the same bytes on every machine.',
};

/** The day that --date gives, or today by this machine's clock. */
export function readDay({ values }: Call, faults: Fault[]): CalendarDay {
  const typed = values.get(DATE_OPTION.name);
  if (typed === undefined) return dayOf(new Date());
  const day = parseDay(typed, syntax(DATE_OPTION.name));
  if (day.ok) return day.value;
  faults.push(...day.faults);
  return '';
}
