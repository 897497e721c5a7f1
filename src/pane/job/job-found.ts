/** What the pane knows of the workbook's job after one reading of it. */
import type { Caution, Fault, Where } from '../../core/faults/fault.ts';
import type { TablePlace, WorkbookSurvey } from '../../hosts/host.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import type { CoveProfile, Job } from '../../planning/job.ts';
import type { ListedRun } from '../../planning/list-runs.ts';
import type { TableMatch as Match } from '../../planning/input/match-tables.ts';
import type { RoomLook } from '../../planning/rooms/look-at-rooms.ts';
import type { Shop } from '../../planning/shop.ts';

export interface JobFound {
  readonly survey: WorkbookSurvey;
  /** Runs, Walls, Trim, Openings, Profiles, Shop, Stock and Work, each with the place that it stands in. */
  readonly tables: readonly TableMatch[];
  /** Present where nothing is at fault and no table is missing. */
  readonly job: Job | undefined;
  /** What could be read of it, whatever is at fault. */
  readonly asRead: Job;
  /** Of what could be read. */
  readonly runs: readonly ListedRun[];
  /** In force: the usual values where Shop leaves them open. */
  readonly shop: Shop;
  readonly settings: readonly SettingRow[];
  /** Profiles cut here whose sizes can be read, also where other tables are at fault. */
  readonly coves: readonly CoveProfile[];
  /** Of Walls, in its order, also those at fault. */
  readonly rooms: readonly RoomLook[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
  readonly fingerprint: string;
  /** The tables as they were read, under our headings. */
  readonly inputs: readonly RawTable[];
  /** The inputs' fingerprint when the sheets were last written. */
  readonly writtenFrom: string | undefined;
  /** When that was; absent where an earlier version wrote them. */
  readonly writtenAt?: Date;
}

export type TableMatch = Match<TablePlace>;

export interface SettingRow {
  readonly name: string;
  readonly value: string;
  /** Left open in Shop, so that the usual value stands in. */
  readonly usual: boolean;
  readonly where: Where | undefined;
}
