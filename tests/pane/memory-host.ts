/** A workbook in memory for the pane's own tests; sheets that it writes keep only their values. */
import { own } from '../../src/core/faults/argument.ts';
import { fault, failed, ok, type Fault, type Outcome } from '../../src/core/faults/fault.ts';
import type { ChosenRow, HostAbilities, WorkbookHost, WriteChoice } from '../../src/hosts/host.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';

export interface MemorySheet {
  readonly name: string;
  readonly table?: string;
  readonly ours?: boolean;
  readonly pointedAtBy?: readonly string[];
  readonly rows: RawCell[][];
}

export interface MemoryHost extends WorkbookHost {
  readonly sheets: Map<string, MemorySheet>;
  readonly notes: Map<string, string>;
  /** What is kept out of sight. */
  readonly texts: Map<string, string>;
  /** What was asked of it, in words. */
  readonly log: string[];
  /** Types into a cell and tells who watches. */
  readonly type: (sheet: string, row: number, column: number, value: RawCell) => void;
  /** Goes to a row, its line from 1, and tells who follows. */
  readonly goTo: (row: ChosenRow) => void;
  /** From now on this call fails, until it is mended. */
  fails: keyof WorkbookHost | undefined;
}

export const REFUSAL: Fault = fault('host.refused', own('The workbook'), 'because of the test');

const IN_PLACE: HostAbilities = {
  showCells: true,
  putFormulas: true,
  appendRows: true,
  writeInPlace: true,
  undoWrites: false,
};
export const UNDOABLE: HostAbilities = { ...IN_PLACE, undoWrites: true };
export const AS_FILE: HostAbilities = {
  showCells: false,
  putFormulas: false,
  appendRows: false,
  writeInPlace: false,
  undoWrites: false,
};

export function memoryHost(
  given: readonly MemorySheet[],
  can: HostAbilities = IN_PLACE,
): MemoryHost {
  const sheets = new Map(given.map((sheet) => [sheet.name, sheet]));
  const notes = new Map<string, string>();
  const texts = new Map<string, string>();
  const watchers = new Set<(sheet: string) => void>();
  const followers = new Set<(row: ChosenRow) => void>();
  const log: string[] = [];
  const answer = async <T>(call: keyof WorkbookHost, value: () => T): Promise<Outcome<T>> => {
    await Promise.resolve();
    return host.fails === call ? failed(REFUSAL) : ok(value());
  };
  const host: MemoryHost = {
    kind: can.writeInPlace ? 'excel' : 'file',
    can,
    sheets,
    notes,
    texts,
    log,
    fails: undefined,
    type: (name, row, column, value) => {
      const cells = sheets.get(name)?.rows[row];
      if (cells === undefined) throw new RangeError(`No row ${row} on ${name}.`);
      cells[column] = value;
      for (const changed of watchers) changed(name);
    },
    goTo: (row) => {
      for (const chosen of followers) chosen(row);
    },
    survey: () =>
      answer('survey', () => ({
        name: 'House.xlsx',
        places: [...sheets.values()]
          .filter(({ ours, rows }) => ours !== true && rows.length > 0)
          .map(({ name, table, rows }) => ({
            key: name,
            sheet: name,
            ...(table === undefined ? {} : { table }),
            line: 1,
            headings: rows[0] ?? [],
            rowCount: rows.length - 1,
          })),
        sheets: [...sheets.values()].map(({ name, ours = false, pointedAtBy = [] }) => ({
          name,
          ours,
          pointedAtBy,
        })),
      })),
    readTable: ({ sheet }, name) => answer('readTable', () => rawTable(name, sheets.get(sheet))),
    write: (description, options) =>
      answer('write', () => {
        log.push(sayWriting(description, options));
        for (const sheet of description.sheets) {
          const rows = sheet.rows
            .map(({ cells }): RawCell[] => cells.map((cell) => cell?.value ?? null))
            .filter((cells) => cells.some((cell) => cell !== null));
          if (can.writeInPlace) {
            sheets.set(sheet.name, { name: sheet.name, rows, ours: options.owner === 'tool' });
          }
        }
        const written = description.sheets.map(({ name }) => name);
        const file = { name: 'House planned.xlsx', bytes: new Uint8Array([1]) };
        return can.writeInPlace ? { sheets: written } : { sheets: written, file };
      }),
    appendRows: ({ sheet: name }, rows) =>
      answer('appendRows', () => {
        const { rows: there } = sheets.get(name) ?? { rows: [] };
        const line = there.findLastIndex((row) => row.some((cell) => cell !== null)) + 2;
        rows.forEach((cells, index) => {
          const row = (there[line - 1 + index] ??= []);
          cells.forEach((text, column) => {
            if (text !== null) row[column] = text;
            else row[column] ??= null;
          });
        });
        for (const changed of watchers) changed(name);
        return { line };
      }),
    show: (where, withKeyboard = false) =>
      answer('show', () => {
        log.push(`show ${JSON.stringify(where)}${withKeyboard ? ' with the keyboard' : ''}`);
      }),
    putFormula: (formula) =>
      answer('putFormula', () => {
        log.push(`put ${formula}`);
        return { sheet: 'Runs', cell: 'Q2' };
      }),
    listSeparator: () => Promise.resolve(';'),
    recall: (keys) =>
      answer('recall', () => Object.fromEntries(keys.map((key) => [key, notes.get(key)]))),
    remember: (given) =>
      answer('remember', () => {
        for (const [key, note] of Object.entries(given)) {
          if (note === undefined) notes.delete(key);
          else notes.set(key, note);
        }
      }),
    keptText: (key) => answer('keptText', () => texts.get(key)),
    keepText: (key, text) =>
      answer('keepText', () => {
        if (text === undefined) texts.delete(key);
        else texts.set(key, text);
      }),
    readSheet: (name) =>
      answer('readSheet', () =>
        (sheets.get(name)?.rows ?? []).map((cells, index) => ({
          line: index + 1,
          cells: [...cells],
        })),
      ),
    watch: (changed) => {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    watchRow: (chosen) => {
      followers.add(chosen);
      return () => followers.delete(chosen);
    },
  };
  return host;
}

export function sheetOf({ name, headings, rows }: RawTable): MemorySheet {
  return { name, rows: [[...headings.cells], ...rows.map(({ cells }) => [...cells])] };
}

function rawTable(name: string, sheet: MemorySheet | undefined): RawTable {
  const [headings = [], ...rows] = sheet?.rows ?? [];
  return {
    name,
    source: { kind: 'sheet', name: sheet?.name ?? '' },
    headings: { line: 1, cells: [...headings] },
    rows: rows.map((cells, index) => ({ line: index + 2, cells: [...cells] })),
  };
}

function sayWriting({ sheets }: WorkbookDescription, { owner, replace }: WriteChoice): string {
  const names = sheets.map(({ name }) => name).join(', ');
  return `write ${names} for the ${owner}, replacing ${replace.join(', ') || 'none'}`;
}
