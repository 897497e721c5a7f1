/** The workbook that stands beside the add-in's pane in Excel. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import type { WorkbookHost } from '../host.ts';
import { runNow, runPatiently, supports, tooOld, type ExcelProgram } from './excel-program.ts';
import { surveyWorkbook } from './survey-workbook.ts';
import { putFormula } from './put-formula.ts';
import { keepText, keptText } from './kept-parts.ts';
import { readSheet, readTable } from './read-table.ts';
import { attempt } from './refusal.ts';
import { watchSheets } from './watch-sheets.ts';
import { writeSheets } from './write-sheets.ts';

/** ExcelApi 1.11 tells the person's separators, 1.13 which cells are merged. */
const TELLS_SEPARATORS = 11;
const TELLS_MERGES = 13;
/** Before the keys of our notes among the workbook's settings. */
const NOTE = 'Coveledger.';

/**
 * Opens the workbook in Excel.
 *
 * @param program Excel's and Office's globals, and what paints drawings.
 * @returns The host; each of its calls gives host.too-old where Excel knows less than ExcelApi 1.9,
 *   host.editing-cell while a cell is being typed in, and host.refused for what Excel refuses.
 */
export function openExcelHost(program: ExcelProgram): WorkbookHost {
  const during = <T>(
    what: string,
    batch: (context: Excel.RequestContext) => Promise<Outcome<T>>,
  ): Promise<Outcome<T>> => {
    const old = tooOld(program);
    return old === null
      ? attempt(what, () => runNow(program, batch))
      : Promise.resolve(failed(old));
  };
  return {
    kind: 'excel',
    can: { showCells: true, putFormulas: true, writeInPlace: true, undoWrites: false },
    survey: () =>
      during('Looking through the workbook', async (context) => ok(await surveyWorkbook(context))),
    readTable: (place, name) =>
      during(`Reading ${name}`, (context) =>
        readTable(context, place, name, supports(program, TELLS_MERGES)),
      ),
    write: (description, choice) => {
      const old = tooOld(program);
      return old === null
        ? writeSheets(program, description, choice)
        : Promise.resolve(failed(old));
    },
    show: (where) =>
      during('Showing the cell', async (context) => {
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
    putFormula: (formula) =>
      during('Putting the formula', (context) => putFormula(context, formula)),
    listSeparator: async () => {
      if (tooOld(program) !== null || !supports(program, TELLS_SEPARATORS)) return ',';
      try {
        return await runPatiently(program, listSeparator);
      } catch {
        return ',';
      }
    },
    recall: (key) =>
      during('Recalling a note', async (context) => {
        const note = context.workbook.settings.getItemOrNullObject(NOTE + key);
        note.load('value');
        await context.sync();
        const value: unknown = note.isNullObject ? undefined : note.value;
        return ok(typeof value === 'string' ? value : undefined);
      }),
    remember: (key, value) =>
      during('Keeping a note', async (context) => {
        context.workbook.settings.add(NOTE + key, value);
        await context.sync();
        return ok(undefined);
      }),
    keptText: (key) =>
      during('Recalling the plan', async (context) => ok(await keptText(context, key))),
    keepText: (key, text) =>
      during('Keeping the plan', async (context) => ok(await keepText(context, key, text))),
    readSheet: (name) =>
      during(`Reading ${name}`, async (context) => ok(await readSheet(context, name))),
    watch: (changed) =>
      tooOld(program) === null ? watchSheets(program, changed) : () => undefined,
  };
}

/** Where the decimal sign is a comma, Excel separates arguments by semicolons. */
async function listSeparator(context: Excel.RequestContext): Promise<string> {
  const { application } = context.workbook;
  application.load('decimalSeparator');
  await context.sync();
  return application.decimalSeparator === ',' ? ';' : ',';
}
