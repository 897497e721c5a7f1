/** Two plans of one job, before and after it was changed: what a change order says. Money in whole cents. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../core/units/length.ts';
import { cutKey, endsOfPiece, NO_TICKS, sizesOfProfile, type Ticks } from './cut/cut-already.ts';
import { nameKey } from './job.ts';
import { hoursOf, type JobPlan, type ProfilePlan, type RoomLine, type Totals } from './job-plan.ts';
import type { Piece } from './piece.ts';

/** Something of both plans; absent in the one that lacks it. */
export interface Pair<State> {
  readonly before?: State;
  readonly after?: State;
}

export interface RunState {
  readonly pieces: number;
  /** Of them, as Runs marks them. */
  readonly done: number;
  /** Of all its pieces, as they are cut. */
  readonly length: ExactInches;
}

/** What of a run is not as it was. */
export type RunDifference = 'pieces' | 'lengths' | 'ends' | 'done' | 'one piece' | 'match';

/** A run of one profile; what is typed in several rows under one name is one. */
export interface RunPair extends Pair<RunState> {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  /** None of a run that is added or gone. */
  readonly differs: readonly RunDifference[];
}

export interface LineState {
  readonly pieces: number;
  readonly length: ExactInches;
  readonly priceCents: number;
}

/** A profile in a room, as a client sees it. */
export interface LinePair extends Pair<LineState> {
  readonly room: string;
  readonly profile: string;
}

export interface Figures {
  readonly pieces: number;
  readonly sticks: number;
  readonly length: ExactInches;
  /** Of boards as bought or pulled; absent where they aren't known. */
  readonly boardFeet?: number;
  readonly passes: number;
  readonly hours: number;
  readonly costCents: number;
  readonly priceCents: number;
}

export interface ProfilePair extends Pair<Figures> {
  readonly profile: string;
  /** Its cove, its blank or its wood is another: what is cut of it already is of no use. */
  readonly isMadeOtherwise: boolean;
}

export interface TotalFigures extends Figures {
  readonly done: number;
  readonly taxCents: number;
}

/** A piece of the plan before that is off its stick, or done. */
export interface CutBefore {
  readonly id: string;
  readonly mark: string;
  readonly profile: string;
  readonly length: ExactInches;
  /** Absent where Runs marks it as done. */
  readonly stick?: string;
  /** What the plan after has of it: the very same, one of its name that is otherwise, or none. */
  readonly need: 'same' | 'changed' | 'gone';
}

export interface Comparison {
  readonly added: readonly RunPair[];
  readonly gone: readonly RunPair[];
  readonly changed: readonly RunPair[];
  /** Runs that are as they were. */
  readonly same: number;
  /** All lines of both plans, changed or not: their prices add up to the totals'. */
  readonly lines: readonly LinePair[];
  /** All profiles of both plans. */
  readonly profiles: readonly ProfilePair[];
  readonly totals: { readonly before: TotalFigures; readonly after: TotalFigures };
  readonly cut: readonly CutBefore[];
  /** Sticks and blanks that were cut or begun: their lumber and their hours are spent. */
  readonly sticksBegun: number;
  /** By how much each plan may still be cheaper at the sticks: a difference of less says little. */
  readonly openCents: { readonly before: number; readonly after: number };
}

/** What was added stands in the order of the plan after, all else in that of the plan before. */
export function comparePlans(before: JobPlan, after: JobPlan): Comparison {
  const runs = pair(runsOf(before), runsOf(after)).map(
    ([{ room, run, profile }, was, is]): RunPair => ({
      ...{ room, run, profile },
      ...both(was && stateOf(was), is && stateOf(is)),
      differs: was === undefined || is === undefined ? [] : differences(was, is),
    }),
  );
  const lines = pair(linesOf(before), linesOf(after)).map(
    ([{ room, profile }, was, is]): LinePair => ({
      ...{ room, profile },
      ...both(was && lineState(was), is && lineState(is)),
    }),
  );
  const profiles = pair(profilesOf(before), profilesOf(after)).map(
    ([one, was, is]): ProfilePair => ({
      profile: one.profile.name,
      isMadeOtherwise:
        was !== undefined &&
        is !== undefined &&
        sizesOfProfile(was.profile) !== sizesOfProfile(is.profile),
      ...both(was && figuresOf(was), is && figuresOf(is)),
    }),
  );
  return {
    added: runs.filter((one) => one.before === undefined),
    gone: runs.filter((one) => one.after === undefined),
    changed: runs.filter(({ differs }) => differs.length > 0),
    same: runs.filter((one) => one.before && one.after && one.differs.length === 0).length,
    lines,
    profiles,
    totals: { before: totalsOf(before.totals), after: totalsOf(after.totals) },
    cut: cutOf(before, after),
    sticksBegun: before.totals.sticksCut,
    openCents: { before: openOf(before), after: openOf(after) },
  };
}

/** The ticks that a plan's own sticks carry. */
export function ticksOf({ profiles }: JobPlan): Ticks {
  const cuts = profiles.flatMap(({ sticks }) =>
    sticks.flatMap(({ id, pieces }) =>
      pieces.flatMap(({ isCut }, at) => (isCut === true ? [cutKey(id, at + 1)] : [])),
    ),
  );
  return { ...NO_TICKS, cuts: new Set(cuts) };
}

function keyOf(...names: readonly string[]): string {
  return JSON.stringify(names.map(nameKey));
}

function both<State>(before: State | undefined, after: State | undefined): Pair<State> {
  return { ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) };
}

/** What stands in either, with its state in each: first all of before, then what after has besides. */
function pair<One>(
  before: ReadonlyMap<string, One>,
  after: ReadonlyMap<string, One>,
): (readonly [one: One, was: One | undefined, is: One | undefined])[] {
  return [
    ...[...before].map(([key, was]) => [was, was, after.get(key)] as const),
    ...[...after].flatMap(([key, is]) => (before.has(key) ? [] : [[is, undefined, is] as const])),
  ];
}

/** Rooms that differ in case alone have one line here. */
function linesOf({ rooms }: JobPlan): Map<string, RoomLine> {
  const lines = new Map<string, RoomLine>();
  for (const line of rooms) {
    const key = keyOf(line.room, line.profile);
    const known = lines.get(key);
    if (known === undefined) lines.set(key, line);
    else {
      lines.set(key, {
        ...known,
        pieces: known.pieces + line.pieces,
        lengthNet: known.lengthNet.add(line.lengthNet),
        priceCents: known.priceCents + line.priceCents,
      });
    }
  }
  return lines;
}

function profilesOf({ profiles }: JobPlan): Map<string, ProfilePlan> {
  return new Map(profiles.map((one) => [keyOf(one.profile.name), one]));
}

interface RunPieces {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  readonly pieces: readonly Piece[];
}

function runsOf({ pieces }: JobPlan): Map<string, RunPieces> {
  const runs = new Map<string, { room: string; run: string; profile: string; pieces: Piece[] }>();
  for (const piece of pieces) {
    const { room, run, profile } = piece;
    const key = keyOf(room, run, profile);
    const known = runs.get(key);
    if (known === undefined) runs.set(key, { room, run, profile, pieces: [piece] });
    else known.pieces.push(piece);
  }
  return runs;
}

const sumOf = (lengths: readonly ExactInches[]): ExactInches =>
  lengths.reduce((sum, one) => sum.add(one), new Fraction(0));

function stateOf({ pieces }: RunPieces): RunState {
  return {
    pieces: pieces.length,
    done: pieces.filter(({ done }) => done).length,
    length: sumOf(pieces.map(({ cutLength }) => cutLength)),
  };
}

/** Its pieces in any order; a match is of one group whatever the group is called. */
const TELLING: readonly (readonly [RunDifference, (piece: Piece) => string])[] = [
  ['lengths', ({ cutLength }) => cutLength.toFraction()],
  ['ends', endsOfPiece],
  ['done', ({ done }) => String(done)],
  ['one piece', ({ onePiece }) => String(onePiece)],
  ['match', ({ match }) => nameKey(match)],
];

function differences(before: RunPieces, after: RunPieces): RunDifference[] {
  // More of the same are more, and nothing else.
  const isMore = before.pieces.length !== after.pieces.length;
  const tell = ({ pieces }: RunPieces, say: (piece: Piece) => string): string => {
    const told = pieces.map(say).sort();
    return JSON.stringify(isMore ? [...new Set(told)] : told);
  };
  const found = TELLING.flatMap(([is, say]) =>
    tell(before, say) === tell(after, say) ? [] : [is],
  );
  if (isMore) return ['pieces', ...found];
  if (found.length > 0) return found;
  // The same lengths and the same ends, but not on the same pieces.
  const whole = (piece: Piece): string => TELLING.map(([, say]) => say(piece)).join();
  return tell(before, whole) === tell(after, whole) ? [] : ['ends'];
}

function lineState({ pieces, lengthNet, priceCents }: RoomLine): LineState {
  return { pieces, length: lengthNet, priceCents };
}

function figuresOf({ tally, money }: ProfilePlan): Figures {
  const { pieces, sticks, lengthNet, boardFeetBought, passes } = tally;
  return {
    ...{ pieces, sticks, passes },
    length: lengthNet,
    ...(boardFeetBought === undefined ? {} : { boardFeet: boardFeetBought }),
    hours: hoursOf(tally.hours),
    costCents: money.costCents,
    priceCents: money.priceCents,
  };
}

function totalsOf(totals: Totals): TotalFigures {
  const { pieces, done, sticks, lengthNet, boardFeetBought, passes, hours } = totals;
  const { costCents, priceCents, taxCents } = totals;
  return {
    ...{ pieces, done, sticks, passes, hours, costCents, priceCents, taxCents },
    length: lengthNet,
    ...(boardFeetBought === undefined ? {} : { boardFeet: boardFeetBought }),
  };
}

function cutOf(before: JobPlan, after: JobPlan): CutBefore[] {
  const stickOf = new Map<string, string>();
  for (const { sticks } of before.profiles) {
    for (const { id: stick, pieces } of sticks) {
      for (const { piece, isCut } of pieces) {
        if (piece !== undefined && isCut === true) stickOf.set(piece.id, stick);
      }
    }
  }
  const nowOf = new Map(after.pieces.map((one) => [nameKey(one.id), one]));
  return before.pieces.flatMap((piece): CutBefore[] => {
    const { id, mark, profile, cutLength } = piece;
    const stick = stickOf.get(id);
    if (stick === undefined && !piece.done) return [];
    const need = needOf(piece, nowOf.get(nameKey(id)));
    return [
      { id, mark, profile, length: cutLength, need, ...(stick === undefined ? {} : { stick }) },
    ];
  });
}

function needOf(piece: Piece, now: Piece | undefined): CutBefore['need'] {
  if (now === undefined) return 'gone';
  const isSame =
    nameKey(now.profile) === nameKey(piece.profile) &&
    now.cutLength.equals(piece.cutLength) &&
    endsOfPiece(now) === endsOfPiece(piece);
  return isSame ? 'same' : 'changed';
}

function openOf({ groups }: JobPlan): number {
  return groups.reduce((sum, { answer }) => {
    const { costCents, laborCents, creditCents } = answer.plan;
    return sum + Math.max(0, costCents + laborCents - creditCents - answer.bound.costCents);
  }, 0);
}
