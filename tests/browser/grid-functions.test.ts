import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type {} from '@univerjs/sheets-formula/facade';
import type { Browser, Page } from 'playwright-core';
import type { CatalogueEntry } from '../../src/functions/catalogue-entry.ts';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import type { Grid } from '../../src/hosts/grid/grid.ts';
import { isError } from '../functions/calls.ts';
import { builtPages } from './built-pages.ts';
import { bundleScript } from './bundle-script.ts';
import { browserTestsRun, startChromium } from './chromium.ts';
import { errorFormula, randomCalls, type ArgumentCell, type Call } from './grid-calls.ts';
import { serveFolder, type Served } from './serve-folder.ts';
import { count } from '../deep.ts';

declare global {
  // The page's own handle on its grid.
  var grid: Grid;
  var catalogue: readonly CatalogueEntry[];
}

const CALLS = count(1_000);
const SUITE_MS = 120_000;

/** A cell as the grid holds it: its value, and that it is a boolean. */
type Held = readonly [value: string | number | boolean | null, isBoolean: boolean];

(browserTestsRun ? describe : describe.skip)('The worksheet functions in the grid', () => {
  let browser: Browser | undefined;
  let served: Served | undefined;
  let page: Page;
  beforeAll(async () => {
    served = await serveFolder(builtPages());
    browser = await startChromium();
    page = await browser.newPage();
    // Sines differ in their last bit from one engine to the next: the core is asked in this one.
    await page.addInitScript(await bundleScript('core-in-page'));
    await page.goto(`${served.origin}/index.html`);
    await page.waitForFunction(() => 'grid' in globalThis);
  }, SUITE_MS);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  test.each(CATALOGUE.map((entry) => [entry.name, entry] as const))(
    `%s answers ${CALLS} random calls as the core does, to the last bit`,
    async (_, entry) => {
      const calls = randomCalls(entry, CALLS);
      const { answers, asked } = await askGrid(page, entry, calls);
      const differing = calls.flatMap(({ formula, cells }, at) => {
        const wanted = asked[at];
        const got = answers[at];
        return JSON.stringify(got) === JSON.stringify(wanted)
          ? []
          : [{ formula, cells: cells.map(({ value }) => value), wanted, got }];
      });
      expect(differing.slice(0, 3)).toEqual([]);
      // Enough of them are answered, not refused, that the comparison is one.
      const sound = calls.filter(({ expected }) => !isError(expected[0]![0]));
      expect(sound.length).toBeGreaterThan(CALLS / 6);
    },
    SUITE_MS,
  );

  test(
    'a changed cell changes what depends on it, through spilled cells too, and nothing else',
    async () => {
      const got = await page.evaluate(async () => {
        const book = grid.book();
        const sheet = book.insertSheet('Changes');
        const calculated = () => grid.api.getFormula().onCalculationResultApplied();
        const set = async (cell: string, value: string | number): Promise<void> => {
          const done = calculated();
          const range = sheet.getRange(cell);
          if (typeof value === 'string' && value.startsWith('=')) range.setFormula(value);
          else range.setValue(value);
          await done;
        };
        await set('A1', 3);
        await set('B1', '=COVE.SETUP(A1,0.5)');
        await set('B3', '=D1*2');
        await set('B4', '=COVE.APPROACH("junk",0.5)');
        await set('B5', '=COVE.APPROACH(A1,0.5)');
        await set('B6', '=IF(ISERROR(B4),"said so","missed")');
        const read = (row: number, column: number) =>
          grid.readCell(book, sheet.getSheetId(), row, column)?.v ?? null;
        const look = () => [read(0, 1), read(2, 1), read(3, 1), read(4, 1), read(5, 1)];
        const before = look();
        await set('A1', 4);
        const after = look();
        await set('A1', 'wide');
        return { before, after, bad: look() };
      });
      const answer = (width: number): number =>
        CATALOGUE.find(({ id }) => id === 'APPROACH')!.call([[width]], [[0.5]])[0]![0] as number;
      const passes = CATALOGUE.find(({ id }) => id === 'SETUP')!.call([[3]], [[0.5]])[0]![2];
      expect(got.before).toEqual([
        answer(3),
        (passes as number) * 2,
        '#VALUE!',
        answer(3),
        'said so',
      ]);
      expect(got.after[0]).toBe(answer(4));
      expect(got.after[3]).toBe(answer(4));
      expect(got.bad[0]).toBe('#VALUE!');
      expect(got.bad[4]).toBe('said so');
    },
    SUITE_MS,
  );
});

/** What the cells hold over which each answer should spill; and what the core answers in that browser. */
async function askGrid(
  page: Page,
  { id, name }: CatalogueEntry,
  calls: readonly Call[],
): Promise<{ answers: Held[][][]; asked: Held[][][] }> {
  const given = calls.map(({ formula, row, cells, ranges, expected }) => ({
    formula,
    row,
    ranges,
    cells: cells.map(({ value, ...place }) => ({ ...place, ...dataOf(value) })),
    rows: expected.length,
    columns: expected[0]!.length,
  }));
  return page.evaluate(
    async ({ id: called, name: sheetName, given: wanted }) => {
      const cellData: Record<number, Record<number, object>> = {};
      for (const { formula, row, cells } of wanted) {
        (cellData[row] ??= {})[0] = { f: formula };
        for (const { row: r, column, ...data } of cells) (cellData[r] ??= {})[column] = data;
      }
      const last = wanted.at(-1)!;
      const book = grid.book();
      const done = grid.api.getFormula().onCalculationResultApplied();
      const sheet = book.insertSheet(sheetName, {
        sheet: { cellData, rowCount: last.row + last.rows + 20, columnCount: 60 },
      });
      grid.api.getFormula().executeCalculation();
      await done;
      const sheetId = sheet.getSheetId();
      // The calculation that was told of may be one that an earlier change had begun.
      const isThere = (): boolean =>
        wanted.every(({ row }) => (grid.readCell(book, sheetId, row, 0)?.v ?? null) !== null);
      for (let tries = 0; tries < 200 && !isThere(); tries++) {
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      const answers = wanted.map(({ row, rows, columns }) =>
        Array.from({ length: rows }, (_, r) =>
          Array.from({ length: columns }, (__, c): Held => {
            const cell = grid.readCell(book, sheetId, row + r, c);
            return [cell?.v ?? null, Number(cell?.t) === 3];
          }),
        ),
      );
      book.deleteSheet(sheet);
      const entry = catalogue.find((one) => one.id === called)!;
      const asked = wanted.map(({ ranges }) =>
        entry.call(...ranges).map((cells) =>
          cells.map((cell): Held => {
            if (typeof cell === 'object') return [cell.code, false];
            return typeof cell === 'boolean' ? [cell ? 1 : 0, true] : [cell, false];
          }),
        ),
      );
      return { answers, asked };
    },
    { id, name, given },
  );
}

/** A cell as the grid takes it in: its kinds are 1 for text, 2 for numbers, 3 for booleans. */
function dataOf(value: ArgumentCell): { v?: string | number; t?: number; f?: string } {
  if (value === null) return {};
  if (typeof value === 'object') return { f: `=${errorFormula(value)}` };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: 3 };
  return { v: value, t: typeof value === 'string' ? 1 : 2 };
}
