/** Doors and cased openings reach the floor: the base on their wall is cut away for them. */
import Fraction from 'fraction.js';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { nameKey, sameName, type Opening, type Profile, type Run, type RunEnd } from '../job.ts';
import { outsideMargin, outsideWidth } from './casing-runs.ts';

const SQUARE: RunEnd = { kind: 'square', corner: degrees(90) };
const ZERO = new Fraction(0);

interface Span {
  readonly from: ExactInches;
  readonly to: ExactInches;
  readonly opening: Opening;
}

/**
 * The runs with the base cut away: a run on an opening's wall (its room and name) that isn't set at a
 * spring angle becomes the lengths between the casings where every Position is known. Else it is
 * shortened by the total, which is cautioned. Windows cut nothing.
 */
export function cutAwayBase(
  runs: readonly Run[],
  openings: readonly Opening[],
  profileOf: (name: string) => Profile | undefined,
): { runs: Run[]; faults: Fault[]; cautions: Caution[] } {
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const onFloor = openings.filter((one) => one.kind !== 'window' && one.wall !== '');
  const walls = new Set(runs.map((run) => wallKey(run.room, run.run)));
  for (const opening of openings) {
    if (opening.wall === '' || walls.has(wallKey(opening.room, opening.wall))) continue;
    const missing = fault('job.wall-unknown', sayOpening(opening), opening.wall);
    cautions.push(placeFault(missing, opening.where));
  }
  const cut = runs.flatMap((run) => {
    const profile = profileOf(run.profile);
    if (profile === undefined || profile.spring !== undefined) return [run];
    const here = onFloor.filter(
      (one) => sameName(one.room, run.room) && sameName(one.wall, run.run),
    );
    if (here.length === 0) return [run];
    if (needsWallLength(run)) {
      const wall = fault('job.opening-needs-wall-length', sayRun(run), run.measuredAs);
      faults.push(placeFault(wall, run.where));
      return [run];
    }
    if (run.quantity > 1) {
      const each = fault('job.opening-in-each', sayRun(run), run.quantity);
      cautions.push(placeFault(each, run.where));
    }
    const known = here.every((one) => one.position !== undefined && one.quantity === 1);
    const casingOf = (one: Opening): Profile | undefined =>
      one.casing === undefined ? undefined : profileOf(one.casing);
    return known
      ? cutByPosition(run, here, casingOf, faults, cautions)
      : cutByTotal(run, here, casingOf, faults, cautions);
  });
  return { runs: cut, faults, cautions };
}

/** Positions count from the wall's corner: a run measured to another point of its miter begins elsewhere. */
function needsWallLength(run: Run): boolean {
  return run.measuredAs !== 'wall' && run.left.kind.endsWith('miter');
}

function cutByPosition(
  run: Run,
  openings: readonly Opening[],
  casingOf: (opening: Opening) => Profile | undefined,
  faults: Fault[],
  cautions: Caution[],
): Run[] {
  const spans = openings
    .map((opening): Span => {
      const margin = outsideMargin(opening, casingOf(opening));
      const from = (opening.position ?? ZERO).sub(margin);
      return { from, to: from.add(outsideWidth(opening, casingOf(opening))), opening };
    })
    .sort((one, other) => one.from.compare(other.from));
  const parts: Run[] = [];
  let at = ZERO;
  for (const { from, to, opening } of spans) {
    if (from.lt(at) && at.gt(0)) {
      const overlap = fault('job.openings-overlap', sayOpening(opening), inches(from), {
        limit: inches(at),
      });
      faults.push(placeFault(overlap, opening.where));
    }
    // Casing may lap the corner and is scribed there; the opening itself can't.
    const edge = (opening.position ?? ZERO).add(opening.width);
    if (edge.gt(run.length)) {
      const beyond = fault('job.opening-outside-wall', sayOpening(opening), inches(edge), {
        limit: inches(run.length),
      });
      faults.push(placeFault(beyond, opening.where));
    }
    // A casing that touches the corner leaves no base there.
    if (from.gt(at)) {
      const left = at.equals(0) ? run.left : SQUARE;
      parts.push({ ...run, length: from.sub(at), left, right: SQUARE });
    }
    at = to;
  }
  if (run.length.gt(at)) parts.push({ ...run, length: run.length.sub(at), left: SQUARE });
  if (parts.length === 0) {
    const gone = fault('job.base-all-cut-away', sayRun(run), inches(at), {
      limit: inches(run.length),
    });
    cautions.push(placeFault(gone, run.where));
  }
  return parts;
}

function cutByTotal(
  run: Run,
  openings: readonly Opening[],
  casingOf: (opening: Opening) => Profile | undefined,
  faults: Fault[],
  cautions: Caution[],
): Run[] {
  const total = openings.reduce(
    (sum, one) => sum.add(outsideWidth(one, casingOf(one)).mul(one.quantity)),
    ZERO,
  );
  const argument = sayRun(run);
  if (total.gte(run.length)) {
    const gone = fault('job.base-all-cut-away', argument, inches(total), {
      limit: inches(run.length),
    });
    faults.push(placeFault(gone, run.where));
    return [];
  }
  cautions.push(placeFault(fault('job.opening-by-total', argument, inches(total)), run.where));
  return [{ ...run, length: run.length.sub(total) }];
}

export function sayOpening(opening: Opening): string {
  return `${opening.kind} on ${opening.wall === '' ? 'no wall' : opening.wall} in ${opening.room}`;
}

function sayRun(run: Run): string {
  return `Run ${run.run} in ${run.room}`;
}

function wallKey(room: string, run: string): string {
  return JSON.stringify([nameKey(room), nameKey(run)]);
}

function inches(length: ExactInches): { readonly inches: number } {
  return { inches: Number(length) };
}
