/**
 * A workbook's tables as those of the job: found by what the person said of them, by their names or
 * by their headings, and read with our headings in place of theirs. The pane and the command line
 * both read by it, so that one workbook is one job.
 */
import { own } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Caution,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { TABLE_HEADINGS } from './headings/table-headings.ts';
import { saysNotUsed } from './headings/meant-headings.ts';
import { mapColumns, type ColumnMap } from './map-columns.ts';
import { isGone, matchTables, type TableMatch } from './match-tables.ts';
import { tableArgument, whereIs, type RawTable } from './raw-table.ts';
import type { JobTableName } from './read-job.ts';
import type { Place } from './recognize-tables.ts';
import { headingKey } from './row-reader.ts';
import { readChoices, type Notes } from './table-choices.ts';

/** A workbook as far as its tables are looked for. */
export interface TableSource<P extends Place> {
  readonly places: readonly P[];
  /** What is kept with it under CHOICE_NOTES. */
  readonly notes: Notes;
  /** Reads the rows of a place, as the table of that name. */
  readonly read: (place: P, name: JobTableName) => Promise<Outcome<RawTable>>;
  /** Lets others go on between two tables. */
  readonly rest?: () => Promise<void>;
}

export interface FoundTables<P extends Place> {
  readonly matches: readonly TableMatch<P>[];
  /** With our headings, and the units that theirs name. */
  readonly tables: readonly RawTable[];
  /** What `read` finds; table.choice-gone, table.column-gone, table.heading-twice. */
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

export async function findTables<P extends Place>(source: TableSource<P>): Promise<FoundTables<P>> {
  const { choices, cautions } = readChoices(source.notes);
  const matches = matchTables(source.places, choices);
  const faults: Fault[] = [];
  const tables: RawTable[] = [];
  for (const match of matches) {
    const { name, place, choice } = match;
    if (isGone(match)) faults.push(choiceGone(match));
    if (place === undefined) continue;
    const raw = await source.read(place, name);
    const table =
      raw.ok && choice?.columns !== undefined ? taken(raw.value, name, choice.columns) : raw;
    if (table.ok) tables.push(table.value);
    else faults.push(...table.faults);
    await source.rest?.();
  }
  return { matches, tables, faults, cautions };
}

function choiceGone({ name, choice }: TableMatch): Fault {
  const { sheet = '', table = '' } = choice ?? {};
  const details = { table: table === sheet ? '' : table };
  return fault('table.choice-gone', tableArgument(name), sheet, { details });
}

/** The table with our headings, where each chosen column is there, once. */
function taken(table: RawTable, name: JobTableName, chosen: ColumnMap): Outcome<RawTable> {
  const columns = columnsNow(table, chosen);
  const faults = [...columnsGone(table, name, columns), ...columnsTwice(table, columns)];
  return faults.length > 0 ? failed(...faults) : ok(mapColumns(table, name, columns));
}

/** A chosen column that has been given our own heading since is still the one. */
function columnsNow(table: RawTable, chosen: ColumnMap): ColumnMap {
  const there = new Set(table.headings.cells.map(headingKey));
  const meant = new Set(Object.values(chosen).map(headingKey));
  const now = Object.entries(chosen).map(([ours, theirs]) => {
    const key = headingKey(ours);
    const isRenamed = !there.has(headingKey(theirs)) && there.has(key) && !meant.has(key);
    return [ours, isRenamed ? ours : theirs] as const;
  });
  return Object.fromEntries(now);
}

/** Refused: without its column a quantity, say, would quietly be 1. */
function columnsGone(table: RawTable, name: JobTableName, columns: ColumnMap): Fault[] {
  const { line, cells } = table.headings;
  const there = new Set(cells.map(headingKey));
  return Object.entries(columns)
    .filter(([ours, theirs]) => !saysNotUsed(ours) && !there.has(headingKey(theirs)))
    .map(([ours, theirs]) => {
      const heading = TABLE_HEADINGS[name].find((one) => one.heading === ours);
      const details = { table: table.name };
      const one = fault('table.column-gone', heading?.key ?? own(ours), theirs, { details });
      return placeFault(one, whereIs(table, line, 0));
    });
}

/** Two columns under one chosen heading: nobody can tell which of them is meant. */
function columnsTwice(table: RawTable, columns: ColumnMap): Fault[] {
  const { line, cells } = table.headings;
  const chosen = new Set(Object.values(columns).map(headingKey));
  return cells.flatMap((cell, at) => {
    const key = headingKey(cell);
    const isFirst = cells.findIndex((other) => headingKey(other) === key) === at;
    if (typeof cell !== 'string' || !chosen.has(key) || isFirst) return [];
    const one = fault('table.heading-twice', tableArgument(table.name), cell);
    return [placeFault(one, whereIs(table, line, at))];
  });
}
