import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { tablesOf } from '../planning/make-job.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';
import { downloaded, PAGE_TEST_MS, pageSuite, shownIn, typeInto } from './page-suite.ts';

interface OpenedFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const file = (name: string, content: Uint8Array | string): OpenedFile => ({
  name,
  mimeType: 'application/octet-stream',
  buffer: Buffer.from(content),
});

/** As workbooks of the old kind, and those under a password, begin (MS-CFB 2.2). */
const OLD = Buffer.from('d0cf11e0a1b11ae1'.padEnd(1024, '0'), 'hex');

async function choose(page: Page, chosen: OpenedFile): Promise<void> {
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open…' }).click();
  await (await choosing).setFiles(chosen);
}

/** Lets a file fall on the page. */
async function drop(page: Page, dropped: OpenedFile): Promise<void> {
  await page.evaluate(
    ({ name, base64 }) => {
      const bytes = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([bytes], name));
      const target = document.querySelector('#grid-place canvas')!;
      for (const type of ['dragover', 'drop']) {
        const event = new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true });
        target.dispatchEvent(event);
      }
    },
    { name: dropped.name, base64: dropped.buffer.toString('base64') },
  );
}

pageSuite('A file opened on the page', ({ open }) => {
  test(
    'takes the place of the sheets with its own, asked about where these were changed; one that can’t be opened leaves all as it was',
    async () => {
      const { page, context, errors } = await open();
      const own = file('Maple Street.xlsx', await writeWorkbook(describeInput(tablesOf(DEMO))));
      const notice = page.locator('#notices').getByRole('alert');
      for (const [bad, says] of [
        [file('old.xls', OLD), /old\.xls was not opened.*old \.xls kind/su],
        [file('list.xlsx', 'Room,Run\n'), /list\.xlsx was not opened.*no \.xlsx workbook/su],
      ] as const) {
        await choose(page, bad);
        await page.waitForFunction(
          (name) => document.querySelector('.problem')?.textContent.includes(name),
          bad.name,
        );
        expect(await notice.innerText()).toMatch(says);
        expect(await page.locator('#book-name').textContent()).toBe('Demo job');
      }
      await page.locator('#notices').getByRole('button', { name: 'Put away' }).click();
      expect(await notice.count()).toBe(0);
      await typeInto(page, 'Runs', 'N2', 'changed');
      await choose(page, own);
      const dialog = page.getByRole('dialog', { name: 'Open Maple Street.xlsx?' });
      await dialog.getByRole('button', { name: 'Cancel' }).click();
      expect((await shownIn(page, 'Runs', 'N2'))[0]).toEqual(['changed']);
      await choose(page, own);
      const { name } = await downloaded(page, () =>
        dialog.getByRole('button', { name: 'Download “Demo job” first' }).click(),
      );
      expect(name).toBe('Demo job.xlsx');
      await page.locator('#pane').getByText('Maple Street').waitFor();
      expect((await shownIn(page, 'Runs', 'N2'))[0]).toEqual(['']);
      await drop(page, file('measures.csv', 'Room,Length\nHall,3/4\nPorch,12\n'));
      await page.locator('#pane').getByText('measures', { exact: true }).waitFor();
      expect(await shownIn(page, 'measures', 'A1:B3')).toEqual([
        ['Room', 'Length'],
        ['Hall', '3/4'],
        ['Porch', '12'],
      ]);
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
