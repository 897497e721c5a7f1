import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { toDegrees } from '../../src/core/units/angle.ts';
import { parseLength } from '../../src/core/units/length.ts';
import { answerProfile, answerTyped } from '../../src/pane/profile/answer-profile.ts';
import { chosenProfile, usualShop } from '../../src/pane/profile/chosen-profile.ts';
import {
  OWN_COVE,
  typeLength,
  typeProfile,
  usualCove,
} from '../../src/pane/profile/cove-fields.ts';
import { sayAnswer } from '../../src/pane/profile/say-answer.ts';
import { sayProfile } from '../../src/pane/profile/say-profile.ts';
import { saySetUp, saySlope } from '../../src/pane/profile/say-set-up.ts';
import type { PaneEvent } from '../../src/pane/state/pane-event.ts';
import { INITIAL_STATE, type PaneState } from '../../src/pane/state/pane-state.ts';
import { reduce } from '../../src/pane/state/reduce.ts';
import type { CoveProfile } from '../../src/planning/job.ts';
import { jobOf } from '../planning/make-job.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';

const shop = usualShop();
const typed = { ...usualCove(shop), width: '3', depth: '1/2', offCenter: '' };

describe('A cove of one’s own', () => {
  // The approach follows from the published triangle in tests/core/cove/published.test.ts: 41.827°.
  test('is answered with angles that say what they are measured from', () => {
    const { setUp, faults } = answerTyped(typed, shop);
    expect(faults).toEqual([]);
    const rows = saySetUp(setUp!, shop).saw.map(({ label, value }) => [label, value]);
    expect(rows.slice(0, 3)).toEqual([
      ['Approach, from the blade line', '41.83°'],
      ['Approach, from the front edge', '48.17°'],
      ['Tilt of the blade, from upright', '0°'],
    ]);
    expect(saySetUp(setUp!, shop).passes).toHaveLength(9);
    expect(sayAnswer(answerTyped(typed, shop))).toBe(
      'Approach 41.83° from the blade line, tilt 0° from upright, 9 passes.',
    );
  });

  test('with fields that cannot be read names each of them and has no numbers', () => {
    const { setUp, setting, faults, atFault } = answerTyped(
      { ...typed, width: '3/0', depth: '', kerf: 'thin', nearFlat: '-1' },
      shop,
    );
    expect(setUp).toBeUndefined();
    expect(setting).toBeUndefined();
    expect(faults).toHaveLength(4);
    expect(Object.keys(atFault).sort()).toEqual(['depth', 'kerf', 'nearFlat', 'width']);
    expect(atFault.width).toMatch(/^Cove width: “3\/0” divides by zero/u);
  });

  test('that no set-up cuts in this blank still has the setting its drawing needs', () => {
    const { setUp, setting, faults } = answerTyped({ ...typed, blankThickness: '1/2' }, shop);
    expect(setUp).toBeUndefined();
    expect(setting).toBeDefined();
    expect(faults.map(({ code }) => code)).toEqual(['cove.web-too-thin']);
  });

  test('never throws, and is either set up or has a reason, whatever is typed', () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('', '0', '-1', '3', '1/2', '9', '1e9', '90 mm', '1000', '3/0', 'NaN', '∞'),
    );
    const any = fc.record({
      width: text,
      depth: text,
      offCenter: text,
      blankWidth: text,
      blankThickness: text,
      nearFlat: text,
      bladeDiameter: text,
      kerf: text,
    });
    fc.assert(
      fc.property(any, (fields) => {
        const { setUp, faults } = answerTyped(fields, shop);
        expect(setUp === undefined).toBe(faults.length > 0);
        // What was given is quoted, whatever it was.
        for (const { message } of faults)
          expect(message.replace(/“.*”/su, '')).not.toMatch(/NaN|undefined|Infinity/u);
      }),
    );
  });

  test('begun from a profile of the job gives that profile’s own set-up', () => {
    const job = jobOf(DEMO);
    for (const profile of job.profiles.filter((one) => one.make !== 'buy')) {
      const own = answerTyped(typeProfile(profile, job.shop), job.shop);
      const ofJob = answerProfile(profile, job.shop);
      expect(own.setUp?.setting).toEqual(ofJob.setUp?.setting);
      expect(own.setUp?.flats).toEqual(ofJob.setUp?.flats);
      expect(own.setUp?.rails).toEqual(ofJob.setUp?.rails);
    }
  });
});

describe('A length prefilled into a field', () => {
  test('reads back to the same 64th of an inch, or thousandth of a millimetre, in any shop', () => {
    const look = fc.record({
      unit: fc.constantFrom('in' as const, 'mm' as const),
      decimalSign: fc.constantFrom('.' as const, ',' as const),
    });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 200 }), look, (sixtyFourths, its) => {
        const inches = sixtyFourths / 64;
        const read = parseLength(typeLength(inches, its), 'width', its);
        expect(read.ok).toBe(true);
        if (read.ok) expect(Number(read.value)).toBeCloseTo(inches, its.unit === 'mm' ? 4 : 12);
      }),
    );
  });

  test('that is no 64th is said in decimals', () => {
    expect(typeLength(1.23456, { unit: 'in', decimalSign: '.' })).toBe('1.2346"');
    expect(typeLength(1.23456, { unit: 'in', decimalSign: ',' })).toBe('1,2346"');
    expect(typeLength(3.5, { unit: 'mm', decimalSign: ',' })).toBe('88,9 mm');
  });
});

describe('The numbers of a set-up', () => {
  const job = jobOf(DEMO);
  const coves = job.profiles.filter((one) => one.make !== 'buy');
  const profile = coves.find(({ name }) => name === 'Reading cove')!;
  const setUp = answerProfile(profile, job.shop).setUp!;

  test('say both approaches, and they are 90° together', () => {
    const [fromBlade, fromFront] = saySetUp(setUp, job.shop).saw;
    expect(Number.parseFloat(fromBlade!.value)).toBeCloseTo(toDegrees(setUp.setting.approach), 2);
    expect(Number.parseFloat(fromBlade!.value) + Number.parseFloat(fromFront!.value)).toBeCloseTo(
      90,
      2,
    );
  });

  test('have a mark for each rail on each edge of a known table', () => {
    expect(
      saySetUp(setUp, job.shop)
        .rails.slice(0, 4)
        .map(({ label }) => label),
    ).toEqual([
      'Near rail, front edge',
      'Near rail, back edge',
      'Far rail, front edge',
      'Far rail, back edge',
    ]);
  });

  test('say by the feed itself that it runs front to back only', () => {
    const { setUp } = answerTyped(typed, shop);
    const feed = saySetUp(setUp!, shop).saw.find(({ label }) => label.startsWith('Feed'));
    expect(feed?.note).toMatch(/^front to back only; /u);
  });

  test('have no marks without a table, and say where to give it', () => {
    const { rails } = saySetUp(answerTyped(typed, shop).setUp!, shop);
    expect(rails).toHaveLength(1);
    expect(rails[0]!.note).toMatch(/Shop does not say how far .*\(table front, table back\)\.$/u);
  });

  test('have the cuts up a slope where the profile has one, each angle with its origin', () => {
    const profiles = (slope: string) =>
      `Profile,Make,Blank width,Blank thickness,Cove width,Cove depth,Spring,Slope\nCove,crown cove,4 1/4,1,2 3/4,5/8,45,${slope}`;
    const runs = 'Room,Profile,Length\nHall,Cove,90';
    const stock = "For,Kind,Length,Price,Per\nCove,stick,12',5,foot";
    const said = (slope: string) => {
      const [profile] = jobOf({ profiles: profiles(slope), runs, stock }).profiles;
      return saySlope(profile as CoveProfile, INCHES_AND_POINT);
    };
    expect(said('')).toBeUndefined();
    const { title, turns, raked, notes } = said('7.2')!;
    expect(title).toBe('Up a slope of 7.2° from level, flat on its back');
    // Spring 45°, two slopes of 7.2°: 5.105°, recomputed [D] (tests/core/crown/sloped-crown.test.ts).
    expect(turns[1]).toEqual({
      label: "Slope to slope, 165.6° in the wall's plane",
      value: 'miter 5.1°, bevel 5.08°',
      note: 'miter from square, bevel from upright',
    });
    expect(raked.map(({ label }) => label)).toContain('Falling, lower edge to upper');
    expect(notes).toContain('bevel from upright 3.6° level to slope');
  });

  test('come with the profile’s sizes in words', () => {
    expect(sayProfile(profile, INCHES_AND_POINT)).toBe(
      'Cove 3 5/8" (3.6250 in) wide, 7/8" (0.8750 in) deep, 3/8" (0.3750 in) off center. Blank of Poplar 4 1/2" wide, 1 1/4" thick. Note: Deep side toward the far rail',
    );
  });
});

describe('The profile that is worked on', () => {
  test('is a cove of one’s own where no job is read, with the usual saw', () => {
    const { name, coves, answer } = chosenProfile(INITIAL_STATE);
    expect(name).toBe(OWN_COVE);
    expect(coves).toEqual([]);
    expect(answer.setUp).toBeDefined();
  });

  test('begins a cove of one’s own in the shop’s unit and for the shop’s own blade', () => {
    const metric = {
      ...shop,
      unit: 'mm' as const,
      bladeDiameter: new Fraction(1275, 127),
      kerf: new Fraction(16, 127),
    };
    expect(usualCove(metric)).toMatchObject({
      width: '90 mm',
      bladeDiameter: '255 mm',
      kerf: '3.2 mm',
    });
    for (const its of [shop, metric]) {
      const { setUp, faults } = answerTyped(usualCove(its), its);
      expect(faults).toEqual([]);
      expect(setUp?.blade.diameter).toBeCloseTo(Number(its.bladeDiameter), 4);
    }
  });

  test('stays the cove that somebody types while a workbook is found and read', () => {
    const width = '3 1/4';
    const state = [
      { type: 'own cove typed', typed: { ...usualCove(shop), width } },
      { type: 'workbook opened', host: {} as never },
    ].reduce<PaneState>((one, event) => reduce(one, event as PaneEvent), INITIAL_STATE);
    expect(state.profile.typed?.width).toBe(width);
    expect(chosenProfile(state).name).toBe(OWN_COVE);
  });

  test('of the job and back again leaves what was typed as it was', () => {
    const width = '3 1/4';
    const state = [
      { type: 'own cove typed', typed: { ...usualCove(shop), width } },
      { type: 'profile chosen', name: 'Reading cove' },
    ].reduce<PaneState>((one, event) => reduce(one, event as PaneEvent), INITIAL_STATE);
    expect(chosenProfile(state).typed.width).toBe(width);
  });

  test('stays drawn while a size of it is half typed, its fault at its field', () => {
    const read = { ...usualCove(shop), width: '3 1/4' };
    const state = ['3 1/', 'wide', '3 1/2']
      .map((width): PaneEvent => ({ type: 'own cove typed', typed: { ...read, width } }))
      .reduce<PaneState[]>(
        (all, event) => [...all, reduce(all.at(-1)!, event)],
        [reduce(INITIAL_STATE, { type: 'own cove typed', typed: read })],
      );
    const [first, half, none, whole] = state.map(chosenProfile);
    expect(first!.before).toBeUndefined();
    for (const one of [half!, none!]) {
      expect(one.answer.setUp).toBeUndefined();
      expect(Object.keys(one.answer.atFault)).toEqual(['width']);
      expect(one.before?.profile?.cove.width).toBe(3.25);
    }
    expect(whole!.before).toBeUndefined();
  });
});
