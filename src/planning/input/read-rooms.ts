/** Walls and Trim together: one says nothing without the other. */
import { fault, type Fault } from '../../core/faults/fault.ts';
import type { Opening, Profile, Run } from '../job.ts';
import type { TrimRow, WallRow } from '../room-rows.ts';
import { makeRuns } from '../rooms/make-runs.ts';
import { tableArgument, type RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readTrim } from './read-trim.ts';
import { readWalls } from './read-walls.ts';
import type { Findings } from './row-reader.ts';

export interface RoomTables {
  readonly walls: RawTable | undefined;
  readonly trim: RawTable | undefined;
}

/** What the runs of walls are made with. */
interface Others {
  readonly typed: readonly Run[];
  readonly openings: readonly Opening[];
  readonly profiles: readonly Profile[];
}

export interface RoomsReading {
  readonly walls: readonly WallRow[];
  readonly trim: readonly TrimRow[];
  /** Those that Walls and Trim make, and those of Runs, beside them or in their place. */
  readonly runs: readonly Run[];
}

/** Whether Runs can be left out, or left empty: Trim says what runs. That Walls lacks then is told by itself. */
export function makesRuns({ trim }: RoomTables): boolean {
  return isFilled(trim);
}

/** @param source names the workbook or folder */
export function readRooms(
  tables: RoomTables,
  others: Others,
  reading: CellReading,
  findings: Findings,
  source: string,
): RoomsReading {
  const { faults, cautions } = findings;
  faults.push(...withoutWalls(tables, source));
  const read = tables.walls === undefined ? undefined : readWalls(tables.walls, reading, findings);
  const trim = tables.trim === undefined ? [] : readTrim(tables.trim, reading, findings);
  if (read === undefined) return { walls: [], trim, runs: others.typed };
  const { walls, unread, isSound } = read;
  const isWallsSound = isSound && isFilled(tables.walls);
  const isTrimmed = isFilled(tables.trim);
  if (walls.length > 0 && !isTrimmed) {
    cautions.push(fault('room.nothing-made', 'sheet.Trim', 'Walls'));
  }
  const found = makeRuns({ ...others, walls, trim, unread, isWallsSound, isTrimmed });
  faults.push(...found.faults);
  cautions.push(...found.cautions);
  return { walls, trim, runs: found.runs };
}

function withoutWalls({ walls, trim }: RoomTables, source: string): Fault[] {
  if (!isFilled(trim) || isFilled(walls)) return [];
  const argument = tableArgument('Walls');
  return [
    walls === undefined
      ? fault('table.missing', argument, source)
      : fault('table.empty', argument, null),
  ];
}

function isFilled(table: RawTable | undefined): boolean {
  return table !== undefined && table.rows.length > 0;
}
