/** The looks of cells and highlights, out of a workbook's styles part (ECMA-376 part 1, 18.8). */
import type { HighlightView, LookView } from './workbook-view.ts';
import { childOf, childrenOf, type Element } from './xml.ts';

export interface LookReader {
  /** By a cell's style number. */
  cell(style: string): LookView;
  /** By a rule's dxf number. */
  highlight(dxf: string): Pick<HighlightView, 'bold' | 'color' | 'fill'>;
}

/** Built-in formats, 18.8.30; only the few that matter here. */
const BUILT_IN: Readonly<Record<string, string>> = { 0: 'General', 49: '@' };

export function lookReader(styles: Element): LookReader {
  const formats = new Map(Object.entries(BUILT_IN));
  for (const { attributes } of childrenOf(childOf(styles, 'numFmts'), 'numFmt')) {
    formats.set(attributes['numFmtId']!, attributes['formatCode']!);
  }
  const fonts = childrenOf(childOf(styles, 'fonts'), 'font');
  const fills = childrenOf(childOf(styles, 'fills'), 'fill');
  const borders = childrenOf(childOf(styles, 'borders'), 'border');
  const xfs = childrenOf(childOf(styles, 'cellXfs'), 'xf');
  const dxfs = childrenOf(childOf(styles, 'dxfs'), 'dxf');
  return {
    cell(style) {
      const xf = xfs[Number(style)]!;
      const of = (list: Element[], id: string): Element => list[Number(xf.attributes[id])]!;
      const font = of(fonts, 'fontId');
      const alignment = childOf(xf, 'alignment')?.attributes ?? {};
      return {
        format: formats.get(xf.attributes['numFmtId'] ?? '') ?? 'unknown',
        bold: childOf(font, 'b') !== undefined,
        italic: childOf(font, 'i') !== undefined,
        size: Number(childOf(font, 'sz')?.attributes['val']),
        color: colorOf(childOf(font, 'color')),
        fill: fillOf(of(fills, 'fillId'), 'fgColor'),
        align: alignment['horizontal'] ?? null,
        wrap: alignment['wrapText'] === 'true' || alignment['wrapText'] === '1',
        border: borderOf(of(borders, 'borderId')),
      };
    },
    highlight(dxf) {
      const changed = dxfs[Number(dxf)]!;
      return {
        bold: childOf(changed, 'font', 'b') !== undefined,
        color: colorOf(childOf(changed, 'font', 'color')),
        fill: fillOf(childOf(changed, 'fill'), 'bgColor'),
      };
    },
  };
}

function fillOf(fill: Element | undefined, which: string): string | null {
  const pattern = childOf(fill, 'patternFill');
  if (pattern?.attributes['patternType'] !== 'solid') return null;
  return colorOf(childOf(pattern, which));
}

function colorOf(color: Element | undefined): string | null {
  return color?.attributes['rgb']?.replace(/^FF/, '') ?? null;
}

function borderOf(border: Element): Record<string, string> {
  const sides = ['top', 'right', 'bottom', 'left'];
  return Object.fromEntries(
    sides.flatMap((side) => {
      const style = childOf(border, side)?.attributes['style'];
      return style === undefined ? [] : [[side, style]];
    }),
  );
}
