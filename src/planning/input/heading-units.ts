/**
 * A column may be headed with a unit (Length (ft)): its bare numbers are read in that unit, and that
 * is said, since in any other they would be cut to the wrong length.
 */
import type { LengthReading } from '../../core/units/length.ts';
import { LONGEST_NUMBER_TEXT } from '../../core/units/plain-text.ts';
import { isDateNumber } from '../../core/units/plausible-length.ts';
import { TABLE_HEADINGS } from './headings/table-headings.ts';
import { unitOfHeading, type HeadingUnit } from './headings/unit-of-heading.ts';
import type { RawCell, RawTable } from './raw-table.ts';
import { headingKey } from './row-reader.ts';

/** Headings of ours that stand over lengths. */
const LENGTHS = new Set(
  Object.values(TABLE_HEADINGS)
    .flat()
    .filter(({ holds }) => holds === 'length')
    .map(({ heading }) => headingKey(heading)),
);

/** The unit that a column taken for one of our lengths is headed with. */
export function unitUnder(ours: string, theirs: string): HeadingUnit | undefined {
  return LENGTHS.has(headingKey(ours)) ? unitOfHeading(theirs) : undefined;
}

/** The unit that bare numbers of this column are read in, where it is not the shop's own. */
export function otherUnit(
  ours: string,
  theirs: string,
  shopUnit: LengthReading['unit'],
): HeadingUnit | undefined {
  const unit = unitUnder(ours, theirs);
  return unit === shopUnit ? undefined : unit;
}

/** The table with its bare numbers given the unit of their column, by the column's place from 0. */
export function giveUnits(
  table: RawTable,
  units: ReadonlyMap<number, HeadingUnit>,
  reading: LengthReading,
): RawTable {
  if (units.size === 0) return table;
  const rows = table.rows.map(({ line, cells }) => ({
    line,
    cells: cells.map((cell, at) => withUnit(cell, units.get(at), reading)),
  }));
  return { ...table, rows };
}

/** As many digits as a sheet shows. */
const DIGITS = 15;
const BARE = /^\s*-?[\d\s.,/¼-¾⅐-⅞⁄-]*[\d¼-¾⅐-⅞]\s*$/u;

function withUnit(cell: RawCell, unit: HeadingUnit | undefined, reading: LengthReading): RawCell {
  // A date's number stays one in any unit: left bare, it is asked about.
  if (unit === undefined || isDateNumber(cell)) return cell;
  if (typeof cell === 'string') {
    const isBare = cell.length <= LONGEST_NUMBER_TEXT && BARE.test(cell);
    return isBare ? `${cell.trim()} ${unit}` : cell;
  }
  // What a cell shows with its number goes before its heading.
  const isPlain = typeof cell === 'object' && cell?.kind === 'shown' && cell.unit === undefined;
  const number = isPlain ? cell.value : cell;
  if (typeof number !== 'number') return cell;
  const digits = String(Number(number.toPrecision(DIGITS))).replace('.', reading.decimalSign);
  return `${digits} ${unit}`;
}
