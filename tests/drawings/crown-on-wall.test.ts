import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { radians, toRadians, degrees } from '../../src/core/units/angle.ts';
import { drawCrownOnWall } from '../../src/drawings/crown-on-wall.ts';
import { BLADE, misplacedIn, settingFor } from './drawn-coves.ts';

// Small beside the face: back bevels leave wood behind it at every spring drawn here.
const setting = settingFor(1, 0.25, 0);
const textsIn = ({ shapes }: ReturnType<typeof drawCrownOnWall>): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe('A crown on the wall', () => {
  test('stands at its spring to scale, nothing over another', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 8, noNaN: true }),
        fc.integer({ min: 20, max: 70 }),
        fc.constantFrom('in' as const, 'mm' as const),
        fc.constantFrom(65, 85, 120),
        fc.boolean(),
        (face, spring, unit, width, mayTurn) => {
          const drawing = drawCrownOnWall({
            blade: BLADE,
            setting,
            blank: { width: face, thickness: 1.25 },
            lower: 'near',
            spring: toRadians(degrees(spring)),
            mayTurn,
            unit,
            decimalSign: '.',
            width,
          });
          expect(misplacedIn(drawing)).toEqual([]);
          expect(textsIn(drawing).includes('either edge may go up')).toBe(mayTurn);
          expect(/either edge may go up/u.test(drawing.alt)).toBe(mayTurn);
          const [wood] = drawing.shapes;
          if (wood?.kind !== 'path') throw new Error('The section comes first.');
          const xs = wood.points.map(([x]) => x);
          const ys = wood.points.map(([, y]) => y);
          const out = Math.max(...xs) - Math.min(...xs);
          const down = Math.max(...ys) - Math.min(...ys);
          // By hand: a face leaning by the spring goes out by its sine and down by its cosine.
          expect(out / down).toBeCloseTo(Math.tan((spring * Math.PI) / 180), 6);
          // Its first point is the edge on the wall: at the left, and lowest.
          expect(wood.points[0]![0]).toBeCloseTo(Math.min(...xs), 9);
          expect(wood.points[0]![1]).toBeCloseTo(Math.max(...ys), 9);
        },
      ),
    );
  });

  test('says how far it comes down the wall and out, its face and its spring', () => {
    // By hand: 5 in at 45° reaches 5 / √2 = 3.5355 in both ways; the nearest 64th is 3 17/32 (3.53125).
    const drawing = drawCrownOnWall({
      blade: BLADE,
      setting,
      blank: { width: 5, thickness: 1.25 },
      lower: 'near',
      spring: toRadians(degrees(45)),
      unit: 'in',
      decimalSign: '.',
    });
    expect(textsIn(drawing)).toEqual(
      expect.arrayContaining(['face 5", 45° from the wall', '≈ 3 17/32"']),
    );
    expect(drawing.alt).toContain('comes ≈ 3 17/32" down the wall and ≈ 3 17/32" out');
  });

  test('at no spring at all is a fault of ours', () => {
    for (const spring of [0, Math.PI / 2, NaN]) {
      expect(() =>
        drawCrownOnWall({
          blade: BLADE,
          setting,
          blank: { width: 5, thickness: 1.25 },
          lower: 'near',
          spring: radians(spring),
          unit: 'in',
          decimalSign: '.',
        }),
      ).toThrow(RangeError);
    }
  });
});
