/**
 * A person's own column may be headed with a unit (Length (ft)): its bare numbers are read in that
 * unit, and that is said, since in any other they would be cut to the wrong length.
 */
import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { LONGEST_NUMBER_TEXT } from '../../core/units/plain-text.ts';
import { lengthMarkOf, type LengthMark } from '../../core/units/stated-unit.ts';
import { isDateNumber } from '../../core/units/plausible-length.ts';
import { guessColumns, type ColumnMap } from './map-columns.ts';
import { whereIs, type RawCell, type RawTable } from './raw-table.ts';
import type { JobTableName } from './read-job.ts';
import { PROFILE_SIZES } from './read-profiles.ts';
import { headingKey } from './row-reader.ts';

export type HeadingUnit = LengthMark;

/** Headings of ours that stand over lengths. */
const LENGTHS = new Set(
  [
    'Length',
    'Width',
    'Height',
    'Reveal',
    'Position',
    'Other position',
    'Sill',
    'Horn',
    ...PROFILE_SIZES.map((key) => COVE_SIZES[key].label),
  ].map(headingKey),
);

const SAID: Readonly<Record<HeadingUnit, string>> = {
  in: 'inches',
  ft: 'feet',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
};

export const sayUnit = (unit: HeadingUnit): string => SAID[unit];

const LAST_WORD = /(\p{L}+|['"])[.\s)\]]*$/u;

/** The unit that a heading names as its last word: Len (ft), Feet, Width mm. */
export function unitOfHeading(heading: string): HeadingUnit | undefined {
  const plain = heading.trim().toLowerCase().replace(/[′’]/gu, "'").replace(/[″”]/gu, '"');
  return lengthMarkOf(LAST_WORD.exec(plain)?.[1] ?? '');
}

/** Which of their headings stands for which of ours, guessed as if they named no units. */
export function guessHeadings(headings: readonly RawCell[], table: JobTableName): ColumnMap {
  const theirs = new Map<RawCell, string>();
  const bare = headings.map((cell): RawCell => {
    if (typeof cell !== 'string' || unitOfHeading(cell) === undefined) return cell;
    const name = cell
      .replace(/[′’″”]/gu, '"')
      .replace(LAST_WORD, '')
      .replace(/[\s,([]+$/u, '');
    if (name === '') return cell;
    theirs.set(name, cell);
    return name;
  });
  const guessed = Object.entries(guessColumns(bare, table));
  return Object.fromEntries(
    guessed.map(([ours, one]) => [ours, headings.includes(one) ? one : (theirs.get(one) ?? one)]),
  );
}

/** The unit that bare numbers of this column are read in, where it is not the shop's own. */
export function otherUnit(
  ours: string,
  theirs: string,
  shopUnit: LengthReading['unit'],
): HeadingUnit | undefined {
  if (!LENGTHS.has(headingKey(ours))) return undefined;
  const unit = unitOfHeading(theirs);
  return unit === shopUnit ? undefined : unit;
}

/**
 * @param table With our headings already.
 * @returns The table, its bare numbers under such headings given the unit, and a caution for each.
 */
export function readHeadingUnits(
  table: RawTable,
  columns: ColumnMap,
  reading: LengthReading,
): { readonly table: RawTable; readonly cautions: readonly Caution[] } {
  const cautions: Caution[] = [];
  const units = new Map<number, HeadingUnit>();
  for (const [ours, theirs] of Object.entries(columns)) {
    const unit = otherUnit(ours, theirs, reading.unit);
    const at = table.headings.cells.findIndex((cell) => headingKey(cell) === headingKey(ours));
    if (unit === undefined || at < 0) continue;
    units.set(at, unit);
    const one = fault('table.heading-unit', ours, theirs, { details: { unit: sayUnit(unit) } });
    cautions.push(placeFault(one, whereIs(table, table.headings.line, at)));
  }
  if (units.size === 0) return { table, cautions };
  const rows = table.rows.map(({ line, cells }) => ({
    line,
    cells: cells.map((cell, at) => withUnit(cell, units.get(at), reading)),
  }));
  return { table: { ...table, rows }, cautions };
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
