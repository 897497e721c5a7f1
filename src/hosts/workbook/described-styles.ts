/** Our named styles as any workbook's. */
import { LINE_COLOR, STYLES, type CellStyle, type StyleName } from '../../sheets/grammar/styles.ts';
import type { PlainStyle } from './plain-workbook.ts';

/** In the font of a described workbook (STANDARD_FONT). */
export const DESCRIBED_STYLES = Object.fromEntries(
  Object.entries<CellStyle>(STYLES).map(([name, style]) => [name, plainStyle(style)]),
) as Readonly<Record<StyleName, PlainStyle>>;

function plainStyle({ border, ...style }: CellStyle): PlainStyle {
  return {
    ...style,
    vertical: 'top',
    ...(border === undefined ? {} : { lines: lines(border) }),
  };
}

function lines(border: NonNullable<CellStyle['border']>): NonNullable<PlainStyle['lines']> {
  const line = { kind: border === 'hair' ? 'hair' : 'thin', color: LINE_COLOR } as const;
  return border === 'top' ? { top: line } : { top: line, right: line, bottom: line, left: line };
}
