/** Our named styles as the .xlsx writer takes them. */
import type { CellStyle as XlsxStyle } from 'hucre/xlsx';

import {
  LINE_COLOR,
  STANDARD_FONT,
  STYLES,
  type CellStyle,
  type StyleName,
} from '../../sheets/grammar/styles.ts';

type XlsxFont = NonNullable<XlsxStyle['font']>;
type XlsxBorder = NonNullable<XlsxStyle['border']>;

const cellStyles = new Map<StyleName, XlsxStyle>();

/** How a cell of that style looks. */
export function cellStyle(name: StyleName): XlsxStyle {
  const known = cellStyles.get(name);
  if (known !== undefined) return known;
  const style: CellStyle = STYLES[name];
  const made: XlsxStyle = {
    font: {
      ...STANDARD_FONT,
      ...(style.size === undefined ? {} : { size: style.size }),
      ...ink(style),
    },
    alignment: {
      vertical: 'top',
      ...(style.align === undefined ? {} : { horizontal: style.align }),
      ...(style.wrap === undefined ? {} : { wrapText: style.wrap }),
    },
    ...fillAndBorder(style),
    ...(style.format === undefined ? {} : { numFmt: style.format }),
  };
  cellStyles.set(name, made);
  return made;
}

/** What a highlight changes on a cell: Excel takes no font name, size or alignment there. */
export function highlightStyle(name: StyleName): XlsxStyle {
  const style: CellStyle = STYLES[name];
  const font = ink(style);
  return { ...(Object.keys(font).length === 0 ? {} : { font }), ...fillAndBorder(style) };
}

function ink(style: CellStyle): XlsxFont {
  return {
    ...(style.bold === undefined ? {} : { bold: style.bold }),
    ...(style.italic === undefined ? {} : { italic: style.italic }),
    ...(style.color === undefined ? {} : { color: { rgb: style.color } }),
  };
}

function fillAndBorder(style: CellStyle): XlsxStyle {
  const { fill: rgb, border } = style;
  return {
    // Cells show a solid fill's foreground, highlights its background: both are given.
    ...(rgb === undefined
      ? {}
      : { fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb }, bgColor: { rgb } } }),
    ...(border === undefined ? {} : { border: lines(border) }),
  };
}

function lines(border: NonNullable<CellStyle['border']>): XlsxBorder {
  const line = { style: border === 'hair' ? 'hair' : 'thin', color: { rgb: LINE_COLOR } } as const;
  return border === 'top' ? { top: line } : { top: line, right: line, bottom: line, left: line };
}
