/** Raked profiles, drawn and as DXF, measured back. */
import { describe, expect, test } from '@jest/globals';
import dxfParser, { type IPolylineEntity } from 'dxf-parser';
import fc from 'fast-check';

import { computeSectionArea } from '../../src/core/cove/outline.ts';
import { degrees, toRadians } from '../../src/core/units/angle.ts';
import { LEAST_FULL_SIZE_MM } from '../../src/drawings/full-size-parts.ts';
import type { Drawing, PathShape, Point } from '../../src/drawings/drawing.ts';
import { drawRaked, rakedToDxf, type RakedDrawingView } from '../../src/drawings/raked.ts';
import { planRaked } from '../../src/drawings/raked-section.ts';
import { count } from '../deep.ts';
import { areaOf, BLADE, fittingSection, misplacedIn, settingFor, textsIn } from './drawn-coves.ts';

const angle = (value: number) => toRadians(degrees(value));

/** 2 3/4 in wide, 5/8 deep, 1/4 off center in a blank of 4 1/4 by 1, at spring 40° up 4 in 12. */
const CROWN: RakedDrawingView = {
  blade: BLADE,
  setting: settingFor(2 + 3 / 4, 5 / 8, 1 / 4),
  blank: { width: 4.25, thickness: 1, nearFlat: 3 / 4 },
  spring: angle(40),
  lower: 'near',
  slope: angle(18.4349488),
  unit: 'in',
  decimalSign: '.',
};

const slopes = fc.oneof(
  fc.double({ min: 1, max: 59.9, noNaN: true }),
  fc.double({ min: -59.9, max: -1, noNaN: true }),
);
const lowers = fc.constantFrom('near' as const, 'far' as const);
/** Upright moldings of every kind: a crown's bevels may cut into a cove that is drawn by chance. */
const anyRaked = fc
  .tuple(fittingSection, slopes, lowers)
  .map(([{ blade, setting, blank, unit, decimalSign }, slope, lower]) => ({
    ...{ blade, setting, blank, unit, decimalSign, lower },
    slope: angle(slope),
  }));

function tracedIn({ shapes }: Drawing): PathShape[] {
  return shapes.filter((shape) => shape.kind === 'path').filter((one) => one.stroke?.width === 0.2);
}
const single = (view: RakedDrawingView): Drawing => {
  const drawings = drawRaked(view);
  expect(drawings).toHaveLength(1);
  return drawings[0]!;
};
const boxOf = (points: readonly Point[]) => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  return { left, right, wide: right - left, high: Math.max(...ys) - Math.min(...ys) };
};

describe('A raked profile at full size', () => {
  test('of a crown, by hand: as far out as the level one, and as high as its edges rake', () => {
    const [traced] = tracedIn(single(CROWN));
    const { left, wide } = boxOf(traced!.points);
    // F sin 40° = 2.7318; F cos 40° cos θ + F sin 40° sin θ = 4.25 cos(40° - θ) = 3.9525, worked by hand [D]
    expect(wide / 25.4).toBeCloseTo(2.7318, 4);
    const edge = (x: number) => traced!.points.filter((one) => Math.abs(one[0] - x) < 1e-6);
    const lower = Math.max(...edge(left).map(([, y]) => y));
    const upper = edge(left + wide)[0]![1];
    expect((lower - upper) / 25.4).toBeCloseTo(3.9525, 4);
    const falling = tracedIn(single({ ...CROWN, slope: angle(-18.4349488) }))[0]!.points;
    const down = Math.max(...falling.map(([, y]) => y));
    const outer = falling.find(([x]) => Math.abs(x - boxOf(falling).right) < 1e-6)!;
    // 4.25 cos(40° + θ) = 2.2247
    expect((down - outer[1]) / 25.4).toBeCloseTo(2.2247, 4);
  });

  test('holds the level one times the cosine of the slope, the cove cut away', () => {
    fc.assert(
      fc.property(anyRaked, (view) => {
        const [traced] = tracedIn(single(view));
        const wood = view.blank.width * view.blank.thickness;
        const level = wood - computeSectionArea(view.blade, view.setting);
        const area = areaOf(traced!.points) / 25.4 ** 2;
        const around = 2 * (view.blank.width + view.blank.thickness);
        expect(Math.abs(area - level * Math.cos(view.slope))).toBeLessThan(0.0005 * around);
        expect(boxOf(traced!.points).wide / 25.4).toBeCloseTo(view.blank.thickness, 6);
      }),
      { numRuns: count(60) },
    );
  });

  test('meets the level one in the miter, point by point in space', () => {
    // Out from the level wall is x, out from the raked one y, up z: both leave the corner backward.
    type Vector = readonly [number, number, number];
    const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    const cross = (a: Vector, b: Vector): Vector => [
      a[1] * b[2] - a[2] * b[1],
      a[2] * b[0] - a[0] * b[2],
      a[0] * b[1] - a[1] * b[0],
    ];
    fc.assert(
      fc.property(anyRaked, (view) => {
        const level = planRaked({ ...view, slope: angle(0) });
        const raked = planRaked(view);
        const along: Vector = [-Math.cos(view.slope), 0, Math.sin(view.slope)];
        const square = cross([0, 1, 0], along);
        // A level run's line, followed to where it stands out from both walls alike.
        const met = level.around.map(([p, z]): Vector => [p, p, z]);
        const lowest = Math.min(...met.map((point) => dot(point, square)));
        met.forEach((point, at) => {
          expect(raked.around[at]![0]).toBeCloseTo(dot(point, [0, 1, 0]), 9);
          expect(raked.around[at]![1]).toBeCloseTo(dot(point, square) - lowest, 9);
        });
      }),
      { numRuns: count(60) },
    );
  });

  test('turned round has the other edge down: a level one is its mirror image', () => {
    fc.assert(
      fc.property(anyRaked, (view) => {
        const [near, far] = (['near', 'far'] as const).map((lower) =>
          planRaked({ ...view, lower, slope: angle(0) }),
        );
        const mirrored = far!.cove.map(([x, y]): Point => [x, far!.height - y]).reverse();
        near!.cove.forEach(([x, y], at) => {
          expect(mirrored[at]![0]).toBeCloseTo(x, 9);
          expect(mirrored[at]![1]).toBeCloseTo(y, 9);
        });
      }),
      { numRuns: count(40) },
    );
  });

  test('says which way it goes, has its bars, and no word lies over another', () => {
    for (const slope of [18.4, -18.4]) {
      for (const widest of [Infinity, LEAST_FULL_SIZE_MM]) {
        for (const blank of [CROWN.blank, { width: 16, thickness: 1, nearFlat: 3 }]) {
          for (const drawing of drawRaked({ ...CROWN, blank, slope: angle(slope), widest })) {
            const texts = textsIn(drawing).map(({ text }) => text);
            expect(texts).toEqual(expect.arrayContaining(['100 mm', '4 in']));
            const way = slope > 0 ? 'rising' : 'falling';
            expect(texts).toContain(`18.4° ${way} from an outside corner,`);
            expect(misplacedIn(drawing)).toEqual([]);
            expect(drawing.width).toBeLessThanOrEqual(widest);
          }
        }
      }
    }
  });

  test('wider than the paper comes in parts that overlap and show all of it', () => {
    const view = { ...CROWN, blank: { width: 16, thickness: 1, nearFlat: 3 } };
    const parts = drawRaked({ ...view, widest: 150 });
    // 16 sin 40° = 10.28 in is 261 mm; a part shows less than 146 mm, of which 20 twice.
    expect(parts).toHaveLength(2);
    const wide = parts.map((part) => boxOf(tracedIn(part).flatMap(({ points }) => points)).wide);
    expect(wide[0]! + wide[1]! - 20).toBeCloseTo(16 * Math.sin(angle(40)) * 25.4, 6);
    expect(parts[1]!.title).toContain('part 2 of 2');
  });
});

const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

test('as DXF, read by another program, is the drawing in inches or millimetres', () => {
  for (const [unit, perInch] of [
    ['in', 1],
    ['mm', 25.4],
  ] as const) {
    const dxf = new Parser().parseSync(rakedToDxf({ ...CROWN, unit, notes: ['Crown'] }))!;
    const lines = dxf.entities as IPolylineEntity[];
    expect(lines.map(({ layer }) => layer)).toEqual(['RAKED', 'COVE']);
    expect(lines.map(({ shape }) => shape)).toEqual([true, false]);
    const points = lines[0]!.vertices.map(({ x, y }): Point => [x / perInch, y / perInch]);
    const drawn = tracedIn(single(CROWN))[0]!.points;
    expect(areaOf(points)).toBeCloseTo(areaOf(drawn) / 25.4 ** 2, 4);
    const { left, wide, high } = boxOf(points);
    expect(left).toBe(0);
    expect(wide).toBeCloseTo(2.7318, 4);
    expect(dxf.header['$EXTMAX']).toMatchObject({
      x: expect.closeTo(wide * perInch, 4),
      y: expect.closeTo(high * perInch, 4),
    });
  }
  expect(rakedToDxf(CROWN)).toContain('18.43 degrees rising from an outside corner');
});
