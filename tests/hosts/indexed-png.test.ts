import { describe, expect, test } from '@jest/globals';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { promisify } from 'node:util';
import { crc32 as crcOfZlib, deflate } from 'node:zlib';

import { crc32 } from '../../src/hosts/png/crc32.ts';
import { indexedPng } from '../../src/hosts/png/indexed-png.ts';
import { seededNumbers } from '../seeded-numbers.ts';

const pack = promisify<Uint8Array, Uint8Array>(deflate);

/** Opaque pixels from whole numbers 0xRRGGBB. */
function pixels(width: number, height: number, colorAt: (x: number, y: number) => number) {
  const data = new Uint8Array(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const color = colorAt(x, y);
      data.set([color >> 16, (color >> 8) & 255, color & 255, 255], (y * width + x) * 4);
    }
  }
  return { width, height, data };
}

async function decode(png: Uint8Array): Promise<Uint8ClampedArray> {
  const image = await loadImage(Buffer.from(png));
  const context = createCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, image.width, image.height).data;
}

describe('A PNG with a table of colors', () => {
  test('gives the exact colors back to the pixel, in rows alike and in rows that differ', async () => {
    const exact = ['#1F2A30', '#EBD9B2', '#FFFFFF', '#EEF2F3', '#FFFFFE'];
    const next = seededNumbers(3);
    const colors = exact.map((color) => Number.parseInt(color.slice(1), 16));
    const kinds = Array.from({ length: 40 }, () => Math.floor(next() * 3));
    const picture = pixels(37, 40, (x, y) =>
      kinds[y] === 0 ? colors[0]! : colors[(x * (kinds[y]! + y)) % colors.length]!,
    );
    const png = await indexedPng(picture, exact, pack);
    expect(png![25]).toBe(3);
    expect([...(await decode(png!))]).toEqual([...picture.data]);
  });

  test('gives other colors within 31 of 255', async () => {
    const picture = pixels(64, 64, (x, y) => (x * 4 * 65536 + x * 4 * 256 + y) & 0xffffff);
    const png = await indexedPng(picture, ['#FFFFFF'], pack);
    const back = await decode(png!);
    const off = back.map((value, at) => Math.abs(value - picture.data[at]!));
    expect(Math.max(...off)).toBeLessThanOrEqual(31);
    expect(Math.max(...off)).toBeGreaterThan(0);
  });

  test('takes a color that is off by little for the exact one it is nearest to, whichever comes first', async () => {
    const picture = pixels(8, 4, (x) => (x < 4 ? 0xedf2f3 : 0xfefefe));
    const back = await decode((await indexedPng(picture, ['#FFFFFF', '#EEF2F3'], pack))!);
    expect([...back.subarray(0, 3)]).toEqual([0xee, 0xf2, 0xf3]);
    expect([...back.subarray(28, 31)]).toEqual([255, 255, 255]);
  });

  test('checks its chunks as zlib does', () => {
    const next = seededNumbers(5);
    for (const length of [0, 1, 255, 4096]) {
      const bytes = Uint8Array.from({ length }, () => Math.floor(next() * 256));
      expect(crc32(bytes)).toBe(crcOfZlib(bytes));
    }
  });

  test('is none where there are more colors than it has room for', async () => {
    const picture = pixels(64, 64, (x, y) => x * 4 * 65536 + y * 4 * 256 + ((x * y) % 256));
    expect(await indexedPng(picture, [], pack)).toBeNull();
  });
});
