/** What the office sheet says in sentences; its headings stand in office-columns.ts. */
import type { PriceBasis } from '../../planning/settings/money-settings.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';

export const SUBTITLE =
  'For the office: prices to quote from. All are parts of the moldings’ price, by the price basis of Shop. Minimum charge, delivery, what rounds the price up, and tax are of the whole job: they come on top. Change a rate here, or minutes on Labor, and hours and prices follow.';

export const HEADS = {
  totals: 'The job comes to',
  rates: 'Rates of the shop',
  price: 'The price of the job',
} as const;

export const SECTIONS = {
  money: 'By molding: lumber, labor and price',
  lumber: 'Lumber: what it costs as planned',
  borne: 'Lumber that each profile bears, as planned',
  shares: 'Shares of the lumber that profiles have in common',
  lines: 'By room and molding',
  checks: 'What must agree',
  terms: 'What the price is made by',
  bases: 'By the plan and by the offcut allowance',
  spent: 'Lumber and labor by the one and the other',
  jobPrice: 'Price of the job',
  lengths: 'By length',
  openings: 'By opening',
  rooms: 'By room',
  joints: 'By joint',
  options: 'Options',
  range: 'Low, likely, high',
  hours: 'Rates as the hours have them',
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

export const BASIS_NOTES: Readonly<Record<PriceBasis, string>> = {
  plan: 'The price goes by the plan: the sticks that it opens, their offcut credit, and the work on them. The client sees that one figure.',
  allowance:
    'The price goes by the offcut allowance: no stick, time of search or credit moves it, and more of anything never costs less. The client sees that one figure. Pieces cut already stay in it as long as they are asked for; what is cut and asked for no more is in the price by the plan alone.',
};

export const ALLOWED_NOTE =
  'Net and the allowance, at the least price of the lumber that can be bought; set-up spares are not in it. Percents are of what the heading names. Planned is what this plan opens.';

export const SPENT_NOTE =
  'By the allowance, passes, crosscuts and boards go by so many sticks or blanks of the row that prices the lumber: the length allowed over one of them, rounded up. Lumber planned is less offcut credit. The lines of labor stand on Labor.';

export const LENGTHS_NOTE =
  'Set-up is the work by the set-up; its spare is lumber as planned, which stays in both. More of a molding is in longer runs: lumber as the price has it by net length, waste or allowance in it, and the work that grows with length; no set-up, no more pieces, ends or crosscuts. More pieces as they are on average cost the price without set-up. Both are averages: whether one stick more is opened, only a new plan says.';

export const OPENINGS_NOTE =
  'What Openings makes: casing, aprons, stools, each at its molding’s price by length. What openings take out of base or rails is not taken off here. Openings without pieces to cut are not counted.';

export const LINES_NOTE =
  'A line’s price is what its molding comes to up to it, by length, less what it came to before, so that prices round to the whole.';

export const ROOMS_NOTE =
  'Walls are all of the room’s in Walls, along their whole length, trimmed or not; blank where they are not known.';

export const JOINTS_NOTE =
  'The work of fitting and joining the parts of pieces that no stick gives whole; their overlap is lumber.';

export const RANGE_NOTE =
  'The price without tax, as the job was planned, ten thousand times: what has a Low or a High in Work or in Shop is drawn between these, likeliest as typed, each by itself; the whole job’s factor is one for all hours. Sticks and counts stay, of what is cut already too; wasted lumber brings no credit. What is typed on these sheets changes no figure of it.';

export const HOURS_NOTE =
  'From Hours as it stood when these sheets were written, against what this plan has to do of each kind of work. The rates that fit the hours best and lie nearest to those until now: one odd job changes little, several (coveledger rates, on the command line) more. They are in no price until Work, or Shop, says so.';

export const RANGE_LINES = {
  low: 'Low',
  likely: 'Likely',
  middle: 'Middle',
  high: 'High',
} as const;

export const RANGE_SAYS: Readonly<Record<keyof typeof RANGE_LINES, string>> = {
  low: 'one job in ten comes to less',
  likely: 'all as typed: the price as it stands',
  middle: 'as many jobs come to less as to more',
  high: 'one job in ten comes to more',
};

export const SHARES_NOTE =
  'What a row of boards costs goes by the widths of the strips that are cut from; what sticks cost, by their number.';

/** Under the heading of money, where the price goes by the allowance. */
export const BY_ALLOWANCE_NOTE =
  'The price goes by the offcut allowance: lumber, without offcut credit, and labor are those that it comes to below and on Labor. Passes and hours are as planned.';

export const CHECKS_NOTE =
  'Figures of two sheets, or of two tables, that are come by in different ways. Where they differ, one was changed after planning and the other was not.';

export const WHOLE_JOB = 'The whole job';
export const TOGETHER = 'Together';

export const NONE = {
  money: 'Nothing is left to pay for.',
  lumber: 'Nothing is needed.',
  lengths: 'Nothing is left to make.',
  openings: 'No opening has pieces to cut.',
  rooms: 'No room has pieces to cut.',
  joints: 'No piece is joined from parts.',
  hours: 'the job has none of it: nothing is learned from them',
} as const;

/** Beside an option that is in the price. */
export const TAKEN_UP = 'taken up';
