/** The table Options: what may be added to the job, or made otherwise, at a price of its own. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { fault, placeFault, type Fault, type Where } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { nameKey, sameName, type OptionChange } from '../job.ts';
import { moldingKey, type Molding } from '../options/choose.ts';
import { OPTION_HEADINGS } from './headings/option-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

/** Each is a plan of its own; a quote has a handful [C]. */
export const MOST_OPTIONS = 20;
/** A name stands in one line of the client's copy. */
const LONGEST_NAME = 60;

/** A row as it is typed; blanks are absent. */
export interface OptionRow {
  readonly option: string;
  readonly room?: string;
  readonly profile?: string;
  readonly species?: string;
  readonly instead?: string;
  readonly taken?: boolean;
  readonly note: string;
  readonly reader: RowReader;
}

/** An option whose rows are sound. */
export interface ReadOption {
  readonly name: string;
  readonly note: string;
  readonly isTaken: boolean;
  readonly changes: readonly OptionChange[];
  /** Its name in its first row. */
  readonly where: Where;
}

/** What options pick from. */
export interface OptionFacts {
  readonly profiles: readonly { readonly name: string; readonly species: string }[];
  /** All that is still to be made, each molding of a room once, in its order. */
  readonly moldings: readonly Molding[];
  /** Whether all that could pick them was read: else what isn't found may be among the rest. */
  readonly isComplete: boolean;
}

export function readOptionRows(
  table: RawTable | undefined,
  reading: CellReading,
  findings: Findings,
): OptionRow[] {
  const rows = table === undefined ? [] : readRows(table, OPTION_HEADINGS, reading, findings);
  return rows.flatMap((reader): OptionRow[] => {
    const option = reader.requiredText('option');
    const text = (heading: HeadingKey & keyof OptionRow): Partial<OptionRow> => {
      const said = reader.text(heading);
      return said === '' ? {} : { [heading]: said };
    };
    const rest = {
      ...text('room'),
      ...text('profile'),
      ...text('species'),
      ...text('instead'),
      ...(reader.isBlank('taken') ? {} : { taken: reader.yesNo('taken', false) }),
      note: reader.text('note'),
    };
    if (option === undefined) return [];
    if (option.length > LONGEST_NAME) {
      const limit = { limit: LONGEST_NAME };
      reader.refuse('option', fault('text.too-long', 'option', option.length, limit));
    }
    return [{ option, ...rest, reader }];
  });
}

/** Options in the order of their first rows. What they can't mean is refused at its cell. */
export function readOptions(
  rows: readonly OptionRow[],
  facts: OptionFacts,
  findings: Findings,
): ReadOption[] {
  const byName = new Map<string, OptionRow[]>();
  for (const row of rows) {
    const key = nameKey(row.option);
    byName.set(key, [...(byName.get(key) ?? []), row]);
  }
  const options = [...byName.values()].flatMap((own) => readOption(own, facts) ?? []);
  const [extra] = [...byName.values()][MOST_OPTIONS] ?? [];
  if (extra !== undefined) {
    const limit = { limit: MOST_OPTIONS };
    extra.reader.refuse('option', fault('job.options-too-many', 'option', byName.size, limit));
  }
  findings.faults.push(...checkTogether(options));
  return options;
}

function readOption(rows: readonly OptionRow[], facts: OptionFacts): ReadOption | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  const changes = new Map<string, OptionChange>();
  for (const row of rows) {
    for (const change of changesOf(row, facts)) {
      const key = moldingKey(change);
      const before = changes.get(key);
      changes.set(key, before ?? change);
      if (before === undefined || isSame(before, change)) continue;
      const { room, profile } = change;
      const details = { room, profile };
      row.reader.refuse('option', fault('job.option-mixes', 'option', row.option, { details }));
      break;
    }
  }
  const said = rows.filter(({ taken }) => taken !== undefined);
  const other = said.find(({ taken }) => taken !== said[0]?.taken);
  other?.reader.refuse('taken', fault('job.option-taken-differs', 'taken', other.option));
  return {
    name: first.option,
    note: [...new Set(rows.map(({ note }) => note))].filter((one) => one !== '').join(' '),
    isTaken: said[0]?.taken ?? false,
    changes: [...changes.values()],
    where: first.reader.where('option'),
  };
}

function isSame(one: OptionChange, other: OptionChange): boolean {
  return nameKey(one.instead ?? '') === nameKey(other.instead ?? '');
}

/** What the row picks; none where something of it is refused. */
function changesOf(
  row: OptionRow,
  { profiles, moldings, isComplete }: OptionFacts,
): OptionChange[] {
  const { room, profile, species, reader } = row;
  const known = (heading: 'profile' | 'instead', name: string | undefined): boolean => {
    if (name === undefined || profiles.some((one) => sameName(one.name, name))) return true;
    reader.refuse(heading, fault('job.profile-unknown', heading, name));
    return false;
  };
  const all = [known('profile', profile), known('instead', row.instead)];
  const isKnown =
    (!isComplete || roomIsKnown(row, moldings)) &&
    speciesIsKnown(row, profiles) &&
    !all.includes(false);
  if (!isKnown) return [];
  const speciesOf = new Map(profiles.map((one) => [nameKey(one.name), one.species]));
  const picked = moldings.filter(
    (one) =>
      (room === undefined || sameName(one.room, room)) &&
      (profile === undefined || sameName(one.profile, profile)) &&
      (species === undefined || sameName(speciesOf.get(nameKey(one.profile)) ?? '', species)),
  );
  if (picked.length === 0) {
    if (!isComplete) return [];
    const details = { picked: sayPicked(row) };
    reader.refuse('option', fault('job.option-picks-none', 'option', row.option, { details }));
    return [];
  }
  const instead = profiles.find(({ name }) => sameName(name, row.instead ?? ''))?.name;
  if (instead === undefined) return picked.map((one) => ({ ...one }));
  return checkInstead(row, instead, picked) ? picked.map((one) => ({ ...one, instead })) : [];
}

function checkInstead({ reader }: OptionRow, instead: string, picked: readonly Molding[]): boolean {
  const names = [...new Map(picked.map(({ profile }) => [nameKey(profile), profile])).values()];
  if (names.length > 1) {
    const details = { profiles: names.join(', ') };
    reader.refuse('instead', fault('job.option-instead-several', 'instead', instead, { details }));
    return false;
  }
  if (!names.some((name) => sameName(name, instead))) return true;
  reader.refuse('instead', fault('job.option-instead-same', 'instead', instead));
  return false;
}

/** `in Hall, of Crown, of poplar`. */
function sayPicked({ room, profile, species }: OptionRow): string {
  const said = [
    ...(room === undefined ? [] : [`in ${room}`]),
    ...[profile, species].flatMap((one) => (one === undefined ? [] : [`of ${one}`])),
  ];
  return said.length === 0 ? 'in the job' : said.join(' and ');
}

function roomIsKnown({ room, reader }: OptionRow, moldings: readonly Molding[]): boolean {
  if (room === undefined || moldings.some((one) => sameName(one.room, room))) return true;
  const rooms = [...new Map(moldings.map((one) => [nameKey(one.room), one.room])).values()];
  const details = { may: findNearNames(room, rooms).join(' or '), known: rooms.join(', ') };
  reader.refuse('room', fault('job.option-room-unknown', 'room', room, { details }));
  return false;
}

function speciesIsKnown(
  { species, reader }: OptionRow,
  profiles: OptionFacts['profiles'],
): boolean {
  const all = [...new Set(profiles.map((one) => one.species))].filter((one) => one !== '');
  if (species === undefined || all.some((one) => sameName(one, species))) return true;
  const details = { may: findNearNames(species, all).join(' or ') };
  reader.refuse('species', fault('job.option-species-unknown', 'species', species, { details }));
  return false;
}

/** What two options say of one molding of a room: see the How to sheet. */
function checkTogether(options: readonly ReadOption[]): Fault[] {
  const faults: Fault[] = [];
  const seen = new Map<string, (OptionChange & { readonly of: ReadOption })[]>();
  for (const option of options) {
    for (const change of option.changes) {
      const key = moldingKey(change);
      seen.set(key, [...(seen.get(key) ?? []), { ...change, of: option }]);
    }
  }
  const told = new Set<ReadOption>();
  const refuse = (
    code: 'job.option-two-additions' | 'job.option-of-addition' | 'job.option-two-taken',
    { of, room, profile }: OptionChange & { readonly of: ReadOption },
    other: ReadOption,
  ): void => {
    if (told.has(of)) return;
    told.add(of);
    const details = { room, profile, other: other.name };
    faults.push(placeFault(fault(code, 'option', of.name, { details }), of.where));
  };
  for (const all of seen.values()) {
    const [added, again] = all.filter(({ instead }) => instead === undefined);
    const others = all.filter(({ instead }) => instead !== undefined);
    if (added !== undefined && again !== undefined) {
      refuse('job.option-two-additions', again, added.of);
    }
    const [one] = others;
    if (added?.of.isTaken === false && one !== undefined) {
      refuse('job.option-of-addition', one, added.of);
    }
    const [first, second] = others.filter(({ of }) => of.isTaken);
    if (first !== undefined && second !== undefined) {
      refuse('job.option-two-taken', second, first.of);
    }
  }
  return faults;
}
