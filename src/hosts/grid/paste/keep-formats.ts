/** Keeps the grid's own copying and pasting from making dates of lengths. */
import type { ICellData, Nullable } from '@univerjs/core';
import type { ISheetClipboardHook, ISheetClipboardService } from '@univerjs/sheets-ui';
import { looksLikeDay } from './typed-meaning.ts';

/** Before the grid's own hooks, which take the cells as they are then. */
const FIRST = -1000;
const NAME = 'keep-formats';

/**
 * When cells are copied within the grid, its paste gives text that it could read as a date a date's
 * format; and writes that into the very style that all cells that look alike share. So each cell is
 * handed a style of its own, and text one whose format stays the format of text.
 */
export function keepFormats(clipboard: ISheetClipboardService): void {
  const hook: ISheetClipboardHook = {
    id: NAME,
    priority: FIRST,
    onPasteCells: (_from, _to, data) => {
      data.forValue((_row, _column, cell: Nullable<ICellData>) => {
        if (cell === null || cell === undefined) return;
        const style = typeof cell.s === 'object' ? cell.s : null;
        const isText = typeof cell.v === 'string' && looksLikeDay(cell.v);
        const format = style?.n ?? null;
        if (isText) cell.s = { ...style, n: textFormat() };
        else if (format !== null) cell.s = { ...style, n: { ...format } };
      });
      return { redos: [], undos: [] };
    },
  };
  clipboard.addClipboardHook(hook);
}

/** It can be written to, to no effect. */
function textFormat(): { pattern: string } {
  return Object.defineProperty({ pattern: '@' }, 'pattern', {
    enumerable: true,
    get: () => '@',
    set: () => undefined,
  });
}
