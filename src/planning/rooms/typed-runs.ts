/** Runs that somebody typed beside those that are made. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { nameKey, type Run } from '../job.ts';
import { runArgument } from '../pieces/opening-sides.ts';

/**
 * The made runs without those that a typed one replaces: the same room, wall (under Run) and profile.
 * Each that does is told, and so is the first in a room that stands beside made ones of its profile.
 */
export function noteTypedRuns(
  made: readonly Run[],
  typed: readonly Run[],
): { readonly runs: readonly Run[]; readonly cautions: readonly Caution[] } {
  if (typed.length === 0) return { runs: made, cautions: [] };
  const madeKeys = new Set(made.map(keyOf));
  const madeProfiles = new Set(made.map(profileKey));
  const typedKeys = new Set(typed.map(keyOf));
  const cautions: Caution[] = [];
  const told = new Set<string>();
  for (const run of typed) {
    const isTakenOver = madeKeys.has(keyOf(run));
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
  return { runs: made.filter((run) => !typedKeys.has(keyOf(run))), cautions };
}

function keyOf({ room, run, profile }: Run): string {
  return JSON.stringify([nameKey(room), nameKey(run), nameKey(profile)]);
}

function profileKey({ room, profile }: Run): string {
  return JSON.stringify([nameKey(room), nameKey(profile)]);
}
