/** Reads areas of cells in as few requests as their size allows. */
import type { CellRange } from '../../core/cells/cell-range.ts';
import { isTooLarge } from './refusal.ts';

export interface Area extends CellRange {
  /** The sheet's id. */
  readonly sheet: string;
}

export type CellProperty = 'values' | 'valueTypes' | 'numberFormat' | 'formulas';

/** A list of rows for each property asked for. */
export type AreaCells = Readonly<Record<CellProperty, readonly (readonly unknown[])[]>>;

/** Excel on the web answers with 5 MB at most: an ordinary cell with its format is far below 100 B. */
const CELLS_PER_REQUEST = 30_000;
/** Fewer are not worth another try: then it isn't their number. */
const LEAST_CELLS_PER_REQUEST = 200;

/**
 * Reads the cells of areas. Where a request is too large all the same (cells full of text), it is
 * asked for again in smaller ones.
 */
export async function readAreas(
  context: Excel.RequestContext,
  areas: readonly Area[],
  properties: readonly CellProperty[],
): Promise<AreaCells[]> {
  const read = areas.map((): Record<CellProperty, (readonly unknown[])[]> => ({
    values: [],
    valueTypes: [],
    numberFormat: [],
    formulas: [],
  }));
  let perRequest = CELLS_PER_REQUEST;
  let waiting = areas.map((area, of) => ({ area, of })).filter(({ area }) => cellsOf(area) > 0);
  while (waiting.length > 0) {
    const { now, later } = nextRequest(waiting, perRequest);
    try {
      const blocks = await request(
        context,
        now.map((one) => one.area),
        properties,
      );
      now.forEach(({ of }, index) => {
        for (const property of properties) {
          read[of]?.[property].push(...(blocks[index]?.[property] ?? []));
        }
      });
      waiting = later;
    } catch (error) {
      if (!isTooLarge(error) || perRequest <= LEAST_CELLS_PER_REQUEST) throw error;
      perRequest = Math.floor(perRequest / 4);
    }
  }
  return read;
}

async function request(
  context: Excel.RequestContext,
  blocks: readonly Area[],
  properties: readonly CellProperty[],
): Promise<AreaCells[]> {
  const ranges = blocks.map(({ sheet, top, left, bottom, right }) =>
    context.workbook.worksheets
      .getItem(sheet)
      .getRangeByIndexes(top, left, bottom - top + 1, right - left + 1)
      .load([...properties]),
  );
  await context.sync();
  return ranges.map((range) => {
    const get = (property: CellProperty): unknown[][] =>
      properties.includes(property) ? (range[property] as unknown[][]) : [];
    return {
      values: get('values'),
      valueTypes: get('valueTypes'),
      numberFormat: get('numberFormat'),
      formulas: get('formulas'),
    };
  });
}

interface Waiting {
  readonly area: Area;
  /** Which of the areas it is a part of. */
  readonly of: number;
}

/** As many whole rows as fit, at least one. */
function nextRequest(
  waiting: readonly Waiting[],
  most: number,
): { now: Waiting[]; later: Waiting[] } {
  const now: Waiting[] = [];
  let left = most;
  for (const [index, { area, of }] of waiting.entries()) {
    const width = area.right - area.left + 1;
    const fits = Math.max(Math.floor(left / width), now.length === 0 ? 1 : 0);
    const rows = Math.min(fits, area.bottom - area.top + 1);
    if (rows > 0) now.push({ area: { ...area, bottom: area.top + rows - 1 }, of });
    if (area.top + rows <= area.bottom) {
      const rest = { area: { ...area, top: area.top + rows }, of };
      return { now, later: [rest, ...waiting.slice(index + 1)] };
    }
    left -= rows * width;
  }
  return { now, later: [] };
}

function cellsOf({ top, left, bottom, right }: Area): number {
  return (bottom - top + 1) * (right - left + 1);
}
