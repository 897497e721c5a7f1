import { describe, expect, test } from '@jest/globals';
import { createCanvas, loadImage } from '@napi-rs/canvas';

import type { Drawing } from '../../src/drawings/drawing.ts';
import { paintPng } from '../../src/hosts/file/paint-png.ts';

/** 25.4 by 12.7 mm: 300 by 150 pixels at 300 dots to the inch. */
const DRAWING: Drawing = {
  title: 'A test',
  alt: 'A test',
  width: 25.4,
  height: 12.7,
  shapes: [
    {
      kind: 'path',
      points: [
        [0, 0],
        [12.7, 0],
        [12.7, 12.7],
        [0, 12.7],
      ],
      closed: true,
      fill: 'wood',
    },
  ],
};

async function pixels(
  png: Uint8Array,
): Promise<{ width: number; height: number; at: (x: number, y: number) => string }> {
  const image = await loadImage(Buffer.from(png));
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  const hex = (share: number): string => share.toString(16).padStart(2, '0').toUpperCase();
  const at = (x: number, y: number): string => {
    const from = (y * image.width + x) * 4;
    return `#${[...data.subarray(from, from + 3)].map(hex).join('')}`;
  };
  return { width: image.width, height: image.height, at };
}

describe('Painting a PNG', () => {
  test('gives 300 dots to the inch, in the colors for print', async () => {
    const { width, height, at } = await pixels(await paintPng(DRAWING));
    expect([width, height]).toEqual([300, 150]);
    expect(at(75, 75)).toBe('#EBD9B2');
    expect(at(225, 75)).toBe('#FFFFFF');
  });

  test('gives the same bytes for the same drawing', async () => {
    const [one, other] = [await paintPng(DRAWING), await paintPng(DRAWING)];
    expect(Buffer.from(one).equals(other)).toBe(true);
  });

  test('shows nothing of the drawing painted before it, to the last pixel', async () => {
    const size = { width: 25.44, height: 12.74 };
    const empty = { ...DRAWING, ...size, shapes: [] };
    const first = Buffer.from(await paintPng(empty));
    const full = DRAWING.shapes.map((shape) => ({
      ...shape,
      points: [
        [0, 0],
        [30, 0],
        [30, 30],
        [0, 30],
      ],
    }));
    const painted = { ...DRAWING, ...size, shapes: full } as Drawing;
    const [, again] = await Promise.all([paintPng(painted), paintPng(empty)]);
    expect(Buffer.from(again).equals(first)).toBe(true);
  });

  test('letters in the font that comes along, no wider than labels are given room for', async () => {
    const shape = { kind: 'text', at: [1, 8], size: 4, anchor: 'start', tone: 'ink' } as const;
    for (const text of [
      '88.9 mm',
      '10 13/32"',
      'blade leans right,',
      'the front edge',
      '37.1° from upright',
    ]) {
      const room = text.length * 4 * 0.62;
      const drawing = { ...DRAWING, width: 80, shapes: [{ ...shape, text }] };
      const { width, height, at } = await pixels(await paintPng(drawing));
      const inked = Array.from({ length: width }, (_, x) =>
        Array.from({ length: height }, (__, y) => at(x, y)).some((color) => color !== '#FFFFFF'),
      );
      const last = (inked.lastIndexOf(true) / 300) * 25.4;
      expect(last - 1).toBeGreaterThan(room / 2);
      expect(last - 1).toBeLessThan(room);
    }
  });
});
