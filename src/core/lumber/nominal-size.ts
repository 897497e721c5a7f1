/** Dry softwood: the size that it is sold by, and the size that it has. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { formatInches } from '../units/format-length.ts';
import type { ExactInches } from '../units/length.ts';
import { faultsOf, readSize, type Inches } from './size.ts';

export interface CrossSection {
  /** Inches. */
  readonly thickness: number;
  /** Inches. */
  readonly width: number;
}

type Sizes = ReadonlyMap<number, number>;

// American Softwood Lumber Standard PS 20, boards and dimension, minimum dressed dry (at most 19 %
// moisture), as printed at engineeringtoolbox.com d_1270. Timbers (5 in and thicker) are left out.
const THICKNESSES: Sizes = new Map([
  [3 / 8, 5 / 16],
  [1 / 2, 7 / 16],
  [5 / 8, 9 / 16],
  [3 / 4, 5 / 8],
  [1, 3 / 4],
  [1.25, 1],
  [1.5, 1.25],
  [2, 1.5],
  [2.5, 2],
  [3, 2.5],
  [3.5, 3],
  [4, 3.5],
  [4.5, 4],
]);
const WIDTHS: Sizes = new Map([
  [2, 1.5],
  [3, 2.5],
  [4, 3.5],
  [5, 4.5],
  [6, 5.5],
  [7, 6.5],
  [8, 7.25],
  [9, 8.25],
  [10, 9.25],
  [11, 10.25],
  [12, 11.25],
  [14, 13.25],
  [16, 15.25],
]);

/**
 * The actual section of dry softwood sold by a nominal one: a 1 × 6 has 3/4 × 5 1/2.
 * @param nominal thickness and width in inches, as sold.
 * @returns inches; faults `lumber.nominal-unknown` with the sizes there are, `length.unreadable`,
 * `length.not-positive`, one a size.
 */
export function findActualSize(nominal: {
  readonly thickness: Inches;
  readonly width: Inches;
}): Outcome<CrossSection> {
  const thickness = look(nominal.thickness, 'nominalThickness', THICKNESSES);
  const width = look(nominal.width, 'nominalWidth', WIDTHS);
  if (!thickness.ok || !width.ok) return failed(...faultsOf(thickness, width));
  return ok({ thickness: thickness.value, width: width.value });
}

function look(nominal: Inches, argument: Argument, sizes: Sizes): Outcome<number> {
  const read: Outcome<ExactInches> = readSize(nominal, argument);
  if (!read.ok) return read;
  const inches = Number(read.value);
  const actual = sizes.get(inches);
  if (actual !== undefined) return ok(actual);
  const style = { denominator: 8, marks: 'none' } as const;
  const allowed = [...sizes.keys()].map((size) => formatInches(size, style)).join(', ');
  const details = { allowed };
  return failed(fault('lumber.nominal-unknown', argument, { inches }, { details }));
}
