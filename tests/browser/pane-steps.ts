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
  // A sheet of the workbook may be called as a tab of the pane.
  await page.locator(`[role=tab][data-title="${tab}"]`).click();
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
