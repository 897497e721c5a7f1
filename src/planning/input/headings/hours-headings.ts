/** The columns of Hours. */
import { headed, type Heading } from './heading.ts';

export const HOURS_HEADINGS = [
  {
    ...headed('dayOfHours'),
    holds: 'day',
    meaning: 'The day on which it was done, such as 2026-11-30.',
    also: ['day', 'done on'],
    often: ['when'],
  },
  {
    ...headed('workDone'),
    required: true,
    holds: 'name',
    meaning:
      'A kind of work as Work and the usual kinds name it; or all, for hours of the whole job that were not parted by kinds.',
    also: ['task', 'operation', 'labor', 'labour'],
    often: ['item', 'name', 'description', 'activity'],
  },
  {
    ...headed('profile'),
    holds: 'name',
    meaning: 'The molding that it was done on; blank, or all, is all of the job together.',
    also: ['molding', 'moulding', 'for'],
    often: ['trim'],
  },
  {
    ...headed('hours'),
    required: true,
    holds: 'hours',
    meaning:
      'What it took, of all who were at it together: 1:30, 2 h or 90 min. A bare number is hours.',
    also: ['hrs', 'h', 'time', 'duration', 'hours spent'],
    often: ['spent'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For yourself: it is read nowhere.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
