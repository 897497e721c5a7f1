/** The heights of the passes, to tick off, in two columns beside each other. */
import type { LengthUnit } from '../../core/faults/quantity.ts';
import { formatInches } from '../../core/units/format-length.ts';
import { printDecimal } from '../print-length.ts';
import { leftCells, leftText, type Part } from './set-up-columns.ts';
import { cell, type DraftCell } from '../sheet-draft.ts';
import type { StyleName } from '../styles.ts';

/** In millimetres the height has both of its columns, else it stands in decimals and in 64ths. */
export function passList(heights: readonly number[], unit: LengthUnit): Part[] {
  const heads = heightCells('decimal', 'to 1/64', 'height', unit, 'headingRight');
  const both = [cell('Pass', 'heading'), ...heads, cell('Done', 'heading')];
  const half = Math.ceil(heights.length / 2);
  const rows = Array.from({ length: half }, (_, index) => [
    ...passCells(heights, index, unit),
    ...passCells(heights, index + half, unit),
  ]);
  const joins = unit === 'mm' ? HEIGHT_COLUMNS : [];
  return [
    leftText('Passes: height of the highest tooth above the table', 'section'),
    ...[[...both, ...both], ...rows].map((cells) => leftCells(cells, joins)),
  ];
}

const HEIGHT_COLUMNS = [
  [1, 2],
  [5, 6],
] as const;

function passCells(heights: readonly number[], index: number, unit: LengthUnit): DraftCell[] {
  const height = heights[index];
  if (height === undefined) return [];
  const last = index === heights.length - 1 ? ', last' : '';
  const decimal = printDecimal(height, unit);
  const fraction = formatInches(height, { denominator: 64, marks: 'inch mark' });
  return [
    cell(`${index + 1}${last}`, 'row'),
    ...heightCells(decimal, fraction, decimal, unit, 'rowRight'),
    cell(null, 'tick'),
  ];
}

function heightCells(
  decimal: string,
  fraction: string,
  metric: string,
  unit: LengthUnit,
  style: StyleName,
): DraftCell[] {
  if (unit === 'mm') return [cell(metric, style), null];
  return [cell(decimal, style), cell(fraction, style)];
}
