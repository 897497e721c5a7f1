/** The Walls table. */
import { fault } from '../../core/faults/fault.ts';
import { computeCornerByTape, markOutInches } from '../../core/room/corner-by-tape.ts';
import { TURNS, type Turn } from '../../core/room/wall.ts';
import { degrees, toDegrees, type Degrees } from '../../core/units/angle.ts';
import { nameKey } from '../job.ts';
import { WALL_CELLS, type WallRow } from '../room-rows.ts';
import { cellsOf } from './cells-of.ts';
import { WALL_HEADINGS } from './headings/wall-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { cautionAllShort, notMetres } from './short-lengths.ts';
import type { Findings, RowReader } from './row-reader.ts';

const SQUARE = degrees(90);
/** Any number is read: what no corner can be is told by the room, in its own words. */
const MOST_DEGREES = 1e9;

export interface WallsReading {
  readonly walls: readonly WallRow[];
  /** Keys of the rooms of which a row is at fault: without it they would seem not to close. */
  readonly unread: ReadonlySet<string>;
  readonly isSound: boolean;
}

export function readWalls(table: RawTable, reading: CellReading, findings: Findings): WallsReading {
  const { faults } = findings;
  const before = faults.length;
  const unread = new Set<string>();
  const rows = readRows(table, WALL_HEADINGS, reading, findings);
  cautionAllShort(table.name, rows);
  const walls = rows.flatMap((row) => {
    const soFar = faults.length;
    const wall = readWall(row, reading);
    if (faults.length > soFar) unread.add(nameKey(row.text('room')));
    return wall ?? [];
  });
  return { walls, unread, isSound: faults.length === before };
}

function readWall(row: RowReader, reading: CellReading): WallRow | undefined {
  const room = row.requiredText('room');
  const wall = row.requiredText('wall');
  const length = notMetres(row, 'length', row.requiredLength('length'));
  const turn = row.word('turn', TURNS, 'inside');
  const corner = readCorner(row, turn, markOutInches(reading.unit));
  const height = row.length('height');
  const rest = {
    turn,
    ...(height === undefined ? {} : { height }),
    note: row.text('note'),
    where: row.where('length'),
    // By tape, the tape's cell is the corner's.
    cells: {
      ...cellsOf(row, WALL_CELLS),
      ...(row.isBlank('cornerByTape') ? {} : { corner: row.where('cornerByTape') }),
    },
  };
  if (room === undefined || wall === undefined || length === undefined) return undefined;
  return corner === undefined ? undefined : { room, wall, length, corner, ...rest };
}

/** By gauge or by tape, never by both; undefined where a tape can't be right. */
function readCorner(row: RowReader, turn: Turn, markOut: number): Degrees | undefined {
  const isGauged = !row.isBlank('corner');
  const isTaped = !row.isBlank('cornerByTape');
  const gauged = row.number('corner', -MOST_DEGREES, MOST_DEGREES, { degrees: true });
  const taped = row.length('cornerByTape');
  if (turn === 'end') {
    const heading = isGauged ? 'corner' : 'cornerByTape';
    if (isGauged || isTaped) row.caution(heading, fault('room.corner-unused', heading, turn));
    return SQUARE;
  }
  if (isGauged && isTaped) {
    const given = taped === undefined ? null : { inches: Number(taped) };
    const details = { corner: gauged === undefined ? '' : { degrees: gauged } };
    return row.refuse(
      'cornerByTape',
      fault('room.corner-twice', 'cornerByTape', given, { details }),
    );
  }
  if (!isTaped) {
    if (!isGauged) return SQUARE;
    if (gauged === undefined) return undefined;
    const corner = gauged > 0 ? row.plausibleCorner('corner', gauged) : gauged;
    return corner === undefined ? undefined : degrees(corner);
  }
  if (taped === undefined) return undefined;
  const corner = computeCornerByTape(Number(taped), markOut, 'cornerByTape');
  if (corner.ok) return toDegrees(corner.value);
  for (const one of corner.faults) row.refuse('cornerByTape', one);
  return undefined;
}
