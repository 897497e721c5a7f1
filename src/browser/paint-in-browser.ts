/** Paints a drawing as a PNG at printing resolution, on the browser's own canvas. */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import { DOTS_PER_INCH, type Drawing } from '../drawings/drawing.ts';
import { PRINT_PALETTE } from '../drawings/palette.ts';
import { paintDrawing } from '../drawings/paint.ts';
import { indexedPng } from '../hosts/png/indexed-png.ts';

const EXACT_COLORS = Object.values(PRINT_PALETTE);

export async function paintInBrowser(drawing: Drawing): Promise<Uint8Array> {
  const scale = (drawing.dotsPerInch ?? DOTS_PER_INCH) / MM_PER_INCH;
  const width = Math.ceil(drawing.width * scale);
  const height = Math.ceil(drawing.height * scale);
  const canvas = new OffscreenCanvas(width, height);
  // The pixels are taken at once, and stay where they can be.
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new RangeError(`No canvas of ${width} by ${height} pixels.`);
  // The drawing may end within the last pixels.
  context.fillStyle = PRINT_PALETTE.paper;
  context.fillRect(0, 0, width, height);
  paintDrawing(context, drawing, PRINT_PALETTE, scale);
  const { data } = context.getImageData(0, 0, width, height);
  const png = await indexedPng({ width, height, data }, EXACT_COLORS, pack);
  return png ?? bytesOf(await canvas.convertToBlob({ type: 'image/png' }));
}

/** Beside the thread that draws the page. */
function pack(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  return bytesOf(new Response(packed));
}

async function bytesOf(body: Blob | Response): Promise<Uint8Array> {
  return new Uint8Array(await body.arrayBuffer());
}
