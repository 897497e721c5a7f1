/** The ripped boards of a plan, by their row of Stock and their number. */
import type { StockItem } from '../job.ts';
import type { JobPlan, RippedBoard } from '../job-plan.ts';

export type Boards = ReadonlyMap<StockItem, ReadonlyMap<number, RippedBoard>>;

export function boardsOf({ groups }: JobPlan): Boards {
  const boards = new Map<StockItem, Map<number, RippedBoard>>();
  for (const board of groups.flatMap((group) => group.boards)) {
    const ofItem = boards.get(board.item) ?? new Map<number, RippedBoard>();
    boards.set(board.item, ofItem.set(board.unit, board));
  }
  return boards;
}
