/**
 * The columns of the Set-ups sheet: what is read at the saw at the left, the drawings at the right.
 * Below the drawings their columns hold facts too. All of it prints on one page's width.
 */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';
import { cell, type DraftCell, type SheetDraft } from '../grammar/sheet-draft.ts';
import type { StyleName } from '../grammar/styles.ts';

/** A pass in a close list: its number, its height, its box to tick. */
const PASS = [4.8, 9, 4.7] as const;
export const PASS_COLUMNS = PASS.length;
const WIDTHS = [...PASS, ...PASS, ...PASS, ...PASS, 0.6, 27, 16.5];
export const SET_UP_COLUMNS = WIDTHS.map((width) => ({ width }));

/** First and last columns, from 0, of the left side, of its two halves, and of the right side. */
const LEFT = { first: 0, half: 5, middle: 6, inner: 8, last: 11 } as const;
const RIGHT = { first: 13, last: 14 } as const;

/** Roomy pages are easier to read; close ones hold more. */
export type Spacing = 'roomy' | 'close';
export const DRAWING_COLUMN = RIGHT.first;

/** Air between a drawing and the paper's edge, in millimetres. */
const DRAWING_AIR_MM = 1;
const RIGHT_POINTS = WIDTHS.slice(RIGHT.first).reduce((all, width) => all + columnPoints(width), 0);

/** As wide as the columns at the right, and the narrower ones for a page with much to say. */
export const DRAWING_WIDTHS_MM = [
  (RIGHT_POINTS / POINTS_PER_INCH) * MM_PER_INCH - DRAWING_AIR_MM,
  76,
  70,
  65,
] as const;

/** Cells of one row from a column on, and the columns that are joined. */
export interface Part {
  readonly from: number;
  readonly cells: readonly DraftCell[];
  readonly joins: readonly (readonly [from: number, to: number])[];
}

/** What, and how much: the label says from where it is measured. */
export function leftFact(label: string, value: string, style: StyleName = 'setting'): Part {
  return leftHalves(cell(label, 'label'), cell(value, style));
}

export function leftHalves(one: DraftCell, other: DraftCell): Part {
  const { first, half, middle, last } = LEFT;
  return {
    from: first,
    cells: fromColumns([first, one], [middle, other]),
    joins: [
      [first, half],
      [middle, last],
    ],
  };
}

/** A half and two quarters. */
export function leftRow(one: DraftCell, other: DraftCell, third: DraftCell): Part {
  const { first, half, middle, inner, last } = LEFT;
  return {
    from: first,
    cells: fromColumns([first, one], [middle, other], [inner + 1, third]),
    joins: [
      [first, half],
      [middle, inner],
      [inner + 1, last],
    ],
  };
}

function fromColumns(...placed: readonly (readonly [number, DraftCell])[]): DraftCell[] {
  const cells: DraftCell[] = [];
  for (const [column, one] of placed) {
    while (cells.length < column) cells.push(null);
    cells.push(one);
  }
  return cells;
}

/** A text over all of the left side. */
export function leftText(text: string, style: StyleName): Part {
  return { from: LEFT.first, cells: [cell(text, style)], joins: [[LEFT.first, LEFT.last]] };
}

/** Cells of the left side's own columns. */
export function leftCells(cells: readonly DraftCell[], joins: Part['joins'] = []): Part {
  return { from: LEFT.first, cells, joins };
}

export function rightFact(label: string, value: string): Part {
  return { from: RIGHT.first, cells: [cell(label, 'label'), cell(value, 'setting')], joins: [] };
}

export function rightText(text: string, style: StyleName): Part {
  return { from: RIGHT.first, cells: [cell(text, style)], joins: [[RIGHT.first, RIGHT.last]] };
}

/** The same on a page that must hold much: no letters larger than they need be. */
function drawnClose(part: Part): Part {
  const cells = part.cells.map((one): DraftCell =>
    one?.style === 'setting' ? { ...one, style: 'rowStrong' } : one,
  );
  return { ...part, cells };
}

/** Adds rows of left parts with right parts beside them, from the top of both. */
export function addParts(
  draft: SheetDraft,
  left: readonly Part[],
  right: readonly Part[] = [],
  spacing: Spacing = 'roomy',
): void {
  for (let index = 0; index < Math.max(left.length, right.length); index++) {
    const parts = [left[index], right[index]]
      .filter((part) => part !== undefined)
      .map((part) => (spacing === 'close' ? drawnClose(part) : part));
    const cells: DraftCell[] = [];
    for (const part of parts) {
      while (cells.length < part.from) cells.push(null);
      cells.push(...part.cells);
    }
    const row = draft.add(...cells);
    for (const [from, to] of parts.flatMap(({ joins }) => joins)) draft.merge(row, from, to);
  }
}
