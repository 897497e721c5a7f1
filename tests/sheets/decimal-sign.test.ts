/** A shop that writes decimals with a comma reads them so wherever something is said in words. */
import { beforeAll, describe, expect, test } from '@jest/globals';
import { exportPlan } from '../../src/exports/export-plan.ts';
import type { DecimalSign } from '../../src/core/units/format-number.ts';
import type { Job } from '../../src/planning/job.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { describeClientCopy } from '../../src/sheets/client/client-sheet.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { jobOf, readTables, tablesOf } from '../planning/make-job.ts';
import { pointed, reworded, swapSigns, TYPED, worded } from './decimal-signs.ts';
import { randomTables } from './random-jobs.ts';
import { JOBS, sheetOf, textsOf } from './sheet-jobs.ts';
import { count } from '../deep.ts';

const RANDOM_JOBS = count(15);
async function planned(job: Job, decimalSign: DecimalSign): Promise<JobPlan> {
  const shop = { ...job.shop, decimalSign };
  const { plan, faults } = await planJob({ ...job, shop }, { budget: { steps: 20 } });
  if (plan === undefined) throw new Error(faults.map((one) => one.message).join('\n'));
  return plan;
}

function describeAll(plan: JobPlan): readonly WorkbookDescription[] {
  return [describePlan(plan, { keepsFormulas: true }), describeClientCopy(plan)];
}

describe('A shop with a decimal comma', () => {
  let comma: JobPlan;
  let point: JobPlan;
  beforeAll(async () => {
    const job = jobOf(JOBS['comma']!);
    comma = await planned(job, ',');
    point = await planned(job, '.');
  });

  test('reads no number with a point, on no sheet, in no drawing and in no alternative', () => {
    expect(pointed(describeAll(comma))).toEqual([]);
    // The search finds them where they are.
    expect(pointed(describeAll(point)).length).toBeGreaterThan(100);
  });

  test('has the sheets and drawings of a shop with a point, the signs apart', () => {
    expect(reworded(describeAll(comma), swapSigns)).toEqual(reworded(describeAll(point), worded));
  });

  test.each([
    ['Production', /^tilt \d+,\d+°, approach \d+,\d+°$/u],
    ['Production', /^each 950,5 mm, for trial cuts$/u],
    ['Pieces', /^[◥◤] miter 46,25°$/u],
    ['Set-ups', /^\d+,\d+°$/u],
    ['Set-ups', /^[←→] \d+,5 mm (?:left|right)$/u],
    ['Set-ups', /width \d+(?:,\d+)? mm (?:less|more)/u],
    ['Set-ups', /^\d+,\d$/u],
    ['Set-ups', /^Seen from above\. A scale with 90 square across then says \d+,\d+°/u],
    ['Set-ups', /^87,5°, inside, miter or cope: \d+ ends?$/u],
    ['Outlines', /^Cove 75,5 mm wide, 13 mm deep, in a blank 110,5 mm wide/u],
    ['Cutting', /, \d+,5 mm (?:to keep|waste)$/u],
    [
      'Cutting',
      /^board 5\/4 A, 317,5 mm wide, 3050,5 mm: Tulpe; order \d+, of which 82,5 % can be used$/u,
    ],
    ['Cutting', /^Each stick loses 12,5 mm at either end; 2,8 mm goes with each cut\./u],
    ['Client', /^Lengths are those .* next 0,5 mm\.$/u],
  ])('finds its own sign on %s: %s', (name, pattern) => {
    const texts = textsOf(sheetOf(describePlan(comma), name));
    expect(texts.filter((text) => pattern.test(text))).not.toEqual([]);
  });

  test('keeps what a person typed as it was typed', () => {
    const texts = describePlan(comma).sheets.flatMap(textsOf);
    for (const name of TYPED) expect(texts.some((text) => text.includes(name))).toBe(true);
  });

  test('finds its own sign in the lists, and points in the outlines for template makers', () => {
    const files = (plan: JobPlan) => new Map(exportPlan(plan).map((one) => [one.path, one.text]));
    const [ours, theirs] = [files(comma), files(point)];
    expect([...ours.keys()]).toEqual([...theirs.keys()]);
    for (const [path, text] of ours) {
      if (path.endsWith('.dxf')) expect(text).toBe(theirs.get(path));
      if (path.endsWith('.csv')) expect(pointed(text.split(/[;\r\n]+/u))).toEqual([]);
    }
    expect(ours.get('READ FIRST.txt')).toContain("This shop's least blank is 914,4 mm.");
    expect(ours.get('lists/pieces.csv')).toContain('inside miter, 46,25° from square');
  });

  test('is shown examples that it can type', () => {
    const { sheets } = describeInput(tablesOf(JOBS['comma']!));
    expect(pointed(sheets)).toEqual([]);
    const texts = sheets.flatMap(textsOf);
    expect(texts.some((text) => text.includes('90 mm, 2,29 m.'))).toBe(true);
    expect(texts).toContain('How fine the approach can be set. Usual: 0,5°');
  });

  test('is told what is wrong in its own sign', () => {
    const shop = 'Setting,Value\nunit,mm\ndecimal sign,","\nhourly rate,62.5\nkerf,-3';
    const profiles =
      'Profile,Make,Blank width,Blank thickness,Cove width,Cove depth,Species\nCove,cove,110,25,"250,5","12,5",Poplar';
    const { faults, cautions } = readTables({ shop, profiles });
    expect(faults.map(({ message }) => message)).toContain(
      'hourly rate: “62.5” has its decimals behind “.”, and the decimal sign is “,” here. Write it with that one; where the whole job uses the other, say so in Shop (decimal sign).',
    );
    expect(pointed(cautions.map(({ message }) => message))).toEqual([]);
    const planning = comma.cautions.map(({ message }) => message);
    expect(planning.some((message) => message.includes(': 850,5 mm long is shorter'))).toBe(true);
    const { cautions: usual } = readTables({ shop: 'Setting,Value\nunit,mm\ndecimal sign,","' });
    expect(usual.map(({ message }) => message).join()).toContain('angle scale step 0,5°');
  });
});

describe('Two shops that differ in their decimal sign alone', () => {
  test('have the same sheets and drawings, the signs apart, whatever the job', async () => {
    for (let seed = 1; seed <= RANDOM_JOBS; seed++) {
      const job = jobOf(randomTables(seed));
      const comma = describeAll(await planned(job, ','));
      const point = describeAll(await planned(job, '.'));
      expect({ seed, pointed: pointed(comma) }).toEqual({ seed, pointed: [] });
      expect({ seed, sheets: reworded(comma, swapSigns) }).toEqual({ seed, sheets: point });
    }
  });
});
