/** The spreadsheet grid on the page: started once, then it holds one workbook at a time. */
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/preset-sheets-drawing/lib/index.css';

import { LocaleType, LogLevel, mergeLocales, Univer, type IWorkbookData } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import coreWords from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDrawingPreset } from '@univerjs/preset-sheets-drawing';
import drawingWords from '@univerjs/preset-sheets-drawing/locales/en-US';

/** A function of the grid, called with what its arguments hold: a matrix, or a value written out. */
export type GridFunction = (...given: unknown[]) => unknown;

export interface GridFunctionEntry {
  /** COVE.APPROACH, say. */
  readonly name: string;
  readonly description: string;
  readonly call: GridFunction;
}

export interface Grid {
  readonly api: FUniver;
  /** Puts a workbook in the place of the one that is there. */
  open(data: IWorkbookData): void;
  book(): ReturnType<FUniver['createWorkbook']>;
}

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
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, drawingWords) },
    logLevel: LogLevel.ERROR,
  });
  const presets = [
    UniverSheetsCorePreset({ container, disableAutoFocus: true }),
    UniverSheetsDrawingPreset(),
  ];
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  let book = api.createWorkbook(first);
  const formula = api.getFormula();
  for (const { name, description, call } of functions) {
    formula.registerFunction(name, call as never, description);
  }
  return {
    api,
    book: () => book,
    open: (data) => {
      const id = book.getId();
      book = api.createWorkbook(data);
      api.disposeUnit(id);
    },
  };
}
