/** Blanks of boards that are ripped already: they wait beside the saw, and cost nothing more. */
import type { StickSupply } from '../../cutting/problem/problem.ts';
import type { ExactInches } from '../../core/units/length.ts';
import type { PreparedGroup } from '../group-profiles.ts';
import type { StockItem } from '../job.ts';
import type { Blank, SharedStock } from '../share-stock.ts';

/** A blank of a ripped board that nothing is cut from yet. */
export interface RippedBlank {
  /** The board's number in its row of Stock, from 1. */
  readonly unit: number;
  /** From 1, and how many blanks its board was ripped into. */
  readonly strip: number;
  readonly strips: number;
}

/** Such blanks of one row and one width, as a supply that runs out. */
export interface RippedStock extends SharedStock {
  readonly rips: readonly [{ readonly blank: string; readonly count: 1 }][];
  readonly ripped: readonly RippedBlank[];
  /** What one blank was worth of its board. */
  readonly stripWorthCents: number;
}

/**
 * The blanks that are left of the boards that a group's cut sticks are from, where a profile of the
 * group is made from one as wide; others are kept.
 *
 * @param shared the group's rows of Stock
 */
export function listRippedBlanks(
  group: PreparedGroup,
  shared: readonly SharedStock[],
  blanks: readonly Blank[],
): RippedStock[] {
  const stocks = new Map<string, { stock: RippedStock; ripped: RippedBlank[] }>();
  for (const board of listCutBoards(group)) {
    const { item, unit, blankWidths, used } = board;
    blankWidths.forEach((width, at) => {
      if (used.has(at + 1)) return;
      for (const row of shared.filter((one) => one.item === item)) {
        const fitting = blanks.filter(
          (blank) =>
            blank.width?.equals(width) === true &&
            blank.profiles.some((profile) => row.strips.has(profile)),
        );
        if (fitting.length === 0) continue;
        const strips = blankWidths.length;
        const key = JSON.stringify([row.id, width.toFraction(), strips]);
        const found = stocks.get(key) ?? begin(row, fitting, strips, stocks.size);
        stocks.set(key, found);
        found.ripped.push({ unit, strip: at + 1, strips });
        return;
      }
    });
  }
  return [...stocks.values()].map(({ stock, ripped }) => ({ ...stock, ripped }));
}

function begin(
  row: SharedStock,
  fitting: readonly Blank[],
  strips: number,
  at: number,
): { stock: RippedStock; ripped: RippedBlank[] } {
  const stock: RippedStock = {
    ...row,
    id: `ripped ${at}`,
    priceCents: 0,
    rips: fitting.map(({ id }) => [{ blank: id, count: 1 }]),
    ripped: [],
    stripWorthCents: Math.floor(row.priceCents / strips),
  };
  return { stock, ripped: [] };
}

export function stateRipped(
  { id, item, rips, ripped, stripWorthCents }: RippedStock,
  whole: (length: ExactInches) => number,
): StickSupply {
  return {
    id,
    length: whole(item.length),
    priceCents: 0,
    stripWorthCents,
    strips: 1,
    rips,
    have: ripped.length,
    buyMost: 0,
  };
}

interface CutBoard {
  readonly item: StockItem;
  readonly unit: number;
  readonly blankWidths: readonly ExactInches[];
  /** Blanks that pieces are cut from, from 1. */
  readonly used: Set<number>;
}

/** The boards that a group's cut sticks are from, each once. */
function listCutBoards(group: PreparedGroup): CutBoard[] {
  const boards = new Map<StockItem, Map<number, CutBoard>>();
  for (const { stick, blankWidths } of group.flatMap(({ cut }) => cut)) {
    const { item, unit, strip } = stick;
    if (item.kind !== 'board') continue;
    const ofItem = boards.get(item) ?? new Map<number, CutBoard>();
    boards.set(item, ofItem);
    const board = ofItem.get(unit) ?? { item, unit, blankWidths, used: new Set<number>() };
    ofItem.set(unit, board);
    board.used.add(strip);
  }
  return [...boards.values()].flatMap((units) => [...units.values()]);
}
