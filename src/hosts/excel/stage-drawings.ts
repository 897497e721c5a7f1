/** Puts painted drawings on a staged sheet at their true size, each with its text alternative. */
import { soundRange } from '../../sheets/cell-range.ts';
import type { PlacedDrawing, SheetDescription } from '../../sheets/description.ts';
import { columnPoints, POINTS_PER_INCH, STANDARD_COLUMN } from '../../sheets/page-size.ts';
import { rowHeights, STANDARD_POINTS } from '../../sheets/row-height.ts';
import type { Requests } from './requests.ts';

export interface PaintedDrawing {
  readonly placed: PlacedDrawing;
  /** The PNG in base64. */
  readonly image: string;
}

const POINTS_PER_MM = POINTS_PER_INCH / 25.4;

/**
 * @param tellsPlaces Whether this Excel tells where a cell lies (ExcelApi 1.10); else it is worked
 *   out from the sizes that were set, which Excel rounds to whole pixels.
 */
export async function stageDrawings(
  sheet: Excel.Worksheet,
  description: SheetDescription,
  drawings: readonly PaintedDrawing[],
  requests: Requests,
  tellsPlaces: boolean,
): Promise<void> {
  if (drawings.length === 0) return;
  const corners = drawings.map(({ placed }) => {
    const { top, left } = soundRange(placed.at);
    return tellsPlaces
      ? sheet.getRangeByIndexes(top, left, 1, 1).load('left,top')
      : cornerOf(description, top, left);
  });
  if (tellsPlaces) await requests.send();
  for (const [index, { placed, image }] of drawings.entries()) {
    const { drawing } = placed;
    const corner = corners[index] ?? { left: 0, top: 0 };
    await requests.need(9, image.length / 3 + drawing.alt.length + drawing.title.length);
    const shape = sheet.shapes.addImage(image);
    shape.name = `${drawing.title} ${index + 1}`;
    shape.altTextTitle = drawing.title;
    shape.altTextDescription = drawing.alt;
    shape.lockAspectRatio = false;
    shape.width = drawing.width * POINTS_PER_MM;
    shape.height = drawing.height * POINTS_PER_MM;
    shape.left = corner.left;
    shape.top = corner.top;
    // Its size is its scale: no column may stretch it. Told since the same version as places.
    if (tellsPlaces) shape.placement = 'OneCell';
  }
}

function cornerOf(
  description: SheetDescription,
  row: number,
  column: number,
): { readonly left: number; readonly top: number } {
  const heights = rowHeights(description);
  const sum = (count: number, of: (index: number) => number): number =>
    Array.from({ length: count }, (_, index) => of(index)).reduce((all, one) => all + one, 0);
  return {
    left: sum(column, (at) => columnPoints(description.columns[at]?.width ?? STANDARD_COLUMN)),
    top: sum(row, (at) => heights.get(at)?.height ?? STANDARD_POINTS),
  };
}

/** Base64 for any number of bytes. */
export function base64(bytes: Uint8Array): string {
  let text = '';
  // Too many arguments at once would overflow the stack.
  for (let at = 0; at < bytes.length; at += 8192) {
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return btoa(text);
}
