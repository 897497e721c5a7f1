/**
 * What the pane is given from outside (by src/addin): it knows no Office, no file and no network of
 * its own, so that the same pane stands beside Excel, an opened file and a grid.
 */
import type { Outcome } from '../core/faults/fault.ts';
import type { ExportFile } from '../exports/export-file.ts';
import type { KeptTextKey, WorkbookHost } from '../hosts/host.ts';
import type { RawRow } from '../planning/input/raw-table.ts';
import type { CopyFile } from '../sheets/client/copy-sheet.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import type { SheetDescription, WorkbookDescription } from '../sheets/grammar/description.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { Planner } from './planner.ts';

/** A file to compare with: a client's copy, or a workbook that carries plans, with its sheets that bear ticks. */
export type OtherFile =
  | { readonly kind: 'copy'; readonly copy: CopyFile }
  | {
      readonly kind: 'plan';
      readonly kept: {
        readonly texts: Readonly<Partial<Record<KeptTextKey, string>>>;
        readonly cutting: readonly RawRow[];
        readonly pieces: readonly RawRow[];
      };
    };

/** A page in a browser alone, a program that isn't Excel, or Excel's library not come in time. */
export type NoWorkbook = 'plain page' | 'other program' | 'no library';

export type Beside =
  { readonly host: WorkbookHost } | { readonly host?: undefined; readonly why: NoWorkbook };

export interface PrintedPages {
  /** A whole document. */
  readonly html: string;
  /** As many blocks, each beginning a new page, as were wanted and are there. */
  readonly blocks: number;
  /** Of the paper as it lies, in inches. */
  readonly width: number;
}

/** What the page around the pane does where the pane asks for it. */
export interface PageDoors {
  /** Nothing was kept, and nothing asked for: a blank workbook stands beside the pane. */
  readonly isFirstVisit: boolean;
  /** Asks for a file, and opens it in the place of the workbook that is there. */
  readonly openFile: () => void;
  /** The same with a list that was pasted as text. */
  readonly openPasted: (text: string) => Promise<void>;
  readonly showDemo: () => void;
  /** Asks which sheet, and prints it. */
  readonly print: () => void;
}

export interface PaneServices {
  /** The page around the pane: it has the title and the marks of a page's parts, so the pane has none of its own. */
  readonly page?: PageDoors;
  /**
   * The workbook beside the pane, or why there is none: then a file can be opened instead.
   * It settles within about 3 s and never rejects: the pane shows itself at once and looks for it.
   */
  readonly host: Promise<Beside>;
  readonly openFile: (name: string, bytes: Uint8Array) => Promise<Outcome<WorkbookHost>>;
  readonly readOther: (name: string, bytes: Uint8Array) => Promise<Outcome<OtherFile>>;
  /** A workbook as a file, where there is none to be written into. */
  readonly makeFile: (description: WorkbookDescription) => Promise<Uint8Array>;
  /** A described sheet as pages to be looked at, printed or kept; loads when it is first wanted. */
  readonly layPages: (
    sheet: SheetDescription,
    decimalSign: DecimalSign,
    isWanted: (heading: string) => boolean,
  ) => Promise<PrintedPages>;
  /** Several files in one. */
  readonly makeZip: (files: readonly ExportFile[]) => Promise<Uint8Array>;
  /** Gives the person a file to keep. */
  readonly saveFile: (name: string, bytes: Uint8Array) => void;
  /** The moment by this machine's clock: the pane reads none itself. */
  readonly clock: () => Date;
  /** Shows the page for the saw over all else; absent where there is no room for it. */
  readonly showSawView?: (html: string) => void;
  /** Where this pane is hosted, for codes that a phone opens; absent where no phone could. */
  readonly pageAddress?: string;
  /** The planner loads when it is first wanted. */
  readonly loadPlanner: () => Promise<Planner>;
  readonly loadDemo: () => Promise<readonly RawTable[]>;
  readonly functions: readonly FunctionReference[];
  /** The program's own look, where it tells; else the browser's preference stands. Never rejects. */
  readonly darkTheme: Promise<boolean | undefined>;
  /** Small notes that last as long as this tab or window, a reload of it too. */
  readonly visit: {
    readonly get: (key: string) => string | undefined;
    readonly set: (key: string, value: string) => void;
  };
  /** Small preferences of the pane's own, kept on this machine. */
  readonly preferences: {
    readonly get: (key: string) => string | undefined;
    readonly set: (key: string, value: string) => void;
  };
}

/** A worksheet function as its reference shows it. */
export interface FunctionReference {
  readonly id: string;
  /** COVE.APPROACH, say. */
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
  }[];
  /** In English, with commas and its equals sign. */
  readonly example: string;
}
