/** A color of a file as RRGGBB: files also name them by a place in a theme or in a fixed palette. */
import { resolveThemeColor, type CellStyle } from 'hucre/xlsx';

type Color = NonNullable<NonNullable<CellStyle['font']>['color']>;

/** ECMA-376 part 1, 20.1.6.2: a theme's colors as they stand in it; files count light before dark. */
const THEME_ORDER = [1, 0, 3, 2, 4, 5, 6, 7, 8, 9, 10, 11];

/** ECMA-376 part 1, 18.8.27, from 8 on; 0 to 7 are the same as 8 to 15. */
const INDEXED = (
  '000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF ' +
  '800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 ' +
  '0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 ' +
  '99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 ' +
  '003300 333300 993300 993366 333399 333333'
).split(' ');
/** Its last entries: the system's ink and paper. */
const INK = 64;
const PAPER = 65;

/** Undefined where the file says no color, or one that is not known. */
export function fileColor(
  color: Color | undefined,
  theme: readonly string[] | undefined,
): string | undefined {
  const found = rgbOf(color, theme)?.toUpperCase();
  return found !== undefined && /^[0-9A-F]{6}$/u.test(found) ? found : undefined;
}

function rgbOf(color: Color | undefined, theme: readonly string[] | undefined): string | undefined {
  if (color === undefined) return undefined;
  if (color.rgb !== undefined) return color.rgb;
  if (color.theme !== undefined && theme !== undefined) {
    const place = THEME_ORDER[color.theme];
    return place === undefined ? undefined : resolveThemeColor([...theme], place, color.tint);
  }
  if (color.indexed === undefined) return undefined;
  if (color.indexed === INK) return '000000';
  if (color.indexed === PAPER) return 'FFFFFF';
  return INDEXED[color.indexed < 8 ? color.indexed : color.indexed - 8];
}
