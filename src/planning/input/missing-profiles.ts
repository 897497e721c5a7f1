/** Profiles that runs and openings name and Profiles doesn't have, as rows to be filled in there. */
import type { Fault } from '../../core/faults/fault.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { nameKey } from '../job.ts';
import { PROFILE_HEADINGS } from './headings/profile-headings.ts';
import { matchHeadings } from './match-headings.ts';
import type { RawTable } from './raw-table.ts';

/**
 * In a new row's Make: no word that is allowed there, so that nothing is planned before somebody says
 * what the profile is. A blank would be one that is bought.
 */
export const MAKE_TO_SAY = '?';

/** Each once, in the order in which they come, as it is first written. */
export function missingProfiles(faults: readonly Fault[]): string[] {
  const names = new Map<string, string>();
  for (const { code, given } of faults) {
    if (code !== 'job.profile-unknown' || typeof given !== 'string') continue;
    if (!names.has(nameKey(given))) names.set(nameKey(given), given);
  }
  return [...names.values()];
}

export interface ProfileRows {
  /** Texts by their column from A on; null for a cell that is left as it is. */
  readonly rows: readonly (readonly (string | null)[])[];
  /** The column, from 0, that is to be filled first; Make where there is one. */
  readonly toFill: number;
  readonly asksMake: boolean;
}

/** @returns Undefined where the table has no column for the names. */
export function rowsForProfiles(
  table: RawTable,
  names: readonly string[],
  reading: LengthReading,
): ProfileRows | undefined {
  const unheard = { faults: [], cautions: [] };
  const { columns } = matchHeadings(table, PROFILE_HEADINGS, reading, unheard, new Set());
  const named = columns.get('profile');
  const make = columns.get('make');
  if (named === undefined) return undefined;
  const width = Math.max(named, make ?? 0) + 1;
  const rows = names.map((name) =>
    Array.from({ length: width }, (_, column) => {
      if (column === named) return name;
      return column === make ? MAKE_TO_SAY : null;
    }),
  );
  return { rows, toFill: make ?? named, asksMake: make !== undefined };
}
