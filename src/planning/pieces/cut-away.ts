/** What openings cut away of the runs on their walls. */
import Fraction from 'fraction.js';
import { sayArgument } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { nameKey, type Profile, type Run, type RunEnd } from '../job.ts';
import { type WallPlace } from '../room-rows.ts';
import { type WallRow } from '../room-rows.ts';
import { CutAwayNotes } from './cut-away-notes.ts';
import { outsideWidth, runArgument, sideArgument, type OpeningSide } from './opening-sides.ts';
import { judgeCut } from './what-it-cuts.ts';

const SQUARE: RunEnd = { kind: 'square', corner: degrees(90) };
const ZERO = new Fraction(0);

/** What one opening takes out of one run. */
export interface CutAway {
  readonly room: string;
  readonly wall: string;
  readonly run: string;
  readonly profile: string;
  /** Among those of its kind on that wall, as its casing is named: door, window 2. */
  readonly opening: string;
  /** Along the wall, casing included; of a row with a quantity, out of each of its runs. */
  readonly taken: ExactInches;
}

interface CutRun {
  readonly runs: readonly Run[];
  readonly cutAways: readonly CutAway[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

export interface CutRuns extends CutRun {
  /** What becomes of each run: itself where nothing cuts it. */
  readonly byRun: readonly (Pick<CutRun, 'runs' | 'cutAways'> & { readonly run: Run })[];
}

/**
 * The runs with what openings cut away: a run on an opening's wall (its room and name), of a profile
 * that the opening cuts, becomes the lengths between the casings where every Position is known. Else it
 * is shortened by the total, which is cautioned.
 *
 * @param walls What lies on one of these may cut nothing: Trim says what runs there.
 */
export function cutAway(
  runs: readonly Run[],
  sides: readonly OpeningSide[],
  profileOf: (name: string) => Profile | undefined,
  walls: readonly WallRow[] = [],
): CutRuns {
  const faults: Fault[] = [];
  const profileAt = placedProfiles(profileOf);
  const notes = new CutAwayNotes(runs, sides, profileAt, walls);
  const onWall = new Map<string, OpeningSide[]>();
  for (const side of sides) {
    if (side.wall === '') continue;
    const key = wallKey(side.room, side.wall);
    onWall.set(key, [...(onWall.get(key) ?? []), side]);
  }
  const byRun = runs.map((run) => {
    const whole = { run, runs: [run], cutAways: [] };
    const profile = profileAt(run);
    const here = onWall.get(wallKey(run.room, run.run)) ?? [];
    if (profile === undefined || here.length === 0) return whole;
    const cutting = here.filter((side) => {
      const verdict = judgeCut(side, profile, profileOf);
      notes.note(run, profile, side, verdict);
      return verdict.is === 'cut';
    });
    if (cutting.length === 0) return whole;
    if (needsWallLength(run)) {
      const wall = fault('job.opening-needs-wall-length', runArgument(run), run.measuredAs);
      faults.push(placeFault(wall, run.cells.measuredAs));
      return whole;
    }
    notes.noteCut(run, profile, cutting);
    const made = cutting.every(isPlaced) ? cutByPosition(run, cutting) : cutByTotal(run, cutting);
    faults.push(...made.faults);
    notes.add(...made.cautions);
    return { run, runs: made.runs, cutAways: made.cutAways };
  });
  return {
    byRun,
    runs: byRun.flatMap((one) => one.runs),
    cutAways: byRun.flatMap((one) => one.cutAways),
    faults,
    cautions: notes.cautions(),
  };
}

/** A made run's profile is where Trim puts it: each such profile is one object. */
function placedProfiles(
  profileOf: (name: string) => Profile | undefined,
): (run: Run) => Profile | undefined {
  const placed = new Map<WallPlace, Profile>();
  return ({ profile: name, made }) => {
    const profile = profileOf(name);
    if (made === undefined || profile === undefined) return profile;
    const known = placed.get(made.place) ?? { ...profile, place: made.place };
    placed.set(made.place, known);
    return known;
  };
}

/** Positions count from the wall's corner: a run measured to another point of its miter begins elsewhere. */
function needsWallLength(run: Run): boolean {
  return run.measuredAs !== 'wall' && run.left.kind.endsWith('miter');
}

/** Whether it is known where on the wall it is; one row of several has one position at most. */
function isPlaced({ position, opening }: OpeningSide): boolean {
  return position !== undefined && opening.quantity === 1;
}

function cutByPosition(run: Run, sides: readonly OpeningSide[]): CutRun {
  const faults: Fault[] = [];
  const spans = sides
    .map((side) => {
      const from = (side.position ?? ZERO).sub(side.margin);
      return { from, to: from.add(outsideWidth(side)), side };
    })
    .sort((one, other) => one.from.compare(other.from));
  const parts: Run[] = [];
  const cutAways: CutAway[] = [];
  let at = ZERO;
  let between = 0;
  for (const { from, to, side } of spans) {
    if (from.lt(at) && at.gt(0)) {
      const limit = inches(at);
      faults.push(refuse('job.openings-overlap', side, inches(from), limit));
    }
    // Casing may lap the corner and is scribed there; the opening itself can't.
    const edge = (side.position ?? ZERO).add(side.opening.width);
    if (edge.gt(run.length)) {
      const limit = inches(run.length);
      faults.push(refuse('job.opening-outside-wall', side, inches(edge), limit));
    }
    // A casing that touches the corner leaves nothing there.
    if (from.gt(at)) {
      const isFirst = at.equals(0);
      parts.push({
        ...run,
        length: from.sub(at),
        left: isFirst ? run.left : SQUARE,
        right: SQUARE,
        ...madeOf(run, isFirst ? 'left' : between),
        ...partOf(run, at, from),
      });
      if (!isFirst) between += 1;
    }
    cutAways.push(cutOf(run, side, least(to, run.length).sub(most(from, at))));
    at = to;
  }
  if (run.length.gt(at)) {
    const length = run.length.sub(at);
    const [made, part] = [madeOf(run, 'right'), partOf(run, at, run.length)];
    parts.push({ ...run, length, left: SQUARE, ...made, ...part });
  }
  const cautions = parts.length === 0 ? [allGone(run, at)] : [];
  return { runs: parts, cutAways, faults, cautions };
}

/** A part of a made run goes up as its own end of it does; those between two openings, from 0, have turns of their own. */
function madeOf(run: Run, part: 'left' | 'right' | number): Pick<Run, 'made'> {
  if (run.made === undefined) return {};
  const { order, ...made } = run.made;
  const turn = typeof part === 'number' ? order?.between?.[part] : order?.[part];
  return { made: turn === undefined ? made : { ...made, order: { left: turn, right: turn } } };
}

function partOf({ onWall }: Run, from: ExactInches, to: ExactInches): Pick<Run, 'onWall'> {
  return onWall === undefined ? {} : { onWall: { ...onWall, lies: { from, to, isWhole: false } } };
}

/** Whoever cuts it by the total doesn't know where it lies. */
function anywhereOn({ onWall }: Run): Pick<Run, 'onWall'> {
  if (onWall === undefined) return {};
  const { at, leftTurn, rightTurn, door } = onWall;
  return { onWall: { at, leftTurn, rightTurn, ...(door === undefined ? {} : { door }) } };
}

function cutByTotal(run: Run, sides: readonly OpeningSide[]): CutRun {
  const cutAways = sides.map((side) =>
    cutOf(run, side, outsideWidth(side).mul(side.opening.quantity)),
  );
  const total = cutAways.reduce((sum, { taken }) => sum.add(taken), ZERO);
  if (total.gte(run.length)) {
    return { runs: [], cutAways, faults: [allGone(run, total)], cautions: [] };
  }
  const open = sides.find((side) => !isPlaced(side));
  const needed = open?.side === 2 ? 'otherPosition' : 'position';
  const details = { profile: run.profile, opening: open?.name ?? '', needed: sayArgument(needed) };
  const byTotal = fault('job.opening-by-total', runArgument(run), inches(total), { details });
  return {
    runs: [{ ...run, length: run.length.sub(total), ...anywhereOn(run) }],
    cutAways,
    faults: [],
    cautions: [placeFault(byTotal, open?.opening.cells[needed] ?? run.where)],
  };
}

function cutOf(run: Run, { wall, name }: OpeningSide, taken: ExactInches): CutAway {
  return { room: run.room, wall, run: run.run, profile: run.profile, opening: name, taken };
}

function allGone(run: Run, at: ExactInches): Fault {
  const more = { limit: inches(run.length), details: { profile: run.profile } };
  return placeFault(fault('job.base-all-cut-away', runArgument(run), inches(at), more), run.where);
}

function refuse(
  code: 'job.openings-overlap' | 'job.opening-outside-wall',
  side: OpeningSide,
  given: { readonly inches: number },
  limit: { readonly inches: number },
): Fault {
  const cell = side.side === 2 ? 'otherPosition' : 'position';
  return placeFault(fault(code, sideArgument(side), given, { limit }), side.opening.cells[cell]);
}

function wallKey(room: string, run: string): string {
  return JSON.stringify([nameKey(room), nameKey(run)]);
}

function inches(length: ExactInches): { readonly inches: number } {
  return { inches: Number(length) };
}

const least = (one: ExactInches, other: ExactInches): ExactInches => (one.lt(other) ? one : other);
const most = (one: ExactInches, other: ExactInches): ExactInches => (one.gt(other) ? one : other);
