import { describe, expect, test } from '@jest/globals';
import type { Blade } from '../../../src/core/cove/cove.ts';
import { checkCove } from '../../../src/core/cove/feasibility.ts';
import { findNearest, type Change, type Nearest } from '../../../src/core/cove/nearest.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const BLADE: Blade = { diameter: 10, kerf: 1 / 8 };
const down64 = (inches: number): number => Math.floor(inches * 64 + 1e-9) / 64;

const toOf = (found: readonly Nearest[], change: Change): number | undefined =>
  found.find((one) => one.change === change)?.to;

describe('The nearest cove that can be made', () => {
  test('is none where the cove can be made as asked', () => {
    expect(findNearest({ width: 3, depth: 0.5, offCenter: 0 }, BLADE)).toEqual([]);
  });

  test('of one too wide is the closed form of the widest, rounded into the possible', () => {
    // [D] w = 2 sqrt(h(D - h)) sin a + t cos a at 75 from the blade line, the steepest.
    for (const depth of [0.5, 0.75, 1, 1.25]) {
      const steepest = (75 * Math.PI) / 180;
      const chord = 2 * Math.sqrt(depth * (10 - depth));
      const widest = chord * Math.sin(steepest) + Math.cos(steepest) / 8;
      const found = findNearest({ width: 7.5, depth, offCenter: 0 }, BLADE);
      expect(toOf(found, 'narrower')).toBe(down64(widest));
      const deeper = toOf(found, 'deeper');
      if (deeper === undefined) continue;
      const widthAt = (inches: number): number =>
        2 * Math.sqrt(inches * (10 - inches)) * Math.sin(steepest) + Math.cos(steepest) / 8;
      expect(widthAt(deeper)).toBeGreaterThanOrEqual(7.5);
      expect(widthAt(deeper - 1 / 64)).toBeLessThan(7.5);
    }
  });

  test('of a web too thin is thicker stock or a shallower cove, to the sixty-fourth', () => {
    const stock = { blankThickness: 7 / 8, blankWidth: 4 };
    const found = findNearest({ width: 3, depth: 0.75, offCenter: 0 }, BLADE, {}, stock);
    expect(toOf(found, 'thicker stock')).toBe(1);
    expect(toOf(found, 'shallower')).toBe(0.625);
    expect(found.map(({ change, to }) => [change, to === undefined])).toContainEqual([
      'wider stock',
      true,
    ]);
  });

  test('names of the shop’s blades one that can, and no other', () => {
    const cove = { width: 5.5, depth: 0.75, offCenter: 0 };
    const small = { diameter: 8.25, kerf: 1 / 8 };
    const large = { diameter: 12, kerf: 1 / 8 };
    const [first] = findNearest(cove, BLADE, {}, undefined, [small, large]).filter(
      ({ change }) => change === 'another blade',
    );
    expect(first?.blade).toBe(large);
    const [none] = findNearest(cove, BLADE, {}, undefined, [small]).filter(
      ({ change }) => change === 'another blade',
    );
    expect(none).toEqual({ change: 'another blade' });
    expect(findNearest(cove, BLADE).map(({ change }) => change)).not.toContain('another blade');
  });

  test('passes every limit, and no smaller change of that size does', () => {
    const next = seededNumbers(91_337);
    const size: Record<string, 'width' | 'depth' | 'offCenter'> = {
      narrower: 'width',
      wider: 'width',
      shallower: 'depth',
      deeper: 'depth',
      'less off center': 'offCenter',
    };
    let looked = 0;
    for (let drawn = 0; looked < count(300, 10); drawn++) {
      const width = Math.round(64 * (0.5 + 7 * next())) / 64;
      const cove = {
        width,
        depth: Math.round(64 * (0.1 + 2.5 * next())) / 64,
        offCenter: Math.round(64 * (width / 2) * next() * (drawn % 2)) / 64,
      };
      const found = findNearest(cove, BLADE);
      if (found.length === 0) continue;
      looked++;
      for (const { change, to } of found) {
        const key = size[change];
        if (key === undefined) continue;
        const can = (inches: number): boolean =>
          checkCove({ ...cove, [key]: inches }, BLADE).faults.length === 0;
        const sign = ['wider', 'deeper'].includes(change) ? 1 : -1;
        const end = to ?? (sign > 0 ? 20 : 0);
        if (to !== undefined) expect([cove, change, can(to)]).toEqual([cove, change, true]);
        // On a grid that is coarser and another than the one that was gone along.
        const from = cove[key];
        for (let part = 1; part < 24; part++) {
          const between = from + ((end - from) * part) / 24;
          const snapped = Math.round(between * 64) / 64;
          if (snapped === from || (snapped - end) * sign >= 0 || snapped < 0) continue;
          expect([cove, change, snapped, can(snapped)]).toEqual([cove, change, snapped, false]);
        }
      }
    }
  });
});
