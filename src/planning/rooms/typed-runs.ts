/** Runs that somebody typed beside those that are made, or in place of them. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { nameKey, type Run } from '../job.ts';
import { runArgument } from '../pieces/opening-sides.ts';

/** A typed run is measured from corner to corner where it is as long as the wall, to an inch. Common practice [C]. */
const MEASURED_ANEW_INCHES = 1;

export interface JoinedRuns {
  /** As `Job.runs` has them. */
  readonly runs: readonly Run[];
  readonly cautions: readonly Caution[];
}

/** What is made along one wall of one profile, and what was typed in its place. */
interface Replaced {
  readonly made: readonly Run[];
  readonly typed: readonly Run[];
}

/**
 * All runs of a job: a made one gives way to those that were typed of the same room, wall (under Run) and
 * profile. They stand in its place, so that ids and marks of all pieces stay, and run where Trim has it.
 * Each that is unlike what was made is told, those that are the same once a room; and so is the first in a
 * room that stands beside made ones of its profile.
 */
export function joinRuns(made: readonly Run[], typed: readonly Run[]): JoinedRuns {
  if (made.length === 0 || typed.length === 0) return { runs: [...made, ...typed], cautions: [] };
  const madeBy = groupBy(made, keyOf);
  const typedBy = groupBy(typed, keyOf);
  const placed = new Set<string>();
  const runs = made.flatMap((run): readonly Run[] => {
    const key = keyOf(run);
    const inPlace = typedBy.get(key);
    if (inPlace === undefined) return [run];
    const all = { made: madeBy.get(key) ?? [], typed: inPlace };
    if (isOneEach(all)) return inPlace.slice(all.made.indexOf(run)).slice(0, 1).map(takeFrom(run));
    if (placed.has(key)) return [];
    placed.add(key);
    return inPlace.map(takeFrom(run, true));
  });
  const others = typed.filter((run) => !madeBy.has(keyOf(run)));
  const replaced = [...typedBy].flatMap(([key, inPlace]): Replaced[] => {
    const of = madeBy.get(key);
    return of === undefined ? [] : [{ made: of, typed: inPlace }];
  });
  const cautions = [...noteReplaced(replaced), ...noteBeside(made, others)];
  return { runs: [...runs, ...others], cautions };
}

/** One row for each: the first stands in place of the first. */
function isOneEach({ made, typed }: Replaced): boolean {
  return made.length === typed.length && typed.every(({ quantity }) => quantity === 1);
}

/** What was typed, where the made one runs; `turnUnknown` without its turn among the others. */
function takeFrom(of: Run, turnUnknown = false): (typed: Run) => Run {
  return (typed) => {
    if (of.made === undefined) return typed;
    const { wall, trim, place } = of.made;
    const from = turnUnknown ? { wall, trim, place } : of.made;
    const { room, run, profile } = of;
    const lying = turnUnknown ? {} : onWallAs(of, typed);
    return { ...typed, room, run, profile, made: { ...from, isTakenOver: true }, ...lying };
  };
}

/** As long as the wall, it lies on it as the made one did. */
function onWallAs({ onWall, length }: Run, run: Run): Pick<Run, 'onWall'> {
  const isAsLong = run.length.sub(length).abs().lte(MEASURED_ANEW_INCHES);
  const isOnWall = run.measuredAs === 'wall' && run.quantity === 1 && isAsLong;
  if (!isOnWall || onWall?.lies === undefined) return {};
  return { onWall: { ...onWall, lies: { ...onWall.lies, to: run.length } } };
}

function noteReplaced(replaced: readonly Replaced[]): Caution[] {
  const same = new Map<string, Run[]>();
  const cautions = replaced.flatMap(({ made, typed }): Caution[] => {
    const [first, row] = [made[0], typed[0]];
    if (first === undefined || row === undefined) return [];
    const differences = typed.map((one, at) => differencesOf(one, made[at] ?? first));
    const isSame = differences.every((one) => Object.keys(one).length === 0);
    if (isOneEach({ made, typed }) && isSame) {
      same.set(first.room, [...(same.get(first.room) ?? []), ...typed]);
      return [];
    }
    const at = differences.findIndex((one) => Object.keys(one).length > 0);
    const details =
      made.length === typed.length
        ? { ...(differences[at] ?? {}) }
        : { made: made.length, rows: typed.length };
    const told = typed[Math.max(at, 0)] ?? row;
    const one = fault('room.run-taken-over', runArgument(first), first.profile, { details });
    return [placeFault(one, told.where)];
  });
  for (const [room, rows] of same) {
    const [first] = rows;
    const argument = phrase('roomNamed', { room: own(room) });
    const one = fault('room.runs-taken-over', argument, rows.length);
    if (first !== undefined) cautions.push(placeFault(one, first.where));
  }
  return cautions;
}

/** What the made one has otherwise, by what it is. */
function differencesOf(typed: Run, made: Run) {
  const { left, right } = made;
  return {
    ...(typed.length.equals(made.length) && typed.measuredAs === made.measuredAs
      ? {}
      : { length: { inches: Number(made.length) } }),
    ...(typed.left.kind === left.kind ? {} : { left: left.kind }),
    ...(typed.right.kind === right.kind ? {} : { right: right.kind }),
    ...(typed.left.corner === left.corner ? {} : { leftCorner: { degrees: left.corner } }),
    ...(typed.right.corner === right.corner ? {} : { rightCorner: { degrees: right.corner } }),
    ...(typed.quantity === made.quantity ? {} : { quantity: made.quantity }),
  };
}

function noteBeside(made: readonly Run[], others: readonly Run[]): Caution[] {
  const madeProfiles = new Set(made.map(profileKey));
  const told = new Set<string>();
  return others.flatMap((run) => {
    const key = profileKey(run);
    if (told.has(key) || !madeProfiles.has(key)) return [];
    told.add(key);
    const details = { profile: run.profile };
    const argument = phrase('roomNamed', { room: own(run.room) });
    return [placeFault(fault('room.runs-beside', argument, run.run, { details }), run.where)];
  });
}

function groupBy(runs: readonly Run[], key: (run: Run) => string): Map<string, Run[]> {
  const groups = new Map<string, Run[]>();
  for (const run of runs) {
    const known = groups.get(key(run));
    if (known === undefined) groups.set(key(run), [run]);
    else known.push(run);
  }
  return groups;
}

/** By which a run of Runs stands in place of a made one: room, wall (or run) and profile. */
export function keyOf({ room, run, profile }: Pick<Run, 'room' | 'run' | 'profile'>): string {
  return JSON.stringify([nameKey(room), nameKey(run), nameKey(profile)]);
}

function profileKey({ room, profile }: Run): string {
  return JSON.stringify([nameKey(room), nameKey(profile)]);
}
