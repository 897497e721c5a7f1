/** What Excel tells of a table beside its cells: rows out of sight, values that may be old, merges. */
import { fault, type Caution } from '../../core/faults/fault.ts';
import type { Area } from './read-areas.ts';

export interface Surroundings {
  /** Whether a row, by its line from 1, is hidden or filtered out. */
  readonly isHidden: (line: number) => boolean;
  /** That formulas may not have been worked out since something changed. */
  readonly cautions: readonly Caution[];
  /** Columns, from 0, that merges in the row of the headings hide. */
  readonly merged: readonly number[];
}

/**
 * Asks for all of it in one request.
 *
 * @param headings The line of the headings, where this Excel tells which of its cells are merged.
 */
export async function lookAround(
  context: Excel.RequestContext,
  area: Area,
  headings: number | undefined,
): Promise<Surroundings> {
  const { application, worksheets } = context.workbook;
  application.load('calculationMode,calculationState');
  const { sheet, top, left, bottom, right } = area;
  const columns = right - left + 1;
  const visible = worksheets
    .getItem(sheet)
    .getRangeByIndexes(top, left, bottom - top + 1, columns)
    .getSpecialCellsOrNullObject('Visible');
  visible.load('areas/items/rowIndex,areas/items/rowCount');
  const merged =
    headings === undefined
      ? undefined
      : worksheets
          .getItem(sheet)
          .getRangeByIndexes(headings - 1, left, 1, columns)
          .getMergedAreasOrNullObject();
  merged?.load('areas/items/columnIndex,areas/items/columnCount');
  await context.sync();
  const seen = new Set<number>();
  for (const { rowIndex, rowCount } of visible.isNullObject ? [] : visible.areas.items) {
    for (let row = rowIndex; row < rowIndex + rowCount; row++) seen.add(row);
  }
  const joined = merged === undefined || merged.isNullObject ? [] : merged.areas.items;
  return {
    isHidden: (line) => !seen.has(line - 1),
    cautions: cautionsOf(application.calculationMode, application.calculationState),
    merged: joined.flatMap(({ columnIndex, columnCount }) =>
      Array.from({ length: columnCount - 1 }, (_, index) => columnIndex + 1 + index),
    ),
  };
}

function cautionsOf(mode: string, state: string): Caution[] {
  if (mode === 'Manual') {
    return [
      fault('host.manual-calculation', 'excel', null, { details: { isPending: state !== 'Done' } }),
    ];
  }
  return state === 'Done' ? [] : [fault('host.still-calculating', 'excel', null)];
}
