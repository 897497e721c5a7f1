/** Blocks of the sheet of formulas as they are read back, and as they are typed over. */
import { cellName } from '../../src/core/cells/cell-range.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { FORMULAS_SHEET } from '../../src/sheets/formulas/set-up-formulas.ts';
import type { WorkbookView } from '../hosts/workbook-view.ts';

type Value = string | number | boolean | null;

/** By the label in its row: what stands in the columns B, C and E. */
export type Block = ReadonlyMap<string, readonly [formula: Value, planned: Value, note: Value]>;

export const SAID = 'What is said of these sizes';
export const AGAINST = 'Against the plan';
export const APPROACH = 'Approach, degrees from the blade line';
export const TILT = 'Tilt of the blade, degrees from upright';
export const FIRM = 'There is a set-up.';

/** Blocks of a workbook that was read, or of a description. */
export function blocksOf(rows: readonly (readonly Value[])[]): Block[] {
  const blocks: Map<string, readonly [Value, Value, Value]>[] = [];
  for (const [label = null, one = null, two = null, , three = null] of rows) {
    if (label === 'Sizes') blocks.push(new Map());
    if (typeof label === 'string') blocks.at(-1)?.set(label, [one, two, three]);
  }
  return blocks;
}

export function rowsRead({ sheets }: WorkbookView): Value[][] {
  const { cells } = sheets.find(({ name }) => name === FORMULAS_SHEET)!;
  const last = Math.max(...Object.keys(cells).map((at) => Number(at.replace(/\D/gu, ''))));
  return Array.from({ length: last }, (_, row) =>
    ['A', 'B', 'C', 'D', 'E'].map((column) => cells[`${column}${row + 1}`]?.value ?? null),
  );
}

export function rowsDescribed({ sheets }: WorkbookDescription): Value[][] {
  const { rows } = sheets.find(({ name }) => name === FORMULAS_SHEET)!;
  return rows.map(({ cells }) => cells.map((cell) => cell?.value ?? null));
}

/**
 * The same workbook with other sizes in its marked cells, which its formulas knew nothing of.
 *
 * @param typed by block, then by label; null blanks a cell
 */
export function typeOver(
  description: WorkbookDescription,
  typed: readonly Readonly<Record<string, string | number | null>>[],
): WorkbookDescription {
  let block = -1;
  const sheets = description.sheets.map((sheet) => {
    if (sheet.name !== FORMULAS_SHEET) return sheet;
    const rows = sheet.rows.map((row) => {
      const label = row.cells[0]?.value;
      if (label === 'Sizes') block += 1;
      const value = typeof label === 'string' ? typed[block]?.[label] : undefined;
      if (value === undefined) return row;
      if (row.cells[1]?.style !== 'input') throw new Error(`${String(label)} is no size.`);
      return {
        ...row,
        cells: row.cells.map((cell, at) => (at === 1 ? { ...cell!, value } : cell)),
      };
    });
    return { ...sheet, rows };
  });
  return { ...description, sheets };
}

/** The labels of the marked cells by what they hold. */
export const SIZE_LABELS = {
  width: 'Cove width',
  depth: 'Cove depth',
  offCenter: 'Off-center, 0 for none',
  diameter: 'Blade diameter',
  kerf: 'Kerf',
  blankWidth: 'Blank width',
  blankThickness: 'Blank thickness',
  nearFlat: 'Near flat; blank: as wide as the far one',
  front: 'Table, from above the arbor to its front',
  back: 'Table, from above the arbor to its back',
  tiltStopDeg: 'Tilt stop of the saw, degrees from upright',
  steepestDeg: 'Steepest approach, degrees from the blade line',
  riseUpright: 'Highest that the blade rises, upright',
  riseAt45: 'Highest that the blade rises, tilted 45°',
  riseMeasuredWith: 'Diameter of the blade that they hold for',
  leastWeb: 'Least web over the cove',
  leastFlat: 'Least flat beside the cove',
  firstPass: 'First pass, its height',
  step: 'Step, most that a later pass takes',
  lastPass: 'Last pass, what it takes',
} as const;

/** Where a formula was recalculated to something else than it was described with, beyond 1e-9. */
export function recalculatedOtherwise(
  { sheets }: WorkbookDescription,
  now: WorkbookView,
): { readonly compared: number; readonly differing: readonly string[] } {
  const differing: string[] = [];
  let compared = 0;
  for (const { name, rows } of sheets) {
    const cells = now.sheets.find((sheet) => sheet.name === name)?.cells ?? {};
    rows.forEach((row, y) =>
      row.cells.forEach((cell, x) => {
        if (cell?.formula === undefined) return;
        compared += 1;
        const found = cells[cellName(y, x)]?.value ?? '';
        const same =
          typeof cell.value === 'number' && typeof found === 'number'
            ? Math.abs(cell.value - found) <= 1e-9 * Math.max(1, Math.abs(found))
            : cell.value === found;
        if (!same) differing.push(`${name}!${cellName(y, x)}: ${String(cell.value)}, ${found}`);
      }),
    );
  }
  return { compared, differing };
}
