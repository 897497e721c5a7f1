/** The Trim table. */
import { fault } from '../../core/faults/fault.ts';
import { nameKey } from '../job.ts';
import {
  INSIDE_CORNERS,
  TRIM_CELLS,
  TRIM_PLACES,
  type NamedWalls,
  type TrimRow,
} from '../room-rows.ts';
import { cellsOf } from './cells-of.ts';
import { TRIM_HEADINGS } from './headings/trim-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import type { Findings, RowReader } from './row-reader.ts';

const ALL = 'all';
const EXCEPT = /^(?:all\s+)?(?:except|but)\b[\s:]*/iu;

export function readTrim(table: RawTable, reading: CellReading, findings: Findings): TrimRow[] {
  return readRows(table, TRIM_HEADINGS, reading, findings).flatMap((row) => readRow(row) ?? []);
}

function readRow(row: RowReader): TrimRow | undefined {
  const room = row.requiredText('room');
  const profile = row.requiredText('profile');
  const at = readAt(row);
  const height = readHeight(row, at);
  const starts = row.text('starts');
  const rest = {
    walls: readNamedWalls(row.text('walls')),
    insideCorners: row.word('insideCorners', INSIDE_CORNERS, 'cope'),
    ...(starts === '' ? {} : { starts }),
    note: row.text('note'),
    where: row.where('profile'),
    cells: cellsOf(row, TRIM_CELLS),
  };
  if (room === undefined || profile === undefined || at === undefined) return undefined;
  const named = nameKey(room) === ALL ? {} : { room };
  return { ...named, profile, at, ...(height === undefined ? {} : { height }), ...rest };
}

function readAt(row: RowReader): TrimRow['at'] | undefined {
  if (row.isBlank('where')) return row.refuse('where', fault('text.missing', 'where', null));
  const at = row.word<TrimRow['at'] | 'unknown'>('where', TRIM_PLACES, 'unknown');
  return at === 'unknown' ? undefined : at;
}

/** A Height beside another Where is refused: one of the two is wrong. */
function readHeight(row: RowReader, at: TrimRow['at'] | undefined): TrimRow['height'] {
  const height = row.length('height', true);
  if (height === undefined || at === undefined || at === 'height') return height;
  const given = { inches: Number(height) };
  return row.refuse('height', fault('job.height-elsewhere', 'height', given, { details: { at } }));
}

/** `1, 3; window wall`, `except 2`, `all`. */
function readNamedWalls(text: string): NamedWalls {
  if (text === '' || nameKey(text) === ALL) return { are: 'all but these', names: [], text };
  const isExcept = EXCEPT.test(text);
  const names = text
    .replace(EXCEPT, '')
    .split(/[,;]/u)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  // Nothing is named: no wall is called so, which is told.
  if (names.length === 0) return { are: 'these', names: [text], text };
  return { are: isExcept ? 'all but these' : 'these', names, text };
}
