/** The published cutting instances, where they are at hand, and triplets made here where they aren't. */
import { existsSync, readFileSync } from 'node:fs';
import { seededNumbers } from './seeded.mjs';

const FOLDER = new URL('../../../shared/data/cutting/', import.meta.url);

// Four header counts of the u files are one too high (known optima in their place).
const TRUE_OPTIMA = { u120_08: 50, u120_19: 49, u250_07: 103, u250_12: 105 };
// J. E. Schoenfield, Fast, exact solution of open bin packing problems without linear programming, 2002.
const HARD28 = {
  119: 77, 13: 67, 14: 62, 144: 73, 175: 84, 178: 80, 181: 72, 195: 64, 359: 76, 360: 62, 40: 59,
  419: 80, 47: 71, 485: 71, 531: 83, 561: 72, 60: 63, 640: 74, 645: 58, 709: 67, 716: 76, 742: 64,
  766: 62, 781: 71, 785: 68, 814: 81, 832: 60, 900: 75,
}; // prettier-ignore

export function areAtHand() {
  return existsSync(FOLDER);
}

/** E. Falkenauer's classes (OR-Library): u120 to u1000 are files 1 to 4, t60 to t501 files 5 to 8. */
export function readClass(file) {
  const words = readFileSync(new URL(`binpack${file}.txt`, FOLDER), 'utf8')
    .split(/\s+/)
    .filter(Boolean);
  const next = () => Math.round(10 * Number(words.shift()));
  const count = Number(words.shift());
  return Array.from({ length: count }, () => {
    const name = words.shift();
    const capacity = next();
    const items = next() / 10;
    const best = next() / 10;
    const sizes = Array.from({ length: items }, next);
    const optimum = name.startsWith('t') ? items / 3 : (TRUE_OPTIMA[name] ?? best);
    return { name, capacity, sizes, optimum };
  });
}

export function readHard28() {
  const parts = readFileSync(new URL('hard28', FOLDER), 'utf8').split("'").slice(1);
  const instances = [];
  for (let at = 0; at < parts.length; at += 2) {
    const name = parts[at].replace('BPP', '').trim();
    const [kinds, capacity, ...rows] = parts[at + 1].split(/\s+/).filter(Boolean).map(Number);
    const sizes = Array.from({ length: kinds }, (_, kind) =>
      Array(rows[2 * kind + 1]).fill(rows[2 * kind]),
    ).flat();
    instances.push({ name: `hard ${name}`, capacity, sizes, optimum: HARD28[name] });
  }
  return instances;
}

/** Optimal by construction: every stick of 1,000 is cut into just three pieces of 250 to 500. */
export function makeTriplets(count, seed) {
  const next = seededNumbers(seed);
  const below = (limit) => Math.floor(next() * limit);
  const sizes = Array.from({ length: count }, () => {
    const first = 380 + below(111);
    const second = 250 + below(Math.floor((1000 - first) / 2) - 250 + 1);
    return [first, second, 1000 - first - second];
  }).flat();
  return { name: `triplets ${count}, ${seed}`, capacity: 1000, sizes, optimum: count };
}
