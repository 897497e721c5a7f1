import { describe, expect, test } from '@jest/globals';
import dxfParser, { type IPolylineEntity } from 'dxf-parser';
import fc from 'fast-check';

import { computeCut, edgesAt } from '../../src/core/cove/cut.ts';
import { computeSectionArea } from '../../src/core/cove/outline.ts';
import { radians } from '../../src/core/units/angle.ts';
import type { Point } from '../../src/drawings/drawing.ts';
import { outlineToDxf, type DxfView } from '../../src/drawings/to-dxf.ts';
import { areaOf, BLADE, fittingSection, flatsOf, settingFor } from './drawn-coves.ts';
import { count } from '../deep.ts';

/** 2 7/8 in wide, 11/16 deep, 3/8 off center in a blank of 4 by 1, near flat 1/2. */
const SKEWED: DxfView = {
  blade: BLADE,
  setting: settingFor(2 + 7 / 8, 11 / 16, 3 / 8),
  blank: { width: 4, thickness: 1, nearFlat: 1 / 2 },
  tiltSide: 'left',
  unit: 'in',
};

interface Line {
  readonly layer: string;
  readonly closed: boolean;
  readonly points: readonly Point[];
}

/** Group codes and values, two lines each; as the reference says. */
function groupsIn(dxf: string): [code: number, value: string][] {
  const lines = dxf.split('\r\n');
  expect(lines.pop()).toBe('');
  return Array.from({ length: lines.length / 2 }, (_, at) => [
    Number(lines[2 * at]),
    lines[2 * at + 1]!,
  ]);
}

/** A small reader of its own: the polylines of the entities, with their layers. */
function linesIn(dxf: string): Line[] {
  const found: { layer: string; closed: boolean; points: [number, number][] }[] = [];
  let inside = '';
  for (const [code, value] of groupsIn(dxf)) {
    const line = found.at(-1);
    if (code === 0) {
      inside = value;
      if (value === 'POLYLINE') found.push({ layer: '', closed: false, points: [] });
      if (value === 'VERTEX') line!.points.push([NaN, NaN]);
    } else if (inside === 'POLYLINE' && code === 8) line!.layer = value;
    else if (inside === 'POLYLINE' && code === 70) line!.closed = value === '1';
    else if (inside === 'VERTEX' && code === 10) line!.points.at(-1)![0] = Number(value);
    else if (inside === 'VERTEX' && code === 20) line!.points.at(-1)![1] = Number(value);
  }
  return found;
}

/** What it exports is the class itself; its types say a module that holds the class. */
const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

function parsed(dxf: string) {
  const read = new Parser().parseSync(dxf);
  if (read === null) throw new Error('nothing was read');
  return read;
}

const lineOn = (dxf: string, layer: string): Line =>
  linesIn(dxf).find((one) => one.layer === layer)!;

describe('An outline as DXF', () => {
  test('is read alike by a reader of another make', () => {
    fc.assert(
      fc.property(fittingSection, ({ blade, setting, blank, tiltSide, unit }) => {
        const dxf = outlineToDxf({ blade, setting, blank, tiltSide, unit });
        const theirs = parsed(dxf).entities.map((entity): Line => {
          const { vertices, shape } = entity as IPolylineEntity;
          const points = vertices.map(({ x, y }): Point => [x, y]);
          return { layer: entity.layer, closed: shape, points };
        });
        expect(theirs).toEqual(linesIn(dxf));
        expect(theirs.map(({ layer, closed }) => [layer, closed])).toEqual([
          ['BOARD', true],
          ['COVE', false],
          ['DEEPEST', false],
          ['MIDDLE', false],
        ]);
      }),
      { numRuns: count(60) },
    );
  });

  test('says its release, its unit and its layers', () => {
    for (const [unit, insunits, width] of [
      ['in', 1, 4],
      ['mm', 4, 101.6],
    ] as const) {
      const { header, tables } = parsed(outlineToDxf({ ...SKEWED, unit }));
      expect(header).toMatchObject({ $ACADVER: 'AC1009', $INSUNITS: insunits });
      expect(header['$EXTMAX']).toMatchObject({ x: width });
      expect(Object.keys(tables.layer.layers)).toEqual(['BOARD', 'COVE', 'DEEPEST', 'MIDDLE']);
    }
    expect(outlineToDxf({ ...SKEWED, unit: 'mm' })).toContain('Units: millimetres');
  });

  test('gives the board with the cove cut out: by hand, its corners and its deepest line', () => {
    const dxf = outlineToDxf(SKEWED);
    const board = lineOn(dxf, 'BOARD').points;
    // Far rail at the left: far flat 4 - 2 7/8 - 1/2 = 5/8, then the cove, then the near flat.
    expect(board[0]).toEqual([0, 0]);
    expect(board[1]).toEqual([0.625, 0]);
    expect(board.slice(-3)).toEqual([
      [4, 0],
      [4, 1],
      [0, 1],
    ]);
    expect(board.at(-4)).toEqual([3.5, 0]);
    const cove = lineOn(dxf, 'COVE').points;
    expect(cove).toEqual(board.slice(1, -3));
    expect(Math.max(...cove.map(([, y]) => y))).toBe(0.6875);
    const { deepestPoint, far } = computeCut(SKEWED.blade, SKEWED.setting);
    expect(lineOn(dxf, 'DEEPEST').points[0]![0]).toBeCloseTo(0.625 + far - deepestPoint, 6);
    expect(lineOn(dxf, 'MIDDLE').points[0]![0]).toBeCloseTo(0.625 + 1.4375, 6);
  });

  test('takes away as much as the cove has area', () => {
    fc.assert(
      fc.property(fittingSection, ({ blade, setting, blank, tiltSide }) => {
        const dxf = outlineToDxf({ blade, setting, blank, tiltSide, unit: 'in' });
        const left = areaOf(lineOn(dxf, 'BOARD').points);
        const area = computeSectionArea(blade, setting);
        const taken = blank.width * blank.thickness - left;
        // The curve is no longer than its width and twice its depth.
        const cut = computeCut(blade, setting);
        const slack = 0.0005 * 2 * (cut.width + 2 * cut.depth);
        expect(Math.abs(taken - area)).toBeLessThan(slack);
      }),
      { numRuns: count(60) },
    );
  });

  test('never leaves the true curve by more than half a thousandth of an inch', () => {
    fc.assert(
      fc.property(fittingSection, fc.boolean(), (view, isFar) => {
        const { blade, setting, blank } = view;
        const { points } = lineOn(
          outlineToDxf({ blade, setting, blank, tiltSide: 'left', unit: 'in' }),
          'COVE',
        );
        const cut = computeCut(blade, setting);
        const flats = flatsOf(view)!;
        for (let share = 0.0005; share < 1; share += 0.0101) {
          const level = setting.height * (1 - share ** 2);
          const edges = edgesAt(blade, setting, level);
          const x = cut.far + flats.far - (isFar ? edges.far : edges.near);
          const away = points.slice(1).map((to, at) => distance(points[at]!, to, [x, level]));
          expect(Math.min(...away)).toBeLessThanOrEqual(0.0005 + 1e-6);
        }
      }),
      { numRuns: count(60) },
    );
  });

  test('of a right-tilt saw is the mirror image', () => {
    fc.assert(
      fc.property(fittingSection, ({ blade, setting, blank, unit }) => {
        const [left, right] = (['left', 'right'] as const).map((tiltSide) =>
          linesIn(outlineToDxf({ blade, setting, blank, unit, tiltSide })),
        );
        const wide = blank.width * (unit === 'mm' ? 25.4 : 1);
        left!.forEach(({ layer, points }, at) => {
          const image = right![at]!.points.map(([x, y]) => [wide - x, y] as const);
          expect(right![at]!.layer).toBe(layer);
          for (const [x, y] of points) {
            const near = image.filter((other) => Math.hypot(other[0] - x, other[1] - y) < 5e-5);
            expect(near.length).toBeGreaterThan(0);
          }
        });
      }),
      { numRuns: count(40) },
    );
  });

  test('keeps every comment plain and on lines of its own', () => {
    const notes = ['Größe\r\n0\r\nLINE', 'a long word '.repeat(60), 'x'.repeat(600)];
    const dxf = outlineToDxf({ ...SKEWED, notes });
    // eslint-disable-next-line no-control-regex -- ASCII is what is asked
    expect(dxf).toMatch(/^[\x0A\x0D\x20-\x7E]*$/u);
    const comments = groupsIn(dxf).filter(([code]) => code === 999);
    expect(comments[0]?.[1]).toBe('Gr??e 0 LINE');
    for (const [, text] of comments) expect(text.length).toBeLessThanOrEqual(255);
    const said = comments.map(([, text]) => text).join(' ');
    expect(said.match(/long word/gu)).toHaveLength(60);
    expect(said.match(/x{255}/gu)).toHaveLength(2);
    expect(linesIn(dxf)).toEqual(linesIn(outlineToDxf(SKEWED)));
  });

  test('refuses a cove that does not fit its blank, as a bug', () => {
    const setting = { approach: radians(NaN), tilt: radians(0), height: 1 };
    expect(() => outlineToDxf({ ...SKEWED, setting })).toThrow(RangeError);
    const blank = { width: 2.8, thickness: 1 };
    expect(() => outlineToDxf({ ...SKEWED, blank })).toThrow(RangeError);
  });
});

/** From a point to a straight piece. */
function distance(from: Point, to: Point, [x, y]: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((x - from[0]) * dx + (y - from[1]) * dy) / square;
  const near = Math.max(0, Math.min(1, share));
  return Math.hypot(from[0] + near * dx - x, from[1] + near * dy - y);
}
