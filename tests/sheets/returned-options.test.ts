import { beforeAll, describe, expect, test } from '@jest/globals';
import { isPriced } from '../../src/planning/job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type { CopyFile } from '../../src/sheets/client/copy-sheet.ts';
import { readCopy } from '../../src/sheets/client/read-copy.ts';
import { changedLines, takenUp } from '../../src/planning/compare/returned-copy.ts';
import { planOf } from '../planning/make-job.ts';
import { JOBS } from './sheet-jobs.ts';
import { STAMP, copyOf, read, typed, withRows, lineOf } from './returned-copies.ts';

describe('Options on a copy that comes back', () => {
  let plan: JobPlan;
  let copy: CopyFile;
  let boxes: string[];

  beforeAll(async () => {
    plan = await planOf(JOBS['millimetres']!);
    copy = copyOf(plan);
    const heads = lineOf(copy, 'Option');
    boxes = plan.options.filter(isPriced).map((_, at) => `C${heads + 1 + at}`);
    expect(boxes.length).toBeGreaterThan(1);
  });

  test('are taken up by a 1, and the total is that of the plan with the option', () => {
    expect(read(plan, copy).options.map(({ isTaken }) => isTaken)).toEqual(boxes.map(() => false));
    const [first] = plan.options.filter(isPriced);
    const back = read(plan, typed(copy, { [boxes[0]!]: 1 }));
    expect(takenUp(back)).toMatchObject([
      { name: first!.option.name, priceCents: first!.more.priceCents, where: { cell: boxes[0] } },
    ]);
    const { priceCents, taxCents } = first!.plan.totals;
    expect(back.price.now).toMatchObject({
      priceCents,
      taxCents,
      toPayCents: priceCents + taxCents,
    });
    expect(back.price.quoted.priceCents).toBe(plan.totals.priceCents);
    expect(changedLines(back)).toEqual([]);
    // Its own sums show what they showed, since no program worked them out here.
    expect(back.findings.map(({ code }) => code)).toEqual(['copy.not-worked-out']);
  });

  test.each([
    [2, 'number.too-large'],
    [-1, 'number.negative'],
    [0.5, 'number.not-whole'],
    ['yes', 'copy.quantity-text'],
    [null, 'copy.quantity-blank'],
  ] as const)('with %p in their box are refused at it', (value, code) => {
    const outcome = readCopy(plan, STAMP, typed(copy, { [boxes[1]!]: value }), 'copy.xlsx');
    expect(outcome.ok ? [] : outcome.faults).toMatchObject([{ code, where: { cell: boxes[1] } }]);
  });

  test('whose row was taken out are not taken up, and that is said', () => {
    const line = Number(boxes[0]!.slice(1));
    const rows = copy.sheet.rows.filter((row) => row.line !== line);
    const back = read(plan, withRows(copy, rows));
    expect(takenUp(back)).toEqual([]);
    expect(back.findings.map(({ code }) => code)).toContain('copy.row-gone');
  });
});
