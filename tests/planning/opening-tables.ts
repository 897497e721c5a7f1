/** Jobs with one opening or a few, as tables that a person would type, and what comes of them. */
import { listPieces, type PieceList } from '../../src/planning/pieces/list-pieces.ts';
import { jobOf, type Tables } from './make-job.ts';

const OPENINGS =
  'Room,Wall,Kind,Width,Height,Sides cased,Reveal,Casing,Apron,Stool,Position,Quantity,Sill,Horn,Other room,Other wall,Other position';
const PROFILES =
  'Profile,Make,Blank width,Blank thickness,Spring,Cove width,Cove depth,Where,Height';
export const BASE = 'Base,buy,5,3/4,,,,,';
export const CASING = 'Casing,buy,3,3/4,,,,,';
export const CROWN = 'Crown,buy,4,3/4,38,,,,';
export const COVE = 'Ceiling cove,cove,4,1,,3,5/8,,';
export const SILL = 'Sill stock,buy,4,1,,,,,';
export const rail = (height = '', where = '') => `Chair rail,buy,3,3/4,,,,${where},${height}`;
const PLAIN_SHOP = 'Setting,Value\nend allowance,0\nhourly rate,60';
export const wallRuns = (...profiles: string[]) =>
  ['Room,Run,Profile,Length', ...profiles.map((one) => `Hall,North,${one},12'`)].join('\n');

export interface Given {
  readonly profiles?: readonly string[];
  readonly runs?: string;
  readonly openings?: readonly string[];
}
export const DOOR = 'Hall,North,door,36,80,1,,Casing,,,48,1,,,,,';
export const tablesOf = ({
  profiles = [BASE, CASING],
  runs,
  openings = [DOOR],
}: Given): Tables => ({
  profiles: [PROFILES, ...profiles].join('\n'),
  runs: runs ?? wallRuns('Base'),
  openings: [OPENINGS, ...openings].join('\n'),
  shop: PLAIN_SHOP,
});
export const list = (given: Given): PieceList => listPieces(jobOf(tablesOf(given)));
export const lengthsOf = ({ pieces }: PieceList, profile: string, room = 'Hall') =>
  pieces
    .filter((one) => one.profile === profile && one.room === room && !one.run.includes(','))
    .map((one) => one.cutLength.toFraction(true));
export const cutsOf = ({ cutAways }: PieceList) =>
  cutAways.map((one) => [one.room, one.run, one.profile, one.opening, Number(one.taken)]);
export const codesOf = ({ cautions }: PieceList) => cautions.map((one) => one.code);
export const placeOf = ({ cautions }: PieceList, code: string) =>
  cautions.filter((one) => one.code === code).map((one) => one.where);
