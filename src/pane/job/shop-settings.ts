/** The shop's settings in force, as they are shown. */
import { formatNumber } from '../../core/units/format-number.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import { whereSetting } from '../../planning/input/find-setting.ts';
import type { ShopReading } from '../../planning/input/read-shop.ts';
import {
  inShopUnit,
  SETTINGS,
  settingOf,
  type SettingKey,
  type Shop,
} from '../../planning/shop.ts';
import { printExact } from '../../sheets/words/print-length.ts';
import type { SettingRow } from './job-found.ts';

/** Every setting in the order of the Shop sheet; one without a usual value may stand open. */
export function listSettings(
  { shop, left }: ShopReading,
  table: RawTable | undefined,
): SettingRow[] {
  const open = new Set(left);
  return (Object.keys(SETTINGS) as SettingKey[]).map((key) => ({
    name: settingOf(key).name,
    value: saySetting(shop, key),
    usual: open.has(key),
    where: whereSetting(table, key),
  }));
}

function saySetting(shop: Shop, key: SettingKey): string {
  const value = shop[key];
  if (value === undefined) return 'not given';
  if (typeof value === 'string') return value;
  if (typeof value === 'object') return printExact(value, shop);
  const { name, kind } = settingOf(key);
  const { value: shown, unit } = inShopUnit(key, value, shop.unit);
  const number = formatNumber(shown, 4, shop.decimalSign);
  if (name.endsWith('%')) return `${number} %`;
  return kind === 'angle' ? `${number}°` : `${number} ${unit}`.trim();
}
