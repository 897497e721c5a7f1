/** Looks of cells from a file and for one. */
import type { CellStyle } from 'hucre/xlsx';

import { fileColor } from './file-colors.ts';
import {
  LINE_KINDS,
  type FileFont,
  type FileLine,
  type FileLook,
  type LineSide,
} from './file-workbook.ts';

type Border = NonNullable<CellStyle['border']>;
type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const SIDES = ['top', 'right', 'bottom', 'left'] as const satisfies readonly LineSide[];
const ALIGNS = ['left', 'center', 'right', 'justify'] as const;
const VERTICALS = ['top', 'center', 'bottom'] as const;

/** Looks by their place, each kept once. */
export interface LookList {
  readonly looks: readonly FileLook[];
  /** Undefined for a look that has nothing of its own. */
  readonly add: (look: FileLook) => number | undefined;
}

export function lookList(): LookList {
  const looks: FileLook[] = [];
  const places = new Map<string, number>();
  return {
    looks,
    add: (look) => {
      const key = JSON.stringify(look);
      if (key === '{}') return undefined;
      const known = places.get(key);
      if (known !== undefined) return known;
      looks.push(look);
      places.set(key, looks.length - 1);
      return looks.length - 1;
    },
  };
}

export function lookFromFile(style: CellStyle, theme: readonly string[] | undefined): FileLook {
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
): FileLook['lines'] {
  const lines: Mutable<NonNullable<FileLook['lines']>> = {};
  for (const side of SIDES) {
    const line = border?.[side];
    const kind = LINE_KINDS.find((one) => one === line?.style);
    if (kind !== undefined) {
      lines[side] = { kind, color: fileColor(line?.color, theme) ?? '000000' };
    }
  }
  return Object.keys(lines).length === 0 ? undefined : lines;
}

export function lookForFile(look: FileLook, font: FileFont): CellStyle {
  const { fill, lines, format } = look;
  return {
    font: {
      name: look.font ?? font.name,
      size: look.size ?? font.size,
      ...(look.bold === true ? { bold: true } : {}),
      ...(look.italic === true ? { italic: true } : {}),
      ...(look.underline === true ? { underline: true } : {}),
      ...(look.strike === true ? { strikethrough: true } : {}),
      ...(look.color === undefined ? {} : { color: { rgb: look.color } }),
    },
    ...alignmentForFile(look),
    ...(fill === undefined
      ? {}
      : {
          fill: {
            type: 'pattern',
            pattern: 'solid',
            fgColor: { rgb: fill },
            bgColor: { rgb: fill },
          },
        }),
    ...(lines === undefined ? {} : { border: borderForFile(lines) }),
    ...(format === undefined ? {} : { numFmt: format }),
  };
}

function alignmentForFile({ align, vertical, wrap }: FileLook): Pick<CellStyle, 'alignment'> {
  if (align === undefined && vertical === undefined && wrap !== true) return {};
  return {
    alignment: {
      ...(align === undefined ? {} : { horizontal: align }),
      ...(vertical === undefined ? {} : { vertical }),
      ...(wrap === true ? { wrapText: true } : {}),
    },
  };
}

function borderForFile(lines: NonNullable<FileLook['lines']>): Border {
  const border: Border = {};
  for (const side of SIDES) {
    const line: FileLine | undefined = lines[side];
    if (line !== undefined) border[side] = { style: line.kind, color: { rgb: line.color } };
  }
  return border;
}
