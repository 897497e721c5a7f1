/** The Shop input sheet: every setting with its value, unit and note. */
import { sayArgument } from '../../core/faults/argument.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
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
import { inputCell, sayAllowed, type InputLook } from './input-sheet.ts';

export const SHOP = columns({
  setting: left(sayArgument('setting')),
  value: left(sayArgument('value')),
  unit: left(sayArgument('unit')),
  note: left(sayArgument('note')),
});
const HEADINGS = SHOP.headings().cells.map((cell) => String(cell?.value));
const LENGTH_UNITS = ['in', 'mm', 'cm', 'm', 'ft'];
const KEYS = Object.keys(SETTINGS) as SettingKey[];

/**
 * Blank: every setting with its usual value. With a given table: its rows as they are, then the
 * settings that it leaves out, their values left blank, so that the usual ones go on standing in.
 */
export function describeShopSheet(
  given: RawTable | undefined,
  { paper, decimalSign }: InputLook,
): SheetDescription {
  const rows =
    given === undefined
      ? KEYS.map((key) => settingRow(key, true, decimalSign))
      : givenRows(given, decimalSign);
  return {
    name: 'Shop',
    columns: [
      { width: 36 },
      { width: 14, style: 'inputText' },
      { width: 12, style: 'inputText' },
      { width: 62 },
    ],
    rows: [{ cells: HEADINGS.map((value) => ({ value, style: 'heading' as const })) }, ...rows],
    tables: [
      { name: 'ShopTable', range: `${SHOP.at('setting', 1)}:${SHOP.at('note', rows.length + 1)}` },
    ],
    validations: rows.flatMap(({ cells }, index) => validations(cells, index + 2)),
    freeze: { rows: 1, columns: 0 },
    print: {
      paper,
      orientation: 'portrait',
      titleRows: [1, 1],
      fitWidth: true,
      header: '',
      footer: 'Shop',
    },
  };
}

function settingRow(key: SettingKey, filled: boolean, decimalSign: DecimalSign): RowDescription {
  const { name, unit, note, usual = '' } = settingOf(key);
  const said = usual === '' ? note : `${note}. Usual: ${sayUsual(key, 'in', decimalSign)}`;
  return {
    cells: [
      { value: name, style: 'label' },
      { value: filled ? usual : '', style: 'inputText' },
      { value: unit, style: 'inputText' },
      { value: said, style: 'note' },
    ],
  };
}

function givenRows(given: RawTable, decimalSign: DecimalSign): RowDescription[] {
  const places = HEADINGS.map((heading) =>
    given.headings.cells.findIndex((cell) => headingKey(cell) === headingKey(heading)),
  );
  const named = new Set<string>();
  const rows = given.rows.map((row): RowDescription => {
    const [name, value, unit, note] = places.map((place) => row.cells[place] ?? null);
    named.add(headingKey(name ?? null));
    return {
      cells: [
        { ...inputCell(name ?? null), style: 'label' },
        inputCell(value ?? null),
        inputCell(unit ?? null),
        { ...inputCell(note ?? null), style: 'note' },
      ],
    };
  });
  const left = KEYS.filter((key) => !named.has(headingKey(settingOf(key).name)));
  return [...rows, ...left.map((key) => settingRow(key, false, decimalSign))];
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
  const units = kind === 'length' ? LENGTH_UNITS : key === 'feed' ? ['ft/min', 'm/min'] : [];
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
