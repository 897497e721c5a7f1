/** How a printed cell is styled. */
import type { PlainLine, LineSide } from '../../hosts/workbook/plain-workbook.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import { make } from '../shell/element.ts';
import type { PrintedCell } from './printed-sheet.ts';

/** Of lines as they are drawn on paper; dashes and dots of all kinds are one. */
const LINES: Readonly<Partial<Record<PlainLine['kind'], string>>> = {
  thin: '0.75pt solid',
  hair: '0.25pt solid',
  double: '2.25pt double',
  medium: '1.5pt solid',
  thick: '2.25pt solid',
};
const OTHER_LINE = '0.75pt dashed';

/** @param about Whether a text that is too long may run on into the next cell. */
export function styleCell(
  cell: HTMLElement,
  { text, style: given, isNumber }: PrintedCell,
  about: { readonly scale: number; readonly isNextBlank: boolean },
): void {
  const { style } = cell;
  const { bold, italic, underline, strike, color, fill, align, vertical, wrap, lines } = given;
  style.fontFamily = `'${given.font ?? STANDARD_FONT.name}', 'Liberation Sans', sans-serif`;
  style.fontSize = `${(given.size ?? STANDARD_FONT.size) * about.scale}pt`;
  if (bold === true) style.fontWeight = 'bold';
  if (italic === true) style.fontStyle = 'italic';
  const drawn = [underline === true ? 'underline' : '', strike === true ? 'line-through' : ''];
  style.textDecoration = drawn.join(' ').trim();
  if (color !== undefined) style.color = `#${color}`;
  if (fill !== undefined) style.backgroundColor = `#${fill}`;
  style.textAlign = align ?? (isNumber ? 'right' : 'left');
  style.verticalAlign = vertical === 'center' ? 'middle' : (vertical ?? 'bottom');
  for (const [side, line] of Object.entries(lines ?? {}) as [LineSide, PlainLine][]) {
    style.setProperty(`border-${side}`, `${LINES[line.kind] ?? OTHER_LINE} #${line.color}`);
  }
  if (text === '') return;
  const isLong = wrap !== true && !isNumber;
  const words = make('div', { className: wrap === true ? 'wrapped' : 'one-line' }, text);
  if (isLong && !about.isNextBlank) words.style.overflow = 'hidden';
  cell.append(words);
}
