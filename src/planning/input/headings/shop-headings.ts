/** The columns of Shop: one setting a row. */
import type { Heading } from './heading.ts';

export const SHOP_HEADINGS = [
  {
    heading: 'Setting',
    required: true,
    holds: 'name',
    meaning: 'Its name, as on the Shop sheet.',
    also: ['settings'],
    often: ['name', 'item'],
  },
  {
    heading: 'Value',
    required: true,
    holds: 'number',
    meaning: 'In its unit; blank takes the usual value.',
    also: ['values'],
  },
  {
    heading: 'Unit',
    holds: 'name',
    meaning: 'Of the value; blank is the unit that is usual for it.',
    also: ['units'],
  },
  {
    heading: 'Note',
    holds: 'note',
    meaning: 'For yourself.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
