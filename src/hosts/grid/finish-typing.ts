/** What is half typed in a cell. */
import type {} from '@univerjs/sheets-ui/facade';
import type { Grid } from './grid.ts';

/** Puts it into its cell, as Enter does, where anything is being typed; the keyboard stays where it is. */
export async function finishTyping(grid: Grid): Promise<void> {
  const book = grid.book();
  if (book.isCellEditing()) await book.endEditingAsync(true);
}
