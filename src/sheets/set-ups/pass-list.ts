/** The heights of the passes, to tick off, in columns of passes beside each other. */
import { formatInches } from '../../core/units/format-length.ts';
import { formatFixed } from '../../core/units/format-number.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { PASS_NOISE_INCHES } from '../tolerance.ts';
import { PASS_COLUMNS, PASSES_ACROSS, rightCells, rightText, type Part } from './set-up-columns.ts';
import { cell, type DraftCell } from '../grammar/sheet-draft.ts';

const FINEST_FRACTION = 64;

/** From and to: which of the passes, from 0; all where absent. */
export interface PassSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * A title, headings, and rows of passes that run down each column and on at the top of the next. In
 * inches they are 64ths; where they lie closer than these tell apart, decimals.
 */
export function passList(
  heights: readonly number[],
  reading: LengthReading,
  { from, to }: PassSpan = { from: 0, to: heights.length },
): Part[] {
  const { unit } = reading;
  const end = Math.min(to, heights.length);
  const across = Math.min(PASSES_ACROSS, end - from);
  const down = Math.ceil((end - from) / Math.max(1, across));
  const decimals = unit === 'in' && isFine(heights);
  const isBare = decimals || unit === 'mm';
  const heads = [cell(null, 'heading'), cell(`in ${unit}`, 'headingRight'), cell(null, 'heading')];
  const rows = Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (__, column) => {
      const at = from + column * down + row;
      const height = at < end ? heights[at] : undefined;
      if (height === undefined) return Array.from({ length: PASS_COLUMNS }, () => null);
      return passCells(height, at + 1, reading, decimals, at === heights.length - 1);
    }).flat(),
  );
  const continued = from > 0 ? ', continued' : '';
  return [
    rightText(`Passes${continued}, to tick`, 'section'),
    rightText('Highest tooth above the table, the last in bold', 'small'),
    // A fraction has its unit beside it.
    ...[...(isBare ? [Array.from({ length: across }, () => heads).flat()] : []), ...rows].map(
      rightCells,
    ),
  ];
}

/** Whether passes lie closer than the fractions tell apart. */
function isFine(heights: readonly number[]): boolean {
  return heights.some(
    (height, at) => height - (heights[at - 1] ?? 0) < 1 / FINEST_FRACTION - PASS_NOISE_INCHES,
  );
}

function passCells(
  height: number,
  number: number,
  { unit, decimalSign }: LengthReading,
  decimals: boolean,
  isLast: boolean,
): DraftCell[] {
  const fraction = formatInches(height, { denominator: FINEST_FRACTION, marks: 'inch mark' });
  // Under its unit, each with as many decimals, so that the figures stand in line.
  const bare =
    unit === 'mm'
      ? formatFixed(height * MM_PER_INCH, 1, decimalSign)
      : formatFixed(height, 4, decimalSign);
  return [
    cell(String(number), 'smallRow'),
    cell(unit === 'mm' || decimals ? bare : fraction, isLast ? 'figureRight' : 'passRight'),
    cell(null, 'tick'),
  ];
}
