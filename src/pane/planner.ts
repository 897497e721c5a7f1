/**
 * Everything of planning that the pane calls, in one module that is loaded when it is first wanted:
 * a first look at the pane and the worksheet functions don't wait for it.
 */
import type { Outcome } from '../core/faults/fault.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { CutAlready, Ticks } from '../planning/cut/cut-already.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import type { Comparison } from '../planning/compare/comparison.ts';
import type { ComparedPlans } from '../sheets/changes/changes-sheet.ts';
import type { CopyFile } from '../sheets/client/copy-sheet.ts';
import type { CopyRead } from '../sheets/client/read-copy-of.ts';
import type { ReturnedCopy } from '../planning/compare/returned-copy.ts';
import type { TickedSheets } from '../sheets/read-ticks.ts';
import type { ExportFile } from '../exports/export-file.ts';
import type { SheetDescription, WorkbookDescription } from '../sheets/grammar/description.ts';
import type { Stamp } from '../sheets/stamp.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import type { JobReading } from '../planning/input/read-job.ts';
import type { Judgement } from '../planning/judge-job.ts';
import type { CoveProfile, Job } from '../planning/job.ts';
import type { SetUp } from '../planning/plan-setup.ts';
import type { Shop } from '../planning/shop.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import type { JobPlanning, PlanJobOptions } from '../planning/job-planning.ts';

/** What a person may choose of how a plan is written. */
export interface SheetChoice {
  /** Whether set-up numbers stand as plain formulas, else as numbers. */
  readonly keepsFormulas: boolean;
  readonly stamp: Stamp;
  /** For codes on Set-ups, where Shop has none. */
  readonly pageAddress?: string;
}

export interface Planner {
  readonly readJob: (tables: readonly RawTable[], source: string) => JobReading;
  /** What can't be made of it, told as it is typed. */
  readonly judgeJob: (read: JobReading) => Judgement;
  readonly planJob: (job: Job, options: PlanJobOptions) => Promise<JobPlanning>;
  /**
   * The quick plan of the job as it stands, without its options; beside this thread, as far as it can be.
   * Undefined where it was stale before it was done.
   */
  readonly planQuick: (job: Job, isStale: () => boolean) => Promise<JobPlanning | undefined>;
  /** Sentences that say what is wrong with a plan: a bug of ours. */
  readonly checkJobPlan: (plan: JobPlan) => readonly string[];
  /** A plan as text, to be kept with the workbook. */
  readonly keepPlan: (kept: PlanToKeep) => string;
  readonly readKeptPlan: (text: string, pause: () => Promise<void>) => Promise<Outcome<PlanToKeep>>;
  readonly readTicks: (plan: JobPlan, sheets: TickedSheets) => Ticks | undefined;
  readonly cutFromPlan: (plan: JobPlan, ticks: Ticks) => readonly CutAlready[];
  /** The plan with the hours that there are now. */
  readonly withHoursOf: (plan: JobPlan, job: Pick<Job, 'hours'>) => JobPlan;
  /** The plan marked by its ticks, to be written again. */
  readonly markCut: (plan: JobPlan, ticks: Ticks) => JobPlan;
  /** Whether all that a plan has as cut is ticked still. */
  readonly keepsCuts: (plan: JobPlan, ticks: Ticks) => boolean;
  /** The same for the same cut sticks alone. */
  readonly keyOfCut: (cut: readonly CutAlready[]) => string;
  readonly comparePlans: (before: JobPlan, after: JobPlan) => Comparison;
  readonly describeInput: (job?: readonly RawTable[], unit?: LengthUnit) => WorkbookDescription;
  /** What makes sheets and files of a plan. */
  readonly loadWriter: () => Promise<Writer>;
}

/** Everything that is made of a plan, in a module of its own again: a plan is looked at before it is written. */
export interface Writer {
  /** The sheet Changes, a workbook by itself. */
  readonly describeChanges: (
    comparison: Comparison,
    plans: ComparedPlans,
    job: Job,
    made: string,
  ) => WorkbookDescription;
  readonly readCopyOf: (
    plans: readonly PlanToKeep[],
    copy: CopyFile,
    fileName: string,
  ) => Outcome<CopyRead<PlanToKeep>>;
  readonly describeCopyChanges: (
    copy: ReturnedCopy,
    files: ComparedPlans,
    job: Job,
    made: string,
  ) => WorkbookDescription;
  readonly describePlan: (plan: JobPlan, choice: SheetChoice) => WorkbookDescription;
  /** The page of one cove that is of no job. */
  readonly describeLoneSetUp: (profile: CoveProfile, setUp: SetUp, shop: Shop) => SheetDescription;
  /** The client's copy, a workbook by itself. */
  readonly describeClientCopy: (plan: JobPlan, stamp: Stamp) => WorkbookDescription;
  /** Drawings, outlines and lists for other programs. */
  readonly exportPlan: (plan: JobPlan, stamp: Stamp) => readonly ExportFile[];
  /** HTML for the phone at the saw. */
  readonly writeShopView: (plan: JobPlan, stamp: Stamp) => string;
}
