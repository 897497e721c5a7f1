/** What the fuzz draws by: repeatable, and other draws with FUZZ_SEED=…, as `npm run fuzz` gives it. */
import { seededNumbers } from '../seeded-numbers.ts';

export const FUZZ_SEED = Number(process.env['FUZZ_SEED'] ?? 20_261_130);

export interface Chance {
  /** A whole number from 0 to below `most`. */
  readonly below: (most: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
}

/** @param stream each kind of draw has its own, so that one more of a kind changes no other */
export function chanceOf(stream: number): Chance {
  const next = seededNumbers(FUZZ_SEED + stream * 7_919);
  const below = (most: number): number => Math.floor(next() * most);
  return {
    below,
    pick: (list) => {
      if (list.length === 0) throw new Error('Nothing to pick from.');
      return list[below(list.length)] as (typeof list)[number];
    },
  };
}
