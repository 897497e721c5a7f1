/** Settings found in the Shop table before it is read whole, and where they stand. */
import { sayArgument } from '../../core/faults/argument.ts';
import type { Where } from '../../core/faults/fault.ts';
import { sameName } from '../job.ts';
import { namesOf, SETTINGS, type SettingKey } from '../shop.ts';
import { findHeading } from './headings/meant-headings.ts';
import { SHOP_HEADINGS } from './headings/shop-headings.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import { isValue, plainValue, type CellReading } from './read-cell.ts';
import { headingKey } from './row-reader.ts';

/** How bare numbers are to be read, found before anything else is. */
export function readingOf(table: RawTable | undefined): CellReading {
  const find = (name: string): string => {
    const setting = columnOf(table, 'setting');
    const value = columnOf(table, 'value');
    const row = table?.rows.find((one) => headingKey(one.cells[setting] ?? null) === name);
    const cell = row?.cells[value] ?? null;
    return isValue(cell) ? String(plainValue(cell)).trim() : '';
  };
  const currency = find('currency');
  return {
    unit: sameName(find('unit'), 'mm') ? 'mm' : 'in',
    decimalSign: find('decimalsign') === ',' ? ',' : '.',
    // Where Shop says none, money is printed in the usual one: another may not be taken for it.
    currency: currency === '' ? SETTINGS.currency.usual : currency,
  };
}

function columnOf(table: RawTable | undefined, key: 'setting' | 'value'): number {
  const wanted = headingKey(sayArgument(key));
  const { cells } = table?.headings ?? { cells: [] };
  const own = cells.findIndex((cell) => headingKey(cell) === wanted);
  if (own >= 0) return own;
  return cells.findIndex(
    (cell) => typeof cell === 'string' && findHeading(cell, SHOP_HEADINGS)?.key === key,
  );
}

/** Where a setting stands, for faults that come up later; the table's heading when it is absent. */
export function whereSetting(table: RawTable | undefined, key: SettingKey): Where | undefined {
  if (table === undefined) return undefined;
  const setting = columnOf(table, 'setting');
  const wanted = namesOf(key).map(headingKey);
  const row = table.rows.find((one) => wanted.includes(headingKey(one.cells[setting] ?? null)));
  return whereIs(table, row?.line ?? table.headings.line, Math.max(0, columnOf(table, 'value')));
}
