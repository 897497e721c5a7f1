/** The workbook that stands beside the add-in's pane in Excel. */
import { tableArgument } from '../../planning/input/raw-table.ts';
import { phrase, type Argument } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import type { Notes, WorkbookHost } from '../host.ts';
import { notesIn } from '../notes.ts';
import { runNow, runPatiently, supports, tooOld, type ExcelProgram } from './excel-program.ts';
import { appendRows } from './append-rows.ts';
import { surveyWorkbook } from './survey-workbook.ts';
import { putFormula } from './put-formula.ts';
import { keepText, keptText } from './kept-parts.ts';
import { readSheet, readTable } from './read-table.ts';
import { changeProperties, loadProperties } from './properties.ts';
import { attempt } from './refusal.ts';
import { watchRow } from './watch-row.ts';
import { watchSheets } from './watch-sheets.ts';
import { writeSheets } from './write-sheets.ts';

/** ExcelApi 1.11 tells the person's separators, 1.13 which cells are merged. */
const TELLS_SEPARATORS = 11;
const TELLS_MERGES = 13;
/** Before the keys of notes among the workbook's settings, where earlier versions kept them. */
const OLD_NOTE = 'Coveledger.';

/**
 * Opens the workbook in Excel.
 *
 * @param program Excel's and Office's globals, and what paints drawings.
 * @returns The host; each of its calls gives host.too-old where Excel knows less than ExcelApi 1.9,
 *   host.editing-cell while a cell is being typed in, and host.refused for what Excel refuses.
 */
export function openExcelHost(program: ExcelProgram): WorkbookHost {
  const during = <T>(
    what: Argument,
    batch: (context: Excel.RequestContext) => Promise<Outcome<T>>,
  ): Promise<Outcome<T>> => {
    const old = tooOld(program);
    return old === null
      ? attempt(what, () => runNow(program, batch))
      : Promise.resolve(failed(old));
  };
  return {
    kind: 'excel',
    can: {
      showCells: true,
      putFormulas: true,
      appendRows: true,
      writeInPlace: true,
      undoWrites: false,
    },
    survey: () => during('lookingThrough', async (context) => ok(await surveyWorkbook(context))),
    readTable: (place, name) =>
      during(phrase('readingTable', { table: tableArgument(name) }), (context) =>
        readTable(context, place, name, supports(program, TELLS_MERGES)),
      ),
    write: (description, choice) => {
      const old = tooOld(program);
      return old === null
        ? writeSheets(program, description, choice)
        : Promise.resolve(failed(old));
    },
    appendRows: (place, rows) =>
      during('addingRows', (context) => appendRows(context, place, rows)),
    show: (where) =>
      during('showingCell', async (context) => {
        if (!('sheet' in where)) return failed(fault('host.gone', 'file', where.file));
        const sheet = context.workbook.worksheets.getItemOrNullObject(where.sheet);
        sheet.load('name');
        await context.sync();
        if (sheet.isNullObject) return failed(fault('host.gone', 'sheet', where.sheet));
        sheet.activate();
        sheet.getRange(where.cell).select();
        await context.sync();
        return ok(undefined);
      }),
    putFormula: (formula) => during('puttingFormula', (context) => putFormula(context, formula)),
    listSeparator: async () => {
      if (tooOld(program) !== null || !supports(program, TELLS_SEPARATORS)) return ',';
      try {
        return await runPatiently(program, listSeparator);
      } catch {
        return ',';
      }
    },
    recall: (keys) =>
      during('recallingNotes', async (context) => {
        const old = keys.map((key) => [key, oldNote(context, key)] as const);
        const notes = notesIn(await loadProperties(context), keys);
        const settings = old.flatMap(([key, note]) => {
          const value: unknown = note.isNullObject ? undefined : note.value;
          return typeof value === 'string' ? [[key, value] as const] : [];
        });
        return ok({ ...Object.fromEntries(settings), ...defined(notes) });
      }),
    remember: (notes) =>
      during('keepingNotes', async (context) => {
        const old = Object.keys(notes).map((key) => oldNote(context, key));
        const before = await loadProperties(context);
        changeProperties(context, before, notes);
        for (const note of old) if (!note.isNullObject) note.delete();
        await context.sync();
        return ok(undefined);
      }),
    keptText: (key) => during('recallingPlan', async (context) => ok(await keptText(context, key))),
    keepText: (key, text) =>
      during('keepingPlan', async (context) => ok(await keepText(context, key, text))),
    readSheet: (name) =>
      during(phrase('readingTable', { table: tableArgument(name) }), async (context) =>
        ok(await readSheet(context, name)),
      ),
    watch: (changed) =>
      tooOld(program) === null ? watchSheets(program, changed) : () => undefined,
    watchRow: (chosen) => (tooOld(program) === null ? watchRow(program, chosen) : () => undefined),
  };
}

function oldNote(context: Excel.RequestContext, key: string): Excel.Setting {
  const note = context.workbook.settings.getItemOrNullObject(OLD_NOTE + key);
  note.load('value');
  return note;
}

function defined(notes: Notes): Notes {
  return Object.fromEntries(Object.entries(notes).filter(([, text]) => text !== undefined));
}

/** Where the decimal sign is a comma, Excel separates arguments by semicolons. */
async function listSeparator(context: Excel.RequestContext): Promise<string> {
  const { application } = context.workbook;
  application.load('decimalSeparator');
  await context.sync();
  return application.decimalSeparator === ',' ? ';' : ',';
}
