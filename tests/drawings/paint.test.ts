import { describe, expect, test } from '@jest/globals';

import type { Drawing } from '../../src/drawings/drawing.ts';
import { paintDrawing, type PaintContext } from '../../src/drawings/paint.ts';
import { PRINT_PALETTE } from '../../src/drawings/palette.ts';

/** A canvas that keeps what was asked of it; one that lacks anything paintDrawing uses would throw. */
function recorder(): { context: PaintContext; calls: string[] } {
  const calls: string[] = [];
  const set: Record<string, unknown> = {};
  const known = [
    'save',
    'restore',
    'scale',
    'translate',
    'rotate',
    'beginPath',
    'closePath',
    'moveTo',
  ];
  known.push('lineTo', 'arc', 'fill', 'stroke', 'setLineDash', 'fillRect', 'fillText');
  const context = new Proxy(set, {
    get: (_, name) => {
      if (!known.includes(String(name))) throw new Error(`${String(name)} is asked for`);
      return (...given: unknown[]) => {
        const rounded = given.map((one) =>
          typeof one === 'number' ? Number(one.toFixed(3)) : one,
        );
        calls.push(`${String(name)} ${JSON.stringify(rounded)}`);
      };
    },
    set: (_, name, value) => {
      calls.push(`${String(name)} = ${JSON.stringify(value)}`);
      return true;
    },
  });
  return { context: context as unknown as PaintContext, calls };
}

const DRAWING: Drawing = {
  title: 'A test',
  alt: 'A test',
  width: 80,
  height: 40,
  shapes: [
    {
      kind: 'path',
      points: [
        [1, 2],
        [3, 4],
      ],
      closed: false,
      stroke: { tone: 'ink', width: 0.25, dash: [1, 2] },
    },
    { kind: 'circle', center: [5, 6], radius: 2, fill: 'wood' },
    { kind: 'text', at: [7, 8], text: '3/4"', size: 3, anchor: 'end', tone: 'measure', turn: -90 },
  ],
};

describe('Painting a drawing', () => {
  const { context, calls } = recorder();
  paintDrawing(context, DRAWING, PRINT_PALETTE, 10, ['Some Sans', 'sans-serif']);

  test('scales millimetres to pixels once and paints the paper first', () => {
    expect(calls.filter((call) => call === 'scale [10,10]')).toHaveLength(1);
    expect(calls.indexOf('fillRect [0,0,80,40]')).toBeLessThan(calls.indexOf('moveTo [1,2]'));
    expect(calls[calls.indexOf('fillRect [0,0,80,40]') - 1]).toBe('fillStyle = "#FFFFFF"');
  });

  test('strokes lines with their width and dash, and fills areas', () => {
    const at = calls.indexOf('moveTo [1,2]');
    expect(calls.slice(at, at + 6)).toEqual([
      'moveTo [1,2]',
      'lineTo [3,4]',
      `strokeStyle = "${PRINT_PALETTE.ink}"`,
      'lineWidth = 0.25',
      'setLineDash [[1,2]]',
      'stroke []',
    ]);
    expect(calls).toContain('arc [5,6,2,0,6.283]');
    expect(calls).toContain(`fillStyle = "${PRINT_PALETTE.wood}"`);
  });

  test('turns letters about their place and draws them large, scaled down to their size', () => {
    const at = calls.indexOf('translate [7,8]');
    expect(calls.slice(at, at + 3)).toEqual([
      'translate [7,8]',
      'rotate [-1.571]',
      'scale [0.03,0.03]',
    ]);
    expect(calls).toContain('font = "100px \\"Some Sans\\", sans-serif"');
    expect(calls).toContain('textAlign = "right"');
    expect(calls).toContain('fillText ["3/4\\"",0,0]');
  });

  test('leaves the canvas as it found it', () => {
    const count = (name: string): number => calls.filter((call) => call === `${name} []`).length;
    expect(count('save')).toBe(count('restore'));
  });
});
