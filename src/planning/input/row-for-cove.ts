/** A cove that was tried as a row of a person's own Profiles: each length with its unit, whatever the heading says. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { parseLength, type LengthReading } from '../../core/units/length.ts';
import { writeExactLength } from '../../core/units/write-exact-length.ts';
import { PROFILE_HEADINGS, PROFILE_SIZES } from './headings/profile-headings.ts';
import { sameName } from '../job.ts';
import { matchHeadings } from './match-headings.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import { readProfiles } from './read-profiles.ts';
import type { RunRow } from './rows-for-runs.ts';

type TypedSizes = Readonly<Record<(typeof PROFILE_SIZES)[number], string>>;

/**
 * @param sizes As they were typed; blank for one that is left to its usual value. The blade is the shop's.
 * @returns faults: the lengths' own, job.profile-twice, and table.heading-missing for a column that the
 *   table lacks
 */
export function rowForCove(
  table: RawTable,
  name: string,
  sizes: TypedSizes,
  reading: LengthReading,
): Outcome<RunRow> {
  const unheard = { faults: [], cautions: [] };
  const faults: Fault[] = [];
  const cells = new Map<HeadingKey, string>([
    ['profile', name],
    ['make', 'cove'],
  ]);
  for (const size of PROFILE_SIZES) {
    const text = sizes[size].trim();
    if (text === '') continue;
    const { key } = COVE_SIZES[size];
    const length = parseLength(text, key, reading);
    if (length.ok) cells.set(key, writeExactLength(length.value, reading));
    else faults.push(...length.faults);
  }
  const { columns } = matchHeadings(table, PROFILE_HEADINGS, reading, unheard, new Set());
  const row: (string | null)[] = Array.from(
    { length: Math.max(-1, ...columns.values()) + 1 },
    () => null,
  );
  for (const [key, text] of cells) {
    const column = columns.get(key);
    if (column !== undefined) row[column] = text;
    else {
      const lacking = fault('table.heading-missing', key, table.name);
      faults.push(placeFault(lacking, whereIs(table, table.headings.line, 0)));
    }
  }
  const isKnown = readProfiles(table, reading, unheard).some((one) => sameName(one.name, name));
  if (isKnown) faults.push(fault('job.profile-twice', 'profile', name));
  return faults.length > 0 ? failed(...faults) : ok(row);
}
