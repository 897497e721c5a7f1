import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { computeCut } from '../../src/core/cove/cut.ts';
import { computeSectionArea } from '../../src/core/cove/outline.ts';
import { radians } from '../../src/core/units/angle.ts';
import { drawSection } from '../../src/drawings/section.ts';
import type { SectionView } from '../../src/drawings/section-plan.ts';
import { sayLength } from '../../src/drawings/say.ts';
import {
  anySection,
  fittingSection,
  flatsOf,
  areaOf,
  areasIn,
  BLADE,
  isMeasured,
  isMeasuredUpright,
  mirrored,
  misplacedIn,
  settingFor,
  textsIn,
} from './drawn-coves.ts';
import { count } from '../deep.ts';

/** 2 7/8 in wide, 11/16 deep, 3/8 off center in a blank of 4 by 1, near flat 1/2. */
const SKEWED: SectionView = {
  blade: BLADE,
  setting: settingFor(2 + 7 / 8, 11 / 16, 3 / 8),
  blank: { width: 4, thickness: 1, nearFlat: 1 / 2 },
  tiltSide: 'left',
  ...INCHES_AND_POINT,
};

const said = (view: SectionView): string[] => textsIn(drawSection(view)).map(({ text }) => text);

describe('The section of a cove', () => {
  test('letters every measure as a woodworker reads it', () => {
    const texts = said(SKEWED);
    // Flats: 1/2 near, so 4 - 2 7/8 - 1/2 far. Web: 1 - 11/16.
    for (const text of [
      '4"',
      '1"',
      '2 7/8"',
      '11/16"',
      '3/8"',
      '1/2"',
      '5/8"',
      '5/16"',
      'near rail',
    ]) {
      expect(texts).toContain(text);
    }
    expect(texts).toContain('far rail (deep side)');
    expect(texts).toHaveLength(10);
  });

  test('letters millimetres in a shop that measures so, else fractions, and says where one is the nearest only', () => {
    expect(said({ ...SKEWED, unit: 'mm' })).toEqual(
      expect.arrayContaining(['101.6 mm', '25.4 mm', '73 mm', '17.5 mm', '9.5 mm', '15.9 mm']),
    );
    const blank = { width: 4, thickness: 1.1, nearFlat: 25 / 64 };
    // By hand: 1.1 in is 70.4 parts of 64, its web of 0.4125 in 26.4.
    expect(said({ ...SKEWED, blank })).toEqual(
      expect.arrayContaining(['25/64"', '47/64"', '≈ 1 3/32"', '≈ 13/32"']),
    );
    const { alt } = drawSection({ ...SKEWED, blank });
    expect(alt).toContain('4" wide and ≈ 1 3/32" thick');
    expect(alt).toContain('the web over the cove is ≈ 13/32"');
  });

  test('letters what is less than half a 64th as such, and nothing as nothing', () => {
    expect(sayLength(1 / 200, INCHES_AND_POINT)).toBe('under 1/64"');
    expect(sayLength(0, INCHES_AND_POINT)).toBe('0"');
    expect(sayLength(1e-9, INCHES_AND_POINT)).toBe('0"');
    // 1/100 in is 0.64 parts of 64.
    expect(sayLength(1 / 100, INCHES_AND_POINT)).toBe('≈ 1/64"');
    expect(sayLength(2.9999999996, INCHES_AND_POINT)).toBe('3"');
  });

  test('names what it measures where it is wide enough', () => {
    expect(said({ ...SKEWED, width: 120 })).toEqual(
      expect.arrayContaining([
        'blank 4"',
        'cove 2 7/8"',
        'deep 11/16"',
        'web 5/16"',
        'off center 3/8"',
      ]),
    );
  });

  test('has measures from end to end of what they say, to scale', () => {
    fc.assert(
      fc.property(anySection, (view) => {
        const { blade, setting, blank } = view;
        fc.pre(blank !== undefined && blank.width > 0);
        const cut = computeCut(blade, setting);
        const flats = flatsOf(view)!;
        const drawing = drawSection(view);
        const [wood] = areasIn(drawing, 'wood');
        const [farFace, farTop, nearTop] = wood!.points as [
          [number, number],
          [number, number],
          [number, number],
        ];
        const scale = (nearTop[0] - farTop[0]) / blank.width;
        // Left to right on a left-tilt saw, u falls from the far edge on; its mirror image rises.
        const at = (u: number): number => farFace[0] + (cut.far + flats.far - u) * scale;
        const height = Math.abs(farTop[1] - farFace[1]);
        expect(height / Math.abs(scale)).toBeCloseTo(blank.thickness, 6);
        expect(isMeasured(drawing, at(cut.far + flats.far), at(cut.near - flats.near))).toBe(true);
        expect(isMeasured(drawing, at(cut.far), at(cut.near))).toBe(true);
        if (flats.far > 0)
          expect(isMeasured(drawing, at(cut.far + flats.far), at(cut.far))).toBe(true);
        if (flats.near > 0)
          expect(isMeasured(drawing, at(cut.near), at(cut.near - flats.near))).toBe(true);
        if (cut.offCenter > 1e-3) {
          expect(isMeasured(drawing, at(cut.deepestLine), at((cut.near + cut.far) / 2))).toBe(true);
        }
        const level = (depth: number): number =>
          farFace[1] + ((farTop[1] - farFace[1]) * depth) / blank.thickness;
        expect(isMeasuredUpright(drawing, level(0), level(blank.thickness))).toBe(true);
        expect(isMeasuredUpright(drawing, level(0), level(cut.depth))).toBe(true);
        if (blank.thickness > cut.depth) {
          expect(isMeasuredUpright(drawing, level(cut.depth), level(blank.thickness))).toBe(true);
        }
      }),
      { numRuns: count(150) },
    );
  });

  test('cuts away as much wood as the cove has area', () => {
    fc.assert(
      fc.property(fittingSection, (view) => {
        const { blade, setting, blank } = view;
        const drawing = drawSection(view);
        const [wood] = areasIn(drawing, 'wood');
        const [, farTop, nearTop] = wood!.points as [unknown, [number, number], [number, number]];
        const scale = Math.abs(nearTop[0] - farTop[0]) / blank.width;
        const cutAway = blank.width * blank.thickness - areaOf(wood!.points) / scale ** 2;
        const area = computeSectionArea(blade, setting);
        // 192 straight pieces stand for the outline.
        expect(Math.abs(cutAway - area)).toBeLessThan(area * 1e-3);
      }),
      { numRuns: count(100) },
    );
  });

  test('of a right-tilt saw is the mirror image of that of a left-tilt saw', () => {
    fc.assert(
      fc.property(anySection, (view) => {
        const left = drawSection({ ...view, tiltSide: 'left' });
        const right = drawSection({ ...view, tiltSide: 'right' });
        const { same, texts } = mirrored(left, right);
        expect(same).toBe(true);
        for (const [one, other] of texts) expect(one).toBe(other);
      }),
      { numRuns: count(100) },
    );
  });

  test('has the far rail at the left on a left-tilt saw, and rolled over at the right', () => {
    const far = (view: Partial<SectionView>): number => {
      const drawing = drawSection({ ...SKEWED, ...view });
      const text = textsIn(drawing).find((one) => one.text.startsWith('far '));
      return text!.at[0] / drawing.width;
    };
    expect(far({})).toBeLessThan(0.1);
    expect(far({ tiltSide: 'right' })).toBeGreaterThan(0.9);
    expect(far({ view: 'face up' })).toBeGreaterThan(0.9);
    expect(far({ view: 'face up', tiltSide: 'right' })).toBeLessThan(0.1);
  });

  test('lies face down on the table, and face up without one', () => {
    const wood = (view: SectionView['view']): { face: number; top: number; tables: number } => {
      const drawing = drawSection({ ...SKEWED, ...(view === undefined ? {} : { view }) });
      const [face, top] = areasIn(drawing, 'wood')[0]!.points;
      const tables = drawing.shapes.filter(
        (shape) => shape.kind === 'path' && shape.stroke?.tone === 'metal',
      );
      return { face: face![1], top: top![1], tables: tables.length };
    };
    const down = wood('on the saw');
    expect(down.face).toBeGreaterThan(down.top);
    expect(down.tables).toBe(1);
    const up = wood('face up');
    expect(up.face).toBeLessThan(up.top);
    expect(up.tables).toBe(0);
  });

  test('keeps its letters apart and on the page, whatever the cove, blank, unit and width', () => {
    fc.assert(
      fc.property(anySection, (view) => {
        expect(misplacedIn(drawSection(view))).toEqual([]);
      }),
      { numRuns: count(400) },
    );
  });

  test.each([
    ['the deepest', settingFor(5, 3.75, 0), { width: 6, thickness: 4.5 }],
    ['a sixteenth deep', settingFor(1.5, 1 / 16, 0), { width: 2, thickness: 3 / 4 }],
    ['eight inches wide', settingFor(7.9, 2.75, 0.3), { width: 9, thickness: 4 }],
    ['narrow in a wide board', settingFor(0.4, 0.3, 0.05), { width: 9, thickness: 1 }],
    ['far off center', settingFor(2.5, 1, 0.9), { width: 3, thickness: 2 }],
  ])('draws a cove %s', (_, setting, blank) => {
    for (const unit of ['in', 'mm'] as const) {
      for (const view of ['on the saw', 'face up'] as const) {
        const drawing = drawSection({ ...SKEWED, setting, blank, unit, view });
        expect(misplacedIn(drawing)).toEqual([]);
        expect(drawing.height).toBeLessThan(120);
      }
    }
  });

  test('has letters of 11 pixels at least when shown 246 pixels wide', () => {
    const drawing = drawSection(SKEWED);
    for (const { size } of textsIn(drawing)) {
      expect((size / drawing.width) * 246).toBeGreaterThanOrEqual(11);
    }
  });

  test('says every number that it shows in its text alternative', () => {
    fc.assert(
      fc.property(fittingSection, (view) => {
        const { alt, shapes } = drawSection(view);
        for (const shape of shapes) {
          if (shape.kind !== 'text' || shape.tone !== 'measure') continue;
          const length = /((≈|under) )?[\d./ ]+("| mm)$/.exec(shape.text)?.[0].trim();
          expect(alt).toContain(length);
        }
      }),
      { numRuns: count(100) },
    );
  });

  test('refuses numbers that no cove has, as a bug', () => {
    const setting = { approach: radians(NaN), tilt: radians(0), height: 1 };
    expect(() => drawSection({ ...SKEWED, setting })).toThrow(RangeError);
    expect(() => drawSection({ ...SKEWED, blank: { width: 0, thickness: 1 } })).toThrow(RangeError);
    expect(() => drawSection({ ...SKEWED, width: 20 })).toThrow(RangeError);
  });
});
