/** A job of many sticks, the same on every machine. */
import { seededNumbers } from '../seeded-numbers.ts';
import type { Tables } from '../planning/make-job.ts';

/** About half as many sticks as runs. */
export function largeJob(count: number, seed = 5): Tables {
  const next = seededNumbers(seed);
  const pick = (words: readonly string[]): string => words[Math.floor(next() * words.length)]!;
  const ends = ['square', 'inside miter', 'outside miter', 'cope'];
  const lines = ['Room,Run,Profile,Length,Left end,Right end'];
  for (let run = 0; run < count; run++) {
    const sixteenths = Math.floor(next() * 16 * 140) + 32;
    const length = `${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16`;
    const profile = pick(['Base', 'Casing', 'Cove']);
    const room = `Room ${Math.floor(run / 20) + 1}`;
    lines.push(`${room},wall ${(run % 20) + 1},${profile},${length},${pick(ends)},${pick(ends)}`);
  }
  return {
    runs: lines.join('\n'),
    profiles:
      'Profile,Make,Cove width,Cove depth,Off-center,Blank width,Blank thickness,Species,Class\n' +
      'Base,buy,,,,5 1/4,9/16,Poplar,\nCasing,buy,,,,3 1/2,11/16,Poplar,\n' +
      'Cove,cove,3,5/8,1/4,4 1/2,1 1/8,Poplar,5/4',
    shop: 'Setting,Value\nhourly rate,48\nset-up spare,0',
    stock:
      'For,Kind,Class,Width,Length,Price,Per,Have\n' +
      "Base,stick,,,12',2.45,foot,3\nBase,stick,,,16',2.60,foot,\n" +
      "Casing,stick,,,7',1.55,foot,\nCasing,stick,,,16',1.75,foot,\n" +
      "Poplar,board,5/4,5,8',4.10,board foot,\nPoplar,board,5/4,10,12',4.85,board foot,6",
  };
}
