/** How a printed cell is styled, and what stands in it. */
import { escapeHtml } from '../../exports/shop-view/markup.ts';
import type { PlainLine, LineSide } from '../../hosts/workbook/plain-workbook.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
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

/** Declarations for the cell's style attribute. */
export function cellStyle({ style: given, isNumber }: PrintedCell, scale: number): string {
  const { bold, italic, underline, strike, color, fill, align, vertical, lines } = given;
  const name = (given.font ?? STANDARD_FONT.name).replace(/['"\\]/gu, '');
  const drawn = [underline === true ? 'underline' : '', strike === true ? 'line-through' : ''];
  const line = drawn.join(' ').trim();
  return [
    `font-family:'${name}','Liberation Sans',sans-serif`,
    `font-size:${(given.size ?? STANDARD_FONT.size) * scale}pt`,
    ...(bold === true ? ['font-weight:bold'] : []),
    ...(italic === true ? ['font-style:italic'] : []),
    ...(line === '' ? [] : [`text-decoration:${line}`]),
    ...(color === undefined ? [] : [`color:#${color}`]),
    ...(fill === undefined ? [] : [`background-color:#${fill}`]),
    `text-align:${align ?? (isNumber ? 'right' : 'left')}`,
    `vertical-align:${vertical === 'center' ? 'middle' : (vertical ?? 'bottom')}`,
    ...(Object.entries(lines ?? {}) as [LineSide, PlainLine][]).map(
      ([side, one]) => `border-${side}:${LINES[one.kind] ?? OTHER_LINE} #${one.color}`,
    ),
  ].join(';');
}

/** @param isNextBlank Whether a text that is too long may run on into the next cell. */
export function cellWords({ text, style, isNumber }: PrintedCell, isNextBlank: boolean): string {
  if (text === '') return '';
  const isLong = style.wrap !== true && !isNumber;
  const look = style.wrap === true ? 'wrapped' : 'one-line';
  const cut = isLong && !isNextBlank ? ' style="overflow:hidden"' : '';
  return `<div class="${look}"${cut}>${escapeHtml(text)}</div>`;
}
