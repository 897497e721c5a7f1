import { expect, test } from '@jest/globals';

import { PAGE_TEST_MS, pageSuite, selectCell } from './page-suite.ts';

pageSuite('The sheet under a finger', ({ open }) => {
  test(
    'a finger moves the sheet, and a tap selects the cell under it',
    async () => {
      const { page, context } = await open();
      await selectCell(page, 'Runs', 'A2');
      const tools = await context.newCDPSession(page);
      await tools.send('Emulation.setTouchEmulationEnabled', { enabled: true });
      const finger = async (kind: 'Start' | 'Move' | 'End', x = 0, y = 0): Promise<void> => {
        const touchPoints = kind === 'End' ? [] : [{ x, y }];
        await tools.send('Input.dispatchTouchEvent', { type: `touch${kind}`, touchPoints });
      };
      const seen = (): Promise<readonly [number, string | undefined]> =>
        page.evaluate(() => {
          const sheet = grid.book().getActiveSheet();
          const { sheetViewStartRow } = sheet.getScrollState();
          return [sheetViewStartRow, sheet.getActiveRange()?.getA1Notation()] as const;
        });
      const box = (await page.locator('#grid-place canvas').first().boundingBox())!;
      const [x, y] = [box.x + 200, box.y + 400];
      await finger('Start', x, y);
      for (let step = 1; step <= 10; step++) await finger('Move', x, y - 30 * step);
      await finger('End');
      const [row, selected] = await seen();
      expect([row > 5, selected]).toEqual([true, 'A2']);
      await finger('Start', x, y);
      await finger('End');
      const after = await seen();
      expect(after[0]).toBe(row);
      expect(after[1]).toMatch(/^B\d+$/u);
      expect(after[1]).not.toBe('B2');
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
