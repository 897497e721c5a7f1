/** The Profiles table. */
import {
  COVE_SIZES,
  coveOf,
  isComplete,
  readSizes,
  type CoveSize,
} from '../../core/cove/cove-sizes.ts';
import { OFF_CENTER_TO } from '../../core/cove/cove.ts';
import { own, sayArgument } from '../../core/faults/argument.ts';
import { fault } from '../../core/faults/fault.ts';
import { degrees } from '../../core/units/angle.ts';
import { askAboutSpring } from '../../core/units/plausible-angle.ts';
import { findThicknessClass } from '../../core/lumber/thickness-class.ts';
import { checkCrownSize } from '../crown-size-of.ts';
import { MAKES, MITERS_ACROSS, nameKey, PROFILE_CELLS, type Profile } from '../job.ts';
import { cellsOf } from './cells-of.ts';
import { PROFILE_HEADINGS, PROFILE_SIZES } from './headings/profile-headings.ts';
import { readPlace } from './read-place.ts';
import { readSlope } from './read-slope.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** What may stand beside the profiles, worked out from them: answers, so nothing to read. */
export const PROFILE_ANSWERS = {
  approach: 'Approach (degrees from the blade line)',
  tilt: 'Tilt (degrees from upright)',
  canBeMade: 'Can it be made?',
  toMind: 'What to mind (the last four columns are worked out live; delete them if you like)',
} as const;

/** Sizes that a molding which is bought has no use for: with them and no Make nobody can tell. */
const ANY_COVE = ['coveWidth', 'coveDepth'] as const;
const COVES_ALONE = [...ANY_COVE, 'offCenter', 'offCenterTo', 'nearFlat'] as const;

const ANSWERS = Object.values(PROFILE_ANSWERS);

/** A row of Profiles: other tables may name it even where its sizes are at fault. */
export interface ProfileRow {
  readonly name: string;
  readonly species: string;
  /** Absent for a cove without a size that it needs, which has its fault. */
  readonly profile?: Profile;
}

/**
 * The rows that have a name, each name once.
 *
 * @param roundOpenings Keys of the names that Openings names as casing, apron or stool.
 */
export function readProfiles(
  table: RawTable,
  reading: CellReading,
  findings: Findings,
  roundOpenings: ReadonlySet<string> = new Set(),
): ProfileRow[] {
  const rows = new Map<string, ProfileRow>();
  for (const row of readRows(table, PROFILE_HEADINGS, reading, findings, ANSWERS)) {
    const read = readProfile(row, roundOpenings, reading);
    if (read === undefined) continue;
    if (rows.has(nameKey(read.name))) {
      row.refuse('profile', fault('job.profile-twice', 'profile', read.name));
    } else {
      rows.set(nameKey(read.name), read);
    }
  }
  return [...rows.values()];
}

function readProfile(
  row: RowReader,
  roundOpenings: ReadonlySet<string>,
  reading: CellReading,
): ProfileRow | undefined {
  const read = readSizesOf(row, roundOpenings, reading);
  if (read?.profile === undefined) return read;
  for (const { heading, fault: one } of checkCrownSize(read.profile)) row.refuse(heading, one);
  return read;
}

/** Of a molding that is bought: sizes that only a cove has. */
function sayUnusedSizes(row: RowReader): void {
  const typed = COVES_ALONE.filter((size) => !row.isBlank(size));
  const [first] = typed;
  if (first === undefined) return;
  const details = { sizes: typed.map((size) => sayArgument(size)).join(', '), count: typed.length };
  row.caution(first, fault('job.cove-sizes-unused', 'profile', row.text('profile'), { details }));
}

function readSpring(row: RowReader): number | undefined {
  const spring = row.number('spring', 0, 89, { degrees: true });
  const asked = spring === undefined ? undefined : askAboutSpring('spring', spring);
  return asked === undefined ? spring : row.refuse('spring', asked);
}

function readSizesOf(
  row: RowReader,
  roundOpenings: ReadonlySet<string>,
  { decimalSign }: CellReading,
): ProfileRow | undefined {
  const name = row.requiredText('profile');
  const make = row.word('make', MAKES, 'buy');
  if (row.isBlank('make') && ANY_COVE.some((size) => !row.isBlank(size))) {
    const argument = name === undefined ? 'profile' : own(name);
    row.refuse('make', fault('job.make-missing', argument, null));
  }
  const sizes = readSizes(PROFILE_SIZES, ({ key, least, most }) =>
    row.length(key, least === 'from 0', most),
  );
  const spring = readSpring(row);
  const slope = readSlope(row, decimalSign);
  const drop = row.length('drop');
  const projection = row.length('projection');
  const allowance = row.number('offcutAllowance', 0, 300, { percent: true });
  const miterAcross = row.isBlank('miterAcross')
    ? undefined
    : row.word('miterAcross', MITERS_ACROSS, 'face');
  const isRound = name !== undefined && roundOpenings.has(nameKey(name));
  const isUp = make !== 'buy' || spring !== undefined;
  const place = readPlace(row, isRound ? 'opening' : isUp ? 'ceiling' : 'floor');
  const offCenterTo = row.word('offCenterTo', OFF_CENTER_TO, 'deepest line');
  const thicknessClass = row.text('thicknessClass');
  if (make !== 'buy') {
    const needed = PROFILE_SIZES.map((size): CoveSize => COVE_SIZES[size])
      .filter(({ blank }) => blank === 'refused')
      .map(({ key }) => key);
    if (make === 'crown cove') needed.push('spring');
    const argument = name === undefined ? 'profile' : own(name);
    for (const heading of needed) {
      if (row.isBlank(heading)) {
        row.refuse(heading, fault('job.cove-needs', argument, sayArgument(heading)));
      }
    }
  }
  if (thicknessClass !== '') {
    const found = findThicknessClass(thicknessClass, 'thicknessClass');
    if (!found.ok) for (const one of found.faults) row.refuse('thicknessClass', one);
  }
  if (name === undefined) return undefined;
  const species = row.text('species');
  const molding = {
    name,
    ...(spring === undefined ? {} : { spring: degrees(spring) }),
    ...(slope === undefined ? {} : { slope }),
    ...(drop === undefined ? {} : { drop }),
    ...(projection === undefined ? {} : { projection }),
    ...(miterAcross === undefined ? {} : { miterAcross }),
    place,
    species,
    thicknessClass,
    ...(allowance === undefined ? {} : { offcutAllowancePercent: allowance }),
    note: row.text('note'),
    where: row.where('profile'),
    cells: cellsOf(row, PROFILE_CELLS),
  };
  if (make === 'buy') {
    if (!row.isBlank('make')) sayUnusedSizes(row);
    const { blankWidth, blankThickness } = sizes;
    const size = {
      ...(blankWidth === undefined ? {} : { blankWidth }),
      ...(blankThickness === undefined ? {} : { blankThickness }),
    };
    return { name, species, profile: { ...molding, make, ...size } };
  }
  if (!isComplete(sizes)) return { name, species };
  const { blankWidth, blankThickness, nearFlat } = sizes;
  const coved = {
    ...molding,
    cove: { ...coveOf(sizes), ...(offCenterTo === 'deepest line' ? {} : { offCenterTo }) },
    blankWidth,
    blankThickness,
    ...(nearFlat === undefined ? {} : { nearFlat }),
  };
  // A crown cove whose spring is at fault can still be tried at the saw, as the cove that it is.
  const profile: Profile =
    make === 'cove' || spring === undefined
      ? { ...coved, make: 'cove' }
      : { ...coved, make, spring: degrees(spring) };
  return { name, species, profile };
}
