/** Puts painted drawings on a staged sheet at their true size, each with its text alternative. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { soundRange } from '../../core/cells/cell-range.ts';
import type { PlacedDrawing, SheetDescription } from '../../sheets/grammar/description.ts';
import { columnPoints, POINTS_PER_INCH, STANDARD_COLUMN } from '../../sheets/grammar/page-size.ts';
import { rowHeights, STANDARD_POINTS } from '../../sheets/grammar/row-height.ts';
import type { Requests } from './requests.ts';

export interface PaintedDrawing {
  readonly placed: PlacedDrawing;
  /** The PNG in base64. */
  readonly image: string;
}

const POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;

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
  const corners = tellsPlaces
    ? await askCorners(sheet, drawings, requests)
    : workOutCorners(description, drawings);
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

interface Corner {
  readonly left: number;
  readonly top: number;
}

async function askCorners(
  sheet: Excel.Worksheet,
  drawings: readonly PaintedDrawing[],
  requests: Requests,
): Promise<readonly Corner[]> {
  const asked: Excel.Range[] = [];
  for (const { placed } of drawings) {
    const { top, left } = soundRange(placed.at);
    await requests.need(2);
    asked.push(sheet.getRangeByIndexes(top, left, 1, 1).load('left,top'));
  }
  await requests.send();
  return asked;
}

function workOutCorners(
  description: SheetDescription,
  drawings: readonly PaintedDrawing[],
): readonly Corner[] {
  const cells = drawings.map(({ placed }) => soundRange(placed.at));
  const most = (of: 'top' | 'left'): number =>
    cells.reduce((all, cell) => Math.max(all, cell[of]), 0);
  const heights = rowHeights(description);
  const tops = startsOf(most('top'), (at) => heights.get(at)?.height ?? STANDARD_POINTS);
  const lefts = startsOf(most('left'), (at) =>
    columnPoints(description.columns[at]?.width ?? STANDARD_COLUMN),
  );
  return cells.map(({ top, left }) => ({ top: tops[top] ?? 0, left: lefts[left] ?? 0 }));
}

/** Where each row or column begins, up to the last one asked for. */
function startsOf(last: number, sizeOf: (index: number) => number): number[] {
  const starts = [0];
  for (let at = 0; at < last; at++) starts.push((starts[at] ?? 0) + sizeOf(at));
  return starts;
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
