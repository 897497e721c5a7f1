import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import type { Drawing } from '../../src/drawings/drawing.ts';
import { DARK_PALETTE, PAGE_PALETTE, PRINT_PALETTE } from '../../src/drawings/palette.ts';
import { drawSection } from '../../src/drawings/section.ts';
import { toSvg } from '../../src/drawings/to-svg.ts';
import { childOf, childrenOf, parseXml, textOf } from '../hosts/xml.ts';
import { anySection } from './drawn-coves.ts';
import { count } from '../deep.ts';

const SMALL: Drawing = {
  title: 'A "cove" & <more>',
  alt: '3/4" deep & 2 < 3',
  width: 80,
  height: 40.12345,
  shapes: [
    {
      kind: 'path',
      points: [
        [0, 0],
        [1 / 3, 2],
        [-0.0001, 4],
      ],
      closed: true,
      fill: 'wood',
      stroke: { tone: 'ink', width: 0.5, dash: [1, 2] },
    },
    { kind: 'circle', center: [5, 6], radius: 2, fill: 'metal' },
    {
      kind: 'text',
      at: [9, 8],
      text: '3/4" < 1" & more',
      size: 3,
      anchor: 'end',
      tone: 'ink',
      turn: -90,
      bold: true,
    },
  ],
};

describe('A drawing as SVG', () => {
  const root = parseXml(toSvg(SMALL, PRINT_PALETTE));

  test('has its true size, a viewBox in millimetres, a title and a description', () => {
    expect(root.attributes).toMatchObject({
      width: '80mm',
      height: '40.123mm',
      viewBox: '0 0 80 40.123',
      role: 'img',
    });
    expect(textOf(childOf(root, 'title'))).toBe(SMALL.title);
    expect(textOf(childOf(root, 'desc'))).toBe(SMALL.alt);
  });

  test('has paths, circles and texts, rounded to a thousandth of a millimetre', () => {
    const [path] = childrenOf(root, 'path');
    expect(path!.attributes).toMatchObject({
      d: 'M0 0L0.333 2L0 4Z',
      fill: PRINT_PALETTE.wood,
      stroke: PRINT_PALETTE.ink,
      'stroke-width': '0.5',
      'stroke-dasharray': '1 2',
    });
    expect(childrenOf(root, 'circle')[0]!.attributes).toMatchObject({ cx: '5', cy: '6', r: '2' });
    const [text] = childrenOf(root, 'text');
    expect(textOf(text)).toBe('3/4" < 1" & more');
    expect(text!.attributes).toMatchObject({
      x: '9',
      y: '8',
      'text-anchor': 'end',
      'font-weight': 'bold',
      transform: 'rotate(-90 9 8)',
    });
  });

  test('follows the page where its palette names custom properties', () => {
    expect(toSvg(SMALL, PAGE_PALETTE)).toContain('fill="var(--cl-wood)"');
    expect(toSvg(SMALL, DARK_PALETTE)).not.toContain('var(');
  });

  test('is well-formed whatever its texts hold', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const [, , letters] = SMALL.shapes;
        const drawing = {
          ...SMALL,
          title: text,
          alt: text,
          shapes: [{ ...letters!, text }],
        } as Drawing;
        const back = parseXml(toSvg(drawing, PRINT_PALETTE));
        expect(textOf(childOf(back, 'text'))).toBe(textOf(childOf(back, 'title')));
      }),
      { numRuns: count(200) },
    );
  });

  test('holds every section that there is, with finite numbers alone, the same each time', () => {
    fc.assert(
      fc.property(anySection, (view) => {
        const svg = toSvg(drawSection(view), PAGE_PALETTE);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect(parseXml(svg).name).toBe('svg');
        expect(toSvg(drawSection(view), PAGE_PALETTE)).toBe(svg);
      }),
      { numRuns: count(60) },
    );
  });
});
