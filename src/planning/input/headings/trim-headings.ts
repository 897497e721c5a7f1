/** The columns of Trim. */
import { INSIDE_CORNERS, TRIM_PLACES } from '../../room-rows.ts';
import { headed, type Heading } from './heading.ts';

export const TRIM_HEADINGS = [
  {
    ...headed('room'),
    required: true,
    holds: 'name',
    meaning:
      'A room of Walls, or all; a room’s own row goes before the one for all of the same profile and Where.',
    also: ['area', 'location', 'space', 'room name'],
    often: ['place'],
  },
  {
    ...headed('profile'),
    required: true,
    holds: 'name',
    meaning: 'The molding, by its name on Profiles.',
    also: ['molding', 'moulding', 'item', 'profile name', 'trim profile'],
    often: ['trim', 'type', 'name', 'style', 'description', 'product'],
  },
  {
    ...headed('where'),
    required: true,
    holds: 'word',
    allowed: TRIM_PLACES,
    meaning:
      'Where on the walls it runs, and so what openings cut away of it; it goes before Where on Profiles.',
    often: ['at', 'position'],
  },
  {
    ...headed('height'),
    holds: 'length',
    meaning: 'Of what is at a height: from the floor to its lower edge; blank is as on Profiles.',
    often: ['high'],
  },
  {
    ...headed('walls'),
    holds: 'name',
    meaning:
      'Names of walls with commas between them, or except and the names of those without; blank, or all, is all of the room.',
    also: ['on walls', 'which walls'],
    often: ['wall', 'runs'],
  },
  {
    ...headed('insideCorners'),
    holds: 'word',
    allowed: INSIDE_CORNERS,
    meaning: 'How two pieces meet at an inside corner; blank is cope.',
    also: ['inside corner'],
  },
  {
    ...headed('starts'),
    holds: 'name',
    meaning:
      'The wall whose piece goes up first, square at both ends; blank is the wall across from the door.',
    also: ['starts at', 'starts on', 'start wall'],
    often: ['start', 'first'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'Stands with each of its pieces.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
