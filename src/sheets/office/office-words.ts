/** What the office sheet says in sentences; its headings stand in office-columns.ts. */
import type { LengthUnit } from '../../core/units/length-unit.ts';

export const SUBTITLE =
  'For the office: prices to quote from. All are parts of the moldings’ price as planned. Minimum charge, delivery, what rounds the price up, and tax are of the whole job: they come on top, see Production.';

export const SECTIONS = {
  terms: 'What the price is made by',
  lengths: 'By length',
  openings: 'By opening',
  rooms: 'By room',
  joints: 'By joint',
  options: 'Options',
  range: 'Low, likely, high',
} as const;

export const TERM_LINES = {
  material: 'Of lumber, times',
  labor: 'Of labor, times',
  more: 'More of a molding',
} as const;

export const TERMS_SAY = {
  material: 'by overhead, contingency, markup and margin; less credit',
  labor: 'by the same, with the markup on labor',
} as const;

export const MORE_SAYS: Readonly<Record<LengthUnit, string>> = {
  in: 'ft: what more of it to price; type another',
  mm: 'm: what more of it to price; type another',
};

export const LENGTHS_NOTE =
  'Set-up is the work by the set-up; its spare is lumber, which stays in both. More of a molding is in longer runs: lumber as it costs by net length in this plan, waste and spare in it, and the work that grows with length; no set-up, no more pieces, ends or crosscuts. More pieces as they are on average cost the price without set-up. Both are averages: whether one stick more is opened, only a new plan says.';

export const OPENINGS_NOTE =
  'What Openings makes: casing, aprons, stools, each at its molding’s price by length. What openings take out of base or rails is not taken off here. Openings without pieces to cut are not counted.';

export const ROOMS_NOTE =
  'Walls are all of the room’s in Walls, along their whole length, trimmed or not; blank where they are not known.';

export const JOINTS_NOTE =
  'The work of fitting and joining the parts of pieces that no stick gives whole; their overlap is lumber.';

export const RANGE_NOTE =
  'The price without tax, as the job was planned: ten thousand times the minutes of the rows of Work that say Low or High are drawn between these, likeliest at Minutes, each by itself; lumber and counts stay. What is typed on these sheets changes no figure of it.';

export const RANGE_LINES = {
  low: 'Low',
  likely: 'Likely',
  middle: 'Middle',
  high: 'High',
} as const;

export const RANGE_SAYS: Readonly<Record<keyof typeof RANGE_LINES, string>> = {
  low: 'one job in ten comes to less',
  likely: 'at the minutes of Work: the price as planned',
  middle: 'as many jobs come to less as to more',
  high: 'one job in ten comes to more',
};

export const WHOLE_JOB = 'The whole job';
export const TOGETHER = 'Together';

export const NONE = {
  lengths: 'Nothing is left to make.',
  openings: 'No opening has pieces to cut.',
  rooms: 'No room has pieces to cut.',
  joints: 'No piece is joined from parts.',
} as const;

/** Beside an option that is in the price. */
export const TAKEN_UP = 'taken up';
