/** The heights of the passes, to tick off, in two columns beside each other. */
import type { LengthUnit } from '../core/faults/quantity.ts';
import { formatInches } from '../core/units/format-length.ts';
import { printDecimal } from './print-length.ts';
import { cell, type DraftCell, type SheetDraft } from './sheet-draft.ts';

export function addPassList(draft: SheetDraft, heights: readonly number[], unit: LengthUnit): void {
  draft.spread('Passes: height of the highest tooth above the table', 'section');
  const heads = [
    cell('Pass', 'heading'),
    cell(unit === 'mm' ? 'height' : 'decimal', 'headingRight'),
    cell(unit === 'mm' ? null : 'nearest 1/64', 'headingRight'),
    cell('Done', 'heading'),
  ];
  draft.add(...heads, ...heads);
  const half = Math.ceil(heights.length / 2);
  for (let index = 0; index < half; index++) {
    draft.add(...passCells(heights, index, unit), ...passCells(heights, index + half, unit));
  }
}

function passCells(heights: readonly number[], index: number, unit: LengthUnit): DraftCell[] {
  const height = heights[index];
  if (height === undefined) return [];
  const last = index === heights.length - 1 ? ', the last' : '';
  return [
    cell(`${index + 1}${last}`, 'row'),
    cell(printDecimal(height, unit), 'rowRight'),
    cell(
      unit === 'mm' ? null : formatInches(height, { denominator: 64, marks: 'inch mark' }),
      'rowRight',
    ),
    cell(null, 'tick'),
  ];
}
