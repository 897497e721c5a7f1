/** Everything that the pane shows, as one value; reduce.ts is the only place that makes a new one. */
import type { Caution, Fault } from '../../core/faults/fault.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import type { PlanToKeep } from '../../planning/kept/keep-plan.ts';
import type { ColumnMap } from '../../planning/input/map-columns.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import type { Comparison } from '../../planning/compare/comparison.ts';
import type { Job } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import type { ComparedPlans } from '../../sheets/changes/changes-sheet.ts';
import type { ReturnedCopy } from '../../planning/compare/returned-copy.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import type { JobFound } from '../job/job-found.ts';
import { USUAL_SECONDS } from '../plan/search-seconds.ts';
import type { TypedCove } from '../profile/cove-fields.ts';
import type { LengthReading } from '../../core/units/length.ts';
import type { PrintChoice } from '../print/print-choices.ts';
import type { NoWorkbook, PrintedPages } from '../services.ts';

export const TABS = ['job', 'profile', 'plan', 'functions'] as const;
export type Tab = (typeof TABS)[number];

export interface PaneState {
  readonly tab: Tab;
  /** Whether the person has chosen one; until then the tab goes by what the workbook holds. */
  readonly isTabChosen: boolean;
  readonly workbook: WorkbookState;
  readonly reading: ReadingState;
  readonly mapping: MappingState | undefined;
  readonly profile: ProfileState;
  /** Name of the room that is drawn; undefined until somebody chooses. */
  readonly room: string | undefined;
  readonly planning: PlanningState;
  /** What the list comes to by the quick plan, while nobody has planned it. */
  readonly counted: CountedList | undefined;
  readonly writing: WritingState;
  /** What is offered to be printed; absent while nobody asks for it. */
  readonly printing: PrintingState | undefined;
  /** What the plan was held against last, as long as it stands. */
  readonly compared: Compared | undefined;
  /** Why a file can't be compared with. */
  readonly comparisonRefused:
    { readonly name: string; readonly faults: readonly Fault[] } | undefined;
  /** Whether set-up numbers are written as formulas, which stay live without the add-in. */
  readonly keepsFormulas: boolean;
  readonly functions: FunctionsState;
  /** What is being done with the workbook besides reading, planning and writing; in words. */
  readonly busy: string | undefined;
  /** What the host could not do; stands until it is put away or something goes well. */
  readonly trouble: readonly Fault[];
  /** What has just gone well, beside what was asked for. */
  readonly notice: string | undefined;
  readonly announcement: Announcement;
  /** A fault of this program: the pane gives way to a word about it. */
  readonly bug: string | undefined;
}

export type WorkbookState =
  | { readonly kind: 'awaited' }
  | { readonly kind: 'none'; readonly why: NoWorkbook }
  | { readonly kind: 'open'; readonly host: WorkbookHost };

export interface ReadingState {
  /** Counts up with each reading begun: what comes back from an earlier one is dropped. */
  readonly turn: number;
  readonly busy: boolean;
  readonly found: JobFound | undefined;
  /** Why the last reading failed: put away when one succeeds. */
  readonly failed: readonly Fault[] | undefined;
}

/** A table of the person's own that is being taken for one of ours. */
export interface MappingState {
  readonly table: JobTableName;
  readonly placeKey: string | undefined;
  readonly columns: ColumnMap;
  /** The place as it stands, once it is read: what its columns hold, and its first rows. */
  readonly raw: RawTable | undefined;
}

export interface ProfileState {
  /** A profile's name; empty for a cove of one's own, undefined until somebody chooses. */
  readonly chosen: string | undefined;
  /** Undefined until somebody types or begins one. */
  readonly typed: TypedCove | undefined;
  /** What was typed last that can be read: drawn while what is typed now can't. */
  readonly drawn: TypedCove | undefined;
}

export interface CountedList {
  /** Of the inputs that were counted. */
  readonly fingerprint: string;
  /** Absent where the job can't be made: then `faults` say why. */
  readonly plan: JobPlan | undefined;
  readonly faults: readonly Fault[];
}

export interface PlanProgress {
  readonly done: number;
  readonly of: number;
  readonly profile: string;
  readonly phase: string;
  readonly costCents: number | undefined;
  readonly boundCents: number | undefined;
  readonly stopping: boolean;
}

export interface PlanResult extends PlanToKeep {
  /** Of the sticks that were cut when it was made, see `keyOfCut`. */
  readonly cutKey: string;
  /** The ticks that it was made without, as the person asked. */
  readonly droppedCutKey?: string;
  /** What the check of our own finds wrong with it: then nothing is written. */
  readonly wrong: readonly string[];
}

/** What is ticked on the written sheets now. */
export interface TicksNow {
  readonly cutKey: string;
  readonly sticksCut: number;
  /** Of the plan that the sheets were written from. */
  readonly sticks: number;
  /** Whether all that the plan had as cut is ticked still. */
  readonly keepsCuts: boolean;
}

export interface PlanningState {
  readonly turn: number;
  /** How long to look for a cheaper plan, as typed. */
  readonly seconds: string;
  readonly running: PlanProgress | undefined;
  readonly result: PlanResult | undefined;
  /** Why the last planning gave no plan. */
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
  /** Of the inputs that the last planning gave no plan of. */
  readonly failedFrom: string | undefined;
  readonly stopped: boolean;
  /** The plan that the sheets were written from, where it is kept. */
  readonly written: PlanToKeep | undefined;
  readonly ticks: TicksNow | undefined;
  /** The sheets are of another plan than `written`: what is ticked on them can't be told. */
  readonly ticksLost: boolean;
  /** The result was kept with the workbook: it was not made on this visit. */
  readonly recalled: boolean;
  /** Why a kept plan is not used. */
  readonly keptFaults: readonly Fault[];
  /** The page was left while it planned. */
  readonly brokenOff: boolean;
}

/** A plan against an earlier one, or a client's copy that came back against its plan. */
export type Compared = {
  /** With what: a file's name, say. */
  readonly name: string;
  readonly files: ComparedPlans;
  /** Its unit and money are what lengths and prices are said in. */
  readonly job: Job;
} & (
  | { readonly kind: 'plans'; readonly comparison: Comparison }
  | { readonly kind: 'copy'; readonly returned: ReturnedCopy }
);

export interface WriteQuestion {
  readonly replaced: readonly string[];
  readonly added: readonly string[];
  /** Cells that point into a sheet that is to be replaced. */
  readonly pointing: readonly { readonly sheet: string; readonly cells: readonly string[] }[];
}

export type WritingState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'asking'; readonly question: WriteQuestion }
  | { readonly kind: 'writing'; readonly done: number; readonly of: number }
  | {
      readonly kind: 'written';
      readonly sheets: readonly string[];
      readonly file: string | undefined;
    };

export interface PrintingState {
  readonly choices: readonly PrintChoice[];
  /** As numbers are read by who prints. */
  readonly reading: Pick<LengthReading, 'decimalSign'>;
  /** The key of a choice. */
  readonly chosen: string;
  /** Of what is chosen, once they are laid out. */
  readonly pages: PrintedPages | undefined;
}

export interface FunctionsState {
  readonly search: string;
  /** The person's own separator of arguments. */
  readonly separator: string;
  /** What became of the last example, and of which function. */
  readonly outcome:
    { readonly id: string; readonly text: string; readonly ok: boolean } | undefined;
}

/** Said once to a screen reader; the turn tells two equal texts apart. */
export interface Announcement {
  readonly turn: number;
  readonly text: string;
}

export const INITIAL_STATE: PaneState = {
  tab: 'job',
  isTabChosen: false,
  workbook: { kind: 'awaited' },
  reading: { turn: 0, busy: false, found: undefined, failed: undefined },
  mapping: undefined,
  profile: { chosen: undefined, typed: undefined, drawn: undefined },
  room: undefined,
  planning: {
    turn: 0,
    seconds: USUAL_SECONDS,
    running: undefined,
    result: undefined,
    faults: [],
    cautions: [],
    failedFrom: undefined,
    stopped: false,
    written: undefined,
    ticks: undefined,
    ticksLost: false,
    recalled: false,
    keptFaults: [],
    brokenOff: false,
  },
  counted: undefined,
  writing: { kind: 'idle' },
  printing: undefined,
  compared: undefined,
  comparisonRefused: undefined,
  keepsFormulas: false,
  functions: { search: '', separator: ',', outcome: undefined },
  busy: undefined,
  trouble: [],
  notice: undefined,
  announcement: { turn: 0, text: '' },
  bug: undefined,
};
