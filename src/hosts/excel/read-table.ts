/** Reads the rows under one place's headings. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { tableArgument, type RawRow, type RawTable } from '../../planning/input/raw-table.ts';
import type { TablePlace } from '../host.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { tableOf, tooManyRows } from '../tables/raw-rows.ts';
import { withLayout } from '../tables/sheet-layout.ts';
import { sayRowsBelow } from '../tables/table-rows.ts';
import { lookAround, type Surroundings } from './look-around.ts';
import { locatePlaces, parsePlaceKey, readRowsOf, type LocatedPlace } from './places.ts';
import { readPlaces } from './rows-of-places.ts';

/** More used cells than these are no table, even if nearly all of them are blank. */
const MOST_CELLS = 2_000_000;

/**
 * Reads a table.
 *
 * @param name What the table is taken for; faults call it so.
 * @param seesMerges Whether this Excel tells merged cells (ExcelApi 1.13).
 * @returns The table; or host.gone, table.too-many-rows, table.heading-merged.
 */
export async function readTable(
  context: Excel.RequestContext,
  place: TablePlace,
  name: string,
  seesMerges: boolean,
): Promise<Outcome<RawTable>> {
  const there = await find(context, place);
  if (there === null)
    return failed(fault('host.gone', tableArgument(name), place.table ?? place.sheet));
  const { sheet, located } = there;
  const source = { kind: 'sheet', name: sheet } as const;
  if (located === undefined) return tableOf(name, source, []);
  const { area } = located;
  const usedRows = area.bottom - area.top + 1;
  if (usedRows * (area.right - area.left + 1) > MOST_CELLS)
    return failed(tooManyRows(name, usedRows));
  const [found] = await readPlaces(context, [located]);
  const { rows, below } = found ?? { rows: [], below: undefined };
  const isTable = located.key.kind === 'table';
  const table = isTable ? properTable(name, source, rows, area) : tableOf(name, source, rows);
  if (!table.ok) return table;
  const { headings } = table.value;
  // Excel itself lets no table of its own have merged cells.
  const asksMerges = seesMerges && !isTable && headings.cells.length > 0;
  const deepest = Math.max(area.bottom, (rows.at(-1)?.line ?? 1) - 1);
  const seen = await lookAround(
    context,
    { ...area, bottom: deepest },
    asksMerges ? headings.line : undefined,
  );
  const told = withLayout({ ...table.value, ...withCautions(seen) }, seen);
  return told.ok ? ok(sayRowsBelow(told.value, place.table ?? '', { below }, area.left)) : told;
}

function withCautions({ cautions }: Surroundings): Pick<RawTable, 'cautions'> {
  return cautions.length === 0 ? {} : { cautions };
}

function properTable(
  name: string,
  source: RawTable['source'],
  [headings, ...below]: readonly RawRow[],
  { top }: LocatedPlace['area'],
): Outcome<RawTable> {
  if (below.length > MOST_TABLE_ROWS) return failed(tooManyRows(name, below.length));
  return ok({ name, source, headings: headings ?? { line: top + 1, cells: [] }, rows: below });
}

/** The rows of a sheet that aren't blank; none where there is no such sheet. */
export async function readSheet(context: Excel.RequestContext, name: string): Promise<RawRow[]> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('id');
  await context.sync();
  if (sheet.isNullObject) return [];
  const key = { kind: 'sheet', id: sheet.id } as const;
  const [located] = await locatePlaces(context, [{ key, sheet: sheet.id }]);
  if (located === undefined) return [];
  const [rows = []] = await readRowsOf(context, [located.area]);
  return rows;
}

/** The place as it is now: its sheet's name, and its cells if it has any. */
async function find(
  context: Excel.RequestContext,
  place: TablePlace,
): Promise<{ sheet: string; located: LocatedPlace | undefined } | null> {
  const key = parsePlaceKey(place.key);
  if (key === null) throw new RangeError(`"${place.key}" is no place of this workbook.`);
  const { tables, worksheets } = context.workbook;
  const table = key.kind === 'table' ? tables.getItemOrNullObject(key.id) : undefined;
  table?.load('showHeaders,worksheet/id,worksheet/name');
  const sheet = key.kind === 'sheet' ? worksheets.getItemOrNullObject(key.id) : undefined;
  sheet?.load('id,name');
  await context.sync();
  if (table?.isNullObject === true || sheet?.isNullObject === true) return null;
  if (table?.showHeaders === false) return null;
  const on = table?.worksheet ?? sheet;
  if (on === undefined) return null;
  const [located] = await locatePlaces(context, [{ key, sheet: on.id }]);
  return { sheet: on.name, located };
}
