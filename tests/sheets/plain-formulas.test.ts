/** References and sums of a plan's sheets, worked out without any spreadsheet. */
import { beforeAll, describe, expect, test } from '@jest/globals';

import { parseRange } from '../../src/core/cells/cell-range.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { CellValue, WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { planOf } from '../planning/make-job.ts';
import { cellAt, JOBS, sheetOf } from './sheet-jobs.ts';

const REFERENCE = /^(?:'([^']+)'!)?([A-Z]{1,2}\d+)$/u;
const SUM = /^(ROUND\()?SUM\(([A-Z]{1,2}\d+(?::[A-Z]{1,2}\d+)?)\)(,2\))?$/u;

const workbooks = new Map<string, WorkbookDescription>();

beforeAll(async () => {
  for (const job of Object.keys(JOBS)) {
    workbooks.set(job, describePlan(await planOf(JOBS[job]!, { budget: { steps: 20 } })));
  }
});

/** The numbers of a range, text passed over. */
function numbersIn(workbook: WorkbookDescription, sheet: string, range: string): number[] {
  const { top, left, bottom, right } = parseRange(range)!;
  const found: number[] = [];
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const value = cellAt(sheetOf(workbook, sheet), row, column)?.value;
      if (typeof value === 'number') found.push(value);
    }
  }
  return found;
}

/** What a plain formula comes to; undefined for any other. */
function workedOut(workbook: WorkbookDescription, sheet: string, formula: string) {
  const reference = REFERENCE.exec(formula);
  if (reference !== null) {
    const { top, left } = parseRange(reference[2]!)!;
    return cellAt(sheetOf(workbook, reference[1] ?? sheet), top, left)?.value ?? null;
  }
  const sum = SUM.exec(formula);
  if (sum === null || (sum[1] === undefined) !== (sum[3] === undefined)) return undefined;
  return numbersIn(workbook, sheet, sum[2]!).reduce((all, value) => all + value, 0);
}

function agree(worked: CellValue | null, shown: CellValue | null): boolean {
  if (typeof worked !== 'number' || typeof shown !== 'number') return worked === shown;
  return Math.abs(worked - shown) < 0.005 + 1e-9 * Math.abs(shown);
}

describe('Every plain reference and sum', () => {
  test.each(Object.keys(JOBS))('comes to what stands in its cell: %s', (job) => {
    const workbook = workbooks.get(job)!;
    let looked = 0;
    const wrong = workbook.sheets.flatMap(({ name, rows }) =>
      rows.flatMap(({ cells }, row) =>
        cells.flatMap((cell, column) => {
          if (cell?.formula === undefined) return [];
          const worked = workedOut(workbook, name, cell.formula);
          if (worked === undefined) return [];
          looked += 1;
          if (agree(worked, cell.value)) return [];
          return [{ name, row: row + 1, column, formula: cell.formula, worked, value: cell.value }];
        }),
      ),
    );
    expect(wrong).toEqual([]);
    expect(looked).toBeGreaterThan(20);
  });
});
