/** The columns of Job: what names the job, one thing a row. */
import { headed, type Heading } from './heading.ts';

export const TITLE_HEADINGS = [
  {
    ...headed('setting'),
    required: true,
    holds: 'name',
    meaning: 'What the row says, as on the Job sheet.',
    also: ['settings'],
  },
  {
    ...headed('value'),
    required: true,
    holds: 'name',
    meaning: 'In your words; a blank one is left out of the sheets.',
    also: ['values'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For yourself.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
