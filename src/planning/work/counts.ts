/**
 * How many of what work is counted by there are: the one place where each count is defined. What the sticks
 * of a plan decide has a second count, by the offcut allowance: see allowed-counts.ts beside.
 */
import type { ExactInches } from '../../core/units/length.ts';
import type { Profile } from '../job.ts';
import type { CutStick } from '../job-plan.ts';
import { countJoints } from '../joints.ts';
import type { Piece } from '../piece.ts';
import type { SetUp } from '../plan-setup.ts';
import type { Counts, LumberCounts } from './work-row.ts';

const INCHES_PER_FOOT = 12;
/** A crown's back, against the wall and against the ceiling. */
const BACK_BEVELS = 2;

/** What a profile's counts come from. */
export interface Counted {
  readonly profile: Profile;
  /** Those that count in the plan. */
  readonly pieces: readonly Piece[];
  /** Those that its pieces are cut from. */
  readonly sticks: readonly CutStick[];
  readonly lengthNet: ExactInches;
  /** Of a cove. */
  readonly setUp?: SetUp | undefined;
  /** Of what is made here: net, with the offcut allowance. */
  readonly boardFeetWithAllowance?: number | undefined;
  /** For each board of which it has strips, see `shareBoards`. */
  readonly boards: number;
}

/**
 * - set-up: one for each cove
 * - pass: passes of one blank over the blade, times the blanks; foot a pass: each times the blank's length
 * - foot: of the pieces, net
 * - foot a cut: of the whole sticks, for each back bevel; a crown cove has two, other profiles none
 * - foot a rip: of the blanks that come from boards, one rip each
 * - square foot: of the cove's curve, as long as the pieces; none of what is bought
 * - square foot a coat: of the face, as long as the pieces: curve and flats of a cove, the width of others
 * - crosscut: one for each length, and one more for each stick, whose end is trimmed
 * - miter: ends that are mitered, of what stands upright or lies flat; compound miter: of what has a spring
 * - cope, return: ends; joint: of spliced pieces, their parts less one each
 * - board foot: with the offcut allowance, of what is made here
 * - board: each board or stick that is opened; one that several profiles are cut from, by their strips
 */
export function countWork(counted: Counted): Counts {
  const { profile, sticks, setUp, boards } = counted;
  const passes = sticks.length === 0 ? 0 : (setUp?.passHeights.length ?? 0);
  const feet = feetOf(sticks);
  return {
    ...countPieces(counted),
    'set-up': setUp === undefined || sticks.length === 0 ? 0 : 1,
    pass: passes * sticks.length,
    'foot a pass': passes * feet,
    'foot a cut': backBevelsOf(profile) * feet,
    'foot a rip': feetOf(sticks.filter(({ item }) => item.kind === 'board')),
    crosscut: sticks.reduce((sum, stick) => sum + stick.pieces.length + 1, 0),
    joint: countJoints(sticks),
    board: boards,
  };
}

/** What pieces and their lengths alone decide. */
export function countPieces({
  profile,
  pieces,
  setUp,
  lengthNet,
  boardFeetWithAllowance,
}: Omit<Counted, 'sticks' | 'boards'>): Omit<Counts, keyof LumberCounts> {
  const feetNet = Number(lengthNet) / INCHES_PER_FOOT;
  const runs = pieces.filter(({ kind }) => kind === 'run');
  const ends = runs.flatMap(({ left, right }) => [left.kind, right.kind]);
  const miters = ends.filter((end) => end === 'inside miter' || end === 'outside miter').length;
  const isSprung = profile.spring !== undefined;
  return {
    foot: feetNet,
    'square foot': ((setUp?.arcLength ?? 0) / INCHES_PER_FOOT) * feetNet,
    'square foot a coat': (faceOf(profile, setUp) / INCHES_PER_FOOT) * feetNet,
    piece: pieces.length,
    miter: isSprung ? 0 : miters,
    'compound miter': isSprung ? miters : 0,
    cope: ends.filter((end) => end === 'cope').length,
    return: ends.filter((end) => end === 'return').length,
    'board foot': boardFeetWithAllowance ?? 0,
  };
}

export function backBevelsOf({ make }: Profile): number {
  return make === 'crown cove' ? BACK_BEVELS : 0;
}

/** Inches of the face that finish goes on; 0 where the width of what is bought isn't known. */
export function faceOf({ blankWidth }: Profile, setUp: SetUp | undefined): number {
  if (setUp === undefined) return Number(blankWidth ?? 0);
  return setUp.arcLength + setUp.flats.near + setUp.flats.far;
}

function feetOf(sticks: readonly CutStick[]): number {
  return sticks.reduce((sum, { length }) => sum + Number(length), 0) / INCHES_PER_FOOT;
}

/** Of each profile its share of the boards and sticks: of one with strips of several, by how many are whose. */
export function shareBoards(
  all: readonly { readonly profile: Profile; readonly sticks: readonly CutStick[] }[],
): ReadonlyMap<Profile, number> {
  const strips = new Map<unknown, Map<number, number>>();
  for (const { item, unit } of all.flatMap(({ sticks }) => sticks)) {
    const units = strips.get(item) ?? new Map<number, number>();
    strips.set(item, units.set(unit, (units.get(unit) ?? 0) + 1));
  }
  return new Map(
    all.map(({ profile, sticks }) => [
      profile,
      sticks.reduce((sum, { item, unit }) => sum + 1 / (strips.get(item)?.get(unit) ?? 1), 0),
    ]),
  );
}
