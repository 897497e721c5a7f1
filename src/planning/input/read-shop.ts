/** The Shop table: one row a setting, read by the list in shop.ts. */
import { fault, type Where } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { RANGE_SETTINGS } from '../settings/range-settings.ts';
import { namesOf, SETTINGS, type SettingKey, type Shop, type ShopCells } from '../shop.ts';
import { headNotUsed, saysNotUsed } from './headings/meant-headings.ts';
import { SHOP_HEADINGS } from './headings/shop-headings.ts';
import type { RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { readSetting, usualValue, type SettingValue } from './read-setting.ts';
import { headingKey, type Findings } from './row-reader.ts';
import { mayBeMoney } from './setting-words.ts';

const BY_NAME = new Map<string, SettingKey>(
  (Object.keys(SETTINGS) as SettingKey[]).flatMap((key) => {
    return namesOf(key).map((name) => [headingKey(name), key] as const);
  }),
);

export interface ShopReading {
  readonly shop: Shop;
  /** Settings that the person left to their usual values. */
  readonly left: readonly SettingKey[];
  /** Where the value of each setting stands that has a row. */
  readonly cells: ShopCells;
}

/** More settings than these are no suggestion any more. */
const MOST_NEAR = 6;

/** A setting's name without regard to case, spaces and hyphens; a percent is said, since a sum may be meant. */
function settingNamed(name: string): SettingKey | undefined {
  const key = BY_NAME.get(headingKey(name));
  if (key === undefined || !SETTINGS[key].name.endsWith('%')) return key;
  return name.includes('%') ? key : undefined;
}

/**
 * Settings that one which isn't known may be meant for. Those of the price's range only where it says low or
 * high: a shop's `waste %` is no range.
 */
function settingsNear(name: string): readonly string[] {
  const isOfRange = /\b(?:low|high)\b/iu.test(name);
  const names = Object.entries(SETTINGS).flatMap(([key, one]) =>
    key in RANGE_SETTINGS && !isOfRange ? [] : [one.name],
  );
  return findNearNames(name, names).slice(0, MOST_NEAR);
}

/** Every setting, the usual value standing in where a row is absent or its value blank. */
export function readShop(
  table: RawTable | undefined,
  reading: CellReading,
  findings: Findings,
): ShopReading {
  const values: Partial<Record<SettingKey, SettingValue>> = {};
  const rows = table === undefined ? [] : readRows(table, SHOP_HEADINGS, reading, findings);
  const seen = new Set<SettingKey>();
  const cells: Partial<Record<SettingKey, Where>> = {};
  for (const row of rows) {
    const name = row.requiredText('setting');
    if (name === undefined) continue;
    const key = settingNamed(name);
    if (key !== undefined) cells[key] ??= row.where('value');
    if (key === undefined) {
      const near = saysNotUsed(name) ? [] : settingsNear(name);
      const details = { may: near.join(' or '), notUsed: headNotUsed(name) };
      if (near.length > 0) {
        row.refuse('setting', fault('job.setting-near', 'setting', name, { details }));
      } else if (!saysNotUsed(name) && !row.isBlank('value') && mayBeMoney(name)) {
        row.refuse('setting', fault('job.setting-unread', 'setting', name, { details }));
      } else row.caution('setting', fault('job.setting-unknown', 'setting', name));
    } else if (seen.has(key)) {
      row.refuse('setting', fault('job.setting-twice', 'setting', name));
    } else if (!row.isBlank('value')) {
      const value = readSetting(row, SETTINGS[key], reading);
      if (value !== undefined) values[key] = value;
      seen.add(key);
    }
  }
  const left: SettingKey[] = [];
  for (const key of Object.keys(SETTINGS) as SettingKey[]) {
    if (values[key] !== undefined) continue;
    const usual = usualValue(SETTINGS[key], reading.unit);
    if (usual === undefined) continue;
    values[key] = usual;
    if (!seen.has(key)) left.push(key);
  }
  return { shop: values as unknown as Shop, left, cells };
}
