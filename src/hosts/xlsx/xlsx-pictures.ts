/**
 * Drawings as pictures in a workbook. The library stretches a picture from cell to cell, so that its
 * size would follow the columns; its anchors are rewritten to say the picture's own size.
 */
import type { Drawing } from '../../drawings/drawing.ts';
import { soundRange } from '../../core/cells/cell-range.ts';
import type { PlacedDrawing } from '../../sheets/grammar/description.ts';
import type { PlainPicture } from '../workbook/plain-workbook.ts';

/** A drawing as the bytes of a PNG, at as many dots to the inch as it asks for. */
export type Paint = (drawing: Drawing) => Promise<Uint8Array>;

/** ECMA-376 part 1, 20.1.2.1: English Metric Units to the millimetre; and to a pixel of 96 dpi. */
const EMU_PER_MM = 36_000;
const EMU_PER_PIXEL = 9_525;
/** PNG (W3C, third edition, section 5.2): how every file begins. */
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Each takes a few megabytes while it is painted, and no machine paints many at a time. */
const PAINTED_AT_ONCE = 4;

/** @throws RangeError where `paint` gives no PNG (a bug of the caller's). */
export async function paintPictures(
  drawings: readonly PlacedDrawing[],
  paint: Paint,
): Promise<PlainPicture[]> {
  const painted: PlainPicture[] = [];
  const rest = drawings.entries();
  const paintSome = async (): Promise<void> => {
    for (const [index, placed] of rest) painted[index] = await picture(placed, paint);
  };
  await Promise.all(Array.from({ length: PAINTED_AT_ONCE }, paintSome));
  return painted;
}

async function picture({ at, drawing }: PlacedDrawing, paint: Paint): Promise<PlainPicture> {
  const png = await paint(drawing);
  if (!PNG.every((byte, index) => png[index] === byte)) {
    throw new RangeError(`The drawing "${drawing.title}" was painted as no PNG.`);
  }
  const { top, left } = soundRange(at);
  return {
    png,
    row: top,
    column: left,
    width: (drawing.width * EMU_PER_MM) / EMU_PER_PIXEL,
    height: (drawing.height * EMU_PER_MM) / EMU_PER_PIXEL,
    title: drawing.title,
    alt: drawing.alt,
  };
}

/** ECMA-376 part 1, 20.5.2.24 (oneCellAnchor) in place of 20.5.2.33 (twoCellAnchor). */
export function ownSizes(xml: string): string {
  return xml.replace(/<xdr:twoCellAnchor>(.*?)<\/xdr:twoCellAnchor>/gs, (_, inside: string) => {
    const found = /<a:ext cx="([\d.]+)" cy="([\d.]+)"\/>/.exec(inside);
    const [cx, cy] = [found?.[1], found?.[2]].map((emu) => Math.round(Number(emu)));
    const size = `cx="${cx ?? 0}" cy="${cy ?? 0}"`;
    const sized = inside
      .replace(/<xdr:to>.*?<\/xdr:to>/s, `<xdr:ext ${size}/>`)
      .replace(/<a:ext cx="[\d.]+" cy="[\d.]+"\/>/, `<a:ext ${size}/>`);
    return `<xdr:oneCellAnchor>${sized}</xdr:oneCellAnchor>`;
  });
}
