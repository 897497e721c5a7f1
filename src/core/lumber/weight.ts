/** What wood weighs, air-dry. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { findSpecies, type Species } from './species.ts';

/** Share of water over the ovendry weight, at the 12 % that indoor trim has about. */
const MOISTURE = 0.12;
/** Water at 4 °C. */
const KILOGRAMS_PER_CUBIC_METRE_OF_WATER = 1000;
/** Exact since 1959. */
const KILOGRAMS_PER_POUND = 0.45359237;
const CUBIC_METRES_PER_CUBIC_FOOT = 0.3048 ** 3;
const CUBIC_INCHES_PER_CUBIC_FOOT = 1728;

export interface Density {
  readonly kilogramsPerCubicMetre: number;
  readonly poundsPerCubicFoot: number;
}

/**
 * Density of a species at 12 % moisture, its water included.
 * Source: specific gravity · 1.12 · 1000 kg/m³, Wood Handbook (FPL-GTR-190, 2010), chapter 4.
 */
export function computeDensity(species: Species): Density {
  const kilogramsPerCubicMetre =
    species.specificGravity * (1 + MOISTURE) * KILOGRAMS_PER_CUBIC_METRE_OF_WATER;
  return {
    kilogramsPerCubicMetre,
    poundsPerCubicFoot:
      (kilogramsPerCubicMetre * CUBIC_METRES_PER_CUBIC_FOOT) / KILOGRAMS_PER_POUND,
  };
}

export interface Weight {
  readonly pounds: number;
  readonly kilograms: number;
}

/**
 * Weight of so much wood of a species at 12 % moisture: volume times density.
 * @param cubicInches of wood there is, 0 or more: actual sizes, not nominal ones.
 * @param species by any of its names.
 * @returns pounds and kilograms; faults `lumber.species-unknown`, `number.negative`,
 * `number.unreadable`.
 */
export function computeWeight(given: {
  readonly cubicInches: number;
  readonly species: string;
}): Outcome<Weight> {
  const species = findSpecies(given.species);
  const faults = species.ok ? [] : [...species.faults];
  if (!Number.isFinite(given.cubicInches)) {
    faults.push(fault('number.unreadable', 'volume', String(given.cubicInches)));
  } else if (given.cubicInches < 0) {
    faults.push(fault('number.negative', 'volume', given.cubicInches));
  }
  if (!species.ok || faults.length > 0) return failed(...faults);
  const cubicFeet = given.cubicInches / CUBIC_INCHES_PER_CUBIC_FOOT;
  const pounds = cubicFeet * computeDensity(species.value).poundsPerCubicFoot;
  return ok({ pounds, kilograms: pounds * KILOGRAMS_PER_POUND });
}
