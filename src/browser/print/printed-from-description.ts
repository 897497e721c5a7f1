/** A described sheet, taken for printing: no workbook need hold it. Its drawings stay lines, sharp at any size. */
import { soundRange } from '../../core/cells/cell-range.ts';
import type { DecimalSign } from '../../core/units/format-number.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { PRINT_PALETTE } from '../../drawings/palette.ts';
import { toSvg } from '../../drawings/to-svg.ts';
import { describedSheet } from '../../hosts/workbook/described-workbook.ts';
import { DESCRIBED_STYLES } from '../../hosts/workbook/described-styles.ts';
import type { PlainCell } from '../../hosts/workbook/plain-workbook.ts';
import type { SheetDescription } from '../../sheets/grammar/description.ts';
import { POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { STANDARD_POINTS } from '../../sheets/grammar/row-height.ts';
import { showValue } from '../../sheets/grammar/show-value.ts';
import type { StyleName } from '../../sheets/grammar/styles.ts';
import type { PrintedCell, PrintedSheet } from './printed-sheet.ts';

const POINTS_PER_PIXEL = POINTS_PER_INCH / 96;
const POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;

export function printedFromDescription(
  sheet: SheetDescription,
  decimalSign: DecimalSign,
): PrintedSheet {
  const plain = describedSheet(sheet, { ours: true });
  const count = sheet.print.printedColumns ?? sheet.columns.length;
  const columns = Array.from({ length: count }, (_, column) => {
    const { pixels = plain.otherPixels } = plain.columns[column] ?? {};
    return pixels * POINTS_PER_PIXEL;
  });
  return {
    name: sheet.name,
    columns,
    rows: sheet.rows.map((_, row) => ({
      height: plain.rows[row]?.points ?? STANDARD_POINTS,
      cells: columns.map((__, column) => printedCell(plain.cells[row]?.[column], decimalSign)),
    })),
    merges: plain.merges
      .filter(({ left }) => left < count)
      .map((one) => ({ ...one, right: Math.min(one.right, count - 1) })),
    pictures: (sheet.drawings ?? [])
      .map(({ at, drawing }) => {
        const { top: row, left: column } = soundRange(at);
        return {
          row,
          column,
          width: drawing.width * POINTS_PER_MM,
          height: drawing.height * POINTS_PER_MM,
          alt: drawing.alt,
          image: { svg: toSvg(drawing, PRINT_PALETTE) },
        };
      })
      .filter(({ column }) => column < count),
    print: sheet.print,
  };
}

function printedCell(cell: PlainCell | undefined, decimalSign: DecimalSign): PrintedCell | null {
  if (cell === undefined) return null;
  const style = DESCRIBED_STYLES[(cell.style ?? 'plain') as StyleName];
  const text = showValue(cell.value, style.format, decimalSign);
  return { text, style, isNumber: typeof cell.value === 'number' };
}
