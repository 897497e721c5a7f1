/** Finds a job's tables among everything in a workbook that could be one. */
import { NAMES } from '../../core/faults/argument-words.ts';
import { sameName } from '../job.ts';
import type { RawCell } from './raw-table.ts';
import { BY_NAME_ALONE, JOB_TABLES, type JobTableName } from './read-job.ts';
import { headingKey } from './row-reader.ts';
import type { Heading } from './headings/heading.ts';
import { findHeading } from './headings/meant-headings.ts';
import { TABLE_HEADINGS } from './headings/table-headings.ts';
import { headingWithoutUnit } from './headings/unit-of-heading.ts';

/** A table proper, or what stands on a sheet without one. */
export interface Place {
  readonly sheet: string;
  readonly table?: string;
  readonly headings: readonly RawCell[];
}

export interface Recognized<P extends Place> {
  readonly name: JobTableName;
  readonly required: boolean;
  /** The one place that it must be. */
  readonly chosen?: P;
  /** Where several could be it, the person says which. */
  readonly alike: readonly P[];
}

/** Fewer known headings than these tell no table from another that also has a Profile and a Note. */
const LEAST_KNOWN = 3;

/**
 * Each table of a job with the place that it stands in: the one named for it, on the sheet named
 * for it, or, where nothing is named so, the one with its headings or with other words for them. Names and headings match
 * without regard to case and spaces.
 */
export function recognizeTables<P extends Place>(places: readonly P[]): readonly Recognized<P>[] {
  const named = listNamed(places);
  const taken = new Set<Place>(named.flat());
  return JOB_TABLES.map(({ name, required }, index) => {
    const byName = named[index] ?? [];
    const isByName = BY_NAME_ALONE.has(name);
    const fitting = places.filter((place) => !isByName && !taken.has(place) && fits(place, name));
    const found = byName.length > 0 ? byName : fitting;
    const [first] = found;
    return first !== undefined && found.length === 1
      ? { name, required, chosen: first, alike: [] }
      : { name, required, alike: found };
  });
}

/** A person's list may be named Walls or Trim and be the runs, or the profiles: where nothing is named for those. */
function listNamed<P extends Place>(places: readonly P[]): (readonly P[])[] {
  const named = JOB_TABLES.map(({ name }) => placesNamed(places, name));
  const others = JOB_TABLES.filter(
    ({ name }, at) => !BY_NAME_ALONE.has(name) && named[at]?.length === 0,
  );
  return JOB_TABLES.map(({ name }, at) => {
    if (!BY_NAME_ALONE.has(name)) return named[at] ?? [];
    // A sheet Job is as often a page of the person's own.
    const found = places.filter(
      (place) => sameName(place.sheet, name) && (name !== 'Job' || fits(place, name)),
    );
    const isOther = (place: P): boolean =>
      others.some(
        (other) => fits(place, other.name) && (other.name === 'Runs' || !fits(place, name)),
      );
    return found.filter((place) => !isOther(place));
  });
}

/** A table proper of that name on the sheet of that name is meant, whatever else bears the name. */
function placesNamed<P extends Place>(places: readonly P[], name: string): readonly P[] {
  const byTable = places.filter(({ table }) => table !== undefined && sameName(table, name));
  const bySheet = places.filter(({ sheet }) => sameName(sheet, name));
  const both = byTable.filter((place) => bySheet.includes(place));
  return both.length > 0 ? both : [...new Set([...byTable, ...bySheet])];
}

/**
 * By our own words, or by others that are read as ours where those that are needed are more than one:
 * a list with a Trim, a Wood and Notes is not yet a list of profiles.
 */
function fits({ headings }: Place, name: JobTableName): boolean {
  const ours: readonly Heading[] = TABLE_HEADINGS[name];
  const keys = new Set(headings.map(headingKey));
  if (name === 'Profiles' && keys.has(OF_TRIM)) return false;
  const own = ours.filter(({ heading }) => keys.has(headingKey(heading)));
  const read = new Set(headings.flatMap((cell) => headingRead(cell, ours) ?? []));
  const needed = ours.filter(({ required }) => required === true);
  const filled = headings.filter((cell) => cell !== null && cell !== '');
  // A Setting and a Value, and nothing else, are no other list's.
  const isAllOurs = needed.length > 1 && filled.length === read.size;
  const least = isAllOurs
    ? needed.length
    : Math.max(needed.length, Math.min(LEAST_KNOWN, ours.length));
  const known = needed.length > 1 ? read.size : own.length;
  return needed.every((one) => read.has(one)) && known >= least;
}

/** Trim has so many headings of Profiles that one of its own must tell. */
const OF_TRIM = headingKey(NAMES.insideCorners);

function headingRead(cell: RawCell, ours: readonly Heading[]): Heading | undefined {
  if (typeof cell !== 'string') return undefined;
  return findHeading(cell, ours) ?? findHeading(headingWithoutUnit(cell), ours);
}
