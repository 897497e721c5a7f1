import { beforeAll, describe, expect, test } from '@jest/globals';
import { comparePlans } from '../../src/planning/compare/compare-plans.ts';
import type { Comparison } from '../../src/planning/compare/comparison.ts';
import { describeChanges } from '../../src/sheets/changes/changes-sheet.ts';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { planOf } from '../planning/make-job.ts';
import { DEMO, rowWith, sheetOf } from './sheet-jobs.ts';

const CHANGED = {
  ...DEMO,
  // A wall more of base, a rail otherwise, and no nosing; so many runs more that pages turn.
  runs: [
    ...DEMO.runs!.trimEnd()
      .split('\n')
      .filter((row) => !row.includes('shelf nosing')),
    ...Array.from(
      { length: 60 },
      (_, at) => `Annex,=wall ${at},Tall base,${40 + at / 4},wall,1,,,,,,,,`,
    ),
  ]
    .join('\n')
    .replace('desk rail,Picture rail,"7', 'desk rail,Picture rail,"6'),
};

let comparison: Comparison;
let workbook: WorkbookDescription;
let sheet: SheetDescription;
beforeAll(async () => {
  const [before, after] = [await planOf(DEMO), await planOf(CHANGED)];
  comparison = comparePlans(before, after);
  const plans = { before: 'quoted.xlsx', after: 'changed.xlsx' };
  workbook = describeChanges(comparison, plans, after.job, '2026-11-30');
  sheet = sheetOf(workbook, 'Changes');
});

/** What a difference or a sum of this sheet comes to, from the cells that it names. */
function worked(formula: string): number {
  const valueAt = (name: string): unknown => {
    const [, letters = '', row = ''] = /^([A-Z])(\d+)$/u.exec(name)!;
    const column = letters.charCodeAt(0) - 'A'.charCodeAt(0);
    return sheet.rows[Number(row) - 1]?.cells[column]?.value ?? 0;
  };
  const range = /^SUM\(([A-Z]+)(\d+):([A-Z]+)(\d+)\)$/u.exec(formula);
  if (range === null) {
    const [after, before] = formula.split('-').map((name) => Number(valueAt(name)));
    return after! - before!;
  }
  const [, column, from, , to] = range;
  let sum = 0;
  for (let row = Number(from); row <= Number(to); row++) {
    const value = valueAt(`${column!}${row}`);
    // A heading that a page repeats adds nothing.
    if (typeof value === 'number') sum += value;
  }
  return sum;
}

describe('The sheet Changes', () => {
  test('holds nothing that a workbook can not hold, and turns pages', () => {
    expect(checkDescription(cleanDescription(workbook))).toEqual([]);
    expect((sheet.print.breaksAfter ?? []).length).toBeGreaterThan(1);
  });

  test('every difference and every sum is that of the cells it names', () => {
    const formulas = sheet.rows.flatMap(({ cells }) =>
      cells.flatMap((one) => (one?.formula === undefined ? [] : [one])),
    );
    expect(formulas.length).toBeGreaterThan(80);
    for (const { formula, value } of formulas) {
      expect(Number(value)).toBeCloseTo(worked(formula!), 9);
    }
  });

  test('prices of rooms and of profiles come together to the totals, before and after', () => {
    const { before, after } = comparison.totals;
    const due = [before.priceCents / 100, after.priceCents / 100];
    const rows = sheet.rows.filter(({ cells }) => cells[0]?.value === 'Together');
    expect(rows).toHaveLength(2);
    const priced = rows.map(({ cells }) =>
      cells.flatMap((one) => (one?.style === 'total' ? [Number(one.value)] : [])),
    );
    for (const money of priced) {
      const more = money.at(-1)!;
      expect(money.slice(-3, -1)).toEqual(due);
      expect(more).toBeCloseTo(due[1]! - due[0]!, 9);
    }
  });

  test('each run that is otherwise has one row, and a name that begins like a formula stays text', () => {
    const { added, gone, changed } = comparison;
    const said = sheet.rows.map(({ cells }) => cells[0]?.value);
    for (const [word, runs] of [
      ['added', added],
      ['gone', gone],
      ['changed', changed],
    ] as const) {
      expect(said.filter((value) => value === word)).toHaveLength(runs.length);
    }
    expect(added).toHaveLength(60);
    const row = sheet.rows[rowWith(sheet, '=wall 0', 2)]!;
    expect(row.cells[2]).toMatchObject({ value: '=wall 0' });
    expect(row.cells[2]).not.toHaveProperty('formula');
  });

  test('of two plans that are alike it says so, and of nothing left to plan it makes no table', async () => {
    const done = { runs: 'Room,Run,Profile,Length,Done\nHall,north,Base,100,yes' };
    const plan = await planOf(done);
    const plans = { before: 'a', after: 'b' };
    const alike = describeChanges(comparePlans(plan, plan), plans, plan.job, '2026-11-30');
    expect(checkDescription(cleanDescription(alike))).toEqual([]);
    const texts = sheetOf(alike, 'Changes').rows.map(({ cells }) => cells[0]?.value);
    expect(texts).toContain('No run is added, gone or otherwise.');
    expect(texts).not.toContain('Together');
  });
});
