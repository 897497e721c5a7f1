/**
 * The shop's settings as one list. Reading, the blank workbook and the how-to sheet all follow from it,
 * so a new setting is one new line in its subject's file in settings.
 */
import type { Where } from '../core/faults/fault.ts';
import { writeDecimal, type DecimalSign } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { ExactInches } from '../core/units/length.ts';
import { LABOR_SETTINGS } from './settings/labor-settings.ts';
import { MONEY_SETTINGS } from './settings/money-settings.ts';
import { PAPER_SETTINGS } from './settings/paper-settings.ts';
import { RANGE_SETTINGS } from './settings/range-settings.ts';
import { SAW_SETTINGS } from './settings/saw-settings.ts';
import { settingIn, type SettingDefinition } from './settings/setting.ts';
import { STOCK_SETTINGS } from './settings/stock-settings.ts';

/** In the order in which the Shop sheet lists them. */
export const SETTINGS = {
  ...SAW_SETTINGS,
  ...STOCK_SETTINGS,
  ...PAPER_SETTINGS,
  ...LABOR_SETTINGS,
  ...MONEY_SETTINGS,
  ...RANGE_SETTINGS,
} as const satisfies Readonly<Record<string, SettingDefinition>>;

export type SettingKey = keyof typeof SETTINGS;

type ValueOf<Key extends SettingKey> = (typeof SETTINGS)[Key]['kind'] extends 'length'
  ? ExactInches
  : (typeof SETTINGS)[Key]['kind'] extends 'word' | 'text' | 'address'
    ? (typeof SETTINGS)[Key] extends { allowed: readonly (infer Word)[] }
      ? Word
      : string
    : number;

type Optional =
  | keyof typeof RANGE_SETTINGS
  | 'greatestHeightUpright'
  | 'greatestHeightAt45'
  | 'heightsMeasuredWith'
  | 'tableFront'
  | 'tableBack'
  | 'tableWidth'
  | 'slotToBlade'
  | 'pageAddress';

/** Every setting by its key: lengths in exact inches, angles in degrees, shares in percent. */
export type Shop = { readonly [Key in Exclude<SettingKey, Optional>]: ValueOf<Key> } & {
  readonly [Key in Optional]?: ValueOf<Key>;
};

/** What a set-up is worked out from, and how it is written. */
export type SawShop = Pick<Shop, keyof typeof SAW_SETTINGS | 'unit' | 'decimalSign'>;

/** Where the value of each setting stands that Shop has a row for. */
export type ShopCells = Readonly<Partial<Record<SettingKey, Where>>>;

/** As a shop of this unit has it. */
export function settingOf(key: SettingKey, unit: LengthUnit = 'in'): SettingDefinition {
  return settingIn(unit, SETTINGS[key]);
}

/** What it is called, and what older files call it. */
export function namesOf(key: SettingKey): readonly string[] {
  const { name, formerly } = settingOf(key);
  return formerly === undefined ? [name] : [name, formerly];
}

/** A number as it is kept, in the shop's own unit: what is kept by the foot goes by the metre there. */
export function inShopUnit(
  key: SettingKey,
  kept: number,
  shopUnit: LengthUnit,
): { readonly value: number; readonly unit: string } {
  const { unit, units } = settingOf(key, shopUnit);
  return { value: kept / (units?.[unit] ?? 1), unit };
}

/** The usual value with its unit, as a person would write it; that of the shop's own unit. */
export function sayUsual(
  key: SettingKey,
  lengthUnit: LengthUnit = 'in',
  decimalSign: DecimalSign = '.',
): string {
  const { kind, name, unit, usual: typed = '' } = settingOf(key, lengthUnit);
  // A sign or letters for money are no number.
  const usual = kind === 'text' || kind === 'word' ? typed : writeDecimal(typed, decimalSign);
  if (name.endsWith('%')) return usual;
  return unit === 'degrees' ? `${usual}°` : `${usual} ${unit}`.trim();
}
