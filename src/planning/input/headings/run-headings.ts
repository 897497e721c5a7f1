/** The columns of Runs. */
import { headed } from './heading.ts';
import { END_KINDS, MEASURES } from '../../job.ts';
import type { Heading } from './heading.ts';

/** A blank corner is square. */
const CORNER = 'Angle of the wall corner at that end, in degrees; blank is 90.';

export const RUN_HEADINGS = [
  {
    ...headed('room'),
    required: true,
    holds: 'name',
    meaning: 'The room that the molding goes into.',
    also: ['area', 'location', 'space', 'room name'],
    often: ['where', 'place'],
  },
  {
    ...headed('run'),
    holds: 'name',
    meaning: "Name of the run, such as its wall; blank is the profile's name.",
    also: ['wall', 'wall name', 'run name', 'mark', 'tag'],
    often: ['id', 'no', 'number'],
  },
  {
    ...headed('profile'),
    required: true,
    holds: 'name',
    meaning: 'The molding, by its name on Profiles.',
    also: ['molding', 'moulding', 'trim', 'item', 'profile name', 'trim profile'],
    often: ['type', 'name', 'style', 'description', 'product', 'part'],
  },
  {
    ...headed('length'),
    required: true,
    holds: 'length',
    meaning: 'As Measured as says; without a unit it is in the unit that Shop names.',
    also: ['len', 'lengths', 'wall length', 'run length'],
    often: ['long', 'size', 'inches', 'feet', 'mm', 'lf', 'lineal feet', 'linear feet'],
  },
  {
    ...headed('measuredAs'),
    holds: 'word',
    allowed: MEASURES,
    meaning: 'What the tape was on; blank is wall.',
    also: ['measured'],
  },
  {
    ...headed('quantity'),
    holds: 'count',
    meaning: 'How many such runs; blank is 1.',
    also: ['qty', 'quantities', 'pcs', 'pieces', 'count', 'how many', 'no of pieces'],
    often: ['amount', 'number', 'units', 'ea'],
  },
  {
    ...headed('leftEnd'),
    holds: 'word',
    allowed: END_KINDS,
    meaning: 'As one faces the wall; blank is square.',
    also: ['left hand end', 'end left'],
    often: ['left', 'start', 'end 1', 'end a'],
  },
  {
    ...headed('rightEnd'),
    holds: 'word',
    allowed: END_KINDS,
    meaning: 'As one faces the wall; blank is square.',
    also: ['right hand end', 'end right'],
    often: ['right', 'end', 'end 2', 'end b'],
  },
  {
    ...headed('leftCorner'),
    holds: 'degrees',
    meaning: CORNER,
    also: ['left corner angle', 'left angle'],
  },
  {
    ...headed('rightCorner'),
    holds: 'degrees',
    meaning: CORNER,
    also: ['right corner angle', 'right angle'],
  },
  {
    ...headed('reveal'),
    holds: 'length',
    meaning:
      'Between the opening and the molding, of a run measured as opening; blank is 3/16 in (5 mm in a metric shop).',
  },
  {
    ...headed('onePiece'),
    holds: 'yes or no',
    meaning: 'Yes: never spliced; blank is no.',
    also: ['in one piece'],
  },
  {
    ...headed('match'),
    holds: 'name',
    meaning: 'Pieces with the same word here come from one stick; blank is from any.',
  },
  {
    ...headed('done'),
    holds: 'yes or no',
    meaning: 'Yes: stays on the sheets and leaves the plan; blank is no.',
    often: ['finished', 'complete', 'completed', 'cut'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For yourself.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
