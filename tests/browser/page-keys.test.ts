/** Where the keyboard is, and what the sheet looks like in the dark. */
import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import { PAGE_TEST_MS, pageSuite } from './page-suite.ts';

/** Waits until this comes up over a cell under the mouse. */
async function expectOver(page: Page, cell: string, says: string): Promise<void> {
  const { x, y } = await page.evaluate((at) => {
    const cell = grid.book().getActiveSheet().getRange(at).getCellRect();
    const canvases = [...document.querySelectorAll<HTMLCanvasElement>('#grid-place canvas')];
    const [largest] = canvases.sort((one, other) => other.height - one.height);
    const { left, top } = largest!.getBoundingClientRect();
    return { x: left + cell.left + cell.width / 2, y: top + cell.top + cell.height / 2 };
  }, cell);
  await page.mouse.move(x - 3, y);
  await page.mouse.move(x, y);
  await page.locator('.univer-shadow', { hasText: says }).last().waitFor();
}

pageSuite('The sheet on the page', ({ open }) => {
  test(
    'takes the keys after a click on its tab: what is typed stands in it, and Undo takes it back',
    async () => {
      const { page, context, errors } = await open();
      const active = (): Promise<string> =>
        page.evaluate(() => grid.book().getActiveSheet().getSheetName());
      const shown = (): Promise<string> =>
        page.evaluate(() => grid.book().getSheetByName('Runs')!.getRange('A2').getDisplayValue());
      const before = await shown();
      await page.getByRole('tab', { name: 'Profiles', exact: true }).click();
      await page.waitForTimeout(300);
      await page.getByRole('tab', { name: 'Runs', exact: true }).click();
      await page.waitForFunction(
        () => document.activeElement?.closest('#grid-place [contenteditable="true"]') !== null,
      );
      await page.keyboard.press('ArrowDown');
      expect(await active()).toBe('Runs');
      await page.keyboard.type('hello');
      await page.keyboard.press('Enter');
      expect(await shown()).toBe('hello');
      await page.getByRole('tab', { name: 'Profiles', exact: true }).click();
      await page.waitForFunction(
        () => document.activeElement?.closest('#grid-place [contenteditable="true"]') !== null,
      );
      await page.keyboard.press('Control+z');
      expect(await shown()).toBe(before);
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'is dark where the page around it is, and light where that is',
    async () => {
      for (const dark of [true, false]) {
        const { page, context } = await open({ dark });
        // Most of the sheet is cells without a fill: the median pixel is one of theirs.
        const ground = await page.evaluate(() => {
          const canvases = [...document.querySelectorAll<HTMLCanvasElement>('#grid-place canvas')];
          const [largest] = canvases.sort((one, other) => other.width - one.width);
          const { width, height } = largest!;
          const { data } = largest!.getContext('2d')!.getImageData(0, 0, width, height);
          const reds = data.filter((_, at) => at % 4 === 0 && data[at + 3] === 255).sort();
          return reds[Math.floor(reds.length / 2)] ?? -1;
        });
        if (dark) expect(ground).toBeLessThan(80);
        else expect(ground).toBeGreaterThan(200);
        await context.close();
      }
    },
    PAGE_TEST_MS,
  );

  test(
    'has the keyboard at what is to be said of a profile once the missing ones were added',
    async () => {
      const { page, context, errors } = await open();
      await page.evaluate(() => {
        grid.book().getSheetByName('Runs')!.getRange('C3').setValue('Cornice');
      });
      await page.getByRole('button', { name: 'Add the missing profiles' }).click();
      await page.getByText('1 profile was added on Profiles.').first().waitFor();
      const says = page.locator('#cell-says');
      await says.getByText('Make: One of: cove, crown cove, buy.').waitFor();
      await page.keyboard.type('buy');
      await page.keyboard.press('Enter');
      const shown = await page.evaluate(() =>
        ['A7', 'B7'].map((at) =>
          grid.book().getSheetByName('Profiles')!.getRange(at).getDisplayValue(),
        ),
      );
      expect(shown).toEqual(['Cornice', 'buy']);
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'says over a cell with an error what is wrong, in our own words, and under the sheet of the chosen one',
    async () => {
      const { page, context } = await open();
      await page.getByRole('tab', { name: 'Stock', exact: true }).click();
      const put = (cell: string, formula: string): Promise<void> =>
        page.evaluate(
          ([at, f]) => {
            grid.book().getSheetByName('Stock')!.getRange(at).setValue({ f });
          },
          [cell, formula] as const,
        );
      await put('B20', '=COVE.APPROACH("9 long","3/4")');
      await put('B22', '=COVE.APPROACH(3 1/2,3/4)');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Stock')!.getRange('B22').getDisplayValue()[0] === '#',
      );
      await expectOver(page, 'B20', 'Width: “9 long”');
      await expectOver(page, 'B22', 'goes in quotes: write it like "3 1/2"');
      const says = page.getByRole('status').filter({ hasText: 'Width: “9 long”' });
      await page.evaluate(() => {
        grid.book().getActiveSheet().getRange('B19').activate();
      });
      await page.keyboard.press('ArrowDown');
      await says.waitFor();
      await page.keyboard.press('ArrowDown');
      await page.locator('#cell-says').getByText('Kind: One of: stick, board').waitFor();
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
