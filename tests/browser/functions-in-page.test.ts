import { expect, test } from '@jest/globals';

import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';

browserSuite('The worksheet functions in the built page', ({ besideExcel, alone }) => {
  test(
    'are all registered under the ids of functions.json, whether or not the pane is looked at',
    async () => {
      const { page, context } = await besideExcel();
      const ids = await page.evaluate(() => Object.keys(registered));
      const { functions } = (await (
        await page.request.get(`${new URL(page.url()).origin}/functions.json`)
      ).json()) as {
        functions: { id: string }[];
      };
      expect(ids.sort()).toEqual(functions.map(({ id }) => id).sort());
      expect(ids).toHaveLength(CATALOGUE.length);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'answer as Excel calls them: ranges, omitted arguments, the object of the call at the end',
    async () => {
      const { page, context } = await besideExcel();
      const answers = await page.evaluate(() => {
        const invocation = { address: 'Sheet1!A1' };
        const ask = (id: string, ...given: unknown[]): unknown => {
          try {
            return registered[id]!(...given, invocation);
          } catch (error) {
            return error;
          }
        };
        return {
          // Regression values of our own: a 10 in blade, 1/8 kerf, 3 by 3/4 and 2 by 1/2, off 1/4.
          upright: ask('APPROACH', [[3]], [[0.75]], null, null, null, null),
          fromFront: ask('APPROACH', [['2']], [['1/2']], [['1/4']], null, null, [['front']]),
          tilts: ask('TILT', [[2], [2]], [['1/2']], [[0], [0.25]], null, null),
          bad: ask('APPROACH', [['wide']], [[0.75]], null, null, null, null),
          impossible: ask('APPROACH', [[30]], [[0.75]], null, null, null, null),
        };
      });
      const only = (matrix: unknown): number => (matrix as number[][])[0]![0]!;
      expect(only(answers.upright)).toBeCloseTo(33.345, 3);
      expect(only(answers.fromFront)).toBeCloseTo(90 - 24.146, 3);
      expect((answers.tilts as number[][]).map(([tilt]) => Math.round(tilt! * 1000))).toEqual([
        0, 32085,
      ]);
      expect(answers.bad).toMatchObject({ code: '#VALUE!' });
      expect(answers.impossible).toMatchObject({ code: '#N/A' });
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'are in the first script alone: neither React nor the planner is needed for them',
    async () => {
      const { page, context } = await alone();
      const first = await (await page.request.get(`${new URL(page.url()).origin}/main.js`)).text();
      expect(first).toContain('APPROACH');
      expect(first).not.toContain('react.transitional.element');
      expect(first).not.toContain('Production workbook');
      await context.close();
    },
    BROWSER_TEST_MS,
  );
});
