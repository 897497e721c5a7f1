/** Runs that somebody typed beside those that are made. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { nameKey, type Run } from '../job.ts';
import { runArgument } from '../pieces/opening-sides.ts';

/** A typed run is measured from corner to corner where it is as long as the wall, to an inch. Common practice [C]. */
const MEASURED_ANEW_INCHES = 1;

/**
 * The made runs without those that a typed one replaces: the same room, wall (under Run) and profile.
 * Each that does is told, and so is the first in a room that stands beside made ones of its profile. One
 * that alone replaces one, as long as the wall, lies on the wall as that one did.
 */
export function noteTypedRuns(
  made: readonly Run[],
  typed: readonly Run[],
): {
  readonly runs: readonly Run[];
  readonly typed: readonly Run[];
  readonly cautions: readonly Caution[];
} {
  if (typed.length === 0) return { runs: made, typed, cautions: [] };
  const madeBy = groupBy(made, keyOf);
  const madeProfiles = new Set(made.map(profileKey));
  const typedBy = groupBy(typed, keyOf);
  const cautions: Caution[] = [];
  const told = new Set<string>();
  for (const run of typed) {
    const isTakenOver = madeBy.has(keyOf(run));
    const key = isTakenOver ? keyOf(run) : profileKey(run);
    if (told.has(key) || !madeProfiles.has(profileKey(run))) continue;
    told.add(key);
    const details = { profile: run.profile };
    const one = isTakenOver
      ? fault('room.run-taken-over', runArgument(run), run.profile)
      : fault('room.runs-beside', phrase('roomNamed', { room: own(run.room) }), run.run, {
          details,
        });
    cautions.push(placeFault(one, run.where));
  }
  return {
    runs: made.filter((run) => !typedBy.has(keyOf(run))),
    typed: typed.map((run) => {
      const [before, ...others] = madeBy.get(keyOf(run)) ?? [];
      const isAlone = others.length === 0 && typedBy.get(keyOf(run))?.length === 1;
      return before === undefined || !isAlone ? run : { ...run, ...onWallAs(before, run) };
    }),
    cautions,
  };
}

function onWallAs({ onWall, length }: Run, run: Run): Pick<Run, 'onWall'> {
  const isAsLong = run.length.sub(length).abs().lte(MEASURED_ANEW_INCHES);
  const isOnWall = run.measuredAs === 'wall' && run.quantity === 1 && isAsLong;
  if (!isOnWall || onWall?.lies === undefined) return {};
  return { onWall: { ...onWall, lies: { ...onWall.lies, to: run.length } } };
}

function groupBy(runs: readonly Run[], key: (run: Run) => string): ReadonlyMap<string, Run[]> {
  const groups = new Map<string, Run[]>();
  for (const run of runs) {
    const known = groups.get(key(run));
    if (known === undefined) groups.set(key(run), [run]);
    else known.push(run);
  }
  return groups;
}

function keyOf({ room, run, profile }: Run): string {
  return JSON.stringify([nameKey(room), nameKey(run), nameKey(profile)]);
}

function profileKey({ room, profile }: Run): string {
  return JSON.stringify([nameKey(room), nameKey(profile)]);
}
