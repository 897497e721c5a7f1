/** The heights of the passes, to tick off, in columns of passes beside each other. */
import { formatInches } from '../../core/units/format-length.ts';
import { formatFixed } from '../../core/units/format-number.ts';
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { PASS_NOISE_INCHES } from '../tolerance.ts';
import { printDecimal } from '../words/print-length.ts';
import { leftCells, leftText, PASS_COLUMNS, type Part, type Spacing } from './set-up-columns.ts';
import { cell, type DraftCell } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';

const FINEST_FRACTION = 64;

/** Passes beside each other: two with every height in decimals too, or four. */
export const PASSES_ACROSS: Readonly<Record<Spacing, number>> = { roomy: 2, close: 4 };

/** From and to: which of the passes, from 0; all where absent. */
export interface PassSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * A title, headings, and rows of passes that run down each column and on at the top of the next. In
 * inches a roomy list has the decimals beside the 64ths, and passes too close for 64ths have them alone.
 */
export function passList(
  heights: readonly number[],
  reading: LengthReading,
  spacing: Spacing,
  { from, to }: PassSpan = { from: 0, to: heights.length },
): Part[] {
  const { unit } = reading;
  const shown = Math.min(to, heights.length) - from;
  const across = Math.min(PASSES_ACROSS[spacing], shown);
  const down = Math.ceil(shown / Math.max(1, across));
  const both = spacing === 'roomy' && unit === 'in';
  const decimals = unit === 'in' && !both && isFine(heights);
  const group = (cells: readonly DraftCell[]): DraftCell[] => spread(cells, spacing, both);
  const heads = group([
    cell('No.', 'heading'),
    ...(both ? [cell('decimal', 'headingRight')] : []),
    cell(both ? 'to 1/64' : decimals || unit === 'mm' ? unit : 'Height', 'headingRight'),
    cell('Tick', 'heading'),
  ]);
  const rows = Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (__, column) => {
      const at = from + column * down + row;
      const height = at < from + shown ? heights[at] : undefined;
      if (height === undefined) return group([]);
      const isLast = at === heights.length - 1;
      return group(passCells(height, at + 1, { reading, both, decimals, isLast }));
    }).flat(),
  );
  const joins = joinsOf(across, spacing, both);
  const continued = from > 0 ? ', continued' : '';
  return [
    leftText(`Passes${continued}: highest tooth above the table, the last in bold`, 'section'),
    ...[Array.from({ length: across }, () => heads).flat(), ...rows].map((cells) =>
      leftCells(cells, joins),
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
  how: {
    readonly reading: LengthReading;
    readonly both: boolean;
    readonly decimals: boolean;
    readonly isLast: boolean;
  },
): DraftCell[] {
  const { unit, decimalSign } = how.reading;
  const style: StyleName = how.isLast ? 'rowStrongRight' : 'rowRight';
  const fraction = formatInches(height, { denominator: FINEST_FRACTION, marks: 'inch mark' });
  // Under its unit, each with as many decimals, so that the figures stand in line.
  const bare =
    unit === 'mm'
      ? formatFixed(height * MM_PER_INCH, 1, decimalSign)
      : formatFixed(height, 4, decimalSign);
  return [
    cell(String(number), how.isLast ? 'rowStrong' : 'row'),
    ...(how.both ? [cell(printDecimal(height, how.reading), style)] : []),
    cell(unit === 'mm' || how.decimals ? bare : fraction, style),
    cell(null, 'tick'),
  ];
}

/** A pass's cells at the first columns of those that they join; see joinsOf. */
function spread(cells: readonly DraftCell[], spacing: Spacing, both: boolean): DraftCell[] {
  const columns = PASS_COLUMNS * (spacing === 'roomy' ? 2 : 1);
  const spread: DraftCell[] = Array.from({ length: columns }, () => null);
  cells.forEach((one, at) => {
    spread[starts(spacing, both)[at] ?? 0] = one;
  });
  return spread;
}

/** Columns at which number, height (or heights) and tick begin. */
function starts(spacing: Spacing, both: boolean): readonly number[] {
  if (spacing === 'close') return [0, 1, 2];
  return both ? [0, 1, 3, 5] : [0, 1, 5];
}

function joinsOf(across: number, spacing: Spacing, both: boolean): Part['joins'] {
  if (spacing === 'close') return [];
  const wide = PASS_COLUMNS * 2;
  const joins = both
    ? ([
        [1, 2],
        [3, 4],
      ] as const)
    : ([[1, 4]] as const);
  return Array.from({ length: across }, (_, at) =>
    joins.map(([from, to]) => [from + at * wide, to + at * wide] as const),
  ).flat();
}
