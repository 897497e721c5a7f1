/** Drawings as pictures that the grid can show. */
import type { Drawing } from '../../drawings/drawing.ts';
import type { PlacedDrawing, WorkbookDescription } from '../../sheets/grammar/description.ts';

export interface GridTools {
  /** Paints a drawing as a PNG. */
  readonly paint: (drawing: Drawing) => Promise<Uint8Array>;
}

/** A drawing with its PNG as a data: address. */
export interface PaintedDrawing {
  readonly placed: PlacedDrawing;
  readonly source: string;
}

/** Bytes that are made letters of at once: a call takes so many arguments at most. */
const CHUNK = 8_192;

/** Before the workbook is touched, since painting takes its time and may fail. */
export async function paintDrawings(
  { paint }: GridTools,
  { sheets }: WorkbookDescription,
): Promise<PaintedDrawing[][]> {
  const painted: PaintedDrawing[][] = [];
  for (const { drawings = [] } of sheets) {
    const ofSheet: PaintedDrawing[] = [];
    for (const placed of drawings) {
      ofSheet.push({
        placed,
        source: `data:image/png;base64,${base64(await paint(placed.drawing))}`,
      });
    }
    painted.push(ofSheet);
  }
  return painted;
}

function base64(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += CHUNK) {
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  }
  return btoa(letters);
}
