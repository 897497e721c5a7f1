/** Bare numbers that would be usual in feet or metres, and are read in inches or millimetres. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { fault } from '../../core/faults/fault.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { askAboutShort, isShort } from '../../core/units/plausible-length.ts';
import { tableArgument } from './raw-table.ts';
import type { RowReader } from './row-reader.ts';

/** Fewer rows may all be short. */
const LEAST_ROWS = 3;

/**
 * The length that was read; undefined where it is far too short for what it measures.
 *
 * @param most numbers below are asked about, in feet or metres
 */
export function notShort(
  row: RowReader,
  heading: HeadingKey,
  length: ExactInches | undefined,
  most?: number,
): ExactInches | undefined {
  const bare = row.bareLength(heading);
  if (length === undefined || bare === undefined) return length;
  const asked = askAboutShort(heading, bare, most);
  return asked === undefined ? length : row.refuse(heading, asked);
}

/** The same of a run or wall, of which some are a few inches long, and none a few millimetres. */
export function notMetres(
  row: RowReader,
  heading: HeadingKey,
  length: ExactInches | undefined,
): ExactInches | undefined {
  return row.bareLength(heading)?.unit === 'mm' ? notShort(row, heading, length) : length;
}

/** A list of runs or walls in which every length is a few inches, at the first. */
export function cautionAllShort(name: string, rows: readonly RowReader[]): void {
  const [first] = rows;
  if (first === undefined || rows.length < LEAST_ROWS) return;
  const bare = rows.map((row) => row.bareLength('length'));
  const isFeet = bare.every((one) => one?.unit === 'in' && isShort(one));
  if (!isFeet) return;
  const longest = Math.max(...bare.map((one) => one?.inches ?? 0));
  first.caution('length', fault('length.all-short', tableArgument(name), { inches: longest }));
}
