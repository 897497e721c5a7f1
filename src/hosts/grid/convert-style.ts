/** Looks of any workbook's cells as the grid takes them, and back. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
  type ITextDecoration,
  type Nullable,
} from '@univerjs/core';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import { DESCRIBED_STYLES } from '../workbook/described-styles.ts';
import type {
  LineSide,
  PlainFont,
  PlainLine,
  PlainStyle,
  PlainWorkbook,
} from '../workbook/plain-workbook.ts';

const SIDES = { t: 'top', r: 'right', b: 'bottom', l: 'left' } as const;
const ALIGNS = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
} as const;
const VERTICALS = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
} as const;

const LINES = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
} as const satisfies Readonly<Record<PlainLine['kind'], BorderStyleTypes>>;

/** Those of all that is described, by their names. */
export function describedGridStyles(): Record<string, IStyleData> {
  return toGridStyles(DESCRIBED_STYLES, STANDARD_FONT);
}

/** @param font The workbook's own, which a style without one has. */
export function toGridStyles(
  styles: PlainWorkbook['styles'],
  font: PlainFont,
): Record<string, IStyleData> {
  return Object.fromEntries(
    Object.entries(styles).map(([name, style]) => [name, toGridStyle(style, font)]),
  );
}

function toGridStyle(style: PlainStyle, font: PlainFont): IStyleData {
  const { bold, italic, underline, strike, color, fill, align, vertical, wrap, lines, format } =
    style;
  return {
    ff: style.font ?? font.name,
    fs: style.size ?? font.size,
    ...(vertical === undefined ? {} : { vt: VERTICALS[vertical] }),
    ...(bold === true ? { bl: BooleanNumber.TRUE } : {}),
    ...(italic === true ? { it: BooleanNumber.TRUE } : {}),
    ...(underline === true ? { ul: { s: BooleanNumber.TRUE } } : {}),
    ...(strike === true ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(color === undefined ? {} : { cl: { rgb: `#${color}` } }),
    ...(fill === undefined ? {} : { bg: { rgb: `#${fill}` } }),
    ...(align === undefined ? {} : { ht: ALIGNS[align] }),
    ...(wrap === true ? { tb: WrapStrategy.WRAP } : {}),
    ...(lines === undefined ? {} : { bd: borderOf(lines) }),
    ...(format === undefined ? {} : { n: { pattern: format } }),
  };
}

function borderOf(lines: NonNullable<PlainStyle['lines']>): IBorderData {
  const border: IBorderData = {};
  for (const [key, side] of Object.entries(SIDES) as ['t' | 'r' | 'b' | 'l', LineSide][]) {
    const line = lines[side];
    if (line !== undefined) {
      border[key] = { s: LINES[line.kind], cl: { rgb: `#${line.color}` } };
    }
  }
  return border;
}

/** A font or size that is the workbook's own is left out. */
export function toFileStyle(style: IStyleData, font: PlainFont): PlainStyle {
  const { ff, fs, cl, bg, bd, n } = style;
  const color = hexColor(cl?.rgb);
  const fill = hexColor(bg?.rgb);
  const lines = linesOf(bd);
  const align = keyOf(ALIGNS, style.ht);
  const vertical = keyOf(VERTICALS, style.vt);
  const pattern = n?.pattern;
  return {
    ...(ff === undefined || ff === null || ff === font.name ? {} : { font: ff }),
    ...(fs === undefined || fs === font.size ? {} : { size: fs }),
    ...(style.bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(style.it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(isDrawn(style.ul) ? { underline: true } : {}),
    ...(isDrawn(style.st) ? { strike: true } : {}),
    ...(color === undefined ? {} : { color }),
    ...(fill === undefined ? {} : { fill }),
    ...(align === undefined ? {} : { align }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(style.tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...(lines === undefined ? {} : { lines }),
    ...(pattern === undefined || pattern === '' || pattern === 'General'
      ? {}
      : { format: pattern }),
  };
}

function linesOf(border: IStyleData['bd']): PlainStyle['lines'] {
  const lines = Object.entries(SIDES).flatMap(([key, side]) => {
    const line = border?.[key as keyof typeof SIDES];
    const kind = keyOf(LINES, line?.s);
    return kind === undefined
      ? []
      : [[side, { kind, color: hexColor(line?.cl.rgb) ?? '000000' }] as const];
  });
  return lines.length === 0 ? undefined : Object.fromEntries(lines);
}

function isDrawn(decoration: ITextDecoration | undefined): boolean {
  return decoration?.s === BooleanNumber.TRUE;
}

function keyOf<K extends string, V>(keys: Readonly<Record<K, V>>, value: unknown): K | undefined {
  return (Object.keys(keys) as K[]).find((key) => keys[key] === value);
}

/** RRGGBB of #abc, #aabbcc, rgb(1, 2, 3) or rgba(1, 2, 3, 1). */
export function hexColor(color: Nullable<string>): string | undefined {
  const text = (color ?? '').trim();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/iu.exec(text);
  if (short !== null)
    return short
      .slice(1)
      .map((digit) => digit + digit)
      .join('')
      .toUpperCase();
  const long = /^#([0-9a-f]{6})(?:[0-9a-f]{2})?$/iu.exec(text);
  if (long !== null) return long[1]?.toUpperCase();
  const parts = /^rgba?\((\d+)[,\s]+(\d+)[,\s]+(\d+)/iu.exec(text);
  if (parts === null) return undefined;
  const bytes = parts.slice(1).map((part) => Math.min(255, Number(part)));
  return bytes
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .toUpperCase();
}
