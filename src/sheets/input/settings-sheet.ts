/** An input sheet of settings, one a row: Shop, and Job. */
import type { RawTable } from '../../planning/input/raw-table.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import type { Columns } from '../grammar/columns.ts';
import type {
  CellDescription,
  ColumnDescription,
  RowDescription,
  SheetDescription,
  ValidationDescription,
} from '../grammar/description.ts';
import { inputCell, type InputLook } from './input-sheet.ts';

export interface SettingsSheet<Name extends string> {
  readonly name: string;
  /** Its columns, the setting's name first and its note last. */
  readonly table: Columns<Name>;
  readonly grid: readonly ColumnDescription[];
  /** Every setting there is: its name, and its row with its usual value or without. */
  readonly rows: readonly {
    readonly name: string;
    /** As older files have it. */
    readonly formerly?: string;
    readonly row: (isFilled: boolean) => RowDescription;
  }[];
  /** What may be chosen in a row. */
  readonly validations?: (
    cells: readonly (CellDescription | null)[],
    row: number,
  ) => ValidationDescription[];
}

/**
 * Blank: every setting with its usual value. With a given table: its rows as they are, then the
 * settings that it leaves out, their values left blank, so that the usual ones go on standing in.
 */
export function describeSettings<Name extends string>(
  { name, table, grid, rows: all, validations = () => [] }: SettingsSheet<Name>,
  given: RawTable | undefined,
  { paper }: InputLook,
): SheetDescription {
  const headings = table.headings().cells.map((one) => String(one?.value));
  const rows =
    given === undefined
      ? all.map(({ row }) => row(true))
      : [...givenRows(given, headings), ...leftOut(given)];
  return {
    name,
    columns: grid,
    rows: [{ cells: headings.map((value) => ({ value, style: 'heading' as const })) }, ...rows],
    tables: [{ name: `${name}Table`, range: table.area(1, rows.length + 1) }],
    validations: rows.flatMap(({ cells }, index) => validations(cells, index + 2)),
    freeze: { rows: 1, columns: 0 },
    print: {
      paper,
      orientation: 'portrait',
      titleRows: [1, 1],
      fitWidth: true,
      header: '',
      footer: name,
    },
  };

  function leftOut({ headings: { cells }, rows: typed }: RawTable): RowDescription[] {
    const column = cells.findIndex((cell) => headingKey(cell) === headingKey(headings[0] ?? null));
    const named = new Set(typed.map((one) => headingKey(one.cells[column] ?? null)));
    return all
      .filter(
        ({ name: own, formerly = own }) =>
          ![own, formerly].some((one) => named.has(headingKey(one))),
      )
      .map(({ row }) => row(false));
  }
}

/** Its rows under our headings. */
function givenRows(given: RawTable, headings: readonly string[]): RowDescription[] {
  const places = headings.map((heading) =>
    given.headings.cells.findIndex((cell) => headingKey(cell) === headingKey(heading)),
  );
  const last = places.length - 1;
  return given.rows.map(({ cells }) => ({
    cells: places.map((place, at) => {
      const cell = inputCell(cells[place] ?? null);
      if (at === 0) return { ...cell, style: 'label' };
      return at === last ? { ...cell, style: 'note' } : cell;
    }),
  }));
}
