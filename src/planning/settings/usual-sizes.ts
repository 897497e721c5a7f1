/** Sizes of trim that stand in where no cell says them, in a shop of inches and in a metric one. Common practice [C]. */
import Fraction from 'fraction.js';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { ExactInches } from '../../core/units/length.ts';

const millimetres = (length: number): ExactInches => new Fraction(length).div(127, 5);

type Usual = Readonly<Record<LengthUnit, ExactInches>>;

/** What stays in sight of the jamb beside a casing. */
export const USUAL_REVEAL: Usual = { in: new Fraction(3, 16), mm: millimetres(5) };

/** How far a stool stands out beyond the casing at each end. */
export const USUAL_HORN: Usual = { in: new Fraction(1), mm: millimetres(25) };

/** A shorter piece of base doesn't bow, to be sprung in. */
export const SPRING_IN_OVER: Usual = { in: new Fraction(48), mm: millimetres(1200) };
