/** The columns of Openings. */
import { headed } from './heading.ts';
import { OPENING_KINDS } from '../../job.ts';
import type { Heading } from './heading.ts';

export const OPENING_HEADINGS = [
  {
    ...headed('room'),
    required: true,
    holds: 'name',
    meaning: 'The room that its casing stands in.',
    also: ['area', 'location', 'space', 'room name'],
    often: ['where', 'place'],
  },
  {
    ...headed('wall'),
    holds: 'name',
    meaning:
      'A wall of Walls, or the name that the runs of its wall have under Run: what the opening takes out of them is cut away; blank cuts nothing away.',
    also: ['wall name'],
    often: ['run'],
  },
  {
    ...headed('kind'),
    required: true,
    holds: 'word',
    allowed: OPENING_KINDS,
    meaning: 'What it is: a window has an apron and a stool and stands on none of the floor.',
    also: ['opening kind', 'opening type', 'kind of opening'],
    often: ['type', 'opening'],
  },
  {
    ...headed('width'),
    required: true,
    holds: 'length',
    meaning: 'Of the clear opening, from jamb to jamb.',
    also: ['opening width'],
    often: ['wide'],
  },
  {
    ...headed('height'),
    required: true,
    holds: 'length',
    meaning: 'Of the clear opening.',
    also: ['opening height'],
    often: ['high', 'tall'],
  },
  {
    ...headed('sidesCased'),
    holds: 'count',
    meaning: '1 or 2: how many sides of the wall get casing; blank is 1.',
    also: ['cased sides'],
    often: ['sides'],
  },
  {
    ...headed('reveal'),
    holds: 'length',
    meaning:
      'What stays in sight of the jamb beside the casing; blank is 3/16 in (5 mm in a metric shop).',
  },
  {
    ...headed('casing'),
    holds: 'name',
    meaning: 'Profile of the legs and the head; blank is none.',
    also: ['casing profile'],
    often: ['case', 'trim'],
  },
  {
    ...headed('apron'),
    holds: 'name',
    meaning: "Profile of a window's apron; blank is none.",
    also: ['apron profile'],
  },
  {
    ...headed('stool'),
    holds: 'name',
    meaning: "Profile of a window's stool; blank is none.",
    also: ['stool profile'],
  },
  {
    ...headed('position'),
    holds: 'length',
    meaning:
      "From the wall's left corner to the opening's left edge; blank takes the opening out of the run's length without parting it.",
  },
  {
    ...headed('quantity'),
    holds: 'count',
    meaning: 'How many such openings; blank is 1.',
    also: ['qty', 'quantities', 'pcs', 'pieces', 'count', 'how many'],
    often: ['amount', 'number', 'units', 'ea'],
  },
  {
    ...headed('sill'),
    holds: 'length',
    meaning: "From the floor to a window's opening; blank cuts no rail away.",
    also: ['sill height'],
  },
  {
    ...headed('horn'),
    holds: 'length',
    meaning:
      "How far a stool's ends stand out beyond the casing; blank is 1 in (25 mm in a metric shop).",
    also: ['horns'],
  },
  {
    ...headed('otherRoom'),
    holds: 'name',
    meaning: 'The room that its second side is in; blank is none that is listed.',
  },
  { ...headed('otherWall'), holds: 'name', meaning: 'As Wall, in the other room.' },
  {
    ...headed('otherPosition'),
    holds: 'length',
    meaning: "As Position, on the other room's wall and seen from there.",
  },
] as const satisfies readonly Heading[];
