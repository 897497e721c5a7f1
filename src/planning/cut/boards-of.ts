/** The ripped boards of a plan, by their row of Stock and their number. */
import type { StockItem } from '../job.ts';
import type { JobPlan } from '../job-plan.ts';
import type { RippedBoard } from '../opened-stock.ts';

export type Boards = ReadonlyMap<StockItem, ReadonlyMap<number, RippedBoard>>;

export function boardsOf({ groups }: JobPlan): Boards {
  const boards = new Map<StockItem, Map<number, RippedBoard>>();
  for (const board of groups.flatMap((group) => group.boards)) {
    const ofItem = boards.get(board.item) ?? new Map<number, RippedBoard>();
    boards.set(board.item, ofItem.set(board.unit, board));
  }
  return boards;
}
