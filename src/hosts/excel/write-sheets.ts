/** Writes every described sheet into the workbook, or none; see stage-sheets.ts and swap-sheets.ts. */
import { failed, ok, type Outcome } from '../../core/faults/fault.ts';
import { absoluteRange, soundRange } from '../../core/cells/cell-range.ts';
import { checkDescription } from '../../sheets/grammar/check/check-description.ts';
import { cleanDescription } from '../../sheets/grammar/check/clean-text.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import type { WriteChoice, Written } from '../host.ts';
import { runNow, runPatiently, supports, type ExcelProgram } from './excel-program.ts';
import { planWriting, type WritingPlan } from './plan-writing.ts';
import { loadProperties } from './properties.ts';
import { attempt, refusal } from './refusal.ts';
import { Requests } from './requests.ts';
import { base64, type PaintedDrawing } from './stage-drawings.ts';
import { stageSheets } from './stage-sheets.ts';
import { takeInventory } from './inventory.ts';
import { settleFailure, swapSheets, type Swap } from './swap-sheets.ts';

const WRITING = 'writingSheets';
/** ExcelApi 1.10 tells where a cell lies. */
const TELLS_PLACES = 10;

/**
 * Writes the sheets. The person's cells and sheets stay as they were, whatever fails.
 *
 * @returns The names of the sheets written; or every fault of planWriting, host.editing-cell or
 *   host.refused.
 * @throws RangeError that lists what no workbook can hold (a bug of the caller's).
 */
export async function writeSheets(
  program: ExcelProgram,
  description: WorkbookDescription,
  choice: WriteChoice,
): Promise<Outcome<Written>> {
  const clean = cleanDescription(description);
  const wrong = checkDescription(clean);
  if (wrong.length > 0) throw new RangeError(`No workbook can hold this: ${wrong.join(' ')}`);
  return attempt(WRITING, async () => {
    const looked = await runNow(program, async (context) => {
      const found = await takeInventory(context);
      const before = new Set(
        found.sheets.filter((sheet) => !sheet.leftover).map((sheet) => sheet.id),
      );
      return { plan: planWriting(clean, choice, found), before };
    });
    if (!looked.plan.ok) return looked.plan;
    const drawings = await paintAll(program, clean);
    return writePlanned(program, clean, choice, looked.plan.value, looked.before, drawings);
  });
}

async function writePlanned(
  program: ExcelProgram,
  description: WorkbookDescription,
  { owner, onProgress }: WriteChoice,
  plan: WritingPlan,
  before: ReadonlySet<string>,
  drawings: readonly (readonly PaintedDrawing[])[],
): Promise<Outcome<Written>> {
  const finalNames = description.sheets.map(({ name }) => name);
  const steps = finalNames.length + 1;
  let swap: Swap | undefined;
  let done = 0;
  const tell = (): void => onProgress?.(done, steps);
  try {
    await runPatiently(program, async (context) => {
      const says = description.properties ?? {};
      const properties = Object.keys(says).length === 0 ? {} : await loadProperties(context);
      const staged = await stageSheets({
        context,
        description,
        plan,
        drawings,
        tellsPlaces: supports(program, TELLS_PLACES),
        requests: new Requests(context, tell),
        onSheet: (count) => {
          done = count;
        },
      });
      const references = (description.names ?? []).map(({ sheet, range }) =>
        absoluteRange(sheet, soundRange(range)),
      );
      swap = { plan, owner, staged, finalNames, references, says, properties };
      await swapSheets(context, swap);
    });
  } catch (error) {
    const stands = await runPatiently(program, (context) =>
      settleFailure(context, plan, before, swap),
    ).catch(() => false);
    if (!stands) return failed(refusal(WRITING, error));
  }
  done = steps;
  tell();
  return ok({ sheets: finalNames });
}

/** Before the workbook is touched, since painting takes its time and may fail. */
async function paintAll(
  program: ExcelProgram,
  { sheets }: WorkbookDescription,
): Promise<PaintedDrawing[][]> {
  const painted: PaintedDrawing[][] = [];
  for (const { drawings = [] } of sheets) {
    const ofSheet: PaintedDrawing[] = [];
    for (const placed of drawings) {
      ofSheet.push({ placed, image: base64(await program.paint(placed.drawing)) });
    }
    painted.push(ofSheet);
  }
  return painted;
}
