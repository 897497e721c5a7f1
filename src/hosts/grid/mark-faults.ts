/** Cells that must change, marked in the grid: a corner on the cell, and the words for whoever chooses it. */
import { InterceptorEffectEnum } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { parseRange } from '../../core/cells/cell-range.ts';
import type { Fault } from '../../core/faults/fault.ts';
import { nameKey } from '../formulas/formula-parts.ts';
import { drawCells } from './draw-anew.ts';
import type { Grid } from './grid.ts';

export interface FaultMarks {
  /** Marks these and no others. */
  readonly set: (faults: readonly Fault[]) => void;
  /** What is wrong with a cell, a sentence each; row and column from 0. */
  readonly at: (sheet: string, row: number, column: number) => readonly string[];
}

/** Pixels along the edges of the corner. */
const CORNER_PIXELS = 7;

/**
 * A mark is shown and no more: nothing of it is in the cell, so that it is neither kept nor saved, printed or taken
 * back by Undo.
 *
 * @param color Of the corner, as #RRGGBB.
 */
export function markFaults(grid: Grid, color: string): FaultMarks {
  let marked = new Map<string, readonly string[]>();
  const corner = { tl: { size: CORNER_PIXELS, color }, bl: { size: CORNER_PIXELS, color } };
  grid.services.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    handler: (cell, { worksheet, row, col }, next) => {
      if (marked.size === 0 || !marked.has(keyOf(worksheet.getName(), row, col))) return next(cell);
      return next({ ...cell, markers: { ...cell?.markers, ...corner } });
    },
  });
  return {
    set: (faults) => {
      const now = bySheetAndCell(faults);
      if (sameKeys(now, marked)) {
        marked = now;
        return;
      }
      marked = now;
      drawCells(grid);
    },
    at: (sheet, row, column) => marked.get(keyOf(sheet, row, column)) ?? [],
  };
}

function bySheetAndCell(faults: readonly Fault[]): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const { where, message } of faults) {
    if (where === undefined || !('sheet' in where)) continue;
    const range = parseRange(where.cell);
    if (range === null) continue;
    const key = keyOf(where.sheet, range.top, range.left);
    const said = found.get(key) ?? [];
    if (!said.includes(message)) found.set(key, [...said, message]);
  }
  return found;
}

function keyOf(sheet: string, row: number, column: number): string {
  return `${nameKey(sheet)}\n${row}\n${column}`;
}

function sameKeys(one: ReadonlyMap<string, unknown>, other: ReadonlyMap<string, unknown>): boolean {
  return one.size === other.size && [...one.keys()].every((key) => other.has(key));
}
