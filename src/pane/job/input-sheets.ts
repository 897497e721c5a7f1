/** Which input sheets are to be made beside what a workbook has already. */
import type { WorkbookSurvey } from '../../hosts/host.ts';
import { sameName } from '../../planning/job.ts';
import type {
  SheetDescription,
  ValidationDescription,
  WorkbookDescription,
} from '../../sheets/grammar/description.ts';
import type { TableMatch } from './job-found.ts';

/**
 * Of the whole input workbook only the sheets whose table stands nowhere yet, and the How to where
 * there is none: no second Runs beside the person's own.
 */
export function missingSheets(
  whole: WorkbookDescription,
  tables: readonly TableMatch[],
  survey: WorkbookSurvey,
): WorkbookDescription {
  const has = (name: string): boolean => survey.sheets.some((sheet) => sameName(sheet.name, name));
  const wanted = whole.sheets.filter(({ name }) => {
    const standing = tables.find((table) => sameName(table.name, name));
    if (standing === undefined) return !has(name);
    const { place, alike, choice } = standing;
    return place === undefined && alike.length === 0 && choice === undefined;
  });
  const will = (name: string): boolean =>
    has(name) || wanted.some((sheet) => sameName(sheet.name, name));
  return { ...whole, sheets: wanted.map((sheet) => withoutDanglingLists(sheet, will)) };
}

/** A list to choose from stands on another sheet: where that isn't there, nothing is offered. */
function withoutDanglingLists(
  sheet: SheetDescription,
  exists: (sheet: string) => boolean,
): SheetDescription {
  const { validations } = sheet;
  if (validations === undefined) return sheet;
  const stands = ({ allow }: ValidationDescription): boolean => {
    if (allow.kind !== 'list from') return true;
    const named = /^'((?:[^']|'')+)'!/u.exec(allow.formula)?.[1]?.replaceAll("''", "'");
    return named === undefined || exists(named);
  };
  return { ...sheet, validations: validations.filter(stands) };
}
