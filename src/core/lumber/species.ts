/** Species: how heavy, how much they move, and by which names people know them. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';

export interface Species {
  readonly name: string;
  readonly wood: 'hardwood' | 'softwood';
  /** Ovendry weight over volume at 12 % moisture, against water. */
  readonly specificGravity: number;
  /** Change of width per 1 % of moisture, as a share of the width, within 6 % to 14 %. */
  readonly movement: {
    /** Across the growth rings: quartersawn faces. */
    readonly radial: number;
    /** Along the growth rings: flatsawn faces. */
    readonly tangential: number;
  };
  /** Other names, lower case, spaces for hyphens. */
  readonly aliases: readonly string[];
}

/*
 * Specific gravity at 12 %: USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190, 2010), table
 * 5-3, and the Laboratory's own sheets of single species, which repeat it.
 * [P] seen: red and white oak, sugar maple (FDMC magazine, from the handbook), black cherry, red
 * alder (reprints of the table), black walnut, yellow-poplar (Laboratory's sheets), ponderosa pine
 * (the table itself), Douglas-fir of the coast (UFC 3-130-04, table 2-2, from the Laboratory),
 * eastern white pine (a materials data base, air-dry).
 * Movement: the same handbook, table 13-5 [P], but yellow-poplar and the softwoods [M] from memory,
 * to be re-verified; yellow-poplar and Douglas-fir agree with the shrinkage printed in table 4-3,
 * Douglas-fir's tangential one with flooring makers' reprints; the two pines have no cross-check.
 */
const SPECIES: readonly Species[] = [
  {
    name: 'Yellow-poplar',
    wood: 'hardwood',
    specificGravity: 0.42,
    movement: { radial: 0.00158, tangential: 0.00289 },
    aliases: ['poplar', 'tulip poplar', 'tuliptree', 'tulipwood'],
  },
  {
    name: 'Black cherry',
    wood: 'hardwood',
    specificGravity: 0.5,
    movement: { radial: 0.00126, tangential: 0.00248 },
    aliases: ['cherry', 'american cherry'],
  },
  {
    name: 'Red oak',
    wood: 'hardwood',
    specificGravity: 0.63,
    movement: { radial: 0.00158, tangential: 0.00369 },
    aliases: ['northern red oak'],
  },
  {
    name: 'White oak',
    wood: 'hardwood',
    specificGravity: 0.68,
    movement: { radial: 0.0018, tangential: 0.00365 },
    aliases: [],
  },
  {
    name: 'Sugar maple',
    wood: 'hardwood',
    specificGravity: 0.63,
    movement: { radial: 0.00165, tangential: 0.00353 },
    aliases: ['hard maple', 'rock maple'],
  },
  {
    name: 'Black walnut',
    wood: 'hardwood',
    specificGravity: 0.55,
    movement: { radial: 0.0019, tangential: 0.00274 },
    aliases: ['walnut', 'american walnut'],
  },
  {
    name: 'Red alder',
    wood: 'hardwood',
    specificGravity: 0.41,
    movement: { radial: 0.00151, tangential: 0.00256 },
    aliases: ['alder'],
  },
  {
    name: 'Eastern white pine',
    wood: 'softwood',
    specificGravity: 0.35,
    movement: { radial: 0.00071, tangential: 0.00212 },
    aliases: ['white pine'],
  },
  {
    name: 'Ponderosa pine',
    wood: 'softwood',
    specificGravity: 0.4,
    movement: { radial: 0.00133, tangential: 0.00216 },
    aliases: ['ponderosa'],
  },
  {
    name: 'Douglas-fir',
    wood: 'softwood',
    specificGravity: 0.48,
    movement: { radial: 0.00165, tangential: 0.00267 },
    aliases: ['coast douglas fir'],
  },
];

export const SPECIES_NAMES: readonly string[] = SPECIES.map((one) => one.name);

/**
 * The species that a person names, by any of its names, without regard to case, hyphens and spaces.
 * Bare `maple`, `oak` and `pine` are no answer: hard and soft, red and white differ.
 * @returns fault `lumber.species-unknown`, which lists the species.
 */
export function findSpecies(name: string, argument: Argument = 'species'): Outcome<Species> {
  const wanted = plainName(name);
  const found = SPECIES.find(
    (one) => plainName(one.name) === wanted || one.aliases.includes(wanted),
  );
  if (found !== undefined) return ok(found);
  const details = { allowed: SPECIES_NAMES.join(', ') };
  return failed(fault('lumber.species-unknown', argument, name, { details }));
}

function plainName(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[\s‐‑–-]+/gu, ' ');
}
