/** How boards are ripped, on the cutting sheet: before anything is crosscut. */
import type { LengthUnit } from '../../core/faults/quantity.ts';
import type { CuttingGroup, RippedBoard, RippedStrip } from '../../planning/job-plan.ts';
import { count, printExact, printStick } from '../print-length.ts';
import { sayStock } from '../say-stock.ts';
import { cell, type SheetDraft } from '../sheet-draft.ts';

/** A row for each lot of boards of one row of Stock that are ripped alike; none where nothing is ripped. */
export function addBoards(
  draft: SheetDraft,
  { boards }: CuttingGroup,
  unit: LengthUnit,
  lastColumn: number,
): void {
  const lots = gatherLots(boards, unit);
  lots.forEach(({ boards: alike, rip }, at) => {
    const [first] = alike;
    if (first === undefined) return;
    const text = `${sayBoards(alike)} of ${first.item.for} (${sayStock(first.item, unit)}): rip ${rip}`;
    const row = draft.add(
      null,
      cell(at === 0 ? 'Rip the boards first' : null, 'wrapped'),
      cell(text, 'wrapped'),
    );
    draft.merge(row, 2, lastColumn);
  });
}

/** Whole blanks that nothing is cut from, in words: `2 whole blanks of Poplar, 4 1/2" wide, 14'`. */
export function sayUnused({ boards }: CuttingGroup, unit: LengthUnit): string[] {
  const counts = new Map<string, number>();
  for (const { item, strips } of boards) {
    for (const { width, profile } of strips) {
      if (profile !== undefined) continue;
      const what = `of ${item.for}, ${printExact(width, unit)} wide, ${printStick(item.length, unit)}`;
      counts.set(what, (counts.get(what) ?? 0) + 1);
    }
  }
  return [...counts].map(([what, number]) => `${count(number, 'whole blank')} ${what}`);
}

interface Lot {
  readonly boards: RippedBoard[];
  /** `2 × Cove 4 1/2", 1 × Crown 3"`. */
  readonly rip: string;
}

function gatherLots(boards: readonly RippedBoard[], unit: LengthUnit): readonly Lot[] {
  const lots: Lot[] = [];
  for (const board of boards) {
    const rip = sayRip(board.strips, unit);
    const same = lots.find((lot) => lot.boards[0]?.item === board.item && lot.rip === rip);
    if (same === undefined) lots.push({ boards: [board], rip });
    else same.boards.push(board);
  }
  return lots;
}

function sayRip(strips: readonly RippedStrip[], unit: LengthUnit): string {
  const counts = new Map<string, number>();
  for (const { width, profile } of strips) {
    const wide = printExact(width, unit);
    const what = profile === undefined ? `${wide} to keep` : `${profile} ${wide}`;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return [...counts].map(([what, number]) => `${number} × ${what}`).join(', ');
}

/** `Board 3`, `Boards 1 to 4, 7`. */
function sayBoards(boards: readonly RippedBoard[]): string {
  const spans: { first: number; last: number }[] = [];
  for (const { unit } of boards) {
    const span = spans.at(-1);
    if (span?.last === unit - 1) span.last = unit;
    else spans.push({ first: unit, last: unit });
  }
  const said = spans.map(({ first, last }) => {
    if (first === last) return String(first);
    return last === first + 1 ? `${first} and ${last}` : `${first} to ${last}`;
  });
  return `${boards.length === 1 ? 'Board' : 'Boards'} ${said.join(', ')}`;
}
