/** The Shop sheet: every setting with its usual value, its unit and what it is. */
import type { RawTable } from '../../planning/input/raw-table.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { SETTINGS, settingOf, type SettingKey } from '../../planning/shop.ts';
import { cellName } from '../cell-range.ts';
import type {
  CellDescription,
  PrintDescription,
  RowDescription,
  SheetDescription,
} from '../description.ts';
import { valueOf } from './input-sheet.ts';

const HEADINGS = ['Setting', 'Value', 'Unit', 'Note'] as const;

export function shopSheet(
  filled: RawTable | undefined,
  paper: PrintDescription['paper'],
): SheetDescription {
  const keys = Object.keys(SETTINGS) as SettingKey[];
  const rows = keys.map((key) => settingRow(key, filled));
  return {
    name: 'Shop',
    columns: [{ width: 32 }, { width: 12 }, { width: 12 }, { width: 56 }],
    rows: [{ cells: HEADINGS.map((value) => ({ value, style: 'heading' as const })) }, ...rows],
    tables: [{ name: 'Input_Shop', range: `A1:D${rows.length + 1}` }],
    validations: keys.flatMap((key, index) => {
      const { allowed, name } = settingOf(key);
      // A list in a workbook is split at commas, so one can't be a choice of it.
      if (allowed === undefined || allowed.includes(',')) return [];
      return [
        {
          range: cellName(index + 1, 1),
          allow: { kind: 'list' as const, values: allowed },
          strict: true,
          title: name,
          message: `Choose one of: ${allowed.join(', ')}.`,
        },
      ];
    }),
    freeze: { rows: 1, columns: 1 },
    print: {
      paper,
      orientation: 'portrait',
      titleRows: [1, 1],
      fitWidth: true,
      header: 'Shop',
      footer: 'Input',
    },
  };
}

function settingRow(key: SettingKey, filled: RawTable | undefined): RowDescription {
  const { name, kind, unit, note, usual } = settingOf(key);
  const place = (heading: string): number =>
    filled?.headings.cells.findIndex((cell) => headingKey(cell) === headingKey(heading)) ?? -1;
  const own = filled?.rows.find(
    (row) => headingKey(row.cells[place('Setting')] ?? null) === headingKey(name),
  );
  const cellOf = (heading: string) => own?.cells[place(heading)] ?? null;
  // Nobody's hourly rate is usual: it stays open and the plan says that labor is missing.
  const asText = kind !== 'number' && kind !== 'percent';
  const value =
    own === undefined && filled === undefined
      ? (usual ?? null)
      : valueOf(cellOf('Value'), { asText });
  const typed: CellDescription['value'] = value !== null && !asText ? Number(value) : value;
  const sound = typeof typed === 'number' && Number.isNaN(typed) ? value : typed;
  return {
    cells: [
      { value: name, style: 'label' },
      { value: sound, style: asText ? 'inputText' : 'input' },
      { value: textOr(cellOf('Unit'), unit), style: 'inputText' },
      { value: textOr(cellOf('Note'), note), style: 'note' },
    ],
  };
}

function textOr(cell: unknown, usual: string): string {
  return typeof cell === 'string' && cell.trim() !== '' ? cell : usual;
}
