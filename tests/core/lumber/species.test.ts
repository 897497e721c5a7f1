/** Species: weight and movement against the published tables. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { computeMovement, movementPerPercent } from '../../../src/core/lumber/movement.ts';
import { findSpecies, SPECIES_NAMES, type Species } from '../../../src/core/lumber/species.ts';
import { computeDensity, computeWeight } from '../../../src/core/lumber/weight.ts';

function species(name: string): Species {
  const outcome = findSpecies(name);
  if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
  return outcome.value;
}

describe('a species', () => {
  test.each([
    ['Poplar', 'Yellow-poplar'],
    ['yellow poplar', 'Yellow-poplar'],
    [' YELLOW-POPLAR ', 'Yellow-poplar'],
    ['tulip-poplar', 'Yellow-poplar'],
    ['Cherry', 'Black cherry'],
    ['northern red oak', 'Red oak'],
    ['white  oak', 'White oak'],
    ['Hard maple', 'Sugar maple'],
    ['walnut', 'Black walnut'],
    ['alder', 'Red alder'],
    ['White pine', 'Eastern white pine'],
    ['ponderosa', 'Ponderosa pine'],
    ['Douglas fir', 'Douglas-fir'],
  ])('%s is %s', (name, known) => {
    expect(species(name).name).toBe(known);
  });

  test('pines and Douglas-fir are softwood, the rest hardwood', () => {
    const soft = SPECIES_NAMES.filter((name) => species(name).wood === 'softwood');
    expect(soft).toEqual(['Eastern white pine', 'Ponderosa pine', 'Douglas-fir']);
  });

  test('no name is that of two', () => {
    const names = SPECIES_NAMES.flatMap((name) => [
      name.toLowerCase().replace('-', ' '),
      ...species(name).aliases,
    ]);
    expect(new Set(names).size).toBe(names.length);
    for (const name of SPECIES_NAMES) {
      for (const alias of species(name).aliases) expect(species(alias).name).toBe(name);
    }
  });

  test.each(['', 'maple', 'oak', 'pine', 'MDF', 'toString'])(
    '%j is not known, and the known are listed',
    (name) => {
      const outcome = findSpecies(name, 'setting');
      expect(!outcome.ok && outcome.faults[0]).toMatchObject({
        code: 'lumber.species-unknown',
        argument: 'setting',
        given: name,
        details: { allowed: SPECIES_NAMES.join(', ') },
      });
    },
  );
});

describe('specific gravity at 12 % moisture', () => {
  test.each([
    // FDMC magazine, "Strength and density predictors" (E. Wengert), from the Wood Handbook.
    ['Red oak', 0.63],
    ['White oak', 0.68],
    ['Sugar maple', 0.63],
    // Reprint of the Wood Handbook's strength table (synthmind.com, "Tree species strength properties").
    ['Black cherry', 0.5],
    ['Red alder', 0.41],
    // USDA Forest Products Laboratory, sheets of Liriodendron tulipifera and Juglans nigra.
    ['Yellow-poplar', 0.42],
    ['Black walnut', 0.55],
    // Wood Handbook, FPL-GTR-190 (2010), table 5-3a.
    ['Ponderosa pine', 0.4],
    // UFC 3-130-04, table 2-2, coast type, from the Laboratory.
    ['Douglas-fir', 0.48],
    // matweb.com, "American Eastern White Pine Wood", air-dry.
    ['Eastern white pine', 0.35],
  ])('of %s is %d', (name, printed) => {
    expect(species(name).specificGravity).toBe(printed);
  });
});

describe('density and weight', () => {
  test('specific gravity 0.50 has 560 kg/m³, or 35.0 lb/ft³', () => {
    // The Wood Handbook's formula, density of water · G · (1 + M / 100), with 62.43 lb/ft³ of water.
    const { kilogramsPerCubicMetre, poundsPerCubicFoot } = computeDensity(species('cherry'));
    expect(kilogramsPerCubicMetre).toBeCloseTo(560, 9);
    expect(poundsPerCubicFoot).toBeCloseTo(62.43 * 0.5 * 1.12, 2);
  });

  // Printed by dealers and schools, to the whole pound: 38 at 12 % (a lumber dealer's species page);
  // 34 air-dry (Oregon State University, "Relative working and physical properties").
  test.each([
    ['Black walnut', 38],
    ['Douglas-fir', 34],
  ])('a cubic foot of %s weighs %d lb', (name, printed) => {
    expect(Math.round(computeDensity(species(name)).poundsPerCubicFoot)).toBe(printed);
  });

  test('a board foot of Douglas-fir, full thickness, weighs about 2.8 lb', () => {
    // Surveyors' lexicon: 2.83 lb, from its 34 lb/ft³ over 12.
    const outcome = computeWeight({ cubicInches: 144, species: 'Douglas-fir' });
    if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
    expect(Math.abs(outcome.value.pounds - 2.83)).toBeLessThan(0.5 / 12);
    expect(outcome.value.kilograms / outcome.value.pounds).toBeCloseTo(0.45359237, 12);
  });

  test('a cube of a metre weighs its density, and weight grows with volume', () => {
    const cubicMetre = 0.0254 ** -3;
    fc.assert(
      fc.property(
        fc.constantFrom(...SPECIES_NAMES),
        fc.double({ min: 0.01, max: 9, noNaN: true }),
        (name, share) => {
          const outcome = computeWeight({ cubicInches: cubicMetre * share, species: name });
          const expected = computeDensity(species(name)).kilogramsPerCubicMetre * share;
          expect(outcome.ok && Math.abs(outcome.value.kilograms / expected - 1)).toBeLessThan(
            1e-12,
          );
        },
      ),
      { numRuns: 100 },
    );
  });

  test('no volume weighs nothing; a volume below it, or an unknown species, is a fault', () => {
    const none = computeWeight({ cubicInches: 0, species: 'Cherry' });
    expect(none).toEqual({ ok: true, value: { pounds: 0, kilograms: 0 } });
    const both = computeWeight({ cubicInches: -1, species: 'MDF' });
    expect(!both.ok && both.faults.map((one) => one.code)).toEqual([
      'lumber.species-unknown',
      'number.negative',
    ]);
    const noNumber = computeWeight({ cubicInches: NaN, species: 'Cherry' });
    expect(!noNumber.ok && noNumber.faults[0]!.code).toBe('number.unreadable');
  });
});

describe('movement', () => {
  // USDA Wood Handbook, FPL-GTR-190 (2010), table 13-5: radial, tangential.
  test.each([
    ['Red oak', 0.00158, 0.00369],
    ['White oak', 0.0018, 0.00365],
    ['Black cherry', 0.00126, 0.00248],
    ['Sugar maple', 0.00165, 0.00353],
    ['Black walnut', 0.0019, 0.00274],
    ['Red alder', 0.00151, 0.00256],
  ])('of %s is %d radial, %d tangential', (name, radial, tangential) => {
    expect(movementPerPercent(species(name), 'quartersawn')).toBe(radial);
    expect(movementPerPercent(species(name), 'flatsawn')).toBe(tangential);
  });

  test('of Douglas-fir is 0.00267 tangential', () => {
    // Flooring makers' stability chart, from the Wood Handbook (Agriculture Handbook 72, 1987).
    expect(movementPerPercent(species('Douglas-fir'), 'flatsawn')).toBe(0.00267);
  });

  // Table 4-3 of the same handbook prints shrinkage from green to ovendry, in percent; table 13-5
  // spreads it over the moisture up to the fiber saturation point, 28.8 % give or take its rounding.
  test.each([
    ['Black cherry', 3.7, 7.1],
    ['Red alder', 4.4, 7.3],
    ['Black walnut', 5.5, 7.8],
    ['Yellow-poplar', 4.6, 8.2],
    ['Douglas-fir', 4.8, 7.6],
  ])('of %s agrees with its shrinkage of %d and %d %%', (name, radial, tangential) => {
    const { movement } = species(name);
    expect(Math.abs(radial / 100 / movement.radial - 28.8)).toBeLessThan(0.65);
    expect(Math.abs(tangential / 100 / movement.tangential - 28.8)).toBeLessThan(0.65);
  });

  const inches = (width: number, perPercent: number, changePercent: number): number => {
    const outcome = computeMovement({ width, perPercent, changePercent });
    if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
    return outcome.value;
  };

  test('8 in of flatsawn red alder over 6 % is 0.1248 in, about 1/8', () => {
    // WOOD magazine, September 2021, "Calculating Wood Movement", with the coefficient as .0026.
    expect(inches(8, 0.0026, 6)).toBeCloseTo(0.1248, 12);
    const unrounded = inches(8, movementPerPercent(species('alder'), 'flatsawn'), 6);
    expect(Math.round(unrounded * 8) / 8).toBe(1 / 8);
  });

  test('is as much the other way when the moisture goes, and twice for twice the width', () => {
    expect(inches(8, 0.00248, -4)).toBe(-inches(8, 0.00248, 4));
    expect(inches(16, 0.00248, 4)).toBe(2 * inches(8, 0.00248, 4));
    expect(inches(8, 0.00248, 0)).toBe(0);
  });

  test('past what the coefficients hold for, or of no width, is a fault', () => {
    const codes = (width: number, changePercent: number): readonly string[] => {
      const outcome = computeMovement({ width, perPercent: 0.00248, changePercent });
      return outcome.ok ? [] : outcome.faults.map((one) => one.code);
    };
    expect(codes(8, 8)).toEqual([]);
    expect(codes(8, 8.5)).toEqual(['number.too-large']);
    expect(codes(8, -9)).toEqual(['number.too-small']);
    expect(codes(0, NaN)).toEqual(['length.not-positive', 'number.unreadable']);
    expect(() => computeMovement({ width: 8, perPercent: NaN, changePercent: 1 })).toThrow(
      RangeError,
    );
  });
});
