/** Paints drawings as PNG files in Node, with a font that comes along, so that every machine paints the same. */
import { createRequire } from 'node:module';

import type { Drawing } from '../../drawings/drawing.ts';
import { paintDrawing } from '../../drawings/paint.ts';
import { PRINT_PALETTE } from '../../drawings/palette.ts';

const DOTS_PER_INCH = 300;
const MM_PER_INCH = 25.4;
/** A name of its own: a font of the same name on this machine never stands in for it. */
const FONT = 'Drawing Sans';
/** DejaVu's own license is free; narrower than its plain kind, so that labels fit as planned. */
const FONT_FILES = ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'];

type Canvas = typeof import('@napi-rs/canvas');
let loading: Promise<Canvas> | undefined;

/**
 * Paints a drawing for paper at 300 dots to the inch.
 *
 * @returns The bytes of a PNG, the same for the same drawing.
 */
export async function paintPng(drawing: Drawing): Promise<Uint8Array> {
  const { createCanvas } = await (loading ??= loadCanvas());
  const scale = DOTS_PER_INCH / MM_PER_INCH;
  const pixels = (millimetres: number): number => Math.max(1, Math.round(millimetres * scale));
  const canvas = createCanvas(pixels(drawing.width), pixels(drawing.height));
  paintDrawing(canvas.getContext('2d'), drawing, PRINT_PALETTE, scale, [FONT]);
  return canvas.encode('png');
}

/** Loaded with the first drawing only: most commands draw nothing. */
async function loadCanvas(): Promise<Canvas> {
  const canvas = await import('@napi-rs/canvas');
  const { resolve } = createRequire(import.meta.url);
  for (const file of FONT_FILES) {
    const path = resolve(`dejavu-fonts-ttf/ttf/${file}`);
    if (canvas.GlobalFonts.registerFromPath(path, FONT) === null) {
      throw new RangeError(`The font ${file} can not be loaded.`);
    }
  }
  return canvas;
}
