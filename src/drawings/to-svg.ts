/** A drawing as SVG, for a page or a file. */
import type { CircleShape, Drawing, PathShape, Shape, Stroke, TextShape } from './drawing.ts';
import { FONT_FAMILIES } from './lettering.ts';
import type { Palette } from './palette.ts';

/**
 * Writes a drawing as one SVG element, true to its size, with its title and text alternative.
 *
 * @param drawing Shapes in millimetres.
 * @param palette Colors; PAGE_PALETTE for a page that has themes.
 * @returns Well-formed SVG, the same for the same drawing.
 */
export function toSvg(drawing: Drawing, palette: Palette): string {
  const { title, alt } = drawing;
  const width = number(drawing.width);
  const height = number(drawing.height);
  const fonts = FONT_FAMILIES.map((name) => (name.includes(' ') ? `'${name}'` : name)).join(', ');
  const whole = `<rect width="${width}" height="${height}" fill="${palette.paper}"/>`;
  const shapes = drawing.shapes.map((shape) => element(shape, palette)).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm"` +
    ` viewBox="0 0 ${width} ${height}" role="img" font-family="${fonts}">` +
    `<title>${escape(title)}</title><desc>${escape(alt)}</desc>${whole}${shapes}</svg>`
  );
}

function element(shape: Shape, palette: Palette): string {
  switch (shape.kind) {
    case 'path':
      return path(shape, palette);
    case 'circle':
      return circle(shape, palette);
    case 'text':
      return text(shape, palette);
  }
}

function path({ points, closed, ...look }: PathShape, palette: Palette): string {
  const steps = points.map(
    ([x, y], index) => `${index === 0 ? 'M' : 'L'}${number(x)} ${number(y)}`,
  );
  return `<path d="${steps.join('')}${closed ? 'Z' : ''}"${paint(look, palette)}/>`;
}

function circle({ center, radius, ...look }: CircleShape, palette: Palette): string {
  const [x, y] = center;
  const place = `cx="${number(x)}" cy="${number(y)}" r="${number(radius)}"`;
  return `<circle ${place}${paint(look, palette)}/>`;
}

function text(shape: TextShape, palette: Palette): string {
  const [x, y] = [number(shape.at[0]), number(shape.at[1])];
  const bold = shape.bold === true ? ' font-weight="bold"' : '';
  const { turn = 0 } = shape;
  const turned = turn === 0 ? '' : ` transform="rotate(${number(turn)} ${x} ${y})"`;
  return (
    `<text x="${x}" y="${y}" font-size="${number(shape.size)}" text-anchor="${shape.anchor}"` +
    ` fill="${palette[shape.tone]}"${bold}${turned}>${escape(shape.text)}</text>`
  );
}

function paint(look: Pick<PathShape, 'stroke' | 'fill'>, palette: Palette): string {
  const fill = look.fill === undefined ? 'none' : palette[look.fill];
  return ` fill="${fill}"${look.stroke === undefined ? '' : line(look.stroke, palette)}`;
}

function line({ tone, width, dash = [] }: Stroke, palette: Palette): string {
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(number).join(' ')}"`;
  return (
    ` stroke="${palette[tone]}" stroke-width="${number(width)}"${dashes}` +
    ' stroke-linecap="round" stroke-linejoin="round"'
  );
}

/** To a thousandth of a millimetre, and never "-0". */
function number(value: number): string {
  const thousandths = Math.round(value * 1000);
  return String(thousandths === 0 ? 0 : thousandths / 1000);
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };
/** All but XML 1.0's own Char production (section 2.2). */
// eslint-disable-next-line no-control-regex -- control characters are what is looked for
const UNHELD = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;

function escape(plain: string): string {
  return plain
    .replace(UNHELD, '\uFFFD')
    .replace(/[&<>]/g, (character) => ENTITIES[character] ?? character);
}
