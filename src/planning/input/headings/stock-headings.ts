/** The columns of Stock. */
import { THICKNESS_CLASS_NAMES } from '../../../core/lumber/thickness-class.ts';
import { PRICE_PER, STOCK_KINDS } from '../../job.ts';
import type { Heading } from './heading.ts';

export const STOCK_HEADINGS = [
  {
    heading: 'For',
    required: true,
    holds: 'name',
    meaning: 'A profile, or a species that coves are cut from.',
    also: ['profile', 'molding', 'moulding', 'trim', 'item'],
    often: ['species', 'material', 'wood', 'name', 'description', 'product'],
  },
  {
    heading: 'Kind',
    holds: 'word',
    allowed: STOCK_KINDS,
    meaning: 'Sticks of a molding, or boards that are ripped into blanks; blank is stick.',
    often: ['type'],
  },
  {
    heading: 'Class',
    holds: 'word',
    allowed: THICKNESS_CLASS_NAMES,
    meaning: 'Thickness class of boards; blank is any.',
    also: ['thickness class'],
  },
  {
    heading: 'Width',
    holds: 'length',
    meaning: 'Of a board: it needs one.',
    also: ['board width'],
    often: ['wide'],
  },
  {
    heading: 'Length',
    required: true,
    holds: 'length',
    meaning: 'Of one stick or board.',
    also: ['len', 'lengths', 'stick length', 'board length'],
    often: ['long', 'size', 'feet'],
  },
  {
    heading: 'Price',
    required: true,
    holds: 'money',
    meaning: 'In the currency of Shop, for what Per says.',
    also: ['unit price', 'unit cost'],
    often: ['cost', 'each', 'rate'],
  },
  {
    heading: 'Per',
    holds: 'word',
    allowed: PRICE_PER,
    meaning: 'What the price is for; blank is piece.',
    also: ['price per', 'priced per', 'priced by'],
    often: ['unit'],
  },
  {
    heading: 'Have',
    holds: 'count',
    meaning: 'How many are on the rack; blank is none.',
    also: ['on hand', 'in stock', 'on rack', 'rack'],
    often: ['stock', 'available', 'qty', 'quantity', 'count', 'pcs', 'pieces'],
  },
  {
    heading: 'Buy',
    holds: 'count',
    meaning: 'Yes, no, or how many may be bought at most; blank is yes.',
  },
] as const satisfies readonly Heading[];
