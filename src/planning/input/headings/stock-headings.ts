/** The columns of Stock. */
import { headed } from './heading.ts';
import { THICKNESS_CLASS_NAMES } from '../../../core/lumber/thickness-class.ts';
import { PRICE_PER, STOCK_KINDS } from '../../job.ts';
import type { Heading } from './heading.ts';

export const STOCK_HEADINGS = [
  {
    ...headed('for'),
    required: true,
    holds: 'name',
    meaning: 'A profile, or a species that coves are cut from.',
    also: ['profile', 'molding', 'moulding', 'trim', 'item'],
    often: ['species', 'material', 'wood', 'name', 'description', 'product'],
  },
  {
    ...headed('kind'),
    holds: 'word',
    allowed: STOCK_KINDS,
    meaning: 'Sticks of a molding, or boards that are ripped into blanks; blank is stick.',
    often: ['type'],
  },
  {
    ...headed('thicknessClass'),
    holds: 'word',
    allowed: THICKNESS_CLASS_NAMES,
    meaning: 'Thickness class of boards; blank is any.',
    also: ['thickness class'],
  },
  {
    ...headed('width'),
    holds: 'length',
    meaning: 'Of a board: it needs one.',
    also: ['board width'],
    often: ['wide'],
  },
  {
    ...headed('length'),
    required: true,
    holds: 'length',
    meaning: 'Of one stick or board.',
    also: ['len', 'lengths', 'stick length', 'board length'],
    often: ['long', 'size', 'feet'],
  },
  {
    ...headed('price'),
    required: true,
    holds: 'money',
    meaning: 'In the currency of Shop, for what Per says.',
    also: ['unit price', 'unit cost'],
    often: ['cost', 'each', 'rate'],
  },
  {
    ...headed('per'),
    holds: 'word',
    allowed: PRICE_PER,
    meaning: 'What the price is for; blank is piece.',
    also: ['price per', 'priced per', 'priced by'],
    often: ['unit'],
  },
  {
    ...headed('have'),
    holds: 'count',
    meaning: 'How many are on the rack; blank is none.',
    also: ['on hand', 'in stock', 'on rack', 'rack'],
    often: ['stock', 'available', 'qty', 'quantity', 'count', 'pcs', 'pieces'],
  },
  {
    ...headed('buy'),
    holds: 'count',
    meaning: 'Yes, no, or how many may be bought at most; blank is yes.',
  },
  {
    ...headed('grade'),
    holds: 'name',
    meaning: 'Of boards or sticks, such as FAS or No. 1 Common; blank is any.',
    also: ['lumber grade', 'grade name'],
    often: ['quality'],
  },
  {
    ...headed('yieldPercent'),
    holds: 'percent',
    meaning:
      'Of boards that are bought: which percent of a board can be used, by its grade; blank is 100, boards taken as clear.',
    also: ['usable', 'grade yield', 'clear face'],
    often: ['recovery'],
  },
  {
    ...headed('defects'),
    holds: 'note',
    meaning:
      'Of one board or stick on the rack: what can’t be used, from and to along it from its marked end, such as 30-34; 70-72 1/2. Blank is none.',
    also: ['defect', 'knots'],
    often: ['flaws'],
  },
] as const satisfies readonly Heading[];
