/**
 * What the pane needs of the workbook that it stands beside, whichever program holds it. Whatever
 * goes wrong is a fault in words with a way on; an exception is a bug of ours. A host touches no
 * cell of the person's own, but where they asked for a formula or for rows.
 */
import type { Outcome, Where } from '../core/faults/fault.ts';
import type { RawCell, RawRow, RawTable } from '../planning/input/raw-table.ts';
import type { NewRow } from './tables/room-below.ts';
import type { WorkbookDescription } from '../sheets/grammar/description.ts';

/** Texts by their keys: at most 200 characters a key, of whatever length a text. */
export type Notes = Readonly<Record<string, string | undefined>>;
/** What is kept with a workbook, out of sight: the plan last made, and the one its sheets were written from. */
export type KeptTextKey = 'plan' | 'written-plan';

export interface WorkbookHost {
  readonly kind: 'excel' | 'file' | 'grid';
  readonly can: HostAbilities;
  /** What there is: everything that could be an input table, and every sheet. */
  survey(): Promise<Outcome<WorkbookSurvey>>;
  /**
   * Reads the rows under one place's headings. `name` is what the table is taken for (Runs, say).
   * Cells stand from column A on, also where the table begins further right, so that places are true.
   */
  readTable(place: TablePlace, name: string): Promise<Outcome<RawTable>>;
  /**
   * Writes every sheet described, or none. A sheet of that name that isn't ours is never touched
   * (host.sheet-not-ours); one of ours is replaced only where `replace` names it (host.sheet-exists).
   * Input sheets are written as the person's own (`owner` person): they are never replaced.
   */
  write(description: WorkbookDescription, options: WriteChoice): Promise<Outcome<Written>>;
  /**
   * Puts rows under the last filled row of a place: into blank rows that were prepared there, and then
   * the table grows, with the looks, formulas, choices and names of its rows. Nothing is written over,
   * and a row of totals stays last (host.no-room). One step for Undo, where the host has it.
   *
   * @returns Line, from 1, of the first of them; the others follow.
   */
  appendRows(
    place: TablePlace,
    rows: readonly NewRow[],
  ): Promise<Outcome<{ readonly line: number }>>;
  /**
   * Brings a cell into view and selects it.
   *
   * @param withKeyboard Whether typing goes on there, as far as the program lets it be moved.
   */
  show(where: Where, withKeyboard?: boolean): Promise<Outcome<void>>;
  /** Puts a formula (English, with commas, with its equals sign) into the selected cell, if it is blank. */
  putFormula(formula: string): Promise<Outcome<{ readonly sheet: string; readonly cell: string }>>;
  /** The person's own separator of arguments, for examples that they read: , or ; */
  listSeparator(): Promise<string>;
  /**
   * Small notes kept with the workbook (which columns stand for which, what was planned from), and
   * what the workbook says of itself: each is a custom document property of its file, under its key.
   */
  recall(keys: readonly string[]): Promise<Outcome<Notes>>;
  /** A note that is undefined is forgotten; those not named stay. */
  remember(notes: Notes): Promise<Outcome<void>>;
  /**
   * Long texts kept with the workbook, out of sight: plans. They go wherever it goes: into its file, into
   * what is kept of it between visits. Without a text what was kept goes.
   */
  keptText(key: KeptTextKey): Promise<Outcome<string | undefined>>;
  keepText(key: KeptTextKey, text: string | undefined): Promise<Outcome<void>>;
  /** The rows of a sheet that aren't blank, cells from column A on; none where there is no such sheet. */
  readSheet(name: string): Promise<Outcome<readonly RawRow[]>>;
  /**
   * Calls `changed` with a sheet's name soon after anything on it changes; returns what ends it. A host
   * that tells nothing of cells of sheets made here tells `typedOnOurs` of them.
   */
  watch(changed: (sheet: string) => void, typedOnOurs?: (sheet: string) => void): () => void;
  /** Calls `chosen` soon after the person goes to another row, its line from 1; returns what ends it. */
  watchRow(chosen: (row: ChosenRow) => void): () => void;
}

export interface ChosenRow {
  readonly sheet: string;
  readonly line: number;
}

export interface HostAbilities {
  readonly showCells: boolean;
  readonly putFormulas: boolean;
  readonly appendRows: boolean;
  /** Writes into the workbook itself; else `write` gives a file to save. */
  readonly writeInPlace: boolean;
  /** The program's own Undo takes a writing back as one step; `watch` then tells of what goes with it. */
  readonly undoWrites: boolean;
}

export interface WorkbookSurvey {
  /** The workbook's or file's name; empty where the host tells none. */
  readonly name: string;
  /** Tables proper first, then what stands on sheets without any. */
  readonly places: readonly TablePlace[];
  readonly sheets: readonly SurveyedSheet[];
}

export interface SurveyedSheet {
  readonly name: string;
  /** Made by `write` with owner tool, so that it may be replaced. */
  readonly ours: boolean;
  /** Cells of other sheets that point into it, as Sheet!A1, at most ten: replacing breaks them. */
  readonly pointedAtBy: readonly string[];
}

/** Something that could be a table of the job: a table proper, or the used cells of a sheet. */
export interface TablePlace {
  /** The host's own key. */
  readonly key: string;
  readonly sheet: string;
  /** Name of the table proper; absent for a sheet's used cells. */
  readonly table?: string;
  /** Row of the headings, from 1. */
  readonly line: number;
  /** From column A on. */
  readonly headings: readonly RawCell[];
  /** Rows below the headings that aren't blank. */
  readonly rowCount: number;
}

export interface WriteChoice {
  readonly owner: 'person' | 'tool';
  /** Names of our sheets that may be replaced. */
  readonly replace: readonly string[];
  readonly onProgress?: (done: number, of: number) => void;
}

export interface Written {
  readonly sheets: readonly string[];
  /** Where the host can't write in place: the workbook to save. */
  readonly file?: { readonly name: string; readonly bytes: Uint8Array };
}
