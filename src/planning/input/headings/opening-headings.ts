/** The columns of Openings. */
import { OPENING_KINDS } from '../../job.ts';
import type { Heading } from './heading.ts';

export const OPENING_HEADINGS = [
  {
    heading: 'Room',
    required: true,
    holds: 'name',
    meaning: 'The room that its casing stands in.',
    also: ['area', 'location', 'space', 'room name'],
    often: ['where', 'place'],
  },
  {
    heading: 'Wall',
    holds: 'name',
    meaning:
      'The name that the runs of its wall have under Run: what the opening takes out of them is cut away; blank cuts nothing away.',
    also: ['wall name'],
    often: ['run'],
  },
  {
    heading: 'Kind',
    required: true,
    holds: 'word',
    allowed: OPENING_KINDS,
    meaning: 'What it is: a window has an apron and a stool and stands on none of the floor.',
    also: ['opening kind', 'opening type', 'kind of opening'],
    often: ['type', 'opening'],
  },
  {
    heading: 'Width',
    required: true,
    holds: 'length',
    meaning: 'Of the clear opening, from jamb to jamb.',
    also: ['opening width'],
    often: ['wide'],
  },
  {
    heading: 'Height',
    required: true,
    holds: 'length',
    meaning: 'Of the clear opening.',
    also: ['opening height'],
    often: ['high', 'tall'],
  },
  {
    heading: 'Sides cased',
    holds: 'count',
    meaning: '1 or 2: how many sides of the wall get casing; blank is 1.',
    also: ['cased sides'],
    often: ['sides'],
  },
  {
    heading: 'Reveal',
    holds: 'length',
    meaning: 'What stays in sight of the jamb beside the casing; blank is 3/16 in (nearly 5 mm).',
  },
  {
    heading: 'Casing',
    holds: 'name',
    meaning: 'Profile of the legs and the head; blank is none.',
    also: ['casing profile'],
    often: ['case', 'trim'],
  },
  {
    heading: 'Apron',
    holds: 'name',
    meaning: "Profile of a window's apron; blank is none.",
    also: ['apron profile'],
  },
  {
    heading: 'Stool',
    holds: 'name',
    meaning: "Profile of a window's stool; blank is none.",
    also: ['stool profile'],
  },
  {
    heading: 'Position',
    holds: 'length',
    meaning:
      "From the wall's left corner to the opening's left edge; blank takes the opening out of the run's length without parting it.",
  },
  {
    heading: 'Quantity',
    holds: 'count',
    meaning: 'How many such openings; blank is 1.',
    also: ['qty', 'quantities', 'pcs', 'pieces', 'count', 'how many'],
    often: ['amount', 'number', 'units', 'ea'],
  },
  {
    heading: 'Sill',
    holds: 'length',
    meaning: "From the floor to a window's opening; blank cuts no rail away.",
    also: ['sill height'],
  },
  {
    heading: 'Horn',
    holds: 'length',
    meaning: "How far a stool's ends stand out beyond the casing; blank is 1 in.",
    also: ['horns'],
  },
  {
    heading: 'Other room',
    holds: 'name',
    meaning: 'The room that its second side is in; blank is none that is listed.',
  },
  { heading: 'Other wall', holds: 'name', meaning: 'As Wall, in the other room.' },
  {
    heading: 'Other position',
    holds: 'length',
    meaning: "As Position, on the other room's wall and seen from there.",
  },
] as const satisfies readonly Heading[];
