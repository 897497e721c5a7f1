/** The grid in a page of its own, its host, and what a person would do in it: for tests. */
import {
  ICommandService,
  LocaleType,
  type ICommandInfo,
  type IWorkbookData,
  type IWorksheetData,
} from '@univerjs/core';
import {
  FormulaExecutedStateType,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { describedGridStyles } from '../../src/hosts/grid/convert-style.ts';
import { chosenCell } from '../../src/hosts/grid/chosen-cell.ts';
import { openGridHost } from '../../src/hosts/grid/open-grid-host.ts';
import { startGrid } from '../../src/hosts/grid/start-grid.ts';
import { gridFunctions } from '../../src/page/grid-functions.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { unpack } from './pack.ts';

let books = 0;

/** A workbook as a person may have it; sheets by their ids, in order. */
function bookOf(sheets: readonly Partial<IWorksheetData>[]): IWorkbookData {
  books += 1;
  const whole = sheets.map((sheet, index) => ({
    id: `person-${index + 1}`,
    rowCount: 1_000,
    columnCount: 26,
    ...sheet,
  }));
  return {
    id: `book-${books}`,
    name: 'Maple house',
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: describedGridStyles(),
    sheetOrder: whole.map(({ id }) => id),
    sheets: Object.fromEntries(whole.map((sheet) => [sheet.id, sheet])),
  };
}

const grid = startGrid('grid', bookOf([{ name: 'Notes' }]), gridFunctions());
const commands = grid.services.get(ICommandService);

/** What the host has told of changes, since it was last asked to. */
let told: string[] = [];
let endWatching = (): void => undefined;

/** Fails what the grid is told to do, before it is done or when it is. */
let breakAt: { readonly when: 'before' | 'after'; readonly of: RegExp; left: number } | undefined;
const mayBreak =
  (when: 'before' | 'after') =>
  ({ id }: ICommandInfo): void => {
    if (breakAt?.when !== when || !breakAt.of.test(id)) return;
    breakAt.left -= 1;
    if (breakAt.left === 0) throw new Error('no more room');
  };
commands.beforeCommandExecuted(mayBreak('before'));
commands.onCommandExecuted(mayBreak('after'));

/** Until a calculation that begins from now on has ended; one that is stopped begins again. */
function calculated(begin: () => void): Promise<void> {
  const formulas = grid.api.getFormula();
  return new Promise((resolve) => {
    let hasBegun = false;
    const start = formulas.calculationStart(() => {
      hasBegun = true;
    });
    const end = formulas.calculationEnd((state) => {
      if (!hasBegun || state === FormulaExecutedStateType.STOP_EXECUTION) return;
      start.dispose();
      end.dispose();
      resolve();
    });
    begin();
  });
}

const gridTest = {
  grid,
  commands,
  unpack,
  host: openGridHost(grid, { paint: paintTiny }),
  sayChosenCell: (): string => chosenCell(grid).says,
  open: (sheets: string): void => {
    grid.open(bookOf(JSON.parse(sheets) as Partial<IWorksheetData>[]));
  },
  /** Takes every formula's answer away, and has all worked out. */
  blankAnswers: async (): Promise<void> => {
    // What was written is worked out before: a calculation that comes between would stop this one.
    await gridTest.settle();
    for (const sheet of grid.book().getWorkbook().getSheets()) {
      sheet.getCellMatrix().forValue((_, __, cell) => {
        if (cell?.f !== undefined) cell.v = 'blanked';
      });
    }
    await calculated(() => {
      grid.api.getFormula().executeCalculation();
    });
  },
  /** From now on, until `left` is 0. */
  breakAt: (when: 'before' | 'after', of: string, left: number): void => {
    breakAt = { when, of: new RegExp(of, 'u'), left };
  },
  mend: (): void => {
    breakAt = undefined;
  },
  watch: (): void => {
    told = [];
    endWatching();
    endWatching = gridTest.host.watch((sheet) => told.push(sheet));
  },
  endWatching: (): void => endWatching(),
  /**
   * Names of sheets, each once, however many calculations a slow machine makes of one change; changes
   * that came together are told of before this.
   */
  told: async (): Promise<string[]> => {
    await new Promise((resolve) => setTimeout(resolve, 10));
    return [...new Set(told.splice(0))];
  },
  /** Until formulas have been worked out: the engine gathers changes before it begins. */
  settle: (): Promise<void> =>
    calculated(() => {
      void commands.executeCommand(
        SetTriggerFormulaCalculationStartMutation.id,
        {},
        { onlyLocal: true },
      );
    }),
};

export type GridTest = typeof gridTest;

Object.assign(globalThis, { gridTest });
