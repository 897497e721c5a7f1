/** Runs as rows of Runs: what a person would type for each, read back before it is believed. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { writeDecimal } from '../../core/units/format-number.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { writeExactLength } from '../../core/units/write-exact-length.ts';
import { nameKey, type Run, type RunEnd } from '../job.ts';
import { runArgument } from '../pieces/opening-sides.ts';
import { RUN_HEADINGS } from './headings/run-headings.ts';
import { matchHeadings } from './match-headings.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRuns } from './read-runs.ts';
import type { Findings } from './row-reader.ts';

const SQUARE_CORNER = 90;

/** What stands under each heading of Runs; nothing where blank says the same. */
export function cellsOfRun(run: Run, reading: LengthReading): Map<HeadingKey, string> {
  const cells = new Map<HeadingKey, string>([
    ['room', run.room],
    ['profile', run.profile],
    ['length', writeExactLength(run.length, reading)],
  ]);
  const put = (key: HeadingKey, text: string, isUsual: boolean): void => {
    if (!isUsual) cells.set(key, text);
  };
  const putEnd = (side: 'left' | 'right', { kind, corner }: RunEnd): void => {
    put(`${side}End`, kind, kind === 'square');
    const digits = writeDecimal(String(corner), reading.decimalSign);
    put(`${side}Corner`, digits, Number(corner) === SQUARE_CORNER);
  };
  put('run', run.run, nameKey(run.run) === nameKey(run.profile));
  put('measuredAs', run.measuredAs, run.measuredAs === 'wall');
  put('quantity', String(run.quantity), run.quantity === 1);
  putEnd('left', run.left);
  putEnd('right', run.right);
  put('reveal', writeExactLength(run.reveal, reading), run.measuredAs !== 'opening');
  put('onePiece', 'yes', !run.onePiece);
  put('match', run.match, run.match === '');
  put('done', 'yes', !run.done);
  put('note', run.note, run.note === '');
  return cells;
}

/** A row of texts by their column from A on; null for a cell that is left as it is. */
export type RunRow = readonly (string | null)[];

/**
 * A row for each run, to stand below those of a person's own Runs, under their headings.
 *
 * @returns faults `room.runs-lack-heading`, and `room.run-reads-otherwise` where a row would not be read as
 * the very same run.
 */
export function rowsForRuns(
  table: RawTable,
  runs: readonly Run[],
  reading: CellReading,
): Outcome<readonly RunRow[]> {
  const unheard = { faults: [], cautions: [] };
  const { columns } = matchHeadings(table, RUN_HEADINGS, reading, unheard, new Set());
  const width = Math.max(-1, ...columns.values()) + 1;
  const lacking = new Map<HeadingKey, Fault>();
  const rows = runs.map((run): RunRow => {
    const row: (string | null)[] = Array.from({ length: width }, () => null);
    for (const [key, text] of cellsOfRun(run, reading)) {
      const column = columns.get(key);
      if (column !== undefined) row[column] = text;
      else if (!lacking.has(key)) lacking.set(key, withoutColumn(table, key, run, text));
    }
    return row;
  });
  if (lacking.size > 0) return failed(...lacking.values());
  const otherwise = runs.filter((run, at) => !isReadAs(table, rows[at] ?? [], run, reading));
  return otherwise.length > 0 ? failed(...otherwise.map(readsOtherwise)) : ok(rows);
}

function withoutColumn(table: RawTable, key: HeadingKey, run: Run, text: string): Fault {
  const details = { run: run.run, room: run.room, profile: run.profile };
  const one = fault('room.runs-lack-heading', key, text, { details });
  return placeFault(one, whereIs(table, table.headings.line, 0));
}

export function readsOtherwise(run: Run): Fault {
  return placeFault(fault('room.run-reads-otherwise', runArgument(run), run.profile), run.where);
}

function isReadAs(table: RawTable, cells: RunRow, run: Run, reading: CellReading): boolean {
  const found: Findings = { faults: [], cautions: [] };
  const line = table.headings.line + 1;
  const [read, ...others] = readRuns({ ...table, rows: [{ line, cells }] }, reading, found);
  return read !== undefined && others.length + found.faults.length === 0 && isSameRun(read, run);
}

/** Whether two runs are planned alike. */
export function isSameRun(read: Run, run: Run): boolean {
  const isSameName = (key: 'room' | 'run' | 'profile' | 'match'): boolean =>
    nameKey(read[key]) === nameKey(run[key]);
  const isSameEnd = (side: 'left' | 'right'): boolean =>
    read[side].kind === run[side].kind && read[side].corner === run[side].corner;
  return (
    (['room', 'run', 'profile', 'match'] as const).every(isSameName) &&
    (['left', 'right'] as const).every(isSameEnd) &&
    (['measuredAs', 'quantity', 'onePiece', 'done', 'note'] as const).every(
      (key) => read[key] === run[key],
    ) &&
    read.length.equals(run.length) &&
    (run.measuredAs !== 'opening' || read.reveal.equals(run.reveal))
  );
}
