import { describe, expect, test } from '@jest/globals';
import { PLAIN, planOf } from './make-job.ts';
import { SHARED } from './shared-boards.ts';

describe('A stick', () => {
  test('gives the pieces shorter than a foot first, then the longest', async () => {
    const lengths = ['40', '12', '11 15/16', '6', '6 1/16'];
    const { profiles } = await planOf({
      ...PLAIN,
      runs: `Room,Profile,Length,Measured as\n${lengths.map((one) => `Hall,Base,${one},finished`).join('\n')}`,
    });
    const [base] = profiles as [(typeof profiles)[number]];
    expect(base.sticks.map(({ pieces }) => pieces.map(({ length }) => length.valueOf()))).toEqual([
      [6, 6.0625, 11.9375, 40, 12],
    ]);
  });
});

describe('Boards of one row at two prices', () => {
  test('are numbered through, so that no two have one name', async () => {
    // By the board foot a board without Class costs the profile of 1 1/2 thick half as much again. The
    // board that gives both joins them in one group; one of each price, 40.00 and 60.00, costs less.
    const { groups, profiles } = await planOf({
      ...SHARED,
      profiles: SHARED.profiles!.replace('Narrow,cove,3,1,', 'Narrow,cove,3,1 1/2,'),
      stock:
        "For,Kind,Width,Length,Price,Per,Have,Buy\nPoplar,board,8,10',6,board foot,1,yes\n" +
        "Poplar,board,9,10',150,piece,,",
    });
    expect(groups.map(({ name, lumberCents }) => [name, lumberCents])).toEqual([
      ['Wide, Narrow', 10000],
    ]);
    const [{ boards, stockUse }] = groups as [(typeof groups)[number]];
    expect(new Set(boards.map(({ item }) => item)).size).toBe(1);
    expect(boards.map(({ unit, fromRack }) => [unit, fromRack])).toEqual([
      [1, true],
      [2, false],
    ]);
    expect(stockUse.map((use) => [use.priceCents, use.fromRack, use.bought])).toEqual([
      [4000, 1, 0],
      [6000, 0, 1],
    ]);
    expect(profiles.map(({ sticks }) => sticks.map(({ unit }) => unit))).toEqual([[1], [2]]);
  });
});
