/** Puts rows under those of a table in Excel. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import type { TablePlace } from '../host.ts';
import { MOST_TABLE_COLUMNS } from '../tables/limits.ts';
import { noRoom, roomBelow, type NewRow, type RoomAsked } from '../tables/room-below.ts';
import { locatePlaces, parsePlaceKey, readRowsOf, type PlaceKey } from './places.ts';
import { typedValue } from './typed-value.ts';

const ADDING = 'addingRows';
const GENERAL = 'General';

/**
 * A table grows by Excel's own way, which moves down its totals and what else stands below, and
 * carries looks, formulas and choices on.
 *
 * @returns Line of the first; or host.gone, host.sheet-protected, host.no-room, table.too-many-rows.
 */
export async function appendRows(
  context: Excel.RequestContext,
  place: TablePlace,
  rows: readonly NewRow[],
): Promise<Outcome<{ readonly line: number }>> {
  const name = place.table ?? place.sheet;
  const found = await find(context, place);
  if (found === null) return failed(fault('host.gone', ADDING, name));
  const { key, sheet, table } = found;
  if (sheet.protection.protected) return failed(fault('host.sheet-protected', 'sheet', sheet.name));
  const [located] = await locatePlaces(context, [{ key, sheet: sheet.id }]);
  if (located === undefined) return failed(fault('host.gone', ADDING, name));
  const { span, area } = located;
  const body = span === undefined ? area : { ...area, bottom: span.range.bottom };
  const [own = []] = await readRowsOf(context, [body]);
  const asked: RoomAsked = {
    name,
    sheet: sheet.name,
    rows: span === undefined ? own.filter(({ line }) => line >= place.line) : own,
    all: own,
    left: span?.range.left ?? 0,
    right: span?.range.right ?? MOST_TABLE_COLUMNS,
    ...(span === undefined ? {} : { bottom: span.range.bottom }),
    makesRoom: true,
  };
  const room = roomBelow(asked, rows.length);
  if (!room.ok) return room;
  const line = room.value;
  const more = span === undefined ? 0 : Math.max(0, line + rows.length - 2 - span.range.bottom);
  const cells = rows.flatMap((row, index) =>
    row.flatMap((text, column) => {
      if (text === null) return [];
      const at = line - 1 + index;
      const isNew = span !== undefined && at > span.range.bottom;
      // A row that comes looks like the table's last one.
      const model = sheet.getRangeByIndexes(isNew ? span.range.bottom : at, column, 1, 1);
      model.load('formulas,numberFormat');
      return [{ row: at, column, text, isNew, model }];
    }),
  );
  await context.sync();
  // A formula that answers nothing yet looks blank, and is no blank cell.
  const taken = cells.find(
    ({ isNew, model }) => !isNew && String(model.formulas[0]?.[0]).startsWith('='),
  );
  if (taken !== undefined) return failed(noRoom(asked, taken.row, taken.column, rows.length));
  for (let index = 0; index < more; index++) table?.rows.add();
  for (const { row, column, text, model } of cells) {
    const cell = sheet.getRangeByIndexes(row, column, 1, 1);
    cell.numberFormat = [[GENERAL]];
    cell.values = [[typedValue(text)]];
    cell.numberFormat = model.numberFormat;
  }
  await context.sync();
  return ok({ line });
}

async function find(
  context: Excel.RequestContext,
  place: TablePlace,
): Promise<{ key: PlaceKey; sheet: Excel.Worksheet; table?: Excel.Table } | null> {
  const key = parsePlaceKey(place.key);
  if (key === null) throw new RangeError(`"${place.key}" is no place of this workbook.`);
  const { tables, worksheets } = context.workbook;
  const table = key.kind === 'table' ? tables.getItemOrNullObject(key.id) : undefined;
  table?.load('showHeaders,worksheet/id');
  const known = key.kind === 'sheet' ? worksheets.getItemOrNullObject(key.id) : undefined;
  known?.load('id');
  await context.sync();
  if (table?.isNullObject === true || known?.isNullObject === true) return null;
  if (table?.showHeaders === false) return null;
  const id = table?.worksheet.id ?? known?.id;
  if (id === undefined) return null;
  const sheet = worksheets.getItem(id);
  sheet.load('id,name');
  sheet.protection.load('protected');
  await context.sync();
  return { key, sheet, ...(table === undefined ? {} : { table }) };
}
