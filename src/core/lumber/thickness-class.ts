/** Hardwood thickness classes: named in quarters of an inch, sawn, and surfaced. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';

export interface ThicknessClass {
  readonly name: string;
  /** Sawn thickness in inches, by which it is sold. */
  readonly rough: number;
  /** Inches after surfacing one side (S1S); absent where no chart gives it. */
  readonly surfacedOneSide?: number;
  /** Inches after surfacing both sides (S2S); absent where no chart gives it. */
  readonly surfacedTwoSides?: number;
}

// Surfaced sizes: three charts that agree (engineeringtoolbox.com d_1462 is one of them, woodbin.com
// another); for 7/4, 10/4 and 14/4 they print no pair, so none is given.
const CLASSES: readonly ThicknessClass[] = [
  { name: '4/4', rough: 1, surfacedOneSide: 7 / 8, surfacedTwoSides: 13 / 16 },
  { name: '5/4', rough: 1.25, surfacedOneSide: 1 + 1 / 8, surfacedTwoSides: 1 + 1 / 16 },
  { name: '6/4', rough: 1.5, surfacedOneSide: 1 + 3 / 8, surfacedTwoSides: 1 + 5 / 16 },
  { name: '7/4', rough: 1.75 },
  { name: '8/4', rough: 2, surfacedOneSide: 1 + 13 / 16, surfacedTwoSides: 1 + 3 / 4 },
  { name: '10/4', rough: 2.5 },
  { name: '12/4', rough: 3, surfacedOneSide: 2 + 13 / 16, surfacedTwoSides: 2 + 3 / 4 },
  { name: '14/4', rough: 3.5 },
  { name: '16/4', rough: 4, surfacedOneSide: 3 + 13 / 16, surfacedTwoSides: 3 + 3 / 4 },
];

export const THICKNESS_CLASS_NAMES: readonly string[] = CLASSES.map((one) => one.name);

/**
 * The thickness class that a person names, such as `5/4`; spaces are nothing.
 * @returns inches; fault `lumber.class-unknown`, which lists the classes.
 */
export function findThicknessClass(
  name: string,
  argument: Argument = 'thicknessClass',
): Outcome<ThicknessClass> {
  const plain = name.replace(/\s+/gu, '').replace('⁄', '/');
  const found = CLASSES.find((one) => one.name === plain);
  if (found !== undefined) return ok(found);
  const details = { allowed: THICKNESS_CLASS_NAMES.join(', ') };
  return failed(fault('lumber.class-unknown', argument, name, { details }));
}
