/** Writes a described sheet's values, formulas and number formats, block by block. */
import { cellName, type CellRange } from '../../core/cells/cell-range.ts';
import type { CellDescription, SheetDescription } from '../../sheets/grammar/description.ts';
import { STYLES, type CellStyle, type StyleName } from '../../sheets/grammar/styles.ts';
import { gridSize, rectanglesOf } from './cell-grid.ts';
import { formulaParts } from '../formulas/formula-parts.ts';
import type { Requests } from './requests.ts';
import { needsTextFormat, typedValue } from './typed-value.ts';

/** Characters of one block about; with three bytes each it stays below a request. */
const BLOCK_CHARACTERS = 400_000;
const GENERAL = 'General';
const AS_TEXT = '@';
/** What a cell takes in a block beside its text. */
const CELL_CHARACTERS = 4;

type Typed = string | number | boolean | null;

/**
 * Writes all cells but formulas that name a table, which must wait until there is one. Formats come
 * after values: a cell that is formatted as text before would keep a formula's letters.
 *
 * @param formulaOf A cell's formula under the names that hold while it is written.
 */
export async function stageCells(
  sheet: Excel.Worksheet,
  description: SheetDescription,
  styles: readonly (readonly (StyleName | null)[])[],
  requests: Requests,
  formulaOf: (formula: string) => string,
): Promise<void> {
  const { columns } = gridSize(description);
  if (columns === 0) return;
  for (const { top, rows } of blocksOf(description, columns)) {
    await requests.need(
      3,
      rows.reduce((sum, row) => sum + charactersOf(row), 0),
    );
    const range = sheet.getRangeByIndexes(top, 0, rows.length, columns);
    rows.forEach((row, r) =>
      row.forEach((cell, c) => {
        if (cell?.formula !== undefined || !needsTextFormat(cell?.value ?? null)) return;
        sheet.getRangeByIndexes(top + r, c, 1, 1).numberFormat = [[AS_TEXT]];
      }),
    );
    range.formulas = rows.map((row) => row.map((cell) => typed(cell, formulaOf)));
    const formats = rows.map((row, r) =>
      row.map((cell, c) => formatOf(cell, styles[top + r]?.[c])),
    );
    if (formats.some((row) => row.some((format) => format !== null))) range.numberFormat = formats;
  }
}

/** Writes the formulas that name tables, once all tables stand. */
export async function stageTableFormulas(
  sheet: Excel.Worksheet,
  description: SheetDescription,
  requests: Requests,
  formulaOf: (formula: string) => string,
): Promise<void> {
  const late = description.rows.map(({ cells }) =>
    cells.map((cell) => (cell?.formula !== undefined && namesTable(cell.formula) ? 'late' : null)),
  );
  for (const { top, left, bottom, right } of rectanglesOf(late).get('late') ?? []) {
    const formulas = description.rows
      .slice(top, bottom + 1)
      .map(({ cells }) =>
        cells.slice(left, right + 1).map((cell) => `=${formulaOf(cell?.formula ?? '')}`),
      );
    await requests.need(
      2,
      formulas.flat().reduce((sum, one) => sum + one.length, 0),
    );
    sheet.getRange(`${cellName(top, left)}:${cellName(bottom, right)}`).formulas = formulas;
  }
}

export function addressOf({ top, left, bottom, right }: CellRange): string {
  const first = cellName(top, left);
  return top === bottom && left === right ? first : `${first}:${cellName(bottom, right)}`;
}

type Row = readonly (CellDescription | null)[];

function* blocksOf(
  { rows }: SheetDescription,
  columns: number,
): Generator<{ readonly top: number; readonly rows: readonly Row[] }> {
  let top = 0;
  let block: Row[] = [];
  let characters = 0;
  for (const [index, { cells }] of rows.entries()) {
    const row = Array.from({ length: columns }, (_, column) => cells[column] ?? null);
    const more = charactersOf(row);
    if (block.length > 0 && characters + more > BLOCK_CHARACTERS) {
      yield { top, rows: block };
      [top, block, characters] = [index, [], 0];
    }
    block.push(row);
    characters += more;
  }
  if (block.length > 0) yield { top, rows: block };
}

/** Of its value or formula, and of a format. */
function charactersOf(row: Row): number {
  return row.reduce((sum, cell) => {
    const held = cell?.formula ?? cell?.value ?? '';
    const style: CellStyle = STYLES[cell?.style ?? 'plain'];
    return sum + String(held).length + (style.format ?? GENERAL).length + 2 * CELL_CHARACTERS;
  }, 0);
}

function typed(cell: CellDescription | null, formulaOf: (formula: string) => string): Typed {
  if (cell?.formula === undefined) {
    const value = cell?.value ?? null;
    return needsTextFormat(value) ? value : typedValue(value);
  }
  return namesTable(cell.formula) ? null : `=${formulaOf(cell.formula)}`;
}

/** Null leaves a format as it is: that of a new sheet is General, but formulas bring their own. */
function formatOf(cell: CellDescription | null, name: StyleName | null | undefined): string | null {
  const style: CellStyle = name === null || name === undefined ? {} : STYLES[name];
  if (style.format !== undefined) return style.format;
  const takesOne = cell?.formula !== undefined || needsTextFormat(cell?.value ?? null);
  return takesOne ? GENERAL : null;
}

function namesTable(formula: string): boolean {
  return formula.includes('[') && formulaParts(formula).some(({ kind }) => kind === 'table');
}
