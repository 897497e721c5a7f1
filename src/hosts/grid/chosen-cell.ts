/** What is to be known of the cell that the person has chosen: why it shows an error, or what may stand in it. */
import {
  CommandType,
  ICommandService,
  LocaleService,
  type ICommandInfo,
  type IDisposable,
} from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import {
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
} from '@univerjs/sheets';
import { parseRange } from '../../core/cells/cell-range.ts';
import type { ValidationDescription } from '../../sheets/grammar/description.ts';
import { sayAllowed } from '../../sheets/input/input-sheet.ts';
import { formulaParts, nameKey } from '../formulas/formula-parts.ts';
import { isError } from './error-reasons.ts';
import type { Grid } from './grid.ts';
import { gridSheet, gridSheets } from './grid-sheets.ts';

const MOVES = new Set([
  SetFormulaCalculationResultMutation.id,
  SetRangeValuesMutation.id,
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
]);
/** Whoever walks through cells is told of the one where they stay. */
const SETTLE_MS = 80;
/** Names of a list, beyond which none is said. */
const MOST_NAMES = 12;

/** Calls `say` whenever that changes, with nothing where nothing is to be said; returns what ends it. */
export function watchChosenCell(grid: Grid, say: (text: string) => void): IDisposable {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let said = '';
  const tell = (): void => {
    timer = undefined;
    const text = sayChosenCell(grid);
    if (text === said) return;
    said = text;
    say(text);
  };
  const listener = grid.services
    .get(ICommandService)
    .onCommandExecuted(({ id, type }: Readonly<ICommandInfo>) => {
      if (type === CommandType.COMMAND || !MOVES.has(id)) return;
      timer ??= setTimeout(tell, SETTLE_MS);
    });
  return {
    dispose: () => {
      clearTimeout(timer);
      listener.dispose();
    },
  };
}

export function sayChosenCell(grid: Grid): string {
  const book = grid.book();
  const sheet = book.getActiveSheet();
  const active = book.getActiveCell();
  if (active === null) return '';
  const [row, column] = [active.getRow(), active.getColumn()];
  const place = { unitId: book.getId(), subUnitId: sheet.getSheetId(), row, col: column };
  const reason = grid.whyError(place);
  if (reason !== '') return reason;
  const shown = grid.readCell(book, place.subUnitId, row, column)?.v;
  if (isError(shown)) return sayError(grid, shown);
  return sayChoices(grid, row, column);
}

/** In the grid's own few words. */
function sayError(grid: Grid, code: string): string {
  const key = ERROR_WORDS[code];
  if (key === undefined) return code;
  return `${code}: ${grid.services.get(LocaleService).t(`sheets-formula-ui.error.${key}`)}.`;
}

const ERROR_WORDS: Readonly<Record<string, string>> = {
  '#DIV/0!': 'divByZero',
  '#NAME?': 'name',
  '#VALUE!': 'value',
  '#NUM!': 'num',
  '#N/A': 'na',
  '#CYCLE!': 'cycle',
  '#REF!': 'ref',
  '#SPILL!': 'spill',
  '#CALC!': 'calc',
  '#NULL!': 'null',
};

/** The words that a cell is to be filled with: the grid itself offers no list of them. */
function sayChoices(grid: Grid, row: number, column: number): string {
  const { kept } = gridSheet(grid.book().getActiveSheet().getSheet());
  const rule = kept?.validations.find(({ range }) => {
    const within = parseRange(range);
    return (
      within !== null &&
      within.top <= row &&
      row <= within.bottom &&
      within.left <= column &&
      column <= within.right
    );
  });
  if (rule === undefined) return '';
  const { allow, title } = rule;
  const choices = allow.kind === 'list from' ? sayNames(grid, allow) : sayAllowed(allow);
  return choices === '' || title === '' ? choices : `${title}: ${choices}`;
}

type ListFrom = Extract<ValidationDescription['allow'], { readonly kind: 'list from' }>;

/** What stands in the cells that a list is taken from. */
function sayNames(grid: Grid, { formula }: ListFrom): string {
  const [first] = formulaParts(formula);
  const range = parseRange(formula.slice(formula.lastIndexOf('!') + 1).replaceAll('$', ''));
  const sheet = gridSheets(grid).find(
    ({ name }) => first?.kind === 'sheet' && nameKey(name) === nameKey(first.name),
  );
  if (range === null || sheet === undefined) return '';
  const names: string[] = [];
  for (let row = range.top; row <= range.bottom; row++) {
    const { v } = grid.readCell(grid.book(), sheet.id, row, range.left) ?? {};
    if (v !== undefined && v !== null && v !== '' && !isError(v)) names.push(String(v));
  }
  const more = names.length - MOST_NAMES;
  if (names.length === 0) return '';
  return more > 0
    ? `One of: ${names.slice(0, MOST_NAMES).join(', ')} and ${more} more.`
    : `One of: ${names.join(', ')}.`;
}
