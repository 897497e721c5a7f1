/** A drawing on a canvas: a browser's, one off the screen, or one in Node. */
import type { Drawing, PathShape, Shape, Stroke, TextShape } from './drawing.ts';
import { FONT_FAMILIES } from './lettering.ts';
import type { Palette } from './palette.ts';

/** As much of CanvasRenderingContext2D as is needed, so that any canvas fits. */
export interface PaintContext {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: string;
  lineJoin: string;
  font: string;
  textAlign: string;
  textBaseline: string;
  save(): void;
  restore(): void;
  scale(x: number, y: number): void;
  translate(x: number, y: number): void;
  rotate(radians: number): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  arc(x: number, y: number, radius: number, start: number, end: number): void;
  fill(): void;
  stroke(): void;
  setLineDash(dash: number[]): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
}

/** Some canvases round a font's size to whole units: letters are drawn large and scaled down. */
const FONT_UNITS = 100;

/**
 * Paints a drawing, its paper too, with the top left corner at the canvas's origin.
 *
 * @param context Of a canvas of at least width × height × pixelsPerMillimetre pixels.
 * @param palette Colors that the canvas knows: no custom properties.
 * @param fonts Families to look for, the first that is there serves.
 */
export function paintDrawing(
  context: PaintContext,
  drawing: Drawing,
  palette: Palette,
  pixelsPerMillimetre: number,
  fonts: readonly string[] = FONT_FAMILIES,
): void {
  context.save();
  context.scale(pixelsPerMillimetre, pixelsPerMillimetre);
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.fillStyle = palette.paper;
  context.fillRect(0, 0, drawing.width, drawing.height);
  for (const shape of drawing.shapes) paintShape(context, shape, palette, fonts);
  context.restore();
}

function paintShape(
  context: PaintContext,
  shape: Shape,
  palette: Palette,
  fonts: readonly string[],
): void {
  if (shape.kind === 'text') return paintText(context, shape, palette, fonts);
  context.beginPath();
  if (shape.kind === 'circle') {
    context.arc(shape.center[0], shape.center[1], shape.radius, 0, 2 * Math.PI);
    context.closePath();
  } else tracePath(context, shape);
  if (shape.fill !== undefined) {
    context.fillStyle = palette[shape.fill];
    context.fill();
  }
  if (shape.stroke !== undefined) strokePath(context, shape.stroke, palette);
}

function tracePath(context: PaintContext, { points, closed }: PathShape): void {
  points.forEach(([x, y], index) => {
    if (index === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
  if (closed) context.closePath();
}

function strokePath(context: PaintContext, stroke: Stroke, palette: Palette): void {
  context.strokeStyle = palette[stroke.tone];
  context.lineWidth = stroke.width;
  context.setLineDash([...(stroke.dash ?? [])]);
  context.stroke();
}

function paintText(
  context: PaintContext,
  shape: TextShape,
  palette: Palette,
  fonts: readonly string[],
): void {
  const [x, y] = shape.at;
  context.save();
  context.translate(x, y);
  if (shape.turn !== undefined) context.rotate((shape.turn / 180) * Math.PI);
  context.scale(shape.size / FONT_UNITS, shape.size / FONT_UNITS);
  const families = fonts.map((name) => (name === 'sans-serif' ? name : `"${name}"`)).join(', ');
  context.font = `${shape.bold === true ? 'bold ' : ''}${FONT_UNITS}px ${families}`;
  context.textAlign = { start: 'left', middle: 'center', end: 'right' }[shape.anchor];
  context.textBaseline = 'alphabetic';
  context.fillStyle = palette[shape.tone];
  context.fillText(shape.text, 0, 0);
  context.restore();
}
