import { describe, expect, test } from '@jest/globals';

import type { Drawing, Shape } from '../../../src/drawings/drawing.ts';
import { checkDescription } from '../../../src/sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../../src/sheets/grammar/check/clean-text.ts';
import { workbook } from '../../hosts/sample-workbook.ts';
import { TINY_DRAWING } from '../../hosts/tiny-drawing.ts';

function wrongWith(change: Partial<Drawing>, at = 'B2'): readonly string[] {
  const drawing = { ...TINY_DRAWING, ...change };
  return checkDescription(workbook([{ name: 'S', drawings: [{ at, drawing }] }]));
}

const withShape = (shape: Shape): readonly string[] => wrongWith({ shapes: [shape] });

describe('A described drawing', () => {
  test('is sound when a sheet can show it', () => {
    expect(wrongWith({})).toEqual([]);
    expect(wrongWith({ shapes: [] }, 'XFD1048576')).toEqual([]);
  });

  test.each(['', 'B', 'B2:C3', 'B2:B2', '$B$2', 'XFE1', 'A0'])('is not at %j', (at) => {
    expect(wrongWith({}, at)).toHaveLength(1);
  });

  test('has a title and a text alternative, of a length that can be read out', () => {
    expect(wrongWith({ title: ' ' })).toHaveLength(1);
    expect(wrongWith({ alt: '' })).toHaveLength(1);
    expect(wrongWith({ title: 'x'.repeat(256), alt: 'x'.repeat(2_001) })).toHaveLength(2);
    expect(wrongWith({ title: 'x'.repeat(255), alt: 'x'.repeat(2_000) })).toEqual([]);
  });

  test.each([0, -1, NaN, Infinity, 601])('is not %d mm wide or high', (size) => {
    expect(wrongWith({ width: size })).toHaveLength(1);
    expect(wrongWith({ height: size })).toHaveLength(1);
  });

  test('has shapes of finite numbers, known tones and clean letters', () => {
    const [path, circle, text] = TINY_DRAWING.shapes as [
      Shape & { kind: 'path' },
      Shape & { kind: 'circle' },
      Shape & { kind: 'text' },
    ];
    const stroke = { tone: 'ink', width: 0.5 } as const;
    const bad: Shape[] = [
      {
        ...path,
        points: [
          [0, 0],
          [NaN, 1],
        ],
      },
      { ...path, points: [[0, 0]] },
      { ...path, stroke: { ...stroke, width: 0 } },
      { ...path, stroke: { ...stroke, dash: [1, Infinity] } },
      { ...path, fill: 'toString' as 'ink' },
      { ...circle, radius: -1 },
      { ...circle, center: [Infinity, 0] },
      { ...text, at: [0, NaN] },
      { ...text, size: 0 },
      { ...text, turn: NaN },
      { ...text, tone: 'red' as 'ink' },
      { ...text, text: 'bell\u0007' },
    ];
    expect(bad.map((shape) => withShape(shape).length)).toEqual(bad.map(() => 1));
    expect(withShape({ ...path, stroke: { ...stroke, dash: [1, 2] } })).toEqual([]);
  });

  test('says on which sheet and where', () => {
    expect(wrongWith({ width: NaN })).toEqual([
      'Sheet "S": the drawing at B2 can not be NaN by 63.5 mm.',
    ]);
  });

  test('has its texts cleaned with all others', () => {
    const [, , letters] = TINY_DRAWING.shapes;
    const drawing = {
      ...TINY_DRAWING,
      title: 'a\u0000b',
      alt: 'c\ud800d',
      shapes: [{ ...letters, text: 'e\uffffand' } as Shape],
    };
    const bad = workbook([{ name: 'S', drawings: [{ at: 'A1', drawing }] }]);
    expect(checkDescription(bad)).toHaveLength(3);
    const clean = cleanDescription(bad);
    expect(checkDescription(clean)).toEqual([]);
    expect(clean.sheets[0]?.drawings?.[0]?.drawing.title).toBe('a\ufffdb');
  });
});
