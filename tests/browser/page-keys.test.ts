/** Where the keyboard is, what the tools over the sheet do, and what the sheet looks like in the dark. */
import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import { parseLength } from '../../src/core/units/length.ts';
import { PAGE_TEST_MS, pageSuite, selectCell } from './page-suite.ts';

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
    'is sorted, filtered, searched and filled from lists by its tools, with the keyboard alone, and Undo takes each back',
    async () => {
      const { page, context, errors } = await open();
      const column = (range: string): Promise<string[]> =>
        page.evaluate(
          (at) => grid.book().getSheetByName('Runs')!.getRange(at).getDisplayValues().flat(),
          range,
        );
      const inSheet = (): Promise<unknown> =>
        page.waitForFunction(
          () => document.activeElement?.closest('#grid-place [contenteditable="true"]') !== null,
        );
      const tool = async (name: string): Promise<void> => {
        await page.getByRole('button', { name, exact: true }).focus();
        await page.keyboard.press('Enter');
      };
      const dialog = page.getByRole('dialog');
      await selectCell(page, 'Runs', 'D3');
      const before = await column('A2:F31');
      const heard = page.locator('#cell-heard');
      await heard.getByText('D3, Length: 22\' 6".').waitFor();

      await tool('Sort…');
      expect(await dialog.getByRole('combobox').inputValue()).toBe('3');
      await dialog.getByRole('button', { name: 'Smallest or A first' }).press('Enter');
      await inSheet();
      const inches = (text: string): number => {
        const read = parseLength(text, 'aLength');
        return read.ok ? read.value.valueOf() : NaN;
      };
      const lengths = (await column('D2:D31')).map(inches);
      expect(lengths).toEqual([...lengths].sort((one, other) => one - other));
      // Rows go as a whole, and none gets lost.
      const rowsOf = (cells: readonly string[]): string[] =>
        cells.flatMap((_, at) => (at % 6 === 0 ? [cells.slice(at, at + 6).join('|')] : [])).sort();
      expect(rowsOf(await column('A2:F31'))).toEqual(rowsOf(before));
      await page.keyboard.press('Control+z');
      expect(await column('A2:F31')).toEqual(before);

      await selectCell(page, 'Runs', 'C3');
      await tool('Filter…');
      await dialog.getByRole('checkbox', { name: 'All', exact: true }).press('Space');
      await dialog.getByRole('checkbox', { name: 'Reading cove' }).press('Space');
      await dialog.getByRole('button', { name: 'Show the ticked' }).press('Enter');
      await inSheet();
      const inSight = (): Promise<number[]> =>
        page.evaluate(() => {
          const sheet = grid.book().getSheetByName('Runs')!.getSheet();
          return Array.from({ length: 31 }, (_, row) => row).filter((row) =>
            sheet.getRowVisible(row),
          );
        });
      const coves = (await column('C1:C31')).flatMap((name, row) =>
        name === 'Reading cove' ? [row] : [],
      );
      expect(await inSight()).toEqual([0, ...coves]);
      const filter = page.getByRole('button', { name: 'Filter…', pressed: true });
      await filter.waitFor();
      await page.keyboard.press('Control+z');
      expect(await inSight()).toHaveLength(31);
      await filter.waitFor({ state: 'detached' });

      await page.keyboard.press('Control+f');
      await page.keyboard.type('no such words');
      await page.keyboard.press('Enter');
      await page.locator('#find-says').getByText('Nothing shows that.').waitFor();
      await page.locator('#find-words').fill('desk hatch HEAD');
      await page.keyboard.press('Enter');
      await page.locator('#find-says').getByText('1 of 1: Runs B18').waitFor();
      await page.keyboard.press('Escape');
      await inSheet();

      await selectCell(page, 'Runs', 'C3');
      await page.locator('#cell-line').getByRole('button', { name: 'Choose…' }).waitFor();
      await page.keyboard.press('Alt+ArrowDown');
      const list = page.getByRole('listbox', { name: 'Choose for this cell' });
      expect(await list.getByRole('option').allInnerTexts()).toEqual(
        await page.evaluate(() =>
          grid.book().getSheetByName('Profiles')!.getRange('A2:A6').getDisplayValues().flat(),
        ),
      );
      await page.keyboard.press('p');
      await page.keyboard.press('Enter');
      await inSheet();
      await page.waitForFunction(
        () =>
          grid.book().getSheetByName('Runs')!.getRange('C3').getDisplayValue() === 'Picture rail',
      );
      // A word that is in no list is taken, and marked where the job has it at fault.
      await page.keyboard.type('Cornice');
      await page.keyboard.press('Enter');
      await page.keyboard.press('ArrowUp');
      await page.locator('#cell-says').getByText('There is no profile “Cornice”').waitFor();
      await heard.getByText(/^C3, Profile: Cornice\. At fault: There is no profile/u).waitFor();
      const marks = (): Promise<unknown> =>
        page.evaluate(() => {
          const sheet = grid.book().getSheetByName('Runs')!.getSheet();
          return [sheet.getCell(2, 2)?.markers?.tl !== undefined, sheet.getCellRaw(2, 2)];
        });
      const [isMarked, raw] = (await marks()) as [boolean, object];
      expect([isMarked, 'markers' in raw]).toEqual([true, false]);
      await page.keyboard.press('Control+z');
      await page
        .locator('#cell-says')
        .getByText(/^Profile: One of/u)
        .waitFor();
      expect(((await marks()) as [boolean])[0]).toBe(false);

      await page.setViewportSize({ width: 640, height: 400 });
      await page.waitForFunction(() => {
        const heights = [...document.querySelectorAll('#grid-place canvas')].map(
          (one) => one.getBoundingClientRect().height,
        );
        const letters = 20;
        return Math.max(...heights) - letters > window.innerHeight / 2;
      });
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
