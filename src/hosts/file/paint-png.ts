/** Paints drawings as PNG files in Node, with a font that comes along, so that every machine paints the same. */
import { createRequire } from 'node:module';
import { promisify } from 'node:util';
import { deflate } from 'node:zlib';

import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { DOTS_PER_INCH, type Drawing } from '../../drawings/drawing.ts';
import { paintDrawing } from '../../drawings/paint.ts';
import { PRINT_PALETTE } from '../../drawings/palette.ts';
import { indexedPng } from '../png/indexed-png.ts';

/** A name of its own: a font of the same name on this machine never stands in for it. */
const FONT = 'Drawing Sans';
/** DejaVu's own license is free; narrower than its plain kind, so that labels fit as planned. */
const FONT_FILES = ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'];
const PACKING = 5;
const EXACT_COLORS = Object.values(PRINT_PALETTE);

const zlibOf = promisify(deflate);

type CanvasModule = typeof import('@napi-rs/canvas');
type Canvas = import('@napi-rs/canvas').Canvas;
let loading: Promise<CanvasModule> | undefined;
/** The bars of a job's sticks are all of one size: thousands of canvases would be made for them. */
let last: Canvas | undefined;

/**
 * Paints a drawing for paper, at as many dots to the inch as it asks for.
 *
 * @returns The bytes of a PNG, the same for the same drawing.
 */
export async function paintPng(drawing: Drawing): Promise<Uint8Array> {
  const { createCanvas } = await (loading ??= loadCanvas());
  const scale = (drawing.dotsPerInch ?? DOTS_PER_INCH) / MM_PER_INCH;
  const pixels = (millimetres: number): number => Math.max(1, Math.round(millimetres * scale));
  const [width, height] = [pixels(drawing.width), pixels(drawing.height)];
  const isLast = last?.width === width && last.height === height;
  const canvas = isLast && last !== undefined ? last : createCanvas(width, height);
  last = canvas;
  const context = canvas.getContext('2d');
  // The drawing may end within the last pixels, and an earlier one may lie under it.
  context.fillStyle = PRINT_PALETTE.paper;
  context.fillRect(0, 0, width, height);
  paintDrawing(context, drawing, PRINT_PALETTE, scale, [FONT]);
  // Nothing is waited for before the pixels are taken: the next drawing may come meanwhile.
  const png = indexedPng({ width, height, data: canvas.data() }, EXACT_COLORS, pack);
  return (await png) ?? repaint(createCanvas(width, height), drawing, scale);
}

function pack(bytes: Uint8Array): Promise<Uint8Array> {
  return zlibOf(bytes, { level: PACKING });
}

/** With four bytes a pixel. */
function repaint(canvas: Canvas, drawing: Drawing, scale: number): Promise<Uint8Array> {
  paintDrawing(canvas.getContext('2d'), drawing, PRINT_PALETTE, scale, [FONT]);
  return canvas.encode('png');
}

/** Loaded with the first drawing only: most commands draw nothing. */
async function loadCanvas(): Promise<CanvasModule> {
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
