/** What the production sheet says in sentences; its headings stand in production-columns.ts. */
import { nameKey } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { count, printExact } from '../words/print-length.ts';

export const SECTIONS = {
  order: 'Order of work',
  quantities: 'By profile',
  lumber: 'Lumber: what to pull from the rack, and what to buy',
  cautions: 'Cautions',
  rooms: 'By room',
} as const;

/** In place of the rows of a table that has none. */
export const NOTHING = {
  do: 'Nothing is left to do.',
  make: 'Nothing is left to make.',
  need: 'Nothing is needed.',
} as const;

/** What no one profile bears: work for the whole job. */
export const WHOLE_JOB = 'The whole job';

export const MAKES = { cove: 'cove, cut here', 'crown cove': 'crown, cut here', buy: 'bought' };

/** Of lumber whose width or thickness isn't given; sums pass over text. */
export const UNKNOWN = 'not known';

/** In place of the board feet of what is bought ready made. */
export const SOLD_BY_LENGTH = 'by length';

export const WHY_THIS_ORDER =
  'Coves stand by blade tilt (from upright), then by approach (from the blade line), the smallest first: so each change of the saw is the least.';

export const CUT_AWAYS_NOTE =
  'Along the wall, casing included, and off the pieces already. Of a run that is asked for several times, out of each.';

export const ROOMS_NOTE =
  'Lines add up their rows of Pieces; passes and hours are shared by length.';

/** How large the job is, and how its lengths are given. */
export function sayHead({ job: { shop }, pieces, profiles }: JobPlan): string {
  const rooms = new Set(pieces.map((piece) => piece.room)).size;
  const unit = shop.unit === 'mm' ? 'millimetres' : 'inches';
  return `${count(rooms, 'room')}, ${count(profiles.length, 'profile')} to make or buy. Lengths in ${unit}, to the next ${printExact(shop.lengthPrecision, shop)}, from end to end as Pieces says.`;
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
