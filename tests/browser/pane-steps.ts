/** What a person does in the pane, step by step. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

/** Microsoft's own library, from the package's copy for development. */
export async function localLibrary(): Promise<string> {
  const { resolve } = createRequire(import.meta.url);
  return readFile(resolve('@microsoft/office-js/dist/office.js'), 'utf8');
}

/** A workbook with one sheet of the person's own; runs in the page. */
export function blankWorkbook(): void {
  const notes = testExcel.addSheet('Notes', [['Maple Street'], ['=not a formula', 3]]);
  testExcel.select(notes, 'B5');
}

export async function goTo(
  page: Page,
  tab: 'Job' | 'Profile' | 'Plan' | 'Functions',
): Promise<void> {
  await page.getByRole('tab', { name: tab }).click();
}

/** Makes the demo's input sheets, and waits until they are read. */
export async function demoWorkbook(page: Page): Promise<void> {
  await page.getByRole('button', { name: /Make the demo.s sheets/ }).click();
  await page
    .getByText(/^No problems/)
    .first()
    .waitFor();
}

const PLAN_WAIT_MS = 60_000;

/** @param seconds How long to look for a cheaper plan. */
export async function planJob(page: Page, button = 'Plan the job', seconds = 2): Promise<void> {
  await goTo(page, 'Plan');
  await page
    .getByRole('textbox', { name: 'Seconds to look for a cheaper plan' })
    .fill(String(seconds));
  await page.getByRole('button', { name: button }).click();
  const wait = { timeout: PLAN_WAIT_MS };
  await page.getByRole('heading', { name: 'What it comes to' }).waitFor(wait);
  await page.getByRole('button', { name: 'Plan again' }).waitFor(wait);
}

/** All there is on the sheets that the person has, the first ones, as text. */
export async function ownSheets(page: Page, count = 1): Promise<string> {
  const all = await page.evaluate(
    (most) => testExcel.snapshot(testExcel.workbook.sheets.slice(0, most)),
    count,
  );
  return JSON.stringify((JSON.parse(all) as { sheets: unknown }).sheets);
}

/** A room of six walls with its trim and openings, on the demo's sheets below what is there. */
export async function typeRoom(page: Page): Promise<void> {
  const walls = ["18'", "10'", "8'", "6'", "10'", "16'"].map((Length, at) => ({
    ...{ Room: 'Study', Wall: String(at + 1), Length },
    ...(at === 2 ? { Turn: 'outside' } : {}),
  }));
  await typeRows(page, 'Walls', walls);
  await typeRows(page, 'Openings', [
    { Room: 'Study', Wall: '5', Kind: 'door', Width: '36', Height: '80', Position: '42' },
    {
      Room: 'Study',
      Wall: '1',
      Kind: 'window',
      Width: '60',
      Height: '48',
      Position: '78',
      Sill: '32',
    },
  ]);
  await typeRows(page, 'Trim', [
    { Room: 'Study', Profile: 'Tall base', Where: 'floor' },
    { Room: 'Study', Profile: 'Picture rail', Where: 'height', Height: '72' },
    { Room: 'Study', Profile: 'Reading cove', Where: 'ceiling', 'Inside corners': 'miter' },
  ]);
  await page.getByRole('heading', { name: 'Runs of Study' }).waitFor();
}

/** Each row by its headings, under the last that has something in column A. */
async function typeRows(
  page: Page,
  sheet: string,
  rows: readonly Readonly<Record<string, string>>[],
): Promise<void> {
  await page.evaluate(
    async ([name, all]) => {
      const found = testExcel.workbook.sheets.find((one) => one.name === name)!;
      const holds = (line: number): boolean => (found.at(line, 0)?.value ?? '') !== '';
      let line = 1;
      while (holds(line)) line += 1;
      for (const row of all) {
        for (let column = 0; column < 20; column++) {
          const text = row[String(found.at(0, column)?.value ?? '')];
          const cell = `${String.fromCharCode(65 + column)}${line + 1}`;
          if (text !== undefined) await testExcel.types(found, cell, text);
        }
        line += 1;
      }
    },
    [sheet, rows] as const,
  );
}
