/** The columns of Walls. */
import { TURNS } from '../../../core/room/wall.ts';
import { headed, type Heading } from './heading.ts';

export const WALL_HEADINGS = [
  {
    ...headed('room'),
    required: true,
    holds: 'name',
    meaning: 'The room that the wall is seen from.',
    also: ['area', 'location', 'space', 'room name'],
    often: ['where', 'place'],
  },
  {
    ...headed('wall'),
    required: true,
    holds: 'name',
    meaning:
      'A number or a name of its own in the room. Walls stand in order to the right, as one faces them from inside.',
    also: ['wall name', 'wall no'],
    often: ['name', 'no', 'number', 'id', 'run'],
  },
  {
    ...headed('length'),
    required: true,
    holds: 'length',
    meaning: 'Along the wall from corner to corner.',
    also: ['len', 'wall length'],
    often: ['long', 'size', 'inches', 'feet', 'mm'],
  },
  {
    ...headed('corner'),
    holds: 'degrees',
    meaning:
      "Between this wall and the next, at this one's right-hand end, as a bevel gauge reads it; blank is 90.",
    also: ['corner angle', 'right corner'],
    often: ['angle'],
  },
  {
    ...headed('turn'),
    holds: 'word',
    allowed: TURNS,
    meaning:
      'How the next wall goes on: inside, into the room; outside, where the corner sticks out into the room; end, where nothing follows and the room stays open. Blank is inside.',
  },
  {
    ...headed('cornerByTape'),
    holds: 'length',
    meaning:
      'In place of Corner: straight across from marks 36 in out on both walls, or 900 mm where Shop measures in mm. At an outside corner the marks stand on straightedges that run past it.',
    also: ['tape', 'across'],
  },
  {
    ...headed('height'),
    holds: 'length',
    meaning: 'From floor to ceiling, to check what is on the wall; blank checks nothing.',
    also: ['wall height', 'ceiling height'],
    often: ['high', 'ceiling'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For yourself.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
