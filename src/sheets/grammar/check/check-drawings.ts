/** What is wrong with a described sheet's drawings. */
import type { Drawing, Shape, Stroke } from '../../../drawings/drawing.ts';
import { PRINT_PALETTE } from '../../../drawings/palette.ts';
import { parseRange } from '../../../core/cells/cell-range.ts';
import { isCleanText } from './clean-text.ts';
import type { SheetDescription } from '../description.ts';

/** Both sides of the largest paper that a shop's printer takes, and more than a cell's picture needs. */
const LARGEST_MM = 600;
/** Excel takes longer ones; a person who has them read out doesn't. */
const LONGEST_ALT = 2_000;
const LONGEST_TITLE = 255;

/** One sentence for each thing that is wrong with them. */
export function checkDrawings({ drawings = [] }: SheetDescription): string[] {
  return drawings.flatMap(({ at, drawing }) => {
    const range = parseRange(at);
    const isCell = range !== null && !at.includes(':');
    const place = isCell ? [] : [`a drawing can not be at "${at}".`];
    return [...place, ...checkDrawing(drawing).map((what) => `the drawing at ${at} ${what}`)];
  });
}

function checkDrawing({ title, alt, width, height, shapes }: Drawing): string[] {
  const wrong: string[] = [];
  if (!isText(title, LONGEST_TITLE)) wrong.push('has no title that can be written.');
  if (!isText(alt, LONGEST_ALT)) wrong.push('has no text alternative that can be written.');
  if (!(isSize(width) && isSize(height))) wrong.push(`can not be ${width} by ${height} mm.`);
  const bad = shapes.findIndex((shape) => !isSound(shape));
  if (bad >= 0) wrong.push(`has a shape that can not be drawn (number ${bad + 1}).`);
  return wrong;
}

function isText(text: string, most: number): boolean {
  return text.trim() !== '' && text.length <= most && isCleanText(text);
}

function isSize(millimetres: number): boolean {
  return millimetres > 0 && millimetres <= LARGEST_MM;
}

function isSound(shape: Shape): boolean {
  switch (shape.kind) {
    case 'path':
      return (
        shape.points.length > 1 && shape.points.flat().every(Number.isFinite) && isDrawn(shape)
      );
    case 'circle':
      return (
        [...shape.center, shape.radius].every(Number.isFinite) && shape.radius > 0 && isDrawn(shape)
      );
    case 'text':
      return (
        [...shape.at, shape.turn ?? 0].every(Number.isFinite) &&
        isSize(shape.size) &&
        isTone(shape.tone) &&
        isCleanText(shape.text)
      );
  }
}

function isDrawn({ stroke, fill }: { readonly stroke?: Stroke; readonly fill?: string }): boolean {
  if (fill !== undefined && !isTone(fill)) return false;
  if (stroke === undefined) return true;
  const { tone, width, dash = [] } = stroke;
  return isTone(tone) && isSize(width) && dash.every(isSize);
}

/** The type says so too, but a description may have been read from a file. */
function isTone(tone: string): boolean {
  return Object.hasOwn(PRINT_PALETTE, tone);
}
