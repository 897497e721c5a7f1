import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { computeCut, edgesAt } from '../../src/core/cove/cut.ts';
import { computeSectionArea } from '../../src/core/cove/outline.ts';
import type { Drawing, PathShape, Point } from '../../src/drawings/drawing.ts';
import { LEAST_FULL_SIZE_MM, OVERLAP_MM } from '../../src/drawings/full-size-parts.ts';
import { drawFullSize, type FullSizeView } from '../../src/drawings/full-size.ts';
import {
  areaOf,
  areasIn,
  BLADE,
  fittingSection,
  flatsOf,
  misplacedIn,
  settingFor,
  textsIn,
} from './drawn-coves.ts';
import { count } from '../deep.ts';

/** 2 7/8 in wide, 11/16 deep, 3/8 off center in a blank of 4 by 1, near flat 1/2. */
const SKEWED: FullSizeView = {
  blade: BLADE,
  setting: settingFor(2 + 7 / 8, 11 / 16, 3 / 8),
  blank: { width: 4, thickness: 1, nearFlat: 1 / 2 },
  tiltSide: 'left',
  unit: 'in',
  decimalSign: '.',
};

/** The lines to trace, the only ones of their width. */
function tracedIn({ shapes }: Drawing): PathShape[] {
  return shapes.filter((shape) => shape.kind === 'path').filter((one) => one.stroke?.width === 0.2);
}

function boxOf(points: readonly Point[]) {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  return { left, right, wide: right - left, high: Math.max(...ys) - Math.min(...ys) };
}

/** The uprights that tell where parts are laid on each other. */
function joinsIn({ shapes }: Drawing): number[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.stroke?.tone === 'feed' ? [shape.points[0]![0]] : [],
  );
}

const single = (view: FullSizeView): Drawing => {
  const drawings = drawFullSize(view);
  expect(drawings).toHaveLength(1);
  return drawings[0]!;
};

describe("The board's end at full size", () => {
  test('is as wide and thick as the wood, with as much cut away, in millimetres', () => {
    fc.assert(
      fc.property(fittingSection, ({ blade, setting, blank, tiltSide, unit, decimalSign }) => {
        const drawing = single({ blade, setting, blank, tiltSide, unit, decimalSign });
        const [traced] = tracedIn(drawing);
        const { wide, high } = boxOf(traced!.points);
        expect(wide).toBeCloseTo(blank.width * 25.4, 6);
        expect(high).toBeCloseTo(blank.thickness * 25.4, 6);
        const left = areaOf(traced!.points) / 25.4 ** 2;
        const area = computeSectionArea(blade, setting);
        const cut = computeCut(blade, setting);
        expect(Math.abs(blank.width * blank.thickness - left - area)).toBeLessThan(
          0.001 * (cut.width + 2 * cut.depth),
        );
      }),
      { numRuns: count(100) },
    );
  });

  test('has the mouth of the cove where the flats end, far rail at the left on a left-tilt saw', () => {
    const [traced] = tracedIn(single(SKEWED));
    const { left } = boxOf(traced!.points);
    const face = Math.max(...traced!.points.map(([, y]) => y));
    const onFace = traced!.points
      .filter(([, y]) => Math.abs(y - face) < 1e-9)
      .map(([x]) => (x - left) / 25.4)
      .sort((one, other) => one - other);
    // The far flat is 4 - 2 7/8 - 1/2; the line begins and ends at its corner.
    [0, 0, 0.625, 3.5, 4].forEach((x, at) => expect(onFace[at]).toBeCloseTo(x, 6));
    const texts = textsIn(single(SKEWED));
    const find = (text: string) => texts.find((one) => one.text === text)!;
    expect(find('far rail side (deep side)').at[0]).toBeLessThan(find('near rail side').at[0]);
    const right = textsIn(single({ ...SKEWED, tiltSide: 'right' }));
    expect(right.find(({ text }) => text === 'near rail side')!.at[0]).toBeLessThan(
      right.find(({ text }) => text === 'far rail side (deep side)')!.at[0],
    );
  });

  test('of a right-tilt saw is traced as the mirror image', () => {
    fc.assert(
      fc.property(fittingSection, ({ blade, setting, blank, unit, decimalSign }) => {
        const [left, right] = (['left', 'right'] as const).map((tiltSide) =>
          single({ blade, setting, blank, unit, decimalSign, tiltSide }),
        );
        const mirror = tracedIn(right!)[0]!.points.map(([x, y]): Point => [left!.width - x, y]);
        for (const [x, y] of tracedIn(left!)[0]!.points) {
          const away = mirror.map((one) => Math.hypot(one[0] - x, one[1] - y));
          expect(Math.min(...away)).toBeLessThan(1e-6);
        }
      }),
      { numRuns: count(40) },
    );
  });

  test('has bars of exactly 100 mm and 4 in, their ticks within them', () => {
    for (const view of [SKEWED, { ...SKEWED, blank: { width: 12, thickness: 1 }, widest: 150 }]) {
      for (const drawing of drawFullSize(view)) {
        const boxes = areasIn(drawing, 'ink').map(({ points }) => boxOf(points));
        const bars = boxes.filter(({ wide }) => wide > 50).map(({ wide }) => wide);
        expect(bars).toEqual([expect.closeTo(100, 9), expect.closeTo(101.6, 9)]);
        const left = Math.min(...boxes.map((box) => box.left));
        const ticks = boxes.filter(({ wide }) => wide < 50);
        expect(ticks).toHaveLength(11 + 9);
        expect(Math.max(...ticks.map((box) => box.right))).toBeCloseTo(left + 101.6, 9);
        const texts = textsIn(drawing).map(({ text }) => text);
        expect(texts).toEqual(expect.arrayContaining(['100 mm', '4 in']));
        expect(texts.join(' ')).toContain('print at 100 %, not fitted to the page');
      }
    }
  });

  test('wider than the paper comes in parts that show all of it and overlap', () => {
    const paper = fc.double({ min: LEAST_FULL_SIZE_MM, max: 280, noNaN: true });
    fc.assert(
      fc.property(
        fittingSection,
        paper,
        ({ blade, setting, blank, tiltSide, unit, decimalSign }, widest) => {
          const view = { blade, setting, blank, tiltSide, unit, decimalSign };
          const parts = drawFullSize({ ...view, widest });
          for (const { width } of parts) expect(width).toBeLessThanOrEqual(widest + 1e-9);
          // Laid line on line, each part begins where the joins say.
          let start = 0;
          const ends = parts.map((part, at) => {
            const { left, right } = boxOf(tracedIn(part).flatMap(({ points }) => points));
            const [before, after] =
              at === 0 ? [undefined, joinsIn(part)[0]] : [joinsIn(part)[0], joinsIn(part)[1]];
            if (before !== undefined) start -= before - left;
            const from = start;
            start += (after ?? right) - left;
            return { from, to: from + right - left };
          });
          expect(ends[0]!.from).toBe(0);
          expect(ends.at(-1)!.to).toBeCloseTo(blank.width * 25.4, 6);
          ends.slice(1).forEach(({ from }, at) => {
            expect(ends[at]!.to - from).toBeCloseTo(OVERLAP_MM, 6);
          });
          if (blank.width * 25.4 <= widest - 4) expect(parts).toHaveLength(1);
        },
      ),
      { numRuns: count(100) },
    );
  });

  test('in parts meets the true cove where each is cut off', () => {
    const view = { ...SKEWED, blank: { width: 9, thickness: 1 }, widest: 150 };
    const parts = drawFullSize(view);
    expect(parts).toHaveLength(2);
    const cut = computeCut(view.blade, view.setting);
    const flats = flatsOf(view)!;
    const [first] = parts;
    const join = joinsIn(first!)[0]!;
    const { left } = boxOf(tracedIn(first!).flatMap(({ points }) => points));
    // What of the cove stands over the joining line, looked for by halving.
    const u = cut.far + flats.far - (join - left) / 25.4;
    let [low, high] = [0, cut.depth];
    for (let step = 0; step < 50; step++) {
      const level = (low + high) / 2;
      const edges = edgesAt(view.blade, view.setting, level);
      if (edges.near < u && u < edges.far) low = level;
      else high = level;
    }
    const heights = tracedIn(first!).map((traced) => heightAt(traced.points, join));
    const face = Math.max(...tracedIn(first!).flatMap(({ points }) => points.map(([, y]) => y)));
    const depths = heights.flat().map((y) => (face - y) / 25.4);
    expect(depths.some((depth) => Math.abs(depth - low) < 0.001)).toBe(true);
  });

  test('keeps its letters apart and on the paper, whatever the cove, blank, unit and paper', () => {
    const paper = fc.double({ min: LEAST_FULL_SIZE_MM, max: 280, noNaN: true });
    fc.assert(
      fc.property(
        fittingSection,
        paper,
        ({ blade, setting, blank, tiltSide, unit, decimalSign }, widest) => {
          for (const drawing of drawFullSize({
            blade,
            setting,
            blank,
            tiltSide,
            unit,
            decimalSign,
            widest,
          })) {
            expect(misplacedIn(drawing)).toEqual([]);
          }
        },
      ),
      { numRuns: count(200) },
    );
  });

  test('says in its text alternative where the far rail is and what part it is', () => {
    const drawing = single(SKEWED);
    expect(drawing.title).toBe('Cove 2 7/8" by 11/16" at full size, in the board\'s end');
    expect(drawing.alt).toContain('the far rail is at the left');
    expect(drawing.alt).toContain('1/2" by the near rail and 5/8" by the far rail');
    const parts = drawFullSize({ ...SKEWED, blank: { width: 9, thickness: 1 }, widest: 150 });
    expect(parts.map(({ title }) => title.slice(-11))).toEqual(['part 1 of 2', 'part 2 of 2']);
    expect(parts[1]!.alt).toContain('lay joining line 1 on the same line');
  });

  test('refuses paper with no room for the bars, and a cove that does not fit, as bugs', () => {
    expect(() => drawFullSize({ ...SKEWED, widest: 100 })).toThrow(RangeError);
    expect(() => drawFullSize({ ...SKEWED, blank: { width: 4, thickness: 0.6 } })).toThrow(
      RangeError,
    );
  });
});

/** Where a line passes an upright. */
function heightAt(points: readonly Point[], x: number): number[] {
  return points.flatMap(([toX, toY], at) => {
    const from = points[at - 1];
    if (from === undefined || (from[0] - x) * (toX - x) > 0 || from[0] === toX) return [];
    return [from[1] + ((x - from[0]) / (toX - from[0])) * (toY - from[1])];
  });
}
