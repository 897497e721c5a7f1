import { describe, expect, test } from '@jest/globals';

import { listYardOrder } from '../../src/planning/yard-order.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS, numberAt, rowWith, sheetOf } from './sheet-jobs.ts';

const BOARDS = {
  runs: 'Room,Run,Profile,Length\nHall,north,Cove,100\nHall,south,Cove,90\nHall,east,Base,100',
  stock:
    "For,Kind,Class,Width,Length,Price,Per,Have\nBase,stick,,,16',2,foot,1\nPoplar,board,4/4,9 1/4,10',5,board foot,0",
};

describe('The order for the yard', () => {
  test('has what is bought and not what is on the rack, with its feet, board feet and money', async () => {
    const plan = await planOf(BOARDS);
    const order = listYardOrder(plan);
    expect(order.map(({ item }) => item.for)).toEqual(['Poplar']);
    const [poplar] = order;
    // By hand: 9 1/4 x 10 ft is 7.7083 square feet, so 8 by surface measure; 4/4 counts as 1 in.
    const boards = poplar!.pieces;
    expect(boards).toBeGreaterThan(0);
    expect(poplar!.boardFeet).toBeCloseTo((9.25 * 10 * boards) / 12, 9);
    expect(poplar!.boardFeetBySurface).toBe(8 * boards);
    expect(Number(poplar!.lineal)).toBe(120 * boards);
    expect(Number(poplar!.longest)).toBe(100);
    const sheet = sheetOf(describePlan(plan), 'Yard');
    const row = rowWith(sheet, 'Poplar', 1);
    // 5 a board foot: 38.54 a board.
    expect([numberAt(sheet, row, 4), numberAt(sheet, row, 9)]).toEqual([boards, 38.54]);
    const together = rowWith(sheet, 'Together', 1);
    expect(numberAt(sheet, together, 10)).toBeCloseTo(38.54 * boards, 9);
  });

  test('is left out where nothing is bought', async () => {
    const plan = await planOf({
      stock: "For,Kind,Length,Price,Per,Have,Buy\nBase,stick,16',2,foot,9,no",
    });
    expect(describePlan(plan).sheets.map(({ name }) => name)).not.toContain('Yard');
  });

  test('spends what the plan pays less what is from the rack, in every job; by a yield up to a board more', async () => {
    for (const [name, tables] of Object.entries(JOBS)) {
      const plan = await planOf(tables);
      const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
      for (const { item, toBuy, priceCents } of listYardOrder(plan)) {
        const own = uses.filter((use) => use.item === item);
        const paid = own.reduce((sum, use) => sum + use.bought * use.priceCents, 0);
        const boards = own.reduce((sum, use) => sum + use.bought, 0);
        const over = toBuy * priceCents - paid;
        if (item.yieldPercent === undefined) expect([name, over]).toEqual([name, 0]);
        // Each clear board's price is rounded to the cent by itself.
        else expect([name, over > -boards && over < priceCents + boards]).toEqual([name, true]);
      }
    }
  });

  test('counts exact halves of surface measure up and down in turns, down the whole list', async () => {
    const plan = await planOf({
      runs: 'Room,Run,Profile,Length,Quantity\nHall,north,Cove,100,6',
      stock: "For,Kind,Class,Width,Length,Price,Per\nPoplar,board,4/4,9,10',5,board foot",
    });
    const [poplar] = listYardOrder(plan);
    // 7 1/2 square feet a board: 8, 7, 8, 7 …
    expect(poplar!.boardFeetBySurface).toBe(Math.ceil(7.5 * poplar!.pieces));
  });
});
