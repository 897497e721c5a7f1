/** What Excel tells of a table beside its cells: rows and columns out of sight, values that may be old, merges. */
import { rangesOverlap, type CellRange } from '../../core/cells/cell-range.ts';
import { fault, type Caution } from '../../core/faults/fault.ts';
import type { SheetLayout } from '../tables/sheet-layout.ts';
import type { Area } from './read-areas.ts';

export interface Surroundings extends SheetLayout {
  /** That formulas may not have been worked out since something changed. */
  readonly cautions: readonly Caution[];
}

/** "If the merged areas count in this range is more than 512, then this method will fail" (Excel.Range, [P]). */
const MOST_MERGES = 512;

/**
 * Asks for all of it in one request.
 *
 * @param headings The line of the headings, where this Excel tells which cells are merged.
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
  const rowsAt = (from: number, rows: number): Excel.Range =>
    worksheets.getItem(sheet).getRangeByIndexes(from, left, rows, columns);
  const visible = rowsAt(top, bottom - top + 1).getSpecialCellsOrNullObject('Visible');
  visible.load(CORNERS);
  const merged = (headings === undefined ? [] : blocksOf(headings - 1, bottom, columns)).map(
    ({ from, rows }) => rowsAt(from, rows).getMergedAreasOrNullObject(),
  );
  for (const one of merged) one.load(CORNERS);
  await context.sync();
  const inSight = rangesOf(visible);
  const isOut = outsideOf(inSight.map(({ left: from, right: to }) => [from, to]));
  return {
    isHiddenRow: outsideOf(inSight.map(({ top: from, bottom: to }) => [from + 1, to + 1])),
    // Where nothing is in sight, Excel doesn't tell whether that is by rows or by columns.
    isHiddenColumn: (column) =>
      inSight.length > 0 && column >= left && column <= right && isOut(column),
    cautions: cautionsOf(application.calculationMode, application.calculationState),
    merges: joinParted(merged.flatMap(rangesOf)),
  };
}

const CORNERS =
  'areas/items/rowIndex,areas/items/rowCount,areas/items/columnIndex,areas/items/columnCount';

function rangesOf(found: Excel.RangeAreas): CellRange[] {
  return (found.isNullObject ? [] : found.areas.items).map(
    ({ rowIndex, rowCount, columnIndex, columnCount }) => ({
      top: rowIndex,
      left: columnIndex,
      bottom: rowIndex + rowCount - 1,
      right: columnIndex + columnCount - 1,
    }),
  );
}

/** Whether a number lies in none of the spans, both ends of each included. */
function outsideOf(spans: readonly (readonly [number, number])[]): (at: number) => boolean {
  const inside = new Set<number>();
  for (const [from, to] of spans) for (let at = from; at <= to; at++) inside.add(at);
  return (at) => !inside.has(at);
}

/**
 * Rows in blocks that can't have too many merges: each has two cells of its block, but for those over its
 * first and last row. A block begins with the last row of the one before.
 */
function blocksOf(
  top: number,
  bottom: number,
  columns: number,
): { readonly from: number; readonly rows: number }[] {
  const rows = Math.max(2, Math.floor((2 * MOST_MERGES) / columns) - 2);
  const count = Math.max(1, Math.ceil((bottom - top) / (rows - 1)));
  return Array.from({ length: count }, (_, index) => {
    const from = top + index * (rows - 1);
    return { from, rows: Math.min(rows, bottom - from + 1) };
  });
}

/** What two blocks tell of one merge, whole or the part that is theirs, overlaps; two merges never do. */
function joinParted(parts: readonly CellRange[]): CellRange[] {
  const found: CellRange[] = [];
  const lastOver = new Map<number, number>();
  for (const part of [...parts].sort((one, other) => one.top - other.top)) {
    const at = lastOver.get(part.left) ?? -1;
    const last = found[at];
    if (last !== undefined && rangesOverlap(last, part)) {
      found[at] = { ...last, bottom: Math.max(last.bottom, part.bottom) };
    } else {
      lastOver.set(part.left, found.length);
      found.push(part);
    }
  }
  return found;
}

function cautionsOf(mode: string, state: string): Caution[] {
  if (mode === 'Manual') {
    return [
      fault('host.manual-calculation', 'excel', null, { details: { isPending: state !== 'Done' } }),
    ];
  }
  return state === 'Done' ? [] : [fault('host.still-calculating', 'excel', null)];
}
