/** What the production sheet says in sentences; its headings stand in production-columns.ts. */
import { nameKey } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { count, printExact } from '../words/print-length.ts';

export const SECTIONS = {
  order: 'Order of work',
  quantities: 'By profile: pieces, lengths and lumber',
  money: 'By profile: passes, hours and money',
  lumber: 'Lumber: what to pull from the rack, and what to buy',
  borne: 'Lumber that each profile bears, as planned',
  shares: 'Shares of the lumber that profiles have in common',
  checks: 'What must agree',
  cautions: 'Cautions',
  rooms: 'By room',
} as const;

/** In place of the rows of a table that has none. */
export const NOTHING = {
  do: 'Nothing is left to do.',
  make: 'Nothing is left to make.',
  pay: 'Nothing is left to pay for.',
  need: 'Nothing is needed.',
} as const;

export const MAKES = { cove: 'cove, cut here', 'crown cove': 'crown, cut here', buy: 'bought' };

/** Of lumber whose width or thickness isn't given; sums pass over text. */
export const UNKNOWN = 'not known';

/** In place of the board feet of what is bought ready made. */
export const SOLD_BY_LENGTH = 'by length';

export const WHY_THIS_ORDER =
  'Coves stand by blade tilt (from upright), then by approach (from the blade line), the smallest first: so each change of the saw is the least.';

export const SHARES_NOTE =
  'What a row of boards costs goes by the widths of the strips that are cut from; what sticks cost, by their number.';

/** Under the heading of money, where the price goes by the allowance. */
export const BY_ALLOWANCE_NOTE =
  'The price goes by the offcut allowance: lumber, without offcut credit, and labor are those that Office and Labor have by it. Passes and hours are as planned.';

export const CHECKS_NOTE =
  'Figures of two sheets, or of two tables, that are come by in different ways. Where they differ, one was changed after planning and the other was not.';

export const CUT_AWAYS_NOTE =
  'Along the wall, casing included, and off the pieces already. Of a run that is asked for several times, out of each.';

export const ROOMS_NOTE =
  'Lines add up their rows of Pieces; passes, hours and price are shared by length. A line’s price is what its profile comes to up to it, less what it came to before, so that prices round to the whole. Profile no. is that of the tables by profile.';

/** How large the job is, and how its lengths are given. */
export function sayHead({ job: { shop }, pieces, profiles }: JobPlan): string {
  const rooms = new Set(pieces.map((piece) => piece.room)).size;
  const unit = shop.unit === 'mm' ? 'millimetres' : 'inches';
  return `${count(rooms, 'room')}, ${count(profiles.length, 'profile')} to make or buy. Lengths in ${unit}, to the next ${printExact(shop.lengthPrecision, shop)}, from end to end as Pieces says. Change a rate here, or minutes on Labor, and hours and prices follow.`;
}

/** Profiles of the job that nothing is made of, each named once. */
export function sayNotMade({ job, pieces, profiles }: JobPlan): string[] {
  const planned = new Set(profiles.map(({ profile }) => profile));
  const asked = new Set(pieces.map(({ profile }) => nameKey(profile)));
  const rest = job.profiles.filter((profile) => !planned.has(profile));
  const done = rest.filter(({ name }) => asked.has(nameKey(name)));
  const unused = rest.filter(({ name }) => !asked.has(nameKey(name)));
  const say = (start: string, some: typeof rest): string[] =>
    some.length === 0 ? [] : [`${start}: ${some.map(({ name }) => name).join(', ')}.`];
  return [...say('Done already', done), ...say('Not used', unused)];
}
