/** What the person said of their tables: kept with the workbook as text. */
import type { TablePlace } from '../../hosts/host.ts';
import type { ColumnMap } from '../../planning/input/map-columns.ts';
import { JOB_TABLES, type JobTableName } from '../../planning/input/read-job.ts';

export interface TableChoice {
  readonly sheet: string;
  readonly table?: string;
  /** Absent where the table has our own headings. */
  readonly columns?: ColumnMap;
}

export type Choices = Readonly<Partial<Record<JobTableName, TableChoice>>>;

const VERSION = 1;

/** A file keeps no notes: what was said of its tables is kept on this machine, by its name. */
export const columnsPreference = (fileName: string): string => `columns of ${fileName}`;

export function writeChoices(choices: Choices): string {
  return JSON.stringify({ version: VERSION, tables: choices });
}

/** None where nothing was kept, or where the note is of another version or not ours. */
export function readChoices(text: string | undefined): Choices {
  const note = parse(text);
  if (!isRecord(note) || note['version'] !== VERSION || !isRecord(note['tables'])) return {};
  const { tables } = note;
  return Object.fromEntries(
    JOB_TABLES.flatMap(({ name }) => {
      const choice = readChoice(tables[name]);
      return choice === undefined ? [] : [[name, choice] as const];
    }),
  );
}

export function choiceOf(place: TablePlace, columns?: ColumnMap): TableChoice {
  return {
    sheet: place.sheet,
    ...(place.table === undefined ? {} : { table: place.table }),
    ...(columns === undefined ? {} : { columns }),
  };
}

export function isPlaceOf(choice: TableChoice, place: TablePlace): boolean {
  return choice.sheet === place.sheet && choice.table === place.table;
}

function readChoice(value: unknown): TableChoice | undefined {
  if (!isRecord(value) || typeof value['sheet'] !== 'string') return undefined;
  const { sheet, table, columns } = value;
  const map = isRecord(columns)
    ? Object.entries(columns).filter(
        (pair): pair is [string, string] => typeof pair[1] === 'string',
      )
    : undefined;
  return {
    sheet,
    ...(typeof table === 'string' ? { table } : {}),
    ...(map === undefined ? {} : { columns: Object.fromEntries(map) }),
  };
}

function parse(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    // Somebody else's note, or half of one: as good as none.
    return undefined;
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
