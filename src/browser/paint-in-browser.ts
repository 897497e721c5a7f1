/** Paints a drawing as a PNG at printing resolution, on the browser's own canvas. */
import type { Drawing } from '../drawings/drawing.ts';
import { PRINT_PALETTE } from '../drawings/palette.ts';
import { paintDrawing } from '../drawings/paint.ts';

const DOTS_PER_INCH = 300;
const PIXELS_PER_MILLIMETRE = DOTS_PER_INCH / 25.4;

export async function paintInBrowser(drawing: Drawing): Promise<Uint8Array> {
  const width = Math.ceil(drawing.width * PIXELS_PER_MILLIMETRE);
  const height = Math.ceil(drawing.height * PIXELS_PER_MILLIMETRE);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (context === null) throw new RangeError(`No canvas of ${width} by ${height} pixels.`);
  paintDrawing(context, drawing, PRINT_PALETTE, PIXELS_PER_MILLIMETRE);
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  return new Uint8Array(await blob.arrayBuffer());
}
