/** Where the two rails go, as marks for a tape on the edges of the table. */
import type { LengthUnit } from '../core/faults/quantity.ts';
import type { Rail, RailLayout, RailMark } from '../core/cove/rails.ts';
import { printMark } from './print-length.ts';
import { cell, type SheetDraft } from './sheet-draft.ts';

/** Adds a row a rail: front and back edge, each from the blade line and from the left miter slot. */
export function addRailMarks(draft: SheetDraft, { near, far }: RailLayout, unit: LengthUnit): void {
  const heads = draft.add(
    cell('Face of the rail', 'heading'),
    cell('on the front edge of the table', 'heading'),
    null,
    cell(null, 'heading'),
    cell(null, 'heading'),
    cell('on the back edge of the table', 'heading'),
  );
  draft.merge(heads, 1, 4);
  draft.merge(heads, 5, 7);
  for (const [name, rail] of [
    ['Near rail (before the blade)', near],
    ['Far rail (behind the blade)', far],
  ] as const) {
    const row = draft.add(
      cell(name, 'rowStrong'),
      cell(sayMark(rail.front, unit), 'row'),
      null,
      null,
      null,
      cell(sayMark(rail.back, unit), 'row'),
    );
    draft.merge(row, 1, 4);
    draft.merge(row, 5, 7);
    addSideMarks(draft, name, rail, unit);
  }
}

/** A rail that leaves the table at its side is marked there. */
function addSideMarks(draft: SheetDraft, name: string, rail: Rail, unit: LengthUnit): void {
  if (rail.front.onTable && rail.back.onTable) return;
  for (const [side, along] of [
    ['left', rail.left],
    ['right', rail.right],
  ] as const) {
    if (along === undefined) continue;
    const row = draft.add(
      null,
      cell(`${name}: on the ${side} edge, ${sayAlong(along, unit)}`, 'row'),
    );
    draft.merge(row, 1, 7);
  }
}

export function sayMark({ fromBlade, fromSlot, onTable }: RailMark, unit: LengthUnit): string {
  if (!onTable) return 'off the table at this edge';
  const blade = saySide(fromBlade, 'the blade line', unit);
  return fromSlot === undefined
    ? blade
    : `${blade}, ${saySide(fromSlot, 'the left miter slot', unit)}`;
}

/** `7 5/32" left of the blade line`; a mark that rounds to nothing is on it. */
export function saySide(toTheRight: number, of: string, unit: LengthUnit): string {
  const size = printMark(Math.abs(toTheRight), unit);
  if (/^0\D*$/u.test(size)) return `on ${of}`;
  return `${size} ${toTheRight < 0 ? 'left' : 'right'} of ${of}`;
}

export function sayAlong(towardTheBack: number, unit: LengthUnit): string {
  const size = printMark(Math.abs(towardTheBack), unit);
  if (/^0\D*$/u.test(size)) return 'level with the middle of the blade';
  const way = towardTheBack < 0 ? 'in front of' : 'behind';
  return `${size} ${way} the middle of the blade`;
}
