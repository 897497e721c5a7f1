/** Styles of cells from a file and for one. */
import type { CellStyle } from 'hucre/xlsx';

import { fileColor } from './file-colors.ts';
import {
  LINE_KINDS,
  type PlainFont,
  type PlainLine,
  type PlainStyle,
  type LineSide,
} from '../workbook/plain-workbook.ts';

type Border = NonNullable<CellStyle['border']>;
type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const SIDES = ['top', 'right', 'bottom', 'left'] as const satisfies readonly LineSide[];
const ALIGNS = ['left', 'center', 'right', 'justify'] as const;
const VERTICALS = ['top', 'center', 'bottom'] as const;

/** Styles by names that none of our own has, each kept once. */
export interface StyleList {
  readonly styles: Readonly<Record<string, PlainStyle>>;
  /** What it is called; undefined for a style that has nothing of its own. */
  readonly add: (style: PlainStyle) => string | undefined;
}

export function styleList(): StyleList {
  const styles: Record<string, PlainStyle> = {};
  const names = new Map<string, string>();
  return {
    styles,
    add: (style) => {
      const key = JSON.stringify(style);
      if (key === '{}') return undefined;
      const known = names.get(key);
      if (known !== undefined) return known;
      const name = `file-${names.size}`;
      styles[name] = style;
      names.set(key, name);
      return name;
    },
  };
}

export function styleFromFile(style: CellStyle, theme: readonly string[] | undefined): PlainStyle {
  const { font, alignment, numFmt } = style;
  const color = fileColor(font?.color, theme);
  const fill = fillFromFile(style, theme);
  const lines = linesFromFile(style.border, theme);
  const align = ALIGNS.find((one) => one === alignment?.horizontal);
  const vertical = VERTICALS.find((one) => one === alignment?.vertical);
  const underlined = font?.underline !== undefined && font.underline !== false;
  return {
    ...(font?.name === undefined ? {} : { font: font.name }),
    ...(font?.size === undefined ? {} : { size: font.size }),
    ...(font?.bold === true ? { bold: true } : {}),
    ...(font?.italic === true ? { italic: true } : {}),
    ...(underlined ? { underline: true } : {}),
    ...(font?.strikethrough === true ? { strike: true } : {}),
    ...(color === undefined ? {} : { color }),
    ...(fill === undefined ? {} : { fill }),
    ...(align === undefined ? {} : { align }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(alignment?.wrapText === true ? { wrap: true } : {}),
    ...(lines === undefined ? {} : { lines }),
    ...(numFmt === undefined || numFmt === 'General' ? {} : { format: numFmt }),
  };
}

/** A pattern of two colors is shown as a plain fill in its background. */
function fillFromFile(
  { fill }: CellStyle,
  theme: readonly string[] | undefined,
): string | undefined {
  if (fill?.type !== 'pattern' || fill.pattern === 'none') return undefined;
  return fileColor(fill.pattern === 'solid' ? fill.fgColor : fill.bgColor, theme);
}

function linesFromFile(
  border: Border | undefined,
  theme: readonly string[] | undefined,
): PlainStyle['lines'] {
  const lines: Mutable<NonNullable<PlainStyle['lines']>> = {};
  for (const side of SIDES) {
    const line = border?.[side];
    const kind = LINE_KINDS.find((one) => one === line?.style);
    if (kind !== undefined) {
      lines[side] = { kind, color: fileColor(line?.color, theme) ?? '000000' };
    }
  }
  return Object.keys(lines).length === 0 ? undefined : lines;
}

export function styleForFile(style: PlainStyle, font: PlainFont): CellStyle {
  return {
    font: {
      name: style.font ?? font.name,
      size: style.size ?? font.size,
      ...ink(style),
    },
    ...alignmentForFile(style),
    ...fillAndBorder(style),
    ...(style.format === undefined ? {} : { numFmt: style.format }),
    ...(style.open === true ? { protection: { locked: false } } : {}),
  };
}

/** What a highlight changes on a cell: Excel takes no font name, size or alignment there. */
export function highlightForFile(style: PlainStyle): CellStyle {
  const font = ink(style);
  return { ...(Object.keys(font).length === 0 ? {} : { font }), ...fillAndBorder(style) };
}

function ink(style: PlainStyle): NonNullable<CellStyle['font']> {
  return {
    ...(style.bold === true ? { bold: true } : {}),
    ...(style.italic === true ? { italic: true } : {}),
    ...(style.underline === true ? { underline: true } : {}),
    ...(style.strike === true ? { strikethrough: true } : {}),
    ...(style.color === undefined ? {} : { color: { rgb: style.color } }),
  };
}

function fillAndBorder({ fill: rgb, lines }: PlainStyle): Pick<CellStyle, 'fill' | 'border'> {
  return {
    // Cells show a solid fill's foreground, highlights its background: both are given.
    ...(rgb === undefined
      ? {}
      : { fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb }, bgColor: { rgb } } }),
    ...(lines === undefined ? {} : { border: borderForFile(lines) }),
  };
}

function alignmentForFile({ align, vertical, wrap }: PlainStyle): Pick<CellStyle, 'alignment'> {
  if (align === undefined && vertical === undefined && wrap !== true) return {};
  return {
    alignment: {
      ...(align === undefined ? {} : { horizontal: align }),
      ...(vertical === undefined ? {} : { vertical }),
      ...(wrap === true ? { wrapText: true } : {}),
    },
  };
}

function borderForFile(lines: NonNullable<PlainStyle['lines']>): Border {
  const border: Border = {};
  for (const side of SIDES) {
    const line: PlainLine | undefined = lines[side];
    if (line !== undefined) border[side] = { style: line.kind, color: { rgb: line.color } };
  }
  return border;
}
