/** Walls and Trim together: one says nothing without the other. */
import { fault, type Fault } from '../../core/faults/fault.ts';
import type { TrimRow, WallRow } from '../room-rows.ts';
import { makeRuns, type MadeRuns, type RoomsOfJob } from '../rooms/make-runs.ts';
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
type Others = Pick<RoomsOfJob, 'typed' | 'openings' | 'profiles' | 'choose'>;

export interface RoomsReading {
  readonly walls: readonly WallRow[];
  readonly trim: readonly TrimRow[];
  /** Those that Walls and Trim make, and those of Runs, beside them or in their place. */
  readonly makeRuns: (others: Others) => MadeRuns;
}

/** Whether Runs can be left out, or left empty: Trim says what runs. That Walls lacks then is told by itself. */
export function makesRuns({ trim }: RoomTables): boolean {
  return isFilled(trim);
}

/** @param source names the workbook or folder */
export function readRooms(
  tables: RoomTables,
  reading: CellReading,
  findings: Findings,
  source: string,
): RoomsReading {
  const { faults, cautions } = findings;
  faults.push(...withoutWalls(tables, source));
  const read = tables.walls === undefined ? undefined : readWalls(tables.walls, reading, findings);
  const trim = tables.trim === undefined ? [] : readTrim(tables.trim, reading, findings);
  if (read === undefined) {
    return {
      walls: [],
      trim,
      makeRuns: ({ typed }) => ({ runs: typed, faults: [], cautions: [] }),
    };
  }
  const { walls, unread, isSound } = read;
  const isWallsSound = isSound && isFilled(tables.walls);
  const isTrimmed = isFilled(tables.trim);
  if (walls.length > 0 && !isTrimmed) {
    cautions.push(fault('room.nothing-made', 'sheet.Trim', 'Walls'));
  }
  const ofRooms = { walls, trim, unread, isWallsSound, isTrimmed };
  return { walls, trim, makeRuns: (others) => makeRuns({ ...others, ...ofRooms }) };
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
