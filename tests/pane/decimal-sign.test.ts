/** What the pane says to a shop that writes decimals with a comma. */
import { describe, expect, test } from '@jest/globals';
import type { LengthUnit } from '../../src/core/units/length-unit.ts';
import type { DecimalSign } from '../../src/core/units/format-number.ts';
import { sayPlan } from '../../src/cli/say-plan.ts';
import { answerProfile } from '../../src/pane/profile/answer-profile.ts';
import { sayAnswer } from '../../src/pane/profile/say-answer.ts';
import { sayProfile } from '../../src/pane/profile/say-profile.ts';
import { saySetUp } from '../../src/pane/profile/say-set-up.ts';
import { sayProgress } from '../../src/pane/plan/say-progress.ts';
import { sayProfiles, sayResult } from '../../src/pane/plan/say-result.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { jobOf } from '../planning/make-job.ts';
import { pointed, reworded, swapSigns, worded } from '../sheets/decimal-signs.ts';
import { JOBS } from '../sheets/sheet-jobs.ts';

const job = jobOf(JOBS['comma']!);

/** All that the profile's tab says of each cove. */
function sayCoves(unit: LengthUnit, decimalSign: DecimalSign): unknown[] {
  const shop = { ...job.shop, unit, decimalSign };
  const coves = job.profiles.filter((profile) => profile.make !== 'buy');
  return coves.map((profile) => {
    const tight = answerProfile(profile, { ...shop, leastWeb: shop.leastWeb.mul(9) });
    const answer = answerProfile(profile, shop);
    return [
      sayProfile(profile, shop),
      sayAnswer(answer),
      tight.faults.map(({ message }) => message),
      answer.cautions.map(({ message }) => message),
      ...(answer.setUp === undefined ? [] : [saySetUp(answer.setUp, shop)]),
    ];
  });
}

async function sayPlanned(decimalSign: DecimalSign): Promise<unknown[]> {
  const shop = { ...job.shop, decimalSign };
  const { plan } = await planJob({ ...job, shop }, { budget: { steps: 0 } });
  return [sayResult(plan!), sayProfiles(plan!), sayPlan(plan!)];
}

describe('A shop with a decimal comma', () => {
  test.each(['mm', 'in'] as const)('reads no point in the set-up of a cove, in %s', (unit) => {
    const [comma, point] = [sayCoves(unit, ','), sayCoves(unit, '.')];
    expect(pointed(comma)).toEqual([]);
    expect(pointed(point).length).toBeGreaterThan(20);
    expect(reworded(comma, swapSigns)).toEqual(reworded(point, worded));
  });

  test('reads no point in what a plan comes to, in the pane and at the command line', async () => {
    const [comma, point] = [await sayPlanned(','), await sayPlanned('.')];
    expect(pointed(comma)).toEqual([]);
    expect(pointed(point).length).toBeGreaterThan(5);
    expect(reworded(comma, swapSigns)).toEqual(reworded(point, worded));
  });

  test('reads the gap of a planning under way in its own sign', () => {
    const progress = {
      done: 0,
      of: 1,
      profile: 'Base',
      phase: '',
      costCents: 10_230,
      boundCents: 10_000,
      stopping: false,
    };
    expect(sayProgress(progress, { currency: '€', decimalSign: ',' }).cost).toBe(
      'Lumber and its labor so far €102,30; it can’t be less than €100,00 (a gap of 2,3 %).',
    );
  });
});
