/** The columns of Work. */
import { PER_UNITS } from '../../work/per-units.ts';
import { headed, type Heading } from './heading.ts';

export const WORK_HEADINGS = [
  {
    ...headed('workDone'),
    required: true,
    holds: 'name',
    meaning:
      'A usual kind of work, as listed below, or one of your own. Once for the same moldings; a row for a molding goes before one for its Make, and that before one for all.',
    also: ['task', 'operation', 'labor', 'labour'],
    often: ['item', 'name', 'description', 'activity'],
  },
  {
    ...headed('per'),
    holds: 'word',
    allowed: PER_UNITS.map(({ word }) => word),
    meaning: 'What it is counted by; blank is as is usual for that work.',
    also: ['counted by', 'by'],
    often: ['unit', 'each'],
  },
  {
    ...headed('minutes'),
    holds: 'number',
    meaning:
      'For each; blank is the usual. Of a factor: what the hours of work by the foot are times.',
    also: ['min', 'mins', 'time', 'minutes each'],
    often: ['rate'],
  },
  {
    ...headed('moneyEach'),
    holds: 'money',
    meaning: 'For each, beside the time: what somebody else asks for it. It counts as labor.',
    also: ['amount', 'price each'],
    often: ['cost', 'price'],
  },
  {
    ...headed('for'),
    holds: 'name',
    meaning: 'A profile, or a Make (cove, crown cove, buy); blank is all.',
    also: ['profile', 'molding', 'moulding'],
    often: ['make', 'trim'],
  },
  {
    ...headed('ours'),
    holds: 'yes or no',
    meaning:
      'No, or nothing asked for it: not in the price, and said so on the client’s copy. Blank is yes.',
    also: ['included', 'in the price', 'by us'],
    often: ['who'],
  },
  {
    ...headed('minutesLow'),
    holds: 'number',
    meaning:
      'The least minutes, or the least factor, that are likely; blank is as Minutes. With it, or High, Office shows between which figures the price is likely to end.',
    also: ['low minutes', 'least'],
    often: ['best'],
  },
  {
    ...headed('minutesHigh'),
    holds: 'number',
    meaning: 'The most minutes, or the highest factor, that are likely; blank is as Minutes.',
    also: ['high minutes', 'most'],
    often: ['worst'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'Yours.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
