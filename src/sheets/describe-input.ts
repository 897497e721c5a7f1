/** The workbook that a person fills in: a how-to and the input sheets, blank or filled. */
import type { LengthUnit } from '../core/units/length-unit.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import { readingOf } from '../planning/input/find-setting.ts';
import { readShop } from '../planning/input/read-shop.ts';
import { sameName } from '../planning/job.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from './grammar/description.ts';
import { describeHowTo } from './input/how-to-sheet.ts';
import { INPUT_TABLES, type InputTable } from './input/input-columns.ts';
import { describeInputSheet } from './input/input-sheet.ts';
import { describeShopSheet } from './input/shop-sheet.ts';
import { describeTitleSheet } from './input/title-sheet.ts';
import { usualWorkRows } from './input/work-words.ts';
import { printExact } from './words/print-length.ts';

/**
 * Describes the sheets Runs, Walls, Trim, Openings, Profiles, Shop, Stock, Work, Options, Job, Hours and How to.
 *
 * @param job Tables to fill in (the demo's, say), each cell as it came; blank sheets where absent.
 * @param unit What a blank Shop counts in; a given one says that itself.
 */
export function describeInput(
  job: readonly RawTable[] = [],
  unit: LengthUnit = 'in',
): WorkbookDescription {
  const given = (name: string): RawTable | undefined =>
    job.find((table) => sameName(table.name, name));
  const shop = given('Shop');
  const reading = shop === undefined ? { ...readingOf(shop), unit } : readingOf(shop);
  const { paper, leastBlankLength } = readShop(shop, reading, {
    faults: [],
    cautions: [],
  }).shop;
  const look = { paper, decimalSign: reading.decimalSign, unit: reading.unit };
  const sheets = INPUT_TABLES.flatMap((table) => [
    ...(table.name === 'Stock' ? [describeShopSheet(shop, look)] : []),
    ...(table.name === 'Hours' ? [describeTitleSheet(given('Job'), look)] : []),
    describeInputSheet(table, given(table.name) ?? prepared(table, look.unit), look),
  ]);
  return {
    version: DESCRIPTION_VERSION,
    title: 'Input workbook',
    // Who opens it finds where to type; the words stand last.
    sheets: [...sheets, describeHowTo(look, printExact(leastBlankLength, reading))],
  };
}

/** A new workbook's rows of Work; no other table has rows before somebody fills it in. */
function prepared({ name, headings }: InputTable, unit: LengthUnit): RawTable | undefined {
  if (name !== 'Work') return undefined;
  return {
    name,
    source: { kind: 'sheet', name },
    headings: { line: 1, cells: headings.map(({ heading }) => heading) },
    rows: usualWorkRows(unit).map((row, at) => ({
      line: at + 2,
      cells: headings.map(({ key }) => row[key] ?? null),
    })),
  };
}
