/** How boards are ripped, on the cutting sheet: before anything is crosscut. */
import type { LengthReading } from '../../core/units/length.ts';
import type { CutStock } from '../../planning/cut/cut-stock.ts';
import type { CuttingGroup } from '../../planning/job-plan.ts';
import type { RippedBoard, RippedStrip } from '../../planning/opened-stock.ts';
import { printExact } from '../words/print-length.ts';
import { sayStock } from '../words/say-stock.ts';
import { TICK } from '../words/tick-marks.ts';
import { cell, type SheetRow } from '../grammar/sheet-draft.ts';
import { RIPS } from './cutting-columns.ts';
import { letterOf, nameUnits, type LotLetters } from '../stock-lots.ts';

/** Boards of one row of Stock that are ripped alike, and into what; ripped already where something is cut from them. */
export interface Ripping {
  readonly words: string;
  readonly isCut: boolean;
}

export function listRippings(
  { boards }: CuttingGroup,
  cut: CutStock,
  letters: LotLetters,
  reading: LengthReading,
): Ripping[] {
  return gatherAlike(boards, cut, reading).map(({ boards: alike, rip, item, isCut }) => {
    const letter = letterOf(letters, item);
    const numbers = alike.map((board) => board.unit);
    const which = `${alike.length === 1 ? 'Board' : 'Boards'} ${nameUnits(letter, numbers)}`;
    const done = isCut ? 'ripped already into' : 'rip';
    return { words: `${which} of ${item.for} (${sayStock(item, reading)}): ${done} ${rip}`, isCut };
  });
}

/** A row with a box for each. */
export function boardRows(rippings: readonly Ripping[]): SheetRow[] {
  return rippings.map(({ words, isCut }) =>
    RIPS.row({ tick: cell(isCut ? TICK : null, 'tick'), words: cell(words, 'row') }),
  );
}

interface Alike {
  readonly item: RippedBoard['item'];
  readonly boards: RippedBoard[];
  /** `2 × Cove 4 1/2", 1 × Crown 3"`. */
  readonly rip: string;
  readonly isCut: boolean;
}

function gatherAlike(
  boards: readonly RippedBoard[],
  cut: CutStock,
  reading: LengthReading,
): readonly Alike[] {
  const ofItems = new Map<RippedBoard['item'], Map<string, Alike>>();
  const all: Alike[] = [];
  for (const board of boards) {
    const { item, unit } = board;
    const rip = sayRip(board.strips, reading);
    const isCut = cut.get(item)?.has(unit) === true;
    const key = JSON.stringify([isCut, rip]);
    const ofItem = ofItems.get(item) ?? new Map<string, Alike>();
    ofItems.set(item, ofItem);
    const same = ofItem.get(key);
    if (same !== undefined) same.boards.push(board);
    else {
      const first = { item, boards: [board], rip, isCut };
      ofItem.set(key, first);
      all.push(first);
    }
  }
  return all;
}

function sayRip(strips: readonly RippedStrip[], reading: LengthReading): string {
  const counts = new Map<string, number>();
  for (const { width, profile } of strips) {
    const wide = printExact(width, reading);
    const what = profile === undefined ? `${wide} to keep` : `${profile} ${wide}`;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return [...counts].map(([what, number]) => `${number} × ${what}`).join(', ');
}
