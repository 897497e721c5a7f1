/** The columns of Shop: one setting a row. */
import { headed } from './heading.ts';
import type { Heading } from './heading.ts';

export const SHOP_HEADINGS = [
  {
    ...headed('setting'),
    required: true,
    holds: 'name',
    meaning: 'Its name, as on the Shop sheet.',
    also: ['settings'],
    often: ['name', 'item'],
  },
  {
    ...headed('value'),
    required: true,
    holds: 'number',
    meaning: 'In its unit; blank takes the usual value.',
    also: ['values'],
  },
  {
    ...headed('unit'),
    holds: 'name',
    meaning: 'Of the value; blank is the unit that is usual for it.',
    also: ['units'],
  },
  {
    ...headed('note'),
    holds: 'note',
    meaning: 'For yourself.',
    also: ['notes', 'remark', 'remarks', 'comment', 'comments'],
  },
] as const satisfies readonly Heading[];
