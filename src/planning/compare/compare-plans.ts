/** Two plans of one job, before and after it was changed: what a change order says. It plans nothing. */
import { cutKey, endsOfPiece, NO_TICKS, sizesOfProfile, type Ticks } from '../cut/cut-already.ts';
import { nameKey } from '../job.ts';
import type { JobPlan, ProfilePlan, RoomLine, Totals } from '../job-plan.ts';
import { hoursOf } from '../work/hours.ts';
import type { Piece } from '../piece.ts';
import { differences, keyOf, runsOf, stateOf } from './compare-runs.ts';
import type {
  Comparison,
  CutBefore,
  Figures,
  LinePair,
  LineState,
  Pair,
  ProfilePair,
  RunPair,
  TotalFigures,
} from './comparison.ts';

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
