/** The Shop input sheet: every setting with its value, unit and note. */
import { sayArgument } from '../../core/faults/argument.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { SETTINGS, sayUsual, settingOf, type SettingKey } from '../../planning/shop.ts';
import type {
  CellDescription,
  RowDescription,
  SheetDescription,
  ValidationDescription,
} from '../grammar/description.ts';
import { columns, left } from '../grammar/columns.ts';
import { sayAllowed, type InputLook } from './input-sheet.ts';
import { describeSettings } from './settings-sheet.ts';

export const SHOP = columns({
  setting: left(sayArgument('setting')),
  value: left(sayArgument('value')),
  unit: left(sayArgument('unit')),
  note: left(sayArgument('note')),
});
const GRID = [
  { width: 36 },
  { width: 14, style: 'inputText' },
  { width: 12, style: 'inputText' },
  { width: 62 },
] as const;
const LENGTH_UNITS = ['in', 'mm', 'cm', 'm', 'ft'];
const RATE_UNITS: Readonly<Partial<Record<SettingKey, readonly string[]>>> = {
  feed: ['ft/min', 'm/min'],
  smoothingMinutes: ['min/sq ft', 'min/m²'],
};
const KEYS = Object.keys(SETTINGS) as SettingKey[];

/** See describeSettings. */
export function describeShopSheet(given: RawTable | undefined, look: InputLook): SheetDescription {
  const rows = KEYS.map((key) => ({
    name: settingOf(key).name,
    ...former(key),
    row: (isFilled: boolean) => settingRow(key, isFilled, look),
  }));
  return describeSettings(
    { name: 'Shop', table: SHOP, grid: GRID, rows, validations },
    given,
    look,
  );
}

function former(key: SettingKey): { readonly formerly?: string } {
  const { formerly } = settingOf(key);
  return formerly === undefined ? {} : { formerly };
}

function settingRow(
  key: SettingKey,
  filled: boolean,
  { decimalSign, unit: shopUnit }: InputLook,
): RowDescription {
  const { name, unit, note, usual = '' } = settingOf(key, shopUnit);
  const said = usual === '' ? note : `${note}. Usual: ${sayUsual(key, shopUnit, decimalSign)}`;
  return {
    cells: [
      { value: name, style: 'label' },
      { value: filled ? asCell(usual) : '', style: 'inputText' },
      { value: unit, style: 'inputText' },
      { value: said, style: 'note' },
    ],
  };
}

/** A number with a decimal goes in as a number, which reads alike with either decimal sign. */
function asCell(usual: string): string | number {
  return /^\d+\.\d+$/u.test(usual) ? Number(usual) : usual;
}

/** Choices where a setting has words to choose from (a comma can't stand in such a list), and units. */
function validations(
  cells: readonly (CellDescription | null)[],
  row: number,
): ValidationDescription[] {
  const name = cells[0]?.value ?? null;
  const key = KEYS.find(
    (one) => typeof name === 'string' && headingKey(SETTINGS[one].name) === headingKey(name),
  );
  if (key === undefined) return [];
  const { allowed = [], kind } = settingOf(key);
  const words = allowed.includes(',') ? [] : allowed;
  const units = kind === 'length' ? LENGTH_UNITS : (RATE_UNITS[key] ?? []);
  const choose = (column: 'value' | 'unit', values: readonly string[]): ValidationDescription[] => {
    if (values.length === 0) return [];
    const allow = { kind: 'list', values } as const;
    const range = SHOP.at(column, row);
    return [
      {
        range,
        allow,
        strict: false,
        title: settingOf(key).name.slice(0, 32),
        message: sayAllowed(allow),
      },
    ];
  };
  return [...choose('value', words), ...choose('unit', units)];
}
