/** The column Slope of Profiles. */
import { checkSlope, parseRiseInTwelve } from '../../core/crown/slope.ts';
import { degrees, type Degrees } from '../../core/units/angle.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import type { RowReader } from './row-reader.ts';

/** From level; undefined where it is blank, 0 or at fault. A rise in 12 is read as it is seen, never as a number. */
export function readSlope(row: RowReader, decimalSign: DecimalSign): Degrees | undefined {
  const seen = row.raw('slope');
  if (!seen.ok) return undefined;
  const rise =
    typeof seen.value === 'string'
      ? parseRiseInTwelve(seen.value, 'slope', decimalSign)
      : undefined;
  if (rise?.ok === false) {
    for (const one of rise.faults) row.refuse('slope', one);
    return undefined;
  }
  const given = rise?.value ?? row.number('slope', -Infinity, Infinity, { degrees: true });
  if (given === undefined || given === 0) return undefined;
  const slope = degrees(given);
  const wrong = checkSlope(slope, 'slope');
  return wrong === undefined ? slope : row.refuse('slope', wrong);
}
