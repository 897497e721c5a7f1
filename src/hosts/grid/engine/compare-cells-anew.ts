/** Compares cells by what they hold now, each time. */
import { CELL_INVERTED_INDEX_CACHE } from '@univerjs/engine-formula';

const NONE = { rowsInCache: [], rowsNotInCache: [] };

/**
 * The engine keeps lists of which rows of a column hold which value. Compared by them, a cell that
 * differs gives nothing where it must give FALSE, so that NOT(A1=0) and AND(A1=0, ...) go #VALUE!, and a
 * cell with an error gives FALSE. So they are neither kept nor used. Seen with version 0.25.1.
 */
export function compareCellsAnew(): void {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => NONE;
  CELL_INVERTED_INDEX_CACHE.set = () => undefined;
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => undefined;
}
