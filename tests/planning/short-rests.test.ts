import { describe, expect, test } from '@jest/globals';

import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { PLAIN, planOf } from './make-job.ts';

/** A cove whose boards are 6 ft: a spare of 36 and a piece of 30 just go on one. */
const planWith = (runs: string, length = "6'"): Promise<JobPlan> =>
  planOf({
    ...PLAIN,
    runs: `Room,Run,Profile,Length,Measured as\n${runs}`,
    shop: 'Setting,Value\nhourly rate,60\nend allowance,0\nleast blank length,36\nset-up spare,36\nend trim,1\ncrosscut kerf,1/8',
    stock: `For,Kind,Class,Width,Length,Price,Per\nPoplar,board,4/4,5,${length},5,board foot`,
  });
const codes = (plan: JobPlan): string[] => plan.cautions.map(({ code }) => code);
const textsOf = (plan: JobPlan): string[] =>
  describePlan(plan)
    .sheets.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells))
    .flatMap((cell) => (typeof cell?.value === 'string' ? [cell.value] : []));

describe('A stick whose set-up spare would leave too short a blank', () => {
  test('is told of, and is coved whole, by the plan and on its sheets', async () => {
    const plan = await planWith('Hall,north,Cove,30,finished');
    // By hand: 72 - 1 - 36 - 1/8 = 34 7/8.
    const told = plan.cautions.find(({ code }) => code === 'job.spare-leaves-short');
    expect([told?.argument, told?.message]).toEqual([
      { own: 'Cove' },
      "Cove: with its set-up spare crosscut off, the rest of that stick is 34 7/8 in, shorter than the shop's least blank of 36 in. Leave the spare on, make trial cuts in other scrap, and cut the cove on the whole stick.",
    ]);
    const texts = textsOf(plan);
    expect(
      texts.some((text) => text.includes("Don't crosscut the set-up spare of Cove off first")),
    ).toBe(true);
    expect(texts.some((text) => text.includes('Crosscut the set-up spare off first'))).toBe(false);
    expect(texts).not.toContain('Crosscut the set-up spares off');
    expect(texts).not.toContain('for trial cuts');
    // On the cove's own page, too: whoever stands at the saw has that one.
    const setUps = describePlan(plan).sheets.find(({ name }) => name === 'Set-ups')!;
    const cautions = setUps.rows.flatMap(({ cells }) =>
      cells.flatMap((cell) => (cell?.style === 'caution' ? [cell.value] : [])),
    );
    expect(cautions).toContain(told!.message);
    expect(checkJobPlan(plan)).toEqual([]);
    const silent = { ...plan, cautions: plan.cautions.filter((one) => one !== told) };
    expect(checkJobPlan(silent)).toEqual([
      'The rest beside the spare of Cove is not told of right.',
    ]);
  });

  test('is nothing to tell of where the rest is long enough, or nothing is cut from it', async () => {
    const long = await planWith('Hall,north,Cove,30,finished', "8'");
    const alone = await planWith('Hall,north,Cove,60,finished');
    for (const plan of [long, alone]) {
      expect(codes(plan)).not.toContain('job.spare-leaves-short');
      expect(checkJobPlan(plan)).toEqual([]);
      expect(textsOf(plan).some((one) => one.includes('Crosscut the set-up spare off first'))).toBe(
        true,
      );
    }
  });
});
