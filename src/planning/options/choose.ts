/** What the options that are taken up make of a job's runs, of its rows of Trim and of its openings. */
import { nameKey, type Opening, type OptionChange, type Run } from '../job.ts';

/** The profile that a molding of a room is made of; undefined where it is left out. */
export type Choose = (room: string, profile: string) => string | undefined;

/** No option changes anything, and nothing is left out. */
export const asWritten: Choose = (_room, profile) => profile;

/** A molding of a room: what is typed, made from Trim or stands round openings there, all in one. */
export type Molding = Pick<OptionChange, 'room' | 'profile'>;

export function moldingKey({ room, profile }: Molding): string {
  return JSON.stringify([nameKey(room), nameKey(profile)]);
}

/** By which changes are looked up: those of one option. */
interface Changing {
  readonly changes: readonly OptionChange[];
}

/**
 * With these options taken up and all others not: an addition of one that isn't is left out; of several
 * that stand in place of a molding the first one holds. Options always name what the tables have.
 */
export function chooseBy<One extends Changing>(all: readonly One[], taken: readonly One[]): Choose {
  const added = new Map<string, boolean>();
  const instead = new Map<string, string>();
  for (const option of [...taken, ...all.filter((one) => !taken.includes(one))]) {
    const isTaken = taken.includes(option);
    for (const change of option.changes) {
      const key = moldingKey(change);
      if (change.instead === undefined) added.set(key, isTaken);
      else if (isTaken && !instead.has(key)) instead.set(key, change.instead);
    }
  }
  return (room, profile) => {
    const key = moldingKey({ room, profile });
    return added.get(key) === false ? undefined : (instead.get(key) ?? profile);
  };
}

/** Typed runs; one that is done stays as it was made. */
export function chooseRuns(runs: readonly Run[], choose: Choose): Run[] {
  return runs.flatMap((run): Run[] => {
    const profile = run.done ? run.profile : choose(run.room, run.profile);
    return profile === undefined ? [] : [profile === run.profile ? run : { ...run, profile }];
  });
}

export const OPENING_PARTS = ['casing', 'apron', 'stool'] as const;

/** An opening stays where its moldings go: it still cuts what runs along its wall. */
export function chooseOpenings(openings: readonly Opening[], choose: Choose): Opening[] {
  return openings.map((opening) => {
    const { casing, apron, stool, ...rest } = opening;
    const parts = { casing, apron, stool };
    const chosen = OPENING_PARTS.flatMap((part) => {
      const named = parts[part];
      const profile = named === undefined ? undefined : choose(opening.room, named);
      return profile === undefined ? [] : [[part, profile] as const];
    });
    return { ...rest, ...Object.fromEntries(chosen) };
  });
}
