/** One input sheet: its headings, the rows that are given, and blank ones prepared for more. */
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import type { RawCell, RawTable } from '../../planning/input/raw-table.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { clipText } from '../grammar/check/clean-text.ts';
import { rangeAt } from '../grammar/columns.ts';
import type {
  CellDescription,
  CellValue,
  SheetDescription,
  ValidationDescription,
} from '../grammar/description.ts';
import { PLAIN_COLUMN, type InputColumn, type InputTable } from './input-columns.ts';

/** Prepared rows after those that are given, so that a person can go on at once. */
const SPARE_ROWS = 20;
/** Widest column made for a text that is given; a longer one spills over on the screen. */
const WIDEST = 60;
/** Longest message beside a list to choose from [C]. */
const LONGEST_MESSAGE = 225;
/** Longest heading of a spreadsheet's table [C]. */
const LONGEST_HEADING = 255;

/** A column of the sheet: one of ours, or one of the person's own that is kept as it is. */
interface PlacedColumn extends InputColumn {
  readonly heading: string;
  readonly required: boolean;
  /** Its place in the given table; absent where that has none. */
  readonly from?: number;
}

/** What the given Shop says of print, of typed numbers and of lengths. */
export interface InputLook {
  readonly paper: 'letter' | 'a4';
  readonly decimalSign: DecimalSign;
  readonly unit: LengthUnit;
}

/** Lets the person's own columns stay at the right of ours. */
export function describeInputSheet(
  table: InputTable,
  given: RawTable | undefined,
  { paper, decimalSign, unit }: InputLook,
): SheetDescription {
  const columns = placeColumns(table, given);
  const rows = (given?.rows ?? []).map((row) => columns.map(({ from }) => row.cells[from ?? -1]));
  const count = Math.max(table.rows, rows.length + SPARE_ROWS);
  return {
    name: table.name,
    columns: columns.map(({ width, isNumber = false }, place) => ({
      width: widthFor(
        width,
        rows.map((row) => row[place] ?? null),
      ),
      style: isNumber ? 'input' : 'inputText',
    })),
    rows: [
      { cells: columns.map(({ heading }) => ({ value: heading, style: 'heading' as const })) },
      ...Array.from({ length: count }, (_, index) => ({
        cells: columns.map((column, place) =>
          inputCell(rows[index]?.[place] ?? null, column, decimalSign),
        ),
      })),
    ],
    tables: [
      {
        name: `${table.name}Table`,
        range: `${cellName(0, 0)}:${cellName(count, columns.length - 1)}`,
      },
    ],
    validations: columns.flatMap((column, place) => validation(column, unit, place, count)),
    freeze: { rows: 1, columns: 1 },
    print: {
      paper,
      orientation: 'landscape',
      titleRows: [1, 1],
      fitWidth: true,
      header: '',
      footer: table.name,
    },
  };
}

function placeColumns(
  { headings, columns }: InputTable,
  given: RawTable | undefined,
): PlacedColumn[] {
  const places = new Map<string, number>();
  given?.headings.cells.forEach((cell, place) => {
    const key = headingKey(cell);
    if (key !== '' && !places.has(key)) places.set(key, place);
  });
  const ours = headings.map(({ key, heading, required = false }): PlacedColumn => {
    const from = places.get(headingKey(heading));
    places.delete(headingKey(heading));
    const placed = { ...(columns[key] ?? PLAIN_COLUMN), heading, required };
    return from === undefined ? placed : { ...placed, from };
  });
  const theirs = [...places.values()].map((from): PlacedColumn => {
    const cell = given?.headings.cells[from];
    const heading = typeof cell === 'string' ? cell : '';
    return {
      ...PLAIN_COLUMN,
      heading: clipText(heading.replace(/\s+/gu, ' ').trim(), LONGEST_HEADING),
      required: false,
      from,
    };
  });
  return [...ours, ...theirs];
}

/** Wide enough for the texts given, to a limit. */
function widthFor(least: number, given: readonly RawCell[]): number {
  const longest = given.reduce<number>((most, value) => {
    return Math.max(most, String(plainValue(value, '.') ?? '').length);
  }, 0);
  return Math.max(least, Math.min(WIDEST, longest + 2));
}

/**
 * A cell as it came. Text stays text, but a number's own text is that number where the column
 * counts; what no cell can hold is said in brackets.
 */
export function inputCell(
  value: RawCell,
  { isNumber = false }: Pick<InputColumn, 'isNumber'> = {},
  decimalSign: DecimalSign = '.',
): CellDescription {
  const plain = plainValue(value, decimalSign);
  if (!isNumber) return { value: plain, style: 'inputText' };
  const isWritten = typeof plain === 'string' && String(Number(plain)) === plain;
  const isSame = decimalSign === '.' || !String(plain).includes('.');
  const counts = isWritten && isSame && Number.isFinite(Number(plain));
  return { value: counts ? Number(plain) : plain, style: 'input' };
}

function plainValue(value: RawCell, decimalSign: DecimalSign): CellValue | null {
  if (value === null || typeof value !== 'object') return value;
  switch (value.kind) {
    case 'shown':
      return value.text.replace(/(?<=\d)\.(?=\d)/u, decimalSign);
    case 'veiled':
      return `(${value.held}, shown as ${value.text === '' ? 'nothing' : value.text})`;
    case 'error':
      return value.text;
    case 'date':
      return '(a date)';
    case 'uncalculated':
      return '(not calculated)';
  }
}

function validation(
  { heading, ...column }: PlacedColumn,
  unit: LengthUnit,
  place: number,
  count: number,
): ValidationDescription[] {
  const allow = (unit === 'mm' ? column.allowInMm : undefined) ?? column.allow;
  if (allow === undefined) return [];
  return [
    {
      range: rangeAt(place, 2, count + 1),
      allow,
      strict: false,
      title: heading,
      message: sayAllowed(allow),
    },
  ];
}

export function sayAllowed(allow: ValidationDescription['allow']): string {
  switch (allow.kind) {
    case 'list': {
      const said = `One of: ${allow.values.join(', ')}.`;
      return said.length <= LONGEST_MESSAGE ? said : 'One of the list, or one of your own.';
    }
    case 'list from':
      return 'A profile of this name does not stand on the Profiles sheet yet.';
    case 'whole':
      return `A whole number from ${allow.least} to ${allow.most}.`;
  }
}
