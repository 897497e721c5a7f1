/** What is wrong with a sheet's ranges: merges, tables, validations and highlights. */
import { cellName, parseRange, type CellRange } from '../../../core/cells/cell-range.ts';
import { isFormula, isStyle } from './check-sheet.ts';
import { isCleanText } from './clean-text.ts';
import { overlappingPairs } from './overlapping-pairs.ts';
import type { SheetDescription, TableDescription, ValidationDescription } from '../description.ts';

/** Longest heading of a table, and longest text of a validation's own list, in characters [C]. */
const LONGEST_HEADING = 255;
const LONGEST_LIST = 255;
/** Longest title and message of a validation's warning, in characters [C]. */
const LONGEST_WARNING_TITLE = 32;
const LONGEST_WARNING = 225;

/** One sentence for each thing that is wrong with the sheet's ranges. */
export function checkRanges(sheet: SheetDescription): string[] {
  const { merges = [], tables = [], validations = [], highlights = [] } = sheet;
  const tableRanges = tables.map((table) => table.range);
  const validated = validations.map((validation) => validation.range);
  const all = [...merges, ...tableRanges, ...validated, ...highlights.map((one) => one.range)];
  return [
    ...all.flatMap((range) => (parseRange(range) ? [] : [`"${range}" is no sound range.`])),
    ...overlaps('merge', merges, merges),
    ...overlaps('table', tableRanges, tableRanges),
    ...overlaps('table and merge', tableRanges, merges),
    ...overlaps('validation', validated, validated),
    ...merges.flatMap((merge) => checkMerge(sheet, merge)),
    ...tables.flatMap((table) => checkTable(sheet, table)),
    ...validations.flatMap(checkValidation),
    ...highlights.flatMap(({ range, formula, style }) => {
      const sound = isFormula(formula) && isStyle(style);
      return sound ? [] : [`the highlight of ${range} has no sound formula or style.`];
    }),
  ];
}

/** Pairs that overlap, each once; a list is compared with itself or with another. */
function overlaps(what: string, some: readonly string[], others: readonly string[]): string[] {
  const ones = some.map(parseRange);
  const rest = some === others ? ones : others.map(parseRange);
  return overlappingPairs(ones, rest).map(
    ([one, other]) => `${what} ${some[one] ?? ''} overlaps ${others[other] ?? ''}.`,
  );
}

function checkMerge(sheet: SheetDescription, merge: string): string[] {
  const range = parseRange(merge);
  if (range === null) return [];
  const wrong: string[] = [];
  if (range.top === range.bottom && range.left === range.right) {
    wrong.push(`merge ${merge} is a single cell.`);
  }
  for (const [row, column] of cellsOf(range, sheet)) {
    const cell = sheet.rows[row]?.cells[column] ?? null;
    const first = row === range.top && column === range.left;
    if (first || cell === null || (cell.value === null && cell.formula === undefined)) continue;
    wrong.push(`merge ${merge} would hide what ${cellName(row, column)} holds.`);
  }
  return wrong;
}

/** The cells of a range that the description says anything about. */
function* cellsOf(range: CellRange, sheet: SheetDescription): Generator<[number, number]> {
  for (let row = range.top; row <= Math.min(range.bottom, sheet.rows.length - 1); row++) {
    const last = Math.min(range.right, (sheet.rows[row]?.cells.length ?? 0) - 1);
    for (let column = range.left; column <= last; column++) yield [row, column];
  }
}

function checkTable(sheet: SheetDescription, { name, range: text }: TableDescription): string[] {
  const range = parseRange(text);
  if (range === null) return [];
  const wrong: string[] = [];
  // Excel calls a file damaged whose table has headings alone.
  if (range.bottom === range.top) wrong.push(`table ${name} has no row below its headings.`);
  if (range.bottom >= sheet.rows.length) wrong.push(`table ${name} reaches past the last row.`);
  const seen = new Set<string>();
  for (let column = range.left; column <= range.right; column++) {
    const place = cellName(range.top, column);
    const cell = sheet.rows[range.top]?.cells[column] ?? null;
    const heading = cell?.value ?? null;
    if (typeof heading !== 'string' || heading.trim() === '' || cell?.formula !== undefined) {
      wrong.push(`table ${name} needs a heading in text in ${place}.`);
      continue;
    }
    if (heading.length > LONGEST_HEADING || /[\n\t]/.test(heading)) {
      wrong.push(`the heading in ${place} is too long or has a line end.`);
    }
    const key = heading.toLowerCase();
    if (seen.has(key)) wrong.push(`table ${name} has the heading "${heading}" twice.`);
    seen.add(key);
  }
  return wrong;
}

function checkValidation({ range, allow, title, message }: ValidationDescription): string[] {
  const wrong: string[] = [];
  switch (allow.kind) {
    case 'list': {
      const { values } = allow;
      const sound = values.every((v) => v === v.trim() && v !== '' && !/[",\n]/.test(v));
      if (!sound || values.length === 0) wrong.push(`the list for ${range} has an unsound value.`);
      if (values.join(',').length > LONGEST_LIST) wrong.push(`the list for ${range} is too long.`);
      break;
    }
    case 'list from':
      if (!isFormula(allow.formula)) wrong.push(`the list for ${range} has no sound formula.`);
      break;
    case 'whole':
      if (
        !Number.isInteger(allow.least) ||
        !Number.isInteger(allow.most) ||
        allow.least > allow.most
      )
        wrong.push(`no whole number is allowed in ${range} (${allow.least} to ${allow.most}).`);
      break;
  }
  const fits = title.length <= LONGEST_WARNING_TITLE && message.length <= LONGEST_WARNING;
  if (!fits || !isCleanText(title + message)) {
    wrong.push(`title or message for ${range} is too long or can not be held.`);
  }
  return wrong;
}
