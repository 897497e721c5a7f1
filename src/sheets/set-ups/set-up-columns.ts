/**
 * The columns of the Set-ups sheet, as wide as an upright page, so that nothing on it shrinks: what is set
 * on the saw at the left; at the right the table from above, and below it the passes.
 */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';
import { cell, SheetDraft, type DraftCell } from '../grammar/sheet-draft.ts';
import { SHEET_NAMES } from '../plan-anchors.ts';
import type { StyleName } from '../grammar/styles.ts';

/** A pass: its number, its height, its box to tick. */
const PASS = [3, 11.2, 2.4] as const;
export const PASS_COLUMNS = PASS.length;
/** Passes beside each other. */
export const PASSES_ACROSS = 2;
const GAP = 0.2;
const WIDTHS = [10, 16.2, 5.2, 8.2, 13.2, GAP, ...PASS, ...PASS];
export const SET_UP_COLUMNS = WIDTHS.map((width) => ({ width }));

/** First and last columns, from 0, of the left side and of the right one, and where their values begin. */
const LEFT = { first: 0, mark: 1, value: 2, otherMark: 3, third: 4, last: 4 } as const;
const RIGHT = { first: 6, value: 10, last: 11 } as const;
const ALL = { first: LEFT.first, last: RIGHT.last } as const;

/** Where a code stands, at the right of the board's end. */
export const CODE_COLUMN = LEFT.otherMark;

/** Roomy pages are easier to read; close ones hold more. */
export type Spacing = 'roomy' | 'close';
/** Of the board's end, and of the table beside it. */
export const DRAWING_COLUMNS = [LEFT.first, RIGHT.first] as const;

/** Air between a drawing and the paper's edge, in millimetres. */
const DRAWING_AIR_MM = 1;
const mmOf = ({ first, last }: { readonly first: number; readonly last: number }): number => {
  const points = WIDTHS.slice(first, last + 1).reduce((all, one) => all + columnPoints(one), 0);
  return (points / POINTS_PER_INCH) * MM_PER_INCH - DRAWING_AIR_MM;
};

/** The board's end as wide as the left side, and narrower for a page with much to say. */
export const SECTION_WIDTHS_MM = [mmOf(LEFT), 70] as const;
/** The board's end beside a code. */
export const CODED_SECTION_WIDTHS_MM = [
  mmOf({ first: LEFT.first, last: CODE_COLUMN - 1 }),
] as const;
export const TABLE_WIDTH_MM = mmOf(RIGHT);

export function newSetUpDraft(): SheetDraft {
  return new SheetDraft(SHEET_NAMES.setUps, SET_UP_COLUMNS, true);
}

/** Cells of one row from a column on, and the columns that are joined. */
export interface Part {
  readonly from: number;
  readonly cells: readonly DraftCell[];
  readonly joins: readonly (readonly [from: number, to: number])[];
}

/** What, and how much: the label says from where it is measured. */
export function leftFact(label: string, value: string, style: StyleName = 'figure'): Part {
  return leftHalves(cell(label, 'wrapped'), cell(value, style));
}

export function leftHalves(one: DraftCell, other: DraftCell): Part {
  return placed([LEFT.first, LEFT.mark, one], [LEFT.value, LEFT.last, other]);
}

/** A half and two quarters. */
export function leftRow(one: DraftCell, other: DraftCell, third: DraftCell): Part {
  return placed(
    [LEFT.first, LEFT.mark, one],
    [LEFT.value, LEFT.otherMark, other],
    [LEFT.third, LEFT.last, third],
  );
}

/** A short label, and two wider cells. */
export function leftMarks(label: DraftCell, one: DraftCell, other: DraftCell): Part {
  return placed(
    [LEFT.first, LEFT.first, label],
    [LEFT.mark, LEFT.value, one],
    [LEFT.otherMark, LEFT.last, other],
  );
}

/** A short label, and one cell. */
export function leftMark(label: DraftCell, one: DraftCell): Part {
  return placed([LEFT.first, LEFT.first, label], [LEFT.mark, LEFT.last, one]);
}

/** Cells over columns, first and last. */
function placed(...some: readonly (readonly [from: number, to: number, one: DraftCell])[]): Part {
  const from = some[0]?.[0] ?? 0;
  const cells: DraftCell[] = [];
  for (const [first, , one] of some) {
    while (cells.length < first - from) cells.push(null);
    cells.push(one);
  }
  return { from, cells, joins: some.map(([first, last]) => [first, last] as const) };
}

/** A text over all of the left side. */
export function leftText(text: string, style: StyleName): Part {
  return placed([LEFT.first, LEFT.last, cell(text, style)]);
}

/** Passes beside each other, at the right. */
export function rightCells(cells: readonly DraftCell[]): Part {
  return { from: RIGHT.first, cells, joins: [] };
}

export function rightFact(label: string, value: string, style: StyleName = 'figure'): Part {
  return placed(
    [RIGHT.first, RIGHT.value - 1, cell(label, style === 'figure' ? 'wrapped' : 'small')],
    [RIGHT.value, RIGHT.last, cell(value, style)],
  );
}

export function rightText(text: string, style: StyleName): Part {
  return placed([RIGHT.first, RIGHT.last, cell(text, style)]);
}

/** Boxes over the page's width, to be written into by hand. */
export function writtenBoxes(
  label: string,
  [one, other, third]: readonly [string, string, string],
): Part {
  return placed(
    [LEFT.first, LEFT.first, cell(label, 'fact')],
    [LEFT.mark, LEFT.mark, cell(one, 'smallRow')],
    [LEFT.value, LEFT.last, cell(other, 'smallRow')],
    [RIGHT.first, ALL.last, cell(third, 'smallRow')],
  );
}

/** Adds rows of left parts with right parts beside them, from the top of both. */
export function addParts(
  draft: SheetDraft,
  left: readonly Part[],
  right: readonly Part[] = [],
): void {
  for (let index = 0; index < Math.max(left.length, right.length); index++) {
    const parts = [left[index], right[index]].filter((part) => part !== undefined);
    const cells: DraftCell[] = [];
    for (const part of parts) {
      while (cells.length < part.from) cells.push(null);
      cells.push(...part.cells);
    }
    const row = draft.add(...cells);
    for (const [from, to] of parts.flatMap(({ joins }) => joins)) draft.merge(row, from, to);
  }
}
