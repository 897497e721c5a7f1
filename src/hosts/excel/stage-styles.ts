/** Gives a staged sheet's cells their styles: a call for many cells of one style at once. */
import type { CellRange } from '../../core/cells/cell-range.ts';
import {
  LINE_COLOR,
  STANDARD_FONT,
  STYLES,
  type CellStyle,
  type StyleName,
} from '../../sheets/grammar/styles.ts';
import { rectanglesOf } from './cell-grid.ts';
import type { Requests } from './requests.ts';
import { addressOf } from './stage-cells.ts';

/** Excel takes 8,192 characters in an address; shorter ones keep a refused call small. */
const LONGEST_ADDRESS = 2_000;
const CALLS_A_STYLE = 12;

const ALIGNMENTS = { left: 'Left', center: 'Center', right: 'Right' } as const;
const EDGES = ['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] as const;
type Edge = (typeof EDGES)[number] | 'InsideHorizontal' | 'InsideVertical';

/** Styles by row and column, as `styleGrid` makes them. */
export async function stageStyles(
  sheet: Excel.Worksheet,
  styles: readonly (readonly (StyleName | null)[])[],
  requests: Requests,
): Promise<void> {
  const columns = styles[0]?.length ?? 0;
  if (columns === 0) return;
  await requests.need(4);
  const all = sheet.getRangeByIndexes(0, 0, styles.length, columns).format;
  all.font.name = STANDARD_FONT.name;
  all.font.size = STANDARD_FONT.size;
  all.verticalAlignment = 'Top';
  for (const [name, ranges] of rectanglesOf(styles)) {
    const style: CellStyle = STYLES[name];
    if (Object.keys(style).every((key) => key === 'format' || key === 'border')) continue;
    for (const address of addressesOf(ranges)) {
      await requests.need(CALLS_A_STYLE, address.length);
      setStyle(sheet.getRanges(address).format, style);
    }
  }
  await stageBorders(sheet, styles, requests);
}

function setStyle(format: Excel.RangeFormat, style: CellStyle): void {
  if (style.bold !== undefined) format.font.bold = style.bold;
  if (style.italic !== undefined) format.font.italic = style.italic;
  if (style.size !== undefined) format.font.size = style.size;
  if (style.color !== undefined) format.font.color = `#${style.color}`;
  if (style.fill !== undefined) format.fill.color = `#${style.fill}`;
  if (style.align !== undefined) format.horizontalAlignment = ALIGNMENTS[style.align];
  if (style.wrap !== undefined) format.wrapText = style.wrap;
}

/** Cells with the same lines, whatever their style, are drawn together. */
async function stageBorders(
  sheet: Excel.Worksheet,
  styles: readonly (readonly (StyleName | null)[])[],
  requests: Requests,
): Promise<void> {
  const borders = styles.map((row) =>
    row.map((name) => (name === null ? null : ((STYLES[name] as CellStyle).border ?? null))),
  );
  const boxes = borders.map((row) => row.map((border) => (border === 'top' ? null : border)));
  const tops = borders.map((row) => row.map((border) => (border === 'top' ? border : null)));
  // A line above each cell: rectangles of one row, as lines between rows would be theirs below too.
  const drawn = [...rectanglesOf(boxes), ...rectanglesOf(tops, 1)];
  for (const [border, ranges] of drawn) {
    for (const [edges, alike] of byEdges(border, ranges)) {
      for (const address of addressesOf(alike)) {
        await requests.need(3 * edges.length, address.length);
        const lines = sheet.getRanges(address).format.borders;
        for (const edge of edges) drawLine(lines.getItem(edge), border);
      }
    }
  }
}

/** Excel knows no line inside a single row or column, so rectangles go by their shape. */
function byEdges(
  border: NonNullable<CellStyle['border']>,
  ranges: readonly CellRange[],
): Map<readonly Edge[], CellRange[]> {
  if (border === 'top') return new Map([[['EdgeTop'], [...ranges]]]);
  const shapes = new Map<readonly Edge[], CellRange[]>();
  for (const rows of [false, true]) {
    for (const columns of [false, true]) {
      const edges: Edge[] = [...EDGES];
      if (rows) edges.push('InsideHorizontal');
      if (columns) edges.push('InsideVertical');
      const alike = ranges.filter(
        (range) => range.bottom > range.top === rows && range.right > range.left === columns,
      );
      if (alike.length > 0) shapes.set(edges, alike);
    }
  }
  return shapes;
}

function drawLine(line: Excel.RangeBorder, border: NonNullable<CellStyle['border']>): void {
  line.style = 'Continuous';
  line.weight = border === 'hair' ? 'Hairline' : 'Thin';
  line.color = `#${LINE_COLOR}`;
}

/** Addresses of many ranges each, none too long. */
function addressesOf(ranges: readonly CellRange[]): string[] {
  const addresses: string[] = [];
  for (const address of ranges.map(addressOf)) {
    const last = addresses.at(-1);
    if (last === undefined || last.length + address.length >= LONGEST_ADDRESS) {
      addresses.push(address);
    } else addresses[addresses.length - 1] = `${last},${address}`;
  }
  return addresses;
}
