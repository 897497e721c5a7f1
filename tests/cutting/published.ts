/** Published one-length classes, where they are at hand, and triplets made here. */
import { existsSync, readFileSync } from 'node:fs';
import { seededNumbers } from './problem-maker.ts';

export interface Instance {
  readonly name: string;
  readonly capacity: number;
  readonly sizes: readonly number[];
  /** Sticks that the best plan takes. */
  readonly optimum: number;
}

const FOLDER = '../shared/data/cutting';
export const ARE_AT_HAND = existsSync(FOLDER);

// Four header counts of the u files are one too high (known optima in their place).
const TRUE_OPTIMA: Readonly<Record<string, number>> = {
  u120_08: 50,
  u120_19: 49,
  u250_07: 103,
  u250_12: 105,
};

/**
 * Falkenauer's published files (OR-Library): u120 to u1000 are files 1 to 4, t60 to t501 files 5 to
 * 8, 20 instances each. The optimum of a triplet file is items / 3.
 */
export function readClass(file: number): readonly Instance[] {
  const words = readFileSync(`${FOLDER}/binpack${file}.txt`, 'utf8').split(/\s+/).filter(Boolean);
  const next = (): number => Math.round(10 * Number(words.shift()));
  const count = Number(words.shift());
  return Array.from({ length: count }, () => {
    const name = words.shift()!;
    const capacity = next();
    const items = next() / 10;
    const best = next() / 10;
    const sizes = Array.from({ length: items }, next);
    const optimum = name.startsWith('t') ? items / 3 : (TRUE_OPTIMA[name] ?? best);
    return { name, capacity, sizes, optimum };
  });
}

/**
 * Triplets are optimal by construction (class of E. Falkenauer, A hybrid grouping genetic algorithm
 * for bin packing, J. of Heuristics 2, 1996): every stick of 1,000 is cut into exactly three, each of
 * 250 to 500. They are the class on which the two fits do worst.
 */
export function triplets(count: number, seed: number): Instance {
  const next = seededNumbers(seed);
  const sizes = Array.from({ length: count }, () => {
    const first = 380 + next(111);
    const second = 250 + next(Math.floor((1000 - first) / 2) - 250 + 1);
    return [first, second, 1000 - first - second];
  }).flat();
  return { name: `triplets ${count}, ${seed}`, capacity: 1000, sizes, optimum: count };
}
