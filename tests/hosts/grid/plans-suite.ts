/** Written plans, worked out by the grid: another engine than any that our formulas were checked in. */
import { describe, expect, test } from '@jest/globals';

import type { GridPage } from '../../browser/grid-host-page.ts';
import { describePlan } from '../../../src/sheets/describe-plan.ts';
import type { JobPlan } from '../../../src/planning/job-plan.ts';
import { count } from '../../deep.ts';
import { planOf } from '../../planning/make-job.ts';
import { planCut, withLongerEnds } from '../../sheets/cut-plans.ts';
import { JOBS } from '../../sheets/sheet-jobs.ts';
import { valueOf } from '../excel-workbooks.ts';
import { inGrid } from './persons-in-grid.ts';
import { cellName } from '../../../src/core/cells/cell-range.ts';
import { savedValue } from './saved-cells.ts';

/**
 * For the deep run: what their formulas do, those of others do too. Runs that are done are in “unused”,
 * millimetres and crowns in “comma”; LibreOffice works all of them out (tests/sheets/recalculated).
 */
const LIKE_OTHERS = ['tiny', 'done', 'sprung', 'millimetres'];

export function testGridPlans({ page, host, open, saved, settle }: GridPage): void {
  describe('A plan written into the grid', () => {
    const shared = JOBS['shared']!;
    const plans: Readonly<Record<string, () => Promise<JobPlan>>> = {
      ...Object.fromEntries(
        Object.entries(JOBS)
          .filter(([name]) => count(1, 0) === 1 || !LIKE_OTHERS.includes(name))
          .map(([name, tables]) => [name, () => planOf(tables)]),
      ),
      'begun and changed': () => planCut(shared, withLongerEnds(shared)),
    };
    test.each(Object.keys(plans))(
      'has its formulas worked out to what stands in it: %s',
      async (name) => {
        const description = describePlan(await plans[name]!(), { keepsFormulas: true });
        await open(inGrid([{ name: 'Notes', rows: [] }]));
        valueOf(await host.write(description, { owner: 'tool', replace: [] }));
        // What stands there is taken away first, so that what is read was worked out here.
        await page().evaluate(() => gridTest.blankAnswers());
        await settle();
        const book = await saved();
        const formulas = description.sheets.flatMap(({ name, rows }) =>
          rows.flatMap(({ cells }, row) =>
            cells.flatMap((cell, column) =>
              cell?.formula === undefined ? [] : [{ name, at: cellName(row, column), ...cell }],
            ),
          ),
        );
        const differing = formulas.flatMap(({ name, at, formula, value }) => {
          const got = savedValue(book, name, at);
          return agree(got, value) ? [] : [{ name, at, formula, value, got }];
        });
        expect(differing).toEqual([]);
        expect(formulas.length).toBeGreaterThan(20);
      },
    );
  });
}

function agree(got: unknown, wanted: string | number | boolean | null): boolean {
  if (typeof got !== 'number' || typeof wanted !== 'number') return got === wanted;
  return Math.abs(got - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
}
