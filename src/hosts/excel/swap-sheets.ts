/**
 * The last step of writing, one request: staged sheets take the names of those that go. Excel takes
 * nothing back that it has done of a request, so the order is such that at each point it can be told
 * how far it came, and undone until the last staged sheet is no longer marked as such.
 */
import { MADE } from '../made-mark.ts';
import { mark, OUTGOING, STAGED, stagedName, unmark } from './marks.ts';
import type { PlannedName, WritingPlan } from './plan-writing.ts';
import type { Notes, WriteChoice } from '../host.ts';
import type { Properties } from '../notes.ts';
import { changeProperties, loadProperties } from './properties.ts';

export interface Swap {
  readonly plan: WritingPlan;
  readonly owner: WriteChoice['owner'];
  /** The staged sheets' ids, and what they are to be called. */
  readonly staged: readonly string[];
  readonly finalNames: readonly string[];
  /** What names of ours refer to once the staged sheets have their own names, in the plan's order. */
  readonly references: readonly string[];
  /** What the workbook says of itself from then on, and its properties before. */
  readonly says: Notes;
  readonly properties: Properties;
}

export async function swapSheets(context: Excel.RequestContext, swap: Swap): Promise<void> {
  const { plan, owner, staged, finalNames } = swap;
  const { workbook } = context;
  const sheetOf = (id: string): Excel.Worksheet => workbook.worksheets.getItem(id);
  workbook.application.suspendScreenUpdatingUntilNextSync();
  plan.outgoing.forEach(({ id, name, markedOutgoing, tables }, index) => {
    const sheet = sheetOf(id);
    if (!markedOutgoing) mark(sheet, OUTGOING, name);
    sheet.name = outgoingName(plan, index);
    for (const table of tables) workbook.tables.getItem(table.id).name = outgoingTable(table.name);
  });
  staged.forEach((id, index) => {
    sheetOf(id).name = finalNames[index] ?? '';
  });
  for (const table of plan.tables) workbook.tables.getItem(table.staged).name = table.final;
  plan.names.forEach(({ final, before }, index) => {
    if (before !== undefined) {
      workbook.names.getItem(final).formula = `=${swap.references[index] ?? ''}`;
    }
  });
  if (owner === 'tool') {
    staged.forEach((id, index) => mark(sheetOf(id), MADE, finalNames[index] ?? ''));
  }
  for (const id of staged) unmark(sheetOf(id), STAGED);
  changeProperties(context, swap.properties, swap.says);
  const [first] = staged;
  if (first !== undefined) sheetOf(first).activate();
  for (const { id } of plan.outgoing) sheetOf(id).delete();
  await context.sync();
}

/**
 * After a failure: takes everything away that was begun and gives the outgoing sheets their names
 * again. Where the swap had come to its end but for what is tidied up after it, finishes that.
 *
 * @param before Ids of all sheets that were there before writing began.
 * @returns Whether the new sheets stand, whole.
 */
export async function settleFailure(
  context: Excel.RequestContext,
  plan: WritingPlan,
  before: ReadonlySet<string>,
  swap: Swap | undefined,
): Promise<boolean> {
  const { workbook } = context;
  workbook.worksheets.load('items/id,items/name');
  workbook.names.load('items/name');
  await context.sync();
  const there = new Map(workbook.worksheets.items.map((sheet) => [sheet.id, sheet]));
  if (swap !== undefined && (await isSwapped(context, swap, there))) {
    for (const { id } of plan.outgoing) there.get(id)?.delete();
    await context.sync();
    await sayAgain(context, swap.says);
    return true;
  }
  const outgoing = plan.outgoing.flatMap((sheet) => {
    const now = there.get(sheet.id);
    if (now === undefined) return [];
    const marked = now.names.getItemOrNullObject(OUTGOING);
    marked.load('name');
    return [{ sheet, now, marked }];
  });
  await context.sync();
  const isNew = new Set(swap?.staged ?? []);
  const begun = new Set(plan.stagedSheets);
  const added = new Set(plan.names.filter(isAdded).map(({ final }) => final));
  for (const { name } of workbook.names.items) {
    if (added.has(name)) workbook.names.getItem(name).delete();
  }
  for (const [id, sheet] of there) {
    if (isNew.has(id) || (!before.has(id) && begun.has(sheet.name))) sheet.delete();
  }
  for (const { sheet, now, marked } of outgoing) {
    if (marked.isNullObject) continue;
    unmark(now, OUTGOING);
    now.name = sheet.name;
    for (const table of sheet.tables) workbook.tables.getItem(table.id).name = table.name;
  }
  for (const { final, before: formula } of plan.names) {
    if (swap !== undefined && formula !== undefined)
      workbook.names.getItem(final).formula = formula;
  }
  await context.sync();
  return false;
}

/** The sheets stand; whoever keeps a note after this is told where Excel takes none. */
async function sayAgain(context: Excel.RequestContext, says: Notes): Promise<void> {
  if (Object.keys(says).length === 0) return;
  try {
    changeProperties(context, await loadProperties(context), says);
    await context.sync();
  } catch {
    return;
  }
}

async function isSwapped(
  context: Excel.RequestContext,
  { staged }: Swap,
  there: ReadonlyMap<string, Excel.Worksheet>,
): Promise<boolean> {
  const marks = staged.map((id) => there.get(id)?.names.getItemOrNullObject(STAGED));
  for (const one of marks) one?.load('name');
  await context.sync();
  return marks.every((one) => one?.isNullObject === true);
}

function isAdded({ before }: PlannedName): boolean {
  return before === undefined;
}

function outgoingName({ stagedSheets }: WritingPlan, index: number): string {
  // Numbers that the staged sheets don't use.
  const last = stagedSheets.at(-1)?.match(/\d+$/u)?.[0] ?? '0';
  return stagedName(Number(last) + 1 + index);
}

function outgoingTable(name: string): string {
  return `${name}_outgoing`;
}
