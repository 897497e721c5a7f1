/** The workbook that a person fills: blank, or filled with tables that are there already. */
import type { RawCell, RawTable } from '../planning/input/raw-table.ts';
import { headingKey } from '../planning/input/row-reader.ts';
import { sayUsual, SETTINGS } from '../planning/shop.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from './description.ts';
import { howToSheet } from './input/how-to-sheet.ts';
import { INPUT_TABLES } from './input/input-columns.ts';
import { inputSheet } from './input/input-sheet.ts';
import { shopSheet } from './input/shop-sheet.ts';

/**
 * How to, Runs, Openings, Profiles, Shop and Stock, with lists to choose from and lengths kept as
 * text. With `tables`, each is filled as it came; settings that Shop leaves out stay empty.
 */
export function describeInput(tables: readonly RawTable[] = []): WorkbookDescription {
  const find = (name: string): RawTable | undefined =>
    tables.find((table) => headingKey(table.name) === headingKey(name));
  const shop = find('Shop');
  const paper = settingIn(shop, SETTINGS.paper.name) === 'a4' ? 'a4' : 'letter';
  const leastBlank = sayLeastBlank(shop);
  const [runs, openings, profiles, stock] = INPUT_TABLES.map((table) =>
    inputSheet(table, find(table.name), paper),
  );
  const sheets = [
    howToSheet(paper, leastBlank),
    runs,
    openings,
    profiles,
    shopSheet(shop, paper),
    stock,
  ];
  return {
    version: DESCRIPTION_VERSION,
    title: 'Trim list',
    sheets: sheets.filter((sheet) => sheet !== undefined),
  };
}

/** As the person typed it, with the unit that a bare number has. */
function sayLeastBlank(shop: RawTable | undefined): string {
  const typed = settingIn(shop, SETTINGS.leastBlankLength.name);
  if ((typeof typed !== 'string' && typeof typed !== 'number') || typed === '') {
    return sayUsual('leastBlankLength');
  }
  const unit = settingIn(shop, SETTINGS.unit.name) === 'mm' ? 'mm' : 'in';
  return /^[\d\s./-]+$/u.test(String(typed)) ? `${String(typed)} ${unit}` : String(typed);
}

function settingIn(shop: RawTable | undefined, name: string): RawCell {
  const setting = shop?.headings.cells.findIndex((cell) => headingKey(cell) === 'setting') ?? -1;
  const value = shop?.headings.cells.findIndex((cell) => headingKey(cell) === 'value') ?? -1;
  const row = shop?.rows.find((one) => headingKey(one.cells[setting] ?? null) === headingKey(name));
  return row?.cells[value] ?? null;
}
