/** The columns of Options. */
import { headed, type Heading } from './heading.ts';

export const OPTION_HEADINGS = [
  {
    ...headed('option'),
    required: true,
    holds: 'name',
    meaning:
      'A short name, as the client reads it: A, or Crown in the hall. Rows of the same name belong together.',
    also: ['choice', 'alternate', 'alternative'],
    often: ['name', 'item'],
  },
  {
    ...headed('room'),
    holds: 'name',
    meaning:
      'In which room; blank is in every room. An opening goes by the room that it is listed in.',
    also: ['rooms'],
    often: ['space', 'location'],
  },
  {
    ...headed('profile'),
    holds: 'name',
    meaning: 'Which molding; blank is every one.',
    also: ['molding', 'moulding'],
    often: ['trim'],
  },
  {
    ...headed('species'),
    holds: 'name',
    meaning: 'Moldings of which wood, as Profiles has it; blank is of every one.',
    also: ['wood'],
    often: ['lumber', 'timber', 'material'],
  },
  {
    ...headed('instead'),
    holds: 'name',
    meaning:
      'The profile that they are made of where the option is taken up, in another wood for instance. Blank: they are an addition, and neither in the price nor cut before.',
    also: ['in place of it', 'instead of it', 'made of'],
    often: ['to', 'becomes', 'with'],
  },
  {
    ...headed('taken'),
    holds: 'yes or no',
    meaning:
      'Yes: taken up, so that it is planned and in the price. Blank is no: it is priced by itself on the client’s copy.',
    also: ['taken up', 'accepted', 'chosen'],
    often: ['yes', 'order'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For the client, beside the option.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
