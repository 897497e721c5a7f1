/** The spreadsheet grid on the page: started once, then it holds one workbook at a time. */
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/preset-sheets-drawing/lib/index.css';

import {
  BooleanNumber,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  type IWorkbookData,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';
import { UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import coreWords from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDrawingPreset } from '@univerjs/preset-sheets-drawing';
import drawingWords from '@univerjs/preset-sheets-drawing/locales/en-US';
import { takeNotes } from './book-metadata.ts';
import { beginFormulasAfresh } from './engine/begin-formulas-afresh.ts';
import { compareCellsAnew } from './engine/compare-cells-anew.ts';
import { findReadsAnew } from './engine/find-reads-anew.ts';
import { keepSpillsApart } from './engine/keep-spills-apart.ts';
import { readNumbersWhole } from './engine/read-numbers-whole.ts';
import { errorReasons, type Location } from './error-reasons.ts';
import type { Grid } from './grid.ts';
import { GRID_THEME } from './grid-theme.ts';
import { executorOf, type GridFunctionEntry } from './grid-function.ts';
import { watchMoves } from './watch-moves.ts';
import { keepLengths } from './paste/keep-lengths.ts';
import { cellReader } from './raw-cell.ts';
import { degreesOf } from './degrees-of.ts';
import { showRounded } from './show-rounded.ts';
import { typedDegrees } from './typed-degrees.ts';
import { typedTables } from './typed-tables.ts';

/**
 * Shows the grid in an element of the page, which must have a size.
 *
 * @param container The element's id.
 * @param first The workbook that it opens with.
 * @param functions Worksheet functions: known before any formula of another workbook is worked out.
 */
export function startGrid(
  container: string,
  first: IWorkbookData,
  functions: readonly GridFunctionEntry[],
): Grid {
  beginFormulasAfresh();
  compareCellsAnew();
  keepSpillsApart();
  readNumbersWhole();
  const reasons = errorReasons();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, drawingWords) },
    logLevel: LogLevel.ERROR,
    theme: GRID_THEME,
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      disableAutoFocus: true,
      // The page has tools of its own, by plain names.
      toolbar: false,
      // A length is a text: no cell is marked for it.
      disableTextFormatAlert: true,
      disableTextFormatMark: true,
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
      formula: {
        function: functions.map((entry) => [executorOf(entry, reasons.note), entry.name]),
        description: functions.map(describeFunction),
      },
    }),
    UniverSheetsDrawingPreset(),
  ];
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  let book = api.createWorkbook(first);
  const services = univer.__getInjector();
  findReadsAnew(services);
  keepLengths(services);
  const readCell = cellReader(univer);
  const shownOf =
    ({ subUnitId }: Location) =>
    (row: number, column: number) =>
      readCell(book, subUnitId, row, column)?.v;
  reasons.show(services, shownOf);
  takeNotes(services);
  watchMoves(services);
  typedTables(services);
  const degrees = degreesOf(functions);
  typedDegrees(services, degrees);
  showRounded(services);
  return {
    api,
    services,
    addPart: (part) => univer.registerPlugin(part),
    readCell,
    degreesOf: degrees,
    whyError: (place) => reasons.of(services, place, shownOf(place)),
    book: () => book,
    open: (data) => {
      const id = book.getId();
      book = api.createWorkbook(data);
      api.disposeUnit(id);
    },
  };
}

function describeFunction({ name, description, parameters }: GridFunctionEntry): IFunctionInfo {
  return {
    functionName: name,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map((one) => ({
      name: one.name,
      detail: one.description,
      example: '',
      // The engine's "require" is 1 for what must be given.
      require: one.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}
