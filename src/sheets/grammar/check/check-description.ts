/**
 * What no host could write rightly. Hosts refuse a description with any of it, as it is a bug of
 * ours, never bad input.
 */
import { parseRange } from '../../../core/cells/cell-range.ts';
import { checkDrawings } from './check-drawings.ts';
import { checkRanges } from './check-ranges.ts';
import { checkSheet } from './check-sheet.ts';
import { isCleanText } from './clean-text.ts';
import { DESCRIPTION_VERSION, type WorkbookDescription } from '../description.ts';

/** Microsoft, "Excel specifications and limits": characters of a sheet's name, and of a name. */
const LONGEST_SHEET_NAME = 31;
const LONGEST_NAME = 255;

/**
 * Finds everything in a description that a workbook can't hold: names, text, numbers, formulas,
 * ranges, tables, print set-up, drawings.
 *
 * @param description The workbook, its texts already cleaned (clean-text.ts).
 * @returns One sentence for each thing that is wrong; none for a sound description.
 */
export function checkDescription(description: WorkbookDescription): readonly string[] {
  return [
    ...checkWorkbook(description),
    ...checkSheetNames(description),
    ...checkNames(description),
    ...description.sheets.flatMap((sheet) =>
      [...checkSheet(sheet), ...checkRanges(sheet), ...checkDrawings(sheet)].map(
        (what) => `Sheet "${sheet.name}": ${what}`,
      ),
    ),
  ];
}

function checkWorkbook(description: WorkbookDescription): string[] {
  const wrong: string[] = [];
  // The type says so too, but a description may have been read from a file of an older program.
  const version: number = description.version;
  if (version !== DESCRIPTION_VERSION) wrong.push(`The description has version ${version}.`);
  if (!isCleanText(description.title)) wrong.push('The title holds a character XML can not hold.');
  if (description.sheets.length === 0) wrong.push('The workbook has no sheet.');
  return wrong;
}

function checkSheetNames(description: WorkbookDescription): string[] {
  const wrong: string[] = [];
  const seen = new Set<string>();
  for (const { name } of description.sheets) {
    if (!isSheetName(name)) wrong.push(`"${name}" can not be a sheet's name.`);
    const key = name.toLowerCase();
    if (seen.has(key)) wrong.push(`Two sheets are named "${name}".`);
    seen.add(key);
  }
  return wrong;
}

function isSheetName(name: string): boolean {
  return (
    name.trim() !== '' &&
    name.length <= LONGEST_SHEET_NAME &&
    isCleanText(name) &&
    !/[\\/?*[\]:\n\t]|^'|'$/.test(name) &&
    // Excel keeps this one for itself.
    name.toLowerCase() !== 'history'
  );
}

/** Workbook names and tables share one space of names. */
function checkNames(description: WorkbookDescription): string[] {
  const wrong: string[] = [];
  const seen = new Set<string>();
  const sheets = new Set(description.sheets.map((sheet) => sheet.name));
  const tables = description.sheets.flatMap((sheet) => sheet.tables ?? []);
  for (const { name } of [...tables, ...(description.names ?? [])]) {
    if (!isName(name)) wrong.push(`"${name}" can not be the name of a table or range.`);
    const key = name.toLowerCase();
    if (seen.has(key)) wrong.push(`Two tables or ranges are named "${name}".`);
    seen.add(key);
  }
  for (const { name, sheet, range } of description.names ?? []) {
    if (!sheets.has(sheet)) wrong.push(`The name "${name}" points to no sheet ("${sheet}").`);
    if (parseRange(range) === null)
      wrong.push(`The name "${name}" has no sound range ("${range}").`);
  }
  return wrong;
}

/** A letter or underscore first, no spaces, and nothing that reads as a cell (AB12, R1C1). */
function isName(name: string): boolean {
  return (
    name.length <= LONGEST_NAME &&
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) &&
    !/^[A-Z]{1,3}\d+$/i.test(name) &&
    !/^(R\d*)?(C\d*)?$/i.test(name)
  );
}
