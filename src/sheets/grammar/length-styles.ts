/** How a column of lengths as numbers is shown: as inches with a fraction, or in decimals. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { StyleName } from './styles.ts';

const FINEST_FRACTION = 64;

/** Styles of one column's cells: alone, in a list, what a saw is set to, on a row that gathers, in a sum. */
export interface LengthStyles {
  readonly plain: StyleName;
  readonly row: StyleName;
  readonly cut: StyleName;
  readonly stick: StyleName;
  readonly total: StyleName;
}

const FRACTIONS: LengthStyles = {
  plain: 'fraction',
  row: 'rowFraction',
  cut: 'cutFraction',
  stick: 'stickFraction',
  total: 'totalFraction',
};
const DECIMALS: LengthStyles = {
  plain: 'number',
  row: 'rowNumber',
  cut: 'cutNumber',
  stick: 'stickNumber',
  total: 'totalNumber',
};

/** A fraction only where it is exact: all lengths, and so their sums, are whole 64ths of an inch. */
export function lengthStyles(lengths: readonly ExactInches[], unit: LengthUnit): LengthStyles {
  const exact = lengths.every(({ d }) => FINEST_FRACTION % Number(d) === 0);
  return unit === 'in' && exact ? FRACTIONS : DECIMALS;
}
