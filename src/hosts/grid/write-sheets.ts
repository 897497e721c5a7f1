/** Writes every described sheet into the grid, or none. */
import { ICommandService } from '@univerjs/core';
import { SetWorksheetActiveOperation } from '@univerjs/sheets';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { checkDescription } from '../../sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../sheets/grammar/check/clean-text.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { nameKey } from '../formulas/formula-parts.ts';
import type { WriteChoice, Written } from '../host.ts';
import { yieldToBrowser } from '../yield-to-browser.ts';
import { changeNotes } from './book-metadata.ts';
import { finishTyping } from './finish-typing.ts';
import { gridSheets } from './grid-sheets.ts';
import { oneChange } from './one-change.ts';
import { paintDrawings, type GridTools, type PaintedDrawing } from './paint-drawings.ts';
import { planWriting, type WritingPlan } from './plan-writing.ts';
import { defineName, insertSheet, removeSheet } from './sheet-changes.ts';
import type { Grid } from './grid.ts';

const WRITING = 'writingSheets';

/**
 * Writes the sheets behind the person's, and shows the first. Undo takes them away as one step.
 *
 * @returns The names of the sheets written; or every fault of planWriting, or host.refused.
 * @throws RangeError that lists what no workbook can hold (a bug of the caller's).
 */
export async function writeSheets(
  grid: Grid,
  tools: GridTools,
  description: WorkbookDescription,
  choice: WriteChoice,
): Promise<Outcome<Written>> {
  const clean = cleanDescription(description);
  const wrong = checkDescription(clean);
  if (wrong.length > 0) throw new RangeError(`No workbook can hold this: ${wrong.join(' ')}`);
  const book = grid.book().getId();
  const allowed = planWriting(grid, clean, choice);
  if (!allowed.ok) return allowed;
  const painted = await paintDrawings(tools, clean);
  // A cell that is being typed in keeps what was typed.
  await finishTyping(grid);
  if (grid.book().getId() !== book) return closed(description);
  // While that was done the person may have changed what there is.
  const planned = planWriting(grid, clean, choice);
  if (!planned.ok) return planned;
  return writePlanned(grid, planned.value, choice, painted);
}

async function writePlanned(
  grid: Grid,
  plan: WritingPlan,
  { owner, onProgress }: WriteChoice,
  painted: readonly (readonly PaintedDrawing[])[],
): Promise<Outcome<Written>> {
  const change = oneChange(grid);
  const book = grid.book().getId();
  const steps = plan.sheets.length + 1;
  const written: string[] = [];
  try {
    // Before the formulas that use them.
    for (const name of plan.names) defineName(grid, name, change);
    for (const [index, sheet] of plan.sheets.entries()) {
      const goes = plan.outgoing.find(({ name }) => nameKey(name) === nameKey(sheet.name));
      const clash = gridSheets(grid).find(
        ({ id, name }) => nameKey(name) === nameKey(sheet.name) && id !== goes?.id,
      );
      if (clash !== undefined) {
        change.takeBack();
        return failed(fault('host.sheet-not-ours', 'sheet', clash.name));
      }
      written.push(insertSheet(grid, sheet, owner, painted[index] ?? [], change));
      if (goes !== undefined) removeSheet(grid, goes, change);
      onProgress?.(index + 1, steps);
      await yieldToBrowser();
      // It took with it what was written.
      if (grid.book().getId() !== book) return closed(plan);
    }
    changeNotes(grid, plan.says, change);
  } catch (error) {
    change.takeBack();
    return failed(fault('host.refused', WRITING, error instanceof Error ? error.message : ''));
  }
  change.keep();
  const [first] = written;
  if (first !== undefined) showSheet(grid, first);
  onProgress?.(steps, steps);
  return ok({ sheets: plan.sheets.map(({ name }) => name) });
}

/** The workbook in which it began was closed, and another stands in its place. */
function closed({ sheets }: Pick<WritingPlan, 'sheets'>): Outcome<Written> {
  return failed(fault('host.gone', WRITING, sheets[0]?.name ?? ''));
}

function showSheet(grid: Grid, subUnitId: string): void {
  grid.services
    .get(ICommandService)
    .syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId: grid.book().getId(), subUnitId });
}
