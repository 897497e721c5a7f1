/** Choices by seeded chance. */
import { seededNumbers } from '../../seeded-numbers.ts';

export class Chance {
  readonly #next: () => number;

  constructor(seed: number) {
    this.#next = seededNumbers(seed * 7_919 + 13);
    // The first numbers of neighboring seeds are alike.
    for (let at = 0; at < 8; at++) this.#next();
  }

  /** Whether something of this likelihood happens. */
  is(likely: number): boolean {
    return this.#next() < likely;
  }

  whole(least: number, most: number): number {
    return least + Math.floor(this.#next() * (most - least + 1));
  }

  /** A length from `least` to `most` on a tape of this finest mark. */
  tape(least: number, most: number, mark: number): number {
    return this.whole(Math.ceil(least / mark), Math.floor(most / mark)) * mark;
  }

  one<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)]!;
  }
}
