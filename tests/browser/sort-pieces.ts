/** Sorts the written Pieces by their tool, and holds the sheets that count by them to what they said before. */
import { expect } from '@jest/globals';
import type { Page } from 'playwright-core';
import { selectCell, shownIn, textsOn } from './page-suite.ts';

/** By profile: each sheet's figures stay, the checks agree, and every formula speaks of its own row. */
export async function sortPieces(page: Page): Promise<void> {
  const texts = (): Promise<string[]> =>
    Promise.all(['Production', 'Cutting', 'Rooms', 'Client'].map((name) => textsOn(page, name)));
  const profiles = async (): Promise<string[]> =>
    (await shownIn(page, 'Pieces', 'F7:F200')).flat().filter((name) => name !== '');
  await selectCell(page, 'Pieces', 'F8');
  const before = [await texts(), await profiles()] as const;
  expect(before[0][0]).toContain('All sheets agree.');
  await page.getByRole('button', { name: 'Sort…' }).click();
  await page.getByRole('button', { name: 'Smallest or A first' }).click();
  await page.waitForFunction(
    () => grid.book().getSheetByName('Pieces')!.getRange('F7').getDisplayValue() === 'Flat casing',
  );
  expect(await profiles()).toEqual([...before[1]].sort());
  const strays = await page.evaluate(() =>
    grid
      .book()
      .getSheetByName('Pieces')!
      .getRange('N7:N200')
      .getFormulas()
      .flatMap(([formula = ''], at) =>
        formula === '' || formula.endsWith(`-G${at + 7},3)`) ? [] : [formula],
      ),
  );
  expect(strays).toEqual([]);
  expect(await texts()).toEqual(before[0]);
}
