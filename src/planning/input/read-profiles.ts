/** The Profiles table. */
import { fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { findThicknessClass } from '../../core/lumber/thickness-class.ts';
import { MAKES, MITERS_ACROSS, nameKey, type Profile } from '../job.ts';
import type { RawTable } from './raw-table.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** What may stand beside the profiles, worked out from them: answers, so nothing to read. */
export const PROFILE_ANSWERS = {
  approach: 'Approach (degrees from the blade line)',
  tilt: 'Tilt (degrees from upright)',
  canBeMade: 'Can it be made?',
  toMind: 'What to mind (the last four columns are worked out live; delete them if you like)',
} as const;

export const PROFILE_HEADINGS = [
  { heading: 'Profile', required: true },
  { heading: 'Make' },
  { heading: 'Cove width' },
  { heading: 'Cove depth' },
  { heading: 'Off-center' },
  { heading: 'Blank width' },
  { heading: 'Blank thickness' },
  { heading: 'Near flat' },
  { heading: 'Spring' },
  { heading: 'Miter across' },
  { heading: 'Species' },
  { heading: 'Class' },
  { heading: 'Offcut allowance %' },
  { heading: 'Note' },
];

const ANSWERS = Object.values(PROFILE_ANSWERS);

export function readProfiles(
  table: RawTable,
  reading: LengthReading,
  findings: Findings,
): Profile[] {
  const profiles = new Map<string, Profile>();
  for (const row of readRows(table, PROFILE_HEADINGS, reading, findings, ANSWERS)) {
    const profile = readProfile(row);
    if (profile === undefined) continue;
    if (profiles.has(nameKey(profile.name))) {
      row.refuse('Profile', fault('job.profile-twice', 'Profile', profile.name));
    } else {
      profiles.set(nameKey(profile.name), profile);
    }
  }
  return [...profiles.values()];
}

function readProfile(row: RowReader): Profile | undefined {
  const name = row.requiredText('Profile');
  const make = row.word('Make', MAKES, 'buy');
  const width = row.length('Cove width');
  const depth = row.length('Cove depth');
  const offCenter = row.length('Off-center', true);
  const blankWidth = row.length('Blank width');
  const blankThickness = row.length('Blank thickness');
  const nearFlat = row.length('Near flat', true);
  const spring = row.number('Spring', 1, 89);
  const allowance = row.number('Offcut allowance %', 0, 300);
  const miterAcross = row.isBlank('Miter across')
    ? undefined
    : row.word('Miter across', MITERS_ACROSS, 'face');
  const thicknessClass = row.text('Class');
  const made = make !== 'buy';
  if (made) {
    const needed = ['Cove width', 'Cove depth', 'Blank width', 'Blank thickness'];
    if (make === 'crown cove') needed.push('Spring');
    for (const heading of needed) {
      if (row.isBlank(heading)) {
        row.refuse(heading, fault('job.cove-needs', name ?? 'Profile', heading));
      }
    }
  }
  if (thicknessClass !== '') {
    const found = findThicknessClass(thicknessClass, 'Class');
    if (!found.ok) for (const one of found.faults) row.refuse('Class', one);
  }
  if (name === undefined) return undefined;
  return {
    name,
    make,
    ...(made && width !== undefined && depth !== undefined
      ? {
          cove: {
            width: Number(width),
            depth: Number(depth),
            offCenter: Number(offCenter ?? 0),
          },
        }
      : {}),
    ...(blankWidth === undefined ? {} : { blankWidth }),
    ...(blankThickness === undefined ? {} : { blankThickness }),
    ...(nearFlat === undefined ? {} : { nearFlat }),
    ...(spring === undefined ? {} : { spring: degrees(spring) }),
    ...(miterAcross === undefined ? {} : { miterAcross }),
    species: row.text('Species'),
    thicknessClass,
    ...(allowance === undefined ? {} : { offcutAllowancePercent: allowance }),
    note: row.text('Note'),
    where: row.where('Profile'),
  };
}
