import { expect, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';
import { printTestsRun, readPdf } from './printed-pdf.ts';
import { downloaded, PAGE_TEST_MS, pageSuite, shownIn, typeInto } from './page-suite.ts';
import { planJob } from './pane-steps.ts';

const MARK =
  /Written from inputs of \d+ [A-Z][a-z]{2} \d{4}, \d\d:\d\d; inputs have changed since/u;
const WRITTEN = ['Production', 'Pieces', 'Cutting'];
const AGREE = 'All sheets agree.';
const PHONE = { width: 390, height: 844 };

pageSuite('Sheets whose inputs have changed since they were written', ({ open }) => {
  (printTestsRun ? test : test.skip)(
    'are said to be behind in either view of a phone, ask before they are printed or downloaded, and bear it on each page',
    async () => {
      const { page, context, errors } = await open();
      await planJob(page, 'Plan the job', 0);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await page.locator('#pane .fui-MessageBar').getByText('were written').waitFor();
      const notice = page.locator('#notices').getByText(/inputs have changed since the sheets/u);
      expect(await notice.count()).toBe(0);

      // The grid's own engine holds the sheets against each other too.
      const top = async (sheet: string): Promise<string> =>
        (await shownIn(page, sheet, 'A2'))[0]![0]!;
      for (const sheet of WRITTEN) expect([sheet, await top(sheet)]).toEqual([sheet, AGREE]);
      await typeInto(page, 'Pieces', 'G7', '99');
      await page.waitForFunction(
        () =>
          grid.book().getSheetByName('Cutting')!.getRange('A2').getDisplayValue() !==
          'All sheets agree.',
      );
      for (const sheet of WRITTEN) {
        expect([sheet, await top(sheet)]).toEqual([
          sheet,
          expect.stringMatching(/^The sheets differ in /u),
        ]);
      }

      await typeInto(page, 'Runs', 'D2', '61');
      await notice.waitFor();

      await page.setViewportSize(PHONE);
      for (const view of ['Sheet', 'Pane']) {
        await page.locator('#views').getByRole('button', { name: view }).click();
        const box = (await notice.boundingBox())!;
        expect([view, box.y >= 0 && box.y + box.height <= PHONE.height]).toEqual([view, true]);
      }
      await page.setViewportSize({ width: 1280, height: 800 });

      await page.evaluate(() => {
        window.print = () => Object.assign(globalThis, { printed: true });
      });
      await page.getByRole('button', { name: 'Print…' }).click();
      const printing = page.getByRole('dialog', { name: 'Print a sheet' });
      await printing.getByText(/inputs have changed since/u).waitFor();
      await printing.getByRole('combobox').selectOption('Set-ups');
      await printing.getByRole('button', { name: 'Print all the same' }).click();
      await page.waitForFunction(() => 'printed' in globalThis);
      const { pages, texts } = readPdf(await page.pdf({ preferCSSPageSize: true }));
      expect(pages).toBeGreaterThan(1);
      for (const text of texts) {
        expect(text).toMatch(MARK);
        expect(text).toMatch(/Inputs [0-9a-f]{8}, planned/u);
      }

      const download = page.getByRole('button', { name: 'Download' });
      await download.click();
      const asked = page.getByRole('dialog', { name: /Download sheets that are behind/u });
      await asked.getByRole('button', { name: 'Go back' }).click();
      await asked.waitFor({ state: 'detached' });
      const { bytes } = await downloaded(page, async () => {
        await download.click();
        await asked.getByRole('button', { name: 'Download all the same' }).click();
      });
      const marked = Object.entries(unzipSync(bytes)).filter(
        ([name, part]) => name.startsWith('xl/worksheets/sheet') && MARK.test(strFromU8(part)),
      );
      // The sheets written, none of the person's own.
      expect(marked).toHaveLength(10);
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
