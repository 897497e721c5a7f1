/** Columns beside the profiles that our functions work out as the sizes are typed. */
import { OFF_CENTER_TO_COLUMN } from '../../planning/input/headings/profile-headings.ts';
import { PROFILE_ANSWERS } from '../../planning/input/read-profiles.ts';
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { settingOf, type SettingKey } from '../../planning/shop.ts';
import type {
  CellDescription,
  SheetDescription,
  WorkbookDescription,
} from '../grammar/description.ts';
import { SHOP } from './shop-sheet.ts';
import type { StyleName } from '../grammar/styles.ts';

interface LiveColumn {
  readonly heading: string;
  readonly width: number;
  readonly style: StyleName;
  /** Of one row's cells. */
  readonly formula: (cells: CoveCells) => string;
}

interface CoveCells {
  readonly width: string;
  readonly depth: string;
  readonly offCenter: string;
  readonly offCenterTo: string;
  /** Diameter and kerf, as arguments. */
  readonly blade: string;
  readonly stock: string;
  /** The shop's unit of bare numbers: our functions read them as inches. */
  readonly unit: string;
}

const COLUMNS: readonly LiveColumn[] = [
  {
    heading: PROFILE_ANSWERS.approach,
    width: 14,
    style: 'degrees',
    formula: ({ width, depth, offCenter, blade }) =>
      `COVE.APPROACH(${width},${depth},${offCenter},${blade})`,
  },
  {
    heading: PROFILE_ANSWERS.tilt,
    width: 14,
    style: 'degrees',
    formula: ({ width, depth, offCenter, blade }) =>
      `COVE.TILT(${width},${depth},IF(${offCenter}="",0,${offCenter}),${blade})`,
  },
  {
    heading: PROFILE_ANSWERS.canBeMade,
    width: 11,
    style: 'center',
    formula: (cells) => `IF(COVE.FEASIBLE(${whole(cells)}),"yes","no")`,
  },
  {
    heading: PROFILE_ANSWERS.toMind,
    width: 60,
    style: 'wrapped',
    formula: (cells) => `COVE.REASON(${whole(cells)})`,
  },
];

/** The same workbook, with live columns to the right of its profiles' table. */
export function withLiveColumns(description: WorkbookDescription): WorkbookDescription {
  const shop = description.sheets.find(({ name }) => name === 'Shop');
  const sheets = description.sheets.map((sheet) =>
    sheet.name === 'Profiles' && shop !== undefined ? besideProfiles(sheet, shop) : sheet,
  );
  return { ...description, sheets };
}

function besideProfiles(sheet: SheetDescription, shop: SheetDescription): SheetDescription {
  const [head, ...rows] = sheet.rows;
  const headings = (head?.cells ?? []).map((cell) => headingKey(cell?.value ?? null));
  const columnOf = (heading: string): number => {
    const column = headings.indexOf(headingKey(heading));
    if (column < 0) throw new RangeError(`The sheet Profiles has no column ${heading}.`);
    return column;
  };
  const blade = (['bladeDiameter', 'kerf'] as const).map((key) => withUnit(rowOf(shop, key)));
  const unit = settingCell('value', rowOf(shop, 'unit'));
  const cells = (row: number): CoveCells => {
    const at = (heading: string): string => cellName(row - 1, columnOf(heading));
    return {
      width: at(COVE_SIZES.width.label),
      depth: at(COVE_SIZES.depth.label),
      offCenter: at(COVE_SIZES.offCenter.label),
      offCenterTo: at(OFF_CENTER_TO_COLUMN.heading),
      blade: blade.join(','),
      unit,
      stock: `${at(COVE_SIZES.blankThickness.label)},${at(COVE_SIZES.blankWidth.label)}`,
    };
  };
  return {
    ...sheet,
    columns: [...sheet.columns, ...COLUMNS.map(({ width }) => ({ width }))],
    rows: [
      { cells: [...(head?.cells ?? []), ...COLUMNS.map(headingCell)] },
      ...rows.map((row, index) => {
        const live = COLUMNS.map((one) => liveCell(one, cells(index + 2)));
        return { ...row, cells: [...row.cells, ...live] };
      }),
    ],
  };
}

function headingCell({ heading }: LiveColumn): CellDescription {
  return { value: heading, style: 'heading' };
}

/**
 * Nothing for a profile that is bought, or in a shop that measures in millimetres; nor where the
 * off-center leads to the blade's middle, which our functions don't ask about: the plan does.
 */
function liveCell({ formula, style }: LiveColumn, cells: CoveCells): CellDescription {
  const { width, unit, offCenterTo } = cells;
  const isElsewhere = `OR(${width}="",${unit}="mm",TRIM(${offCenterTo})="blade middle")`;
  return { value: '', formula: `IF(${isElsewhere},"",${formula(cells)})`, style };
}

/** Row of a setting, from 1. */
function rowOf({ rows }: SheetDescription, key: SettingKey): number {
  const { name } = settingOf(key);
  const named = SHOP.start('setting');
  const row = rows.findIndex(
    ({ cells }) => headingKey(cells[named]?.value ?? null) === headingKey(name),
  );
  if (row < 0) throw new RangeError(`The sheet Shop has no row ${name}.`);
  return row + 1;
}

function settingCell(column: 'value' | 'unit', row: number): string {
  return `Shop!${SHOP.fixed(column, row)}`;
}

/** A length with its unit, as one text; nothing where it is left open. */
function withUnit(row: number): string {
  const value = settingCell('value', row);
  return `IF(${value}="","",${value}&" "&${settingCell('unit', row)})`;
}

function whole({ width, depth, offCenter, blade, stock }: CoveCells): string {
  return `${width},${depth},${offCenter},${blade},${stock}`;
}
