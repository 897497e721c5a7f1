/**
 * What a person said of their tables: which of them stands for which of the job's, and which of its
 * columns for which of ours. It is kept with the workbook, a note a table, as text that can be read
 * there: {"sheet":"House","columns":{"Room":"Area","Profile":"Molding"}}.
 */
import { tableArgument } from './raw-table.ts';
import { fault, type Caution } from '../../core/faults/fault.ts';
import { saysNotUsed } from './headings/meant-headings.ts';
import { TABLE_HEADINGS } from './headings/table-headings.ts';
import type { ColumnMap } from './map-columns.ts';
import { JOB_TABLES, type JobTableName } from './read-job.ts';
import { headingKey } from './row-reader.ts';

export interface TableChoice {
  readonly sheet: string;
  readonly table?: string;
  /** Absent where the table has our own headings. */
  readonly columns?: ColumnMap;
}

export type Choices = Readonly<Partial<Record<JobTableName, TableChoice>>>;

/** Texts kept with a workbook, by their keys. */
export type Notes = Readonly<Record<string, string | undefined>>;

/** Workbooks of earlier versions keep all choices in one note. */
export const OLD_CHOICES_NOTE = 'columns';
const OLD_VERSION = 1;

/** The key of the note for a table: what a person sees among the workbook's properties. */
export const choiceNote = (name: JobTableName): string => `Coveledger columns of ${name}`;

/** Every key under which choices may be kept. */
export const CHOICE_NOTES: readonly string[] = [
  ...JOB_TABLES.map(({ name }) => choiceNote(name)),
  OLD_CHOICES_NOTE,
];

/** The notes that keep these choices; undefined for those that are to be forgotten. */
export function writeChoices(choices: Choices): Notes {
  return Object.fromEntries([
    ...JOB_TABLES.map(({ name }) => {
      const { [name]: choice } = choices;
      return [choiceNote(name), choice === undefined ? undefined : JSON.stringify(choice)] as const;
    }),
    [OLD_CHOICES_NOTE, undefined] as const,
  ]);
}

/** The choices, and a caution for each note that can't be read: it is ignored. */
export function readChoices(notes: Notes): {
  readonly choices: Choices;
  readonly cautions: readonly Caution[];
} {
  const cautions: Caution[] = [];
  const kept = JOB_TABLES.flatMap(({ name }) => {
    const note = notes[choiceNote(name)];
    return note === undefined ? [] : [[name, readChoice(parse(note), name)] as const];
  });
  const read = kept.length > 0 ? kept : readOldChoices(notes[OLD_CHOICES_NOTE]);
  const choices = read.flatMap(([name, choice]) => {
    if (choice !== undefined) return [[name, choice] as const];
    cautions.push(fault('table.choice-unread', tableArgument(name), choiceNote(name)));
    return [];
  });
  return { choices: Object.fromEntries(choices), cautions };
}

/** A note that is not of that version, or not ours, is as good as none. */
function readOldChoices(
  note: string | undefined,
): (readonly [JobTableName, TableChoice | undefined])[] {
  const kept = note === undefined ? undefined : parse(note);
  if (!isRecord(kept) || kept['version'] !== OLD_VERSION || !isRecord(kept['tables'])) return [];
  const { tables } = kept;
  return JOB_TABLES.flatMap(({ name }) =>
    Object.hasOwn(tables, name) ? [[name, readChoice(tables[name], name)] as const] : [],
  );
}

/** Undefined for what is no choice of that table: half of one, or somebody else's text. */
function readChoice(value: unknown, name: JobTableName): TableChoice | undefined {
  if (!isRecord(value)) return undefined;
  const { sheet, table, columns } = value;
  if (typeof sheet !== 'string' || sheet === '') return undefined;
  if (table !== undefined && typeof table !== 'string') return undefined;
  if (columns !== undefined && !isColumnMap(columns, name)) return undefined;
  return {
    sheet,
    ...(table === undefined ? {} : { table }),
    ...(columns === undefined ? {} : { columns }),
  };
}

/** Our headings, each with a column of theirs that stands for no other. */
function isColumnMap(value: unknown, name: JobTableName): value is ColumnMap {
  if (!isRecord(value)) return false;
  const ours = new Set(TABLE_HEADINGS[name].map(({ heading }) => heading));
  const theirs = Object.entries(value).map(([heading, column]) =>
    typeof column === 'string' && (ours.has(heading) || saysNotUsed(heading))
      ? headingKey(column)
      : '',
  );
  return !theirs.includes('') && new Set(theirs).size === theirs.length;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
