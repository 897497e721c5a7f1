import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { drawPlainSection } from '../../src/drawings/plain-section.ts';
import { drawSection } from '../../src/drawings/section.ts';
import { misplacedIn, settingFor, BLADE } from './drawn-coves.ts';

const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const textsIn = ({ shapes }: ReturnType<typeof drawPlainSection>): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe('The plain section of a molding', () => {
  test('is a block to scale, its two sizes and what it stands for beside it, nothing over another', () => {
    fc.assert(
      fc.property(
        size(1 / 4, 12),
        size(1 / 4, 4),
        fc.constantFrom('in' as const, 'mm' as const),
        fc.constantFrom(65, 85, 120, 200),
        (width, thickness, unit, paper) => {
          const drawing = drawPlainSection({
            size: { width, thickness },
            unit,
            decimalSign: '.',
            width: paper,
          });
          expect(misplacedIn(drawing)).toEqual([]);
          const [block] = drawing.shapes;
          if (block?.kind !== 'path') throw new Error('The block comes first.');
          const xs = block.points.map(([x]) => x);
          const ys = block.points.map(([, y]) => y);
          const across = Math.max(...xs) - Math.min(...xs);
          const high = Math.max(...ys) - Math.min(...ys);
          expect(across / high).toBeCloseTo(width / thickness, 6);
          expect(high).toBeLessThanOrEqual(paper / 2 + 1e-9);
        },
      ),
    );
  });

  test('says both sizes in the drawing, its title and its text alternative', () => {
    const drawing = drawPlainSection({
      size: { width: 5.25, thickness: 9 / 16 },
      ...INCHES_AND_POINT,
    });
    expect(textsIn(drawing)).toEqual(['shape as bought', '5 1/4"', '9/16"']);
    expect(drawing.title).toBe('Molding 5 1/4" by 9/16", seen from its end');
    expect(drawing.alt).toContain('5 1/4" wide and 9/16" thick');
    const metric = drawPlainSection({
      size: { width: 90 / 25.4, thickness: 18 / 25.4 },
      unit: 'mm',
      decimalSign: '.',
    });
    expect(textsIn(metric)).toEqual(['shape as bought', '90 mm', '18 mm']);
  });

  test('of no size is a fault of ours', () => {
    for (const width of [0, -1, Infinity, NaN]) {
      expect(() =>
        drawPlainSection({ size: { width, thickness: 1 }, ...INCHES_AND_POINT }),
      ).toThrow(RangeError);
    }
  });
});

describe('The section of a cove in a client’s words', () => {
  const view = {
    blade: BLADE,
    blank: { width: 5, thickness: 1.25, nearFlat: 0.875 },
    ...INCHES_AND_POINT,
    view: 'face up',
    words: 'client',
  } as const;
  const off = settingFor(2.875, 0.6875, 0.375);

  test('names the deep side where it is deeper, and no rail, saw or blade', () => {
    for (const tiltSide of ['left', 'right'] as const) {
      const drawing = drawSection({ ...view, setting: off, tiltSide });
      const words = textsIn(drawing).filter((text) => /[a-z]{3}/u.test(text));
      expect(words).toEqual(['deep side']);
      expect(`${drawing.title} ${drawing.alt}`).not.toMatch(/rail|saw|blade|tilt|feed|table/iu);
      // Face up a board from a left-tilt saw has its deep side at the right.
      const side = tiltSide === 'left' ? 'right' : 'left';
      expect(drawing.alt).toContain(`deeper toward the ${side}`);
      const deep = drawing.shapes.find((one) => one.kind === 'text' && one.text === 'deep side');
      if (deep?.kind !== 'text') throw new Error('No word names the deep side.');
      expect(deep.at[0] > drawing.width / 2).toBe(side === 'right');
      // The flat beside the far side: 5 less 2 7/8 less 7/8.
      expect(drawing.alt).toContain(
        side === 'right'
          ? '7/8" at the left and 1 1/4" at the right'
          : '1 1/4" at the left and 7/8" at the right',
      );
      expect(misplacedIn(drawing)).toEqual([]);
    }
  });

  test('names no side where both are alike', () => {
    const drawing = drawSection({
      ...view,
      setting: settingFor(2.875, 0.6875, 0),
      tiltSide: 'left',
    });
    expect(textsIn(drawing).filter((text) => /[a-z]{3}/u.test(text))).toEqual([]);
    expect(drawing.alt).toContain('the same on both sides');
  });
});
