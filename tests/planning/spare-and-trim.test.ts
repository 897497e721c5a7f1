import { describe, expect, test } from '@jest/globals';
import { planOf, type Tables } from './make-job.ts';

const trimmed: Tables = {
  profiles: 'Profile,Make,Blank width,Blank thickness\nCasing,buy,3,3/4',
  stock: "For,Kind,Length,Price,Per\nCasing,stick,7',10,piece\nCasing,stick,10',16,piece",
  runs: "Room,Run,Profile,Length,Quantity\nHall,leg,Casing,7',3\nHall,short,Casing,60,1",
  shop: 'Setting,Value\nend trim,1',
};
const said = async (tables: Tables, code: string): Promise<string[]> => {
  const { cautions } = await planOf(tables);
  return cautions.filter((one) => one.code === code).map(({ message }) => message);
};

describe('A piece as long as its stick', () => {
  test('is told of once at the stock, with what the trims cost and what would do', async () => {
    // By hand: three of 84 in take three 10' sticks, $48, and the 60 in a 7' one, $10. Without trims
    // four 7' sticks do, $40: $18 less.
    const messages = await said(trimmed, 'job.trim-spoils-fit');
    expect(messages).toEqual([
      "Casing: 3 pieces fit a stick of 84 in, but not the 82 in that its end trims leave; longer sticks or splices serve instead. That costs $18.00 of lumber. Where the sticks' ends are good, end trim 0 in on Shop would do.",
    ]);
  });

  test('is no matter of money where nothing is saved, and of nothing where it fits', async () => {
    const [dear] = await said(
      { ...trimmed, stock: trimmed.stock!.replace("7',10", "7',30") },
      'job.trim-spoils-fit',
    );
    expect(dear).not.toContain('That costs');
    const fits = { ...trimmed, runs: 'Room,Run,Profile,Length\nHall,leg,Casing,82' };
    expect(await said(fits, 'job.trim-spoils-fit')).toEqual([]);
  });
});

describe('A trial-cut spare', () => {
  const coves = (length: number): Tables => ({
    profiles:
      'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth\nCove,cove,4,1,Poplar,2,1/2',
    stock: "For,Kind,Length,Price,Per\nCove,stick,8',32,piece",
    runs: `Room,Run,Profile,Length\nHall,r,Cove,${length}`,
    shop: 'Setting,Value\nset-up spare,36',
  });

  test('alone on a stick is named with what the stick costs', async () => {
    expect(await said(coves(90), 'job.spare-takes-stick')).toEqual([
      'Cove: the 36 in trial-cut spare takes a stick of its own ($32.00 of lumber). Trial cuts in scrap from the bin and set-up spare 0 on Shop would save it.',
    ]);
  });

  test('that lies beside a piece is nothing to tell of', async () => {
    expect(await said(coves(40), 'job.spare-takes-stick')).toEqual([]);
  });
});
