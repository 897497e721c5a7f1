import { describe, expect, test } from '@jest/globals';

import { planToJson } from '../../src/planning/plan-json.ts';
import { typeProfile } from '../../src/pane/profile/cove-fields.ts';
import { sayProfile } from '../../src/pane/profile/say-profile.ts';
import { saySetUp } from '../../src/pane/profile/say-set-up.ts';
import { describeSetUpFormulas } from '../../src/sheets/formulas/set-up-formulas.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { planOf, readTables, type Tables } from './make-job.ts';

/** One cove twice: to the deepest line, which a blank cell stands for, and to the blade's middle. */
const tablesOf = (to: readonly [string, string]): Tables => ({
  runs: 'Room,Run,Profile,Length\nHall,north,Line,90\nHall,south,Middle,90',
  profiles:
    'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth,Off-center,Off-center to,Class\n' +
    `Line,cove,4 1/2,1 1/4,Poplar,3 5/8,7/8,3/8,${to[0]},6/4\n` +
    `Middle,cove,4 1/2,1 1/4,Poplar,3 5/8,7/8,3/8,${to[1]},6/4`,
  shop: 'Setting,Value\nhourly rate,60',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have,Buy\nPoplar,board,6/4,6,12',5,board foot,,",
});

describe('Off-center to, on Profiles', () => {
  test('leads to the deepest line where it is blank or says so, and to the blade’s middle where that stands', async () => {
    for (const first of ['', 'Deepest line']) {
      const { profiles } = planToJson(await planOf(tablesOf([first, 'blade middle'])));
      const [line, middle] = profiles.map(({ setup }) => setup!);
      expect(line!.offCenter).toBeCloseTo(0.375, 9);
      expect(line!.deepestLine).toBeCloseTo(0.375, 9);
      expect(middle!.offCenter).toBeCloseTo(0.375, 9);
      expect(middle!.bladeMiddle).toBeCloseTo(0.375, 9);
      // From one kerf off center on the lines are half the kerf apart, foreshortened.
      for (const { approachDeg, tiltDeg, bladeMiddle, deepestLine } of [line!, middle!]) {
        const [a, b] = [approachDeg, tiltDeg].map((degree) => (degree * Math.PI) / 180);
        expect(bladeMiddle - deepestLine).toBeCloseTo((Math.cos(a!) * Math.cos(b!)) / 16, 9);
      }
      expect(middle!.tiltDeg).toBeLessThan(line!.tiltDeg - 2);
    }
  });

  test('is refused by name where it says anything else', () => {
    const { faults } = readTables(tablesOf(['', 'the peak']));
    expect(faults.map(({ argument }) => argument)).toEqual(['offCenterTo']);
  });

  test('is told in the pane and in the set-up’s formulas, and typed over as the line it cuts', async () => {
    const plan = await planOf(tablesOf(['', 'blade middle']));
    const [line, middle] = plan.profiles;
    if (line?.profile.make !== 'cove' || middle?.profile.make !== 'cove')
      throw new Error('no cove');
    expect(sayProfile(line.profile, INCHES_AND_POINT)).toContain(
      'deep, 3/8" (0.3750 in) off center.',
    );
    expect(sayProfile(middle.profile, INCHES_AND_POINT)).toContain(
      `deep, the blade's middle 3/8" (0.3750 in) off center.`,
    );
    const said = (setUp: typeof line.setUp): string[] =>
      saySetUp(setUp!, plan.job.shop)
        .blank.slice(0, 2)
        .map(({ label, value }) => `${label}: ${value}`);
    expect(said(line.setUp)[0]).toBe('Deepest line, off center: 3/8" (0.3750 in)');
    expect(said(middle.setUp)[1]).toBe('Blade\'s middle, off center: 3/8" (0.3750 in)');
    expect(typeProfile(line.profile, plan.job.shop).offCenter).toBe('3/8"');
    const typed = Number.parseFloat(typeProfile(middle.profile, plan.job.shop).offCenter);
    expect(typed).toBeCloseTo(middle.setUp!.cut.offCenter, 3);
    const labels = describeSetUpFormulas(plan)[0]!.rows.map(({ cells }) => cells[0]?.value);
    expect(labels).toContain('Off-center, 0 for none');
    expect(labels).toContain('Off-center of the blade’s middle, 0 for none');
  });
});
