import { expect, test } from '@jest/globals';

import { exportPlan } from '../../src/exports/export-plan.ts';
import { listKeptStock } from '../../src/exports/kept-stock-list.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import { DEMO_FOLDER, folderTables, planOf, tablesOf } from '../planning/make-job.ts';

const CREDITED = {
  shop: 'Setting,Value\nhourly rate,60\noffcut credit %,25\nkeep offcuts over,12\nleast blank length,24\nend trim,1/2',
  runs: 'Room,Run,Profile,Length\nHall,north,Base,100.3\nHall,south,Cove,51\nHall,west,Cove,60',
};

test('What a job leaves over is read as rows of Stock, at just what the job was credited for it', async () => {
  for (const tables of [CREDITED, folderTables(DEMO_FOLDER)]) {
    const plan = await planOf(tables);
    const list = listKeptStock(plan);
    const file = exportPlan(plan).find(({ path }) => path === 'lists/kept-as-stock.csv')!;
    const read = readCsvTable(file.text, 'stock.csv', 'Stock');
    if (!read.ok) throw new Error(read.faults.map((one) => one.message).join('\n'));
    const others = tablesOf(tables).filter(({ name }) => name !== 'Stock');
    expect(list.rows.length).toBeGreaterThan(0);
    // Alone: each row is a stick or board that is on the rack and can't be bought.
    const { asRead, faults } = readJob([...others, read.value], 'job');
    expect(faults).toEqual([]);
    expect(asRead.stock).toHaveLength(list.rows.length);
    for (const item of asRead.stock)
      expect(item).toMatchObject({ have: 1, buyMost: 0, per: 'piece' });
    const credit = plan.profiles.reduce((sum, { money }) => sum + money.offcutCreditCents, 0);
    const priced = asRead.stock.reduce((sum, { price }) => sum + Math.round(price * 100), 0);
    expect(priced).toBeLessThanOrEqual(credit);
  }
});

test('A credit is shared among its offcuts to the cent, and lengths are rounded down', async () => {
  const plan = await planOf(CREDITED);
  const base = plan.profiles.find(({ profile }) => profile.name === 'Base')!;
  const kept = base.sticks.filter(({ offcutKept }) => offcutKept);
  const rows = listKeptStock(plan).rows.filter(([name]) => name === 'Base');
  expect(rows).toHaveLength(kept.length);
  expect(rows.reduce((sum, row) => sum + Math.round(Number(row[5]) * 100), 0)).toBe(
    base.money.offcutCreditCents,
  );
  // By hand: 192 less 1/2 at both ends, less 100 5/16 and its kerf of 1/8, is 90 9/16.
  expect(rows.map((row) => row[4])).toEqual(['90 9/16"']);
});
