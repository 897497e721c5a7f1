/** Writes described sheets beside the person's, under names of their own, finished but for their names. */
import { absoluteRange, soundRange } from '../../core/cells/cell-range.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { styleGrid } from './cell-grid.ts';
import { nameKey, renameIn } from '../formulas/formula-parts.ts';
import { mark, STAGED } from './marks.ts';
import type { WritingPlan } from './plan-writing.ts';
import type { Requests } from './requests.ts';
import { stageCells, stageTableFormulas } from './stage-cells.ts';
import { stageDrawings, type PaintedDrawing } from './stage-drawings.ts';
import { stageLayout, stagePage, stageRules, stageTables } from './stage-layout.ts';
import { stageStyles } from './stage-styles.ts';

export interface Staging {
  readonly context: Excel.RequestContext;
  readonly description: WorkbookDescription;
  readonly plan: WritingPlan;
  /** For each sheet of the description. */
  readonly drawings: readonly (readonly PaintedDrawing[])[];
  readonly tellsPlaces: boolean;
  readonly requests: Requests;
  readonly onSheet: (done: number) => void;
}

/**
 * Stages every sheet; leftovers of an earlier failure go first.
 *
 * @returns The ids of the staged sheets, in the description's order.
 */
export async function stageSheets(staging: Staging): Promise<string[]> {
  const { context, description, plan, drawings, tellsPlaces, requests, onSheet } = staging;
  const sheets = await addSheets(staging);
  const formulaOf = (formula: string): string => renameIn(formula, plan.renamed);
  const tableOf = (name: string): string => plan.renamed.tables.get(nameKey(name)) ?? name;
  const each = description.sheets.map((one, index) => ({
    one,
    sheet: context.workbook.worksheets.getItem(sheets[index] ?? ''),
    pictures: drawings[index] ?? [],
  }));
  for (const [index, { one, sheet }] of each.entries()) {
    const styles = styleGrid(one);
    await stageCells(sheet, one, styles, requests, formulaOf);
    await stageStyles(sheet, styles, requests);
    await stageLayout(sheet, one, requests);
    await stageTables(sheet, one, requests, tableOf);
    onSheet(index + 1);
  }
  // What may name any of the tables.
  for (const { one, sheet, pictures } of each) {
    await stageTableFormulas(sheet, one, requests, formulaOf);
    await stageRules(sheet, one, requests, formulaOf);
    await stagePage(sheet, one.print, requests);
    await stageDrawings(sheet, one, pictures, requests, tellsPlaces);
  }
  await requests.send();
  return sheets;
}

/** Adds the sheets, each marked as unfinished, and the new names that point into them. */
async function addSheets({ context, description, plan, requests }: Staging): Promise<string[]> {
  const { worksheets, names } = context.workbook;
  await requests.need(6 * (plan.leftovers.length + plan.stagedSheets.length + plan.names.length));
  for (const name of plan.leftoverNames) names.getItem(name).delete();
  for (const { id } of plan.leftovers) worksheets.getItem(id).delete();
  const added = plan.stagedSheets.map((name, index) => {
    const sheet = worksheets.add(name);
    mark(sheet, STAGED, description.sheets[index]?.name ?? '');
    return sheet.load('id');
  });
  plan.names.forEach(({ final, before }, index) => {
    if (before === undefined) names.add(final, `=${stagedReference({ description, plan }, index)}`);
  });
  await requests.send();
  return added.map(({ id }) => id);
}

/** What a described name refers to while its sheet is staged. */
export function stagedReference(
  { description, plan }: Pick<Staging, 'description' | 'plan'>,
  index: number,
): string {
  const { sheet = '', range = 'A1' } = description.names?.[index] ?? {};
  const staged = plan.renamed.sheets.get(nameKey(sheet)) ?? sheet;
  return absoluteRange(staged, soundRange(range));
}
