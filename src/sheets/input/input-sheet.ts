/** One input table as a sheet to fill: headings, prepared rows, choices. */
import type { RawCell, RawTable } from '../../planning/input/raw-table.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { cellName } from '../cell-range.ts';
import { clipText } from '../clean-text.ts';
import type {
  CellDescription,
  PrintDescription,
  SheetDescription,
  ValidationDescription,
} from '../description.ts';
import type { InputColumn, InputTable } from './input-columns.ts';

/** A prepared row more than the table is filled with, so that a person can go on at once. */
const SPARE_ROWS = 20;

export function inputSheet(
  table: InputTable,
  filled: RawTable | undefined,
  paper: PrintDescription['paper'],
): SheetDescription {
  const unknown = unknownHeadings(table, filled);
  const columns = [...table.columns, ...unknown];
  const count = Math.max(table.rows, (filled?.rows.length ?? 0) + SPARE_ROWS);
  const places = columns.map((column) => placeOf(column, filled));
  const rows = Array.from({ length: count }, (_, index) =>
    columns.map((column, at): CellDescription => {
      const source = filled?.rows[index]?.cells[places[at] ?? -1] ?? null;
      return { value: valueOf(source, column), style: column.asText ? 'inputText' : 'input' };
    }),
  );
  const last = cellName(count, columns.length - 1);
  return {
    name: table.name,
    columns: columns.map((column) => ({ width: column.width })),
    rows: [
      { cells: columns.map(({ heading }) => ({ value: heading, style: 'heading' as const })) },
      ...rows.map((cells) => ({ cells })),
    ],
    tables: [{ name: `Input_${table.name}`, range: `A1:${last}` }],
    validations: columns.flatMap((column, at) => validationOf(column, at, count)),
    freeze: { rows: 1, columns: 1 },
    print: {
      paper,
      orientation: 'landscape',
      titleRows: [1, 1],
      fitWidth: true,
      header: table.name,
      footer: 'Input',
    },
  };
}

/** Columns of the person's own are kept, behind ours. */
function unknownHeadings(table: InputTable, filled: RawTable | undefined): InputColumn[] {
  const known = new Set(table.columns.map(({ heading }) => headingKey(heading)));
  return (filled?.headings.cells ?? []).flatMap((cell) => {
    if (typeof cell !== 'string' || cell.trim() === '' || known.has(headingKey(cell))) return [];
    return [{ heading: clipText(cell, 200), width: 16, asText: true }];
  });
}

function placeOf(column: InputColumn, filled: RawTable | undefined): number {
  const wanted = headingKey(column.heading);
  return filled?.headings.cells.findIndex((cell) => headingKey(cell) === wanted) ?? -1;
}

/** Numbers that came as text, as CSV gives them, become numbers where the column counts. */
export function valueOf(
  source: RawCell,
  column: Pick<InputColumn, 'asText'>,
): CellDescription['value'] {
  if (source === null || typeof source === 'object') return null;
  if (column.asText || typeof source !== 'string') return source;
  return /^\s*\d+(\.\d+)?\s*$/u.test(source) ? Number(source) : source;
}

function validationOf(column: InputColumn, at: number, count: number): ValidationDescription[] {
  if (column.allow === undefined) return [];
  const { allow, heading, strict = allow.kind !== 'list from' } = column;
  const say =
    allow.kind === 'list'
      ? `Choose one of: ${allow.values.join(', ')}.`
      : allow.kind === 'whole'
        ? `A whole number from ${allow.least} to ${allow.most}.`
        : 'Choose a profile that stands on the Profiles sheet.';
  return [
    {
      range: `${cellName(1, at)}:${cellName(count, at)}`,
      allow,
      strict,
      title: heading,
      message: say,
    },
  ];
}
