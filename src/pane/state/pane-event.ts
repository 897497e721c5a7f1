/** What can happen in the pane, as plain values. */
import type { Caution, Fault } from '../../core/faults/fault.ts';
import type { ChosenRow, WorkbookHost } from '../../hosts/host.ts';
import type { ColumnMap } from '../../planning/input/map-columns.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import type { JobFound } from '../job/job-found.ts';
import type { TypedCove } from '../profile/cove-fields.ts';
import type { PrintChoice } from '../print/print-choices.ts';
import type { NoWorkbook, PrintedPages } from '../services.ts';
import type { PlanToKeep } from '../../planning/kept/keep-plan.ts';
import type {
  Compared,
  CountedList,
  PlanProgress,
  PlanResult,
  PrintingState,
  Tab,
  TicksNow,
  WriteQuestion,
} from './pane-state.ts';

export type PaneEvent =
  | { readonly type: 'tab chosen'; readonly tab: Tab }
  | { readonly type: 'workbook missing'; readonly why: NoWorkbook }
  | { readonly type: 'workbook opened'; readonly host: WorkbookHost }
  | { readonly type: 'reading begun' }
  | { readonly type: 'job read'; readonly turn: number; readonly found: JobFound }
  | { readonly type: 'reading failed'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly type: 'mapping begun'; readonly table: JobTableName }
  | {
      readonly type: 'place chosen';
      readonly placeKey: string | undefined;
      readonly columns: ColumnMap;
    }
  | {
      readonly type: 'place read';
      readonly placeKey: string;
      readonly raw: RawTable;
      /** A better guess, in place of the first one while nobody has changed that. */
      readonly guess: { readonly first: ColumnMap; readonly better: ColumnMap } | undefined;
    }
  | { readonly type: 'column chosen'; readonly heading: string; readonly theirs: string }
  | { readonly type: 'mapping ended' }
  | { readonly type: 'profile chosen'; readonly name: string }
  | { readonly type: 'room chosen'; readonly name: string }
  /** The person has gone to a row of the workbook. */
  | { readonly type: 'row chosen'; readonly row: ChosenRow }
  /** Chosen, begun from a profile, or typed in. */
  | { readonly type: 'own cove typed'; readonly typed: TypedCove }
  | { readonly type: 'list counted'; readonly counted: CountedList }
  | { readonly type: 'planning seconds typed'; readonly seconds: string }
  | { readonly type: 'planning begun'; readonly of: number }
  | {
      readonly type: 'planning moved';
      readonly turn: number;
      readonly progress: Partial<Omit<PlanProgress, 'stopping'>>;
    }
  | { readonly type: 'planning stopping' }
  /** Before there was a plan better than the one that stands, if any does. */
  | { readonly type: 'planning stopped'; readonly turn: number }
  /** The inputs turned out not to be fit to be planned: that is said where they are checked. */
  | { readonly type: 'planning dropped'; readonly turn: number }
  | {
      readonly type: 'planning ended';
      readonly turn: number;
      /** Of the inputs that were planned. */
      readonly fingerprint: string;
      readonly result: PlanResult | undefined;
      readonly faults: readonly Fault[];
      readonly cautions: readonly Caution[];
    }
  /** What is kept with the workbook that was opened. */
  | {
      readonly type: 'plans recalled';
      readonly written: PlanToKeep | undefined;
      readonly result: PlanResult | undefined;
      readonly faults: readonly Fault[];
    }
  /** Undefined where the sheets are of another plan than the one that is kept. */
  | { readonly type: 'ticks read'; readonly ticks: TicksNow | undefined }
  /** The page was left while it planned. */
  | { readonly type: 'planning broken off' }
  /** Whether set-up numbers are to be written as formulas. */
  | { readonly type: 'formulas kept'; readonly keeps: boolean }
  | { readonly type: 'writing asked'; readonly question: WriteQuestion }
  | { readonly type: 'writing begun'; readonly of: number }
  | { readonly type: 'writing moved'; readonly done: number; readonly of: number }
  | {
      readonly type: 'written';
      readonly sheets: readonly string[];
      readonly file: string | undefined;
      readonly from: PlanToKeep;
      readonly at: Date;
    }
  | { readonly type: 'writing dropped' }
  | {
      readonly type: 'print begun';
      readonly choices: readonly PrintChoice[];
      readonly reading: PrintingState['reading'];
    }
  | { readonly type: 'print chosen'; readonly key: string }
  | { readonly type: 'print laid'; readonly key: string; readonly pages: PrintedPages }
  | { readonly type: 'print put away' }
  | { readonly type: 'compared'; readonly compared: Compared }
  | {
      readonly type: 'comparison refused';
      readonly name: string;
      readonly faults: readonly Fault[];
    }
  | { readonly type: 'comparison put away' }
  | { readonly type: 'functions searched'; readonly search: string }
  | { readonly type: 'separator found'; readonly separator: string }
  | {
      readonly type: 'example put';
      readonly id: string;
      readonly text: string;
      readonly ok: boolean;
    }
  | { readonly type: 'busy'; readonly with: string | undefined }
  | { readonly type: 'trouble'; readonly faults: readonly Fault[] }
  | { readonly type: 'trouble put away' }
  | { readonly type: 'done'; readonly notice: string }
  | { readonly type: 'bug found'; readonly what: string };
