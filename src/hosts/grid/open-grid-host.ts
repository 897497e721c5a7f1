/** The grid's workbook, beside the page's pane. */
import { failed, fault, ok, type Outcome, type Where } from '../../core/faults/fault.ts';
import { soundRange } from '../../core/cells/cell-range.ts';
import type { WorkbookHost } from '../host.ts';
import { appendRows } from './append-rows.ts';
import { surveyWorkbook } from './survey-workbook.ts';
import {
  customOf,
  keptTextsOf,
  recallNotes,
  rememberNotes,
  withKeptText,
} from './book-metadata.ts';
import type { GridTools } from './paint-drawings.ts';
import { putFormula } from './put-formula.ts';
import { gridSheets } from './grid-sheets.ts';
import { rowsOf } from './read-rows.ts';
import { readTable } from './read-table.ts';
import type { Grid } from './grid.ts';
import { watchRow } from './watch-row.ts';
import { showCells } from './show-cells.ts';
import { watchSheets } from './watch-sheets.ts';
import { writeSheets } from './write-sheets.ts';

/**
 * Opens the workbook that the grid holds at each moment: one that is opened in its place is the
 * host's too.
 */
export function openGridHost(grid: Grid, tools: GridTools): WorkbookHost {
  return {
    kind: 'grid',
    can: {
      showCells: true,
      putFormulas: true,
      appendRows: true,
      writeInPlace: true,
      undoWrites: true,
    },
    survey: () => Promise.resolve(ok(surveyWorkbook(grid))),
    readTable: (place, name) => Promise.resolve(readTable(grid, place, name)),
    write: (description, choice) => writeSheets(grid, tools, description, choice),
    appendRows: (place, rows) => appendRows(grid, place, rows),
    show: (where) => Promise.resolve(show(grid, where)),
    putFormula: (formula) => putFormula(grid, formula),
    listSeparator: () => Promise.resolve(','),
    recall: (keys) => Promise.resolve(ok(recallNotes(customOf(grid), keys))),
    remember: (notes) => {
      const book = grid.book().getWorkbook();
      book.setCustomMetadata(rememberNotes(customOf(grid), notes));
      return Promise.resolve(ok(undefined));
    },
    keptText: (key) => Promise.resolve(ok(keptTextsOf(customOf(grid))[key])),
    keepText: (key, text) => {
      const book = grid.book().getWorkbook();
      book.setCustomMetadata(withKeptText(customOf(grid), key, text));
      return Promise.resolve(ok(undefined));
    },
    readSheet: (name) => {
      const sheet = gridSheets(grid).find((one) => one.name === name);
      return Promise.resolve(ok(sheet === undefined ? [] : rowsOf(grid, sheet)));
    },
    watch: (changed, typedOnOurs) => watchSheets(grid, changed, typedOnOurs),
    watchRow: (chosen) => watchRow(grid, chosen),
  };
}

function show(grid: Grid, where: Where): Outcome<void> {
  if (!('sheet' in where)) return failed(fault('host.gone', 'file', where.file));
  return showCells(grid, where.sheet, soundRange(where.cell))
    ? ok(undefined)
    : failed(fault('host.gone', 'sheet', where.sheet));
}
