/** The path of a person with a list of their own: mapped, planned, kept in a file, planned again from it. */
import { afterAll, expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderWith, jsonOf, runAlone, stopProgram } from '../cli/program.ts';
import { downloaded, isKept, PAGE_TEST_MS, pageSuite, selectCell } from './page-suite.ts';
import { goTo, planJob } from './pane-steps.ts';

/** Headed as its owner heads it, in feet: invented. */
const LIST = `Room,Item,Feet,Qty
Living,Crown cove,"14' 6""",2
Living,Crown cove,12.5,2
Living,Base,14.5,2
Living,Base,11 1/4,2
Dining,Crown cove,13.75,2
Dining,Crown cove,11,2
Dining,Base,"11'-3 1/2""",3
Hall,Base,9,1
Hall,Base,22,1
Hall,Door casing,7,6
Bed 1,Base,12,2
Bed 1,Base,10.5,2
Bed 1,Door casing,7,5
`;
const PIECES = 32;
const PROFILES = [
  {
    Profile: 'Crown cove',
    Make: 'cove',
    'Cove width': '3',
    'Cove depth': '5/8',
    'Off-center': '3/8',
  },
  { Profile: 'Base', Make: 'buy' },
  { Profile: 'Door casing', Make: 'buy' },
];
const CROWN = {
  'Blank width': '4 1/2',
  'Blank thickness': '1 1/4',
  Species: 'Poplar',
  Class: '6/4',
};
const STOCK = [
  { For: 'Base', Kind: 'stick', Length: "24'", Price: 2.1, Per: 'foot', Buy: 'yes' },
  {
    For: 'Poplar',
    Kind: 'board',
    Class: '6/4',
    Width: '5 1/4',
    Length: "16'",
    Price: 5.4,
    Per: 'board foot',
    Buy: 'yes',
  },
  { For: 'Door casing', Kind: 'stick', Length: "14'", Price: 19, Per: 'piece', Buy: 'yes' },
];

async function openFile(page: Page, name: string, content: Uint8Array | string): Promise<void> {
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open…' }).click();
  const chosen = { name, mimeType: 'application/octet-stream', buffer: Buffer.from(content) };
  await (await choosing).setFiles(chosen);
}

/** Pastes rows under the headings of that sheet. */
async function fill(
  page: Page,
  sheet: string,
  rows: readonly Readonly<Record<string, string | number>>[],
): Promise<void> {
  const headings = await page.evaluate((name) => {
    const [first = []] = grid.book().getSheetByName(name)!.getRange(0, 0, 1, 26).getDisplayValues();
    return first;
  }, sheet);
  for (const heading of rows.flatMap((row) => Object.keys(row))) {
    expect(headings).toContain(heading);
  }
  await selectCell(page, sheet, 'A2');
  await page.evaluate(
    (text) => navigator.clipboard.writeText(text),
    rows.map((row) => headings.map((one) => row[one] ?? '').join('\t')).join('\n'),
  );
  await page.keyboard.press('Control+v');
  await page.getByText(`${rows.length} rows`).first().waitFor();
}

async function priceIn(page: Page, button = 'Plan the job'): Promise<string> {
  await planJob(page, button, 0);
  const prices = /\$[\d,]+\.\d\d/gu.exec(await page.locator('#pane').innerText());
  return prices?.[0] ?? 'no price';
}

pageSuite('A list of the person’s own', ({ open }) => {
  afterAll(stopProgram);

  test(
    'is mapped, planned and downloaded; the file says the same to the command line and to another browser',
    async () => {
      const { page, context, errors } = await open();
      await openFile(page, 'list.csv', LIST);
      await page.getByRole('button', { name: 'Choose a table for Runs' }).click();
      await page.getByLabel('Which table is Runs?').selectOption({ index: 1 });
      await page.getByRole('button', { name: 'Use this table' }).click();
      await page.getByText('by your choice of columns').waitFor();
      await page.getByRole('button', { name: /^Make sheets for/u }).click();
      await page
        .getByText(/^Made: /u)
        .first()
        .waitFor();
      const [crown, ...bought] = PROFILES;
      await fill(page, 'Profiles', [{ ...crown, ...CROWN }, ...bought]);
      await fill(page, 'Stock', STOCK);
      await goTo(page, 'Job');

      await page
        .getByText(/^No problems/u)
        .first()
        .waitFor();
      const price = await priceIn(page);
      await isKept(page);
      const { name, bytes } = await downloaded(page, () =>
        page.getByRole('button', { name: 'Download' }).click(),
      );
      expect(errors).toEqual([]);
      await context.close();

      const folder = folderWith({});
      writeFileSync(join(folder, name), bytes);
      const ran = await runAlone(folder, ['plan', name, '--seconds', '0', '--json']);
      const { totals, pieces } = jsonOf(ran) as {
        readonly totals: { readonly price: number };
        readonly pieces: readonly unknown[];
      };
      expect(pieces).toHaveLength(PIECES);
      const dollars = totals.price.toLocaleString('en-US', { minimumFractionDigits: 2 });
      expect(`$${dollars}`).toBe(price);

      const fresh = await open();
      await openFile(fresh.page, name, bytes);
      await fresh.page.getByText('by your choice of columns').waitFor();
      // The file carries its plan too.
      expect(await priceIn(fresh.page, 'Plan again')).toBe(price);
      expect(fresh.errors).toEqual([]);
      await fresh.context.close();
    },
    2 * PAGE_TEST_MS,
  );
});
