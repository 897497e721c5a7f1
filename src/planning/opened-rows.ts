/** What sticks come to row by row of Stock: boards, a pick list, lay-outs, board feet. */
import type { TakenStick } from './cut-sticks.ts';
import { boughtForUsed } from './grade-yield.ts';
import type { StatedGroup, StatedSupply } from './group-problem.ts';
import type { RippedBoard, RippedStrip, StockUse } from './opened-stock.ts';

/** What is opened of one row of Stock at one price, with the sticks that are cut from it. */
export interface OpenedRow {
  readonly supply: StatedSupply;
  /** Sticks by the number of the stick or board that they are from. */
  readonly units: ReadonlyMap<number, readonly TakenStick[]>;
}

/** Row by row of Stock; one that nothing is opened of is left out. */
export function openedRows({ supplies }: StatedGroup, sticks: readonly TakenStick[]): OpenedRow[] {
  const opened = new Map<StatedSupply, Map<number, TakenStick[]>>();
  for (const one of sticks) {
    const units = opened.get(one.supply) ?? new Map<number, TakenStick[]>();
    opened.set(one.supply, units);
    const own = units.get(one.stick.unit);
    if (own === undefined) units.set(one.stick.unit, [one]);
    else own.push(one);
  }
  return [...supplies.values()].flatMap((supply) => {
    const units = opened.get(supply);
    return units === undefined ? [] : [{ supply, units }];
  });
}

/** What to pull from the rack and what to buy, an entry for each row of Stock that is used. */
export function readStockUse(rows: readonly OpenedRow[]): StockUse[] {
  return rows.map(({ supply: { item, priceCents, eachCents, boardFeet }, units }) => {
    const fromRack = [...units.keys()].filter((unit) => unit <= item.have).length;
    const unusedBlanks = [...units.values()].reduce(
      (sum, sticks) => sum + (sticks[0]?.stick.strips ?? 0) - sticks.length,
      0,
    );
    return {
      item,
      fromRack,
      bought: units.size - fromRack,
      unusedBlanks,
      priceCents,
      eachCents,
      costCents: units.size * priceCents,
      ...(boardFeet === undefined
        ? {}
        : { boardFeet: units.size * boardFeet * Number(boughtForUsed(item)) }),
    };
  });
}

/** Every opened board with its blanks side by side, row by row of Stock. */
export function readBoards(rows: readonly OpenedRow[]): RippedBoard[] {
  return rows.flatMap(({ supply: { item }, units }) => {
    if (item.kind !== 'board') return [];
    const inOrder = [...units].sort(([one], [other]) => one - other);
    return inOrder.map(([unit, sticks]): RippedBoard => {
      const widths = sticks.find(({ blankWidths }) => blankWidths.length > 0)?.blankWidths ?? [];
      const profileOf = new Map(sticks.map(({ stick, profile }) => [stick.strip, profile.name]));
      const strips = widths.map((width, at): RippedStrip => {
        const profile = profileOf.get(at + 1);
        return profile === undefined ? { width } : { width, profile };
      });
      return { item, unit, fromRack: unit <= item.have, strips };
    });
  });
}

/** How many ways of cutting a stick there are: sticks of one row, for one profile, with the same lengths. */
export function countLayouts(sticks: readonly TakenStick[]): number {
  const layouts = sticks.map(({ supply, profile, stick }) => {
    const lengths = stick.pieces.map(({ length }) => length.toFraction()).sort();
    return JSON.stringify([supply.id, profile.name, ...lengths]);
  });
  return new Set(layouts).size;
}

/**
 * Board feet of the opened boards and sticks, with what is bought beside them for their yield, and of the pieces cut from them: a stick's own, times
 * the part of its width that the blank takes and the part of its length that the pieces take.
 * Derived. Both are absent where the board feet of an opened one aren't known.
 */
export function sumBoardFeet(
  rows: readonly OpenedRow[],
  sticks: readonly TakenStick[],
): {
  boardFeetBought?: number;
  boardFeetUsed?: number;
} {
  let bought = 0;
  for (const { supply, units } of rows) {
    if (supply.boardFeet === undefined) return {};
    bought += units.size * supply.boardFeet * Number(boughtForUsed(supply.item));
  }
  const used = sticks.map(({ profile: { blankWidth: width }, supply, stick }) => {
    const { item, boardFeet = 0 } = supply;
    const cut = stick.pieces.reduce((sum, { length }) => sum + Number(length), 0);
    const long = cut / Number(item.length);
    const wide = item.width === undefined || width === undefined ? 1 : width.div(item.width);
    return boardFeet * Math.min(1, Number(wide)) * long;
  });
  return { boardFeetBought: bought, boardFeetUsed: used.reduce((sum, one) => sum + one, 0) };
}
