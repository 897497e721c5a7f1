/** Our named styles as the grid takes them. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from '@univerjs/core';
import {
  LINE_COLOR,
  STANDARD_FONT,
  STYLES,
  type CellStyle,
  type StyleName,
} from '../../sheets/grammar/styles.ts';

const ALIGN = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

/** Every style by its name: sheets refer to them so. */
export function gridStyles(): Record<string, IStyleData> {
  return Object.fromEntries(
    (Object.keys(STYLES) as StyleName[]).map((name) => [name, gridStyle(STYLES[name])]),
  );
}

function gridStyle(style: CellStyle): IStyleData {
  const { bold, italic, size, color, fill, align, wrap, border, format } = style;
  return {
    ff: STANDARD_FONT.name,
    fs: size ?? STANDARD_FONT.size,
    vt: VerticalAlign.TOP,
    ...(bold === undefined ? {} : { bl: BooleanNumber.TRUE }),
    ...(italic === undefined ? {} : { it: BooleanNumber.TRUE }),
    ...(color === undefined ? {} : { cl: { rgb: `#${color}` } }),
    ...(fill === undefined ? {} : { bg: { rgb: `#${fill}` } }),
    ...(align === undefined ? {} : { ht: ALIGN[align] }),
    ...(wrap === undefined ? {} : { tb: WrapStrategy.WRAP }),
    ...(border === undefined ? {} : { bd: lines(border) }),
    ...(format === undefined ? {} : { n: { pattern: format } }),
  };
}

function lines(border: NonNullable<CellStyle['border']>): IBorderData {
  const s = border === 'hair' ? BorderStyleTypes.HAIR : BorderStyleTypes.THIN;
  const line = { s, cl: { rgb: `#${LINE_COLOR}` } };
  return border === 'top' ? { t: line } : { t: line, r: line, b: line, l: line };
}
