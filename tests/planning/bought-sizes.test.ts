import { describe, expect, test } from '@jest/globals';
import { readTables } from './make-job.ts';

const HEAD =
  'Profile,Make,Blank width,Blank thickness,Cove width,Cove depth,Off-center,Off-center to,Near flat';
const cautions = (row: string) =>
  readTables({ profiles: `${HEAD}\n${row}`, runs: 'Room,Profile,Length\nHall,Base,90' })
    .cautions.filter(({ code }) => code === 'job.cove-sizes-unused')
    .map(({ message, where }) => [message, where]);

describe('A molding that is bought', () => {
  test('is told that a cove’s sizes are not used, at the first of them', () => {
    expect(cautions('Base,buy,5,3/4,3,1/2,,,')).toEqual([
      [
        '“Base” is bought (Make), so Cove width, Cove depth are not used. Where it is made here, write cove or crown cove under Make; else leave them blank.',
        { file: 'profiles.csv', line: 2, column: 5 },
      ],
    ]);
  });

  test.each([
    ['Off-center', 'Base,buy,5,3/4,,,1/4,,'],
    ['Off-center to', 'Base,buy,5,3/4,,,,blade middle,'],
    ['Near flat', 'Base,buy,5,3/4,,,,,1/2'],
  ])('is told so of %s alone', (heading, row) => {
    expect(cautions(row).map(([message]) => message)).toEqual([
      `“Base” is bought (Make), so ${heading} is not used. Where it is made here, write cove or crown cove under Make; else leave it blank.`,
    ]);
  });

  test('is told nothing of the sizes that it has', () => {
    expect(cautions('Base,buy,5,3/4,,,,,')).toEqual([]);
  });
});

describe('Codes of money', () => {
  test.each([
    ['usd', 'USD'],
    ['eur', 'EUR'],
    ['Kč', 'Kč'],
    ['$', '$'],
    ['kr', 'kr'],
  ])('are printed in capitals, signs and names as typed: %s', (typed, printed) => {
    const { job } = readTables({
      shop: `Setting,Value\nhourly rate,60\ncurrency,${typed}`,
      stock: "For,Kind,Length,Price,Per\nBase,stick,16',2,foot",
    });
    expect(job?.shop.currency).toBe(printed);
  });
});
