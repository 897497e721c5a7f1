/** What Set-ups says of moldings that go up a sloped ceiling: their cuts, and how high their raked profiles are. */
import { describe, expect, test } from '@jest/globals';
import { checkDescription } from '../../src/sheets/grammar/check/check-description.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { describeSetUps } from '../../src/sheets/set-ups/set-ups-sheet.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { textsOf } from './sheet-jobs.ts';

const crown = (slope: string): Tables => ({
  runs: 'Room,Profile,Length\nHall,Crown,90',
  profiles: `Profile,Make,Blank width,Blank thickness,Cove width,Cove depth,Spring,Slope\nCrown,crown cove,5 1/4,1 1/4,4,5/8,38,${slope}`,
  stock: "For,Kind,Length,Price,Per\nCrown,stick,12',5,foot",
});

async function setUpsOf(tables: Tables): Promise<SheetDescription> {
  return describeSetUps(await planOf(tables));
}

describe('A set-up page', () => {
  test('of a crown up a slope has its cuts, flat and nested, and how high its raked profiles are', async () => {
    const texts = textsOf(await setUpsOf(crown('4 in 12')));
    // By hand, spring 38°, pitch 18.43495°: atan(cos 38° tan 9.21747°), asin(sin 38° sin 9.21747°).
    const rows: Record<string, string[]> = {
      "Level to slope, 161.57° in the wall's plane": ['7.29°', '5.66°'],
      "Slope to slope, 143.13° in the wall's plane": ['14.72°', '11.23°'],
      // 5 1/4 cos(38° - 18.43495°) = 4.947, 5 1/4 cos(38° + 18.43495°) = 2.903
      'Rising, lower edge to upper': ['4 15/16"'],
      'Falling, lower edge to upper': ['2 29/32"'],
    };
    for (const [label, values] of Object.entries(rows)) {
      const at = texts.indexOf(label);
      expect([label, texts.slice(at + 1, at + 1 + values.length)]).toEqual([label, values]);
    }
    expect(texts).toContain('Up a slope of 18.43° from level, flat on its back');
    expect(texts.join(' ')).toContain(
      'Nested, upside down, the miter square: bevel from upright 9.22° level to slope, 18.43° slope to slope.',
    );
    // 5 1/4 cos 38° · tan 9.21747° = 0.6714, · tan 18.43495° = 1.379
    expect(texts.join(' ')).toContain('by 21/32" level to slope, 1 3/8" slope to slope');
    const level = textsOf(await setUpsOf(crown('')));
    expect(level.join(' ')).not.toMatch(/slope/iu);
  });

  // Published 4.45° for two slopes of 7.2° at spring 45° divides an angle (tests/core/crown/sloped-crown.test.ts).
  test.each([
    ['buy,4,3/4,45', '2.55° 2.54°', '5.1° 5.08°'],
    ['buy,4,3/4,', '3.6° 0°', '7.2° 0°'],
    ['buy,,,', '3.6° 0°', '7.2° 0°'],
  ])('of a molding bought as %s for a slope of 7.2° says %s and %s', async (row, level, slope) => {
    const sheet = await setUpsOf({
      runs: 'Room,Profile,Length\nHall,Trim,90',
      profiles: `Profile,Make,Blank width,Blank thickness,Spring,Slope\nTrim,${row},7.2`,
      stock: "For,Kind,Length,Price,Per\nTrim,stick,12',5,foot",
    });
    const texts = textsOf(sheet);
    const after = (label: string): string => {
      const at = texts.findIndex((text) => text.startsWith(label));
      return texts.slice(at + 1, at + 3).join(' ');
    };
    expect([after('Level to'), after('Slope to')]).toEqual([level, slope]);
    expect(texts.join(' ')).toContain('Shape as bought: each point by COVE.RAKED');
    expect(texts.some((text) => text.startsWith('Rising'))).toBe(row !== 'buy,,,');
    expect(texts.join(' ')).not.toContain('4.45');
  });

  test.each(['letter', 'a4'])(
    'up a slope is a page of %s with its two drawings, and one of its corners',
    async (paper) => {
      const sheet = await setUpsOf({
        ...crown('4 in 12'),
        shop: `Setting,Value\nhourly rate,60\ntable front,12\ntable back,15\npaper,${paper}`,
      });
      expect(sheet.print.breaksAfter).toHaveLength(1);
      expect(sheet.drawings).toHaveLength(2);
      expect(checkDescription({ version: 1, title: 'crown', sheets: [sheet] })).toEqual([]);
    },
  );
});
