/** Reads the workbook's job, at once when asked and soon after a change. */
import type { Fault } from '../../core/faults/fault.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import { findJob } from '../job/find-job.ts';
import type { JobFound } from '../job/job-found.ts';
import type { PaneStore } from '../state/store.ts';
import { openHostOf } from '../state/open-host.ts';
import { SHEET_NAMES } from '../../sheets/plan-anchors.ts';
import { isOccupied } from '../state/is-occupied.ts';
import type { ActionTools } from './action-tools.ts';
import { readTicksNow } from './kept-plans.ts';
import { yieldNowAndThen } from '../../hosts/yield-to-browser.ts';

/** While a person types on, the tables aren't read. */
export const SETTLE_MS = 400;
/** Where what is cut is ticked. */
const TICKED_SHEETS: ReadonlySet<string> = new Set([SHEET_NAMES.cutting, SHEET_NAMES.pieces]);
/** While a cell is being typed in, Excel tells nothing: asked again after this. */
export const EDITING_MS = 1500;

/**
 * Reads the job; what another reading has overtaken is not shown.
 * @returns What was found; nothing where the workbook could not be read, which is said.
 */
export async function checkJob(tools: ActionTools): Promise<JobFound | undefined> {
  const { store, planner, run } = tools;
  const host = openHostOf(store.get());
  if (host === undefined) return undefined;
  store.send({ type: 'reading begun' });
  const { turn } = store.get().reading;
  let result: JobFound | undefined;
  await run(async () => {
    const loaded = await planner();
    if (loaded === undefined) {
      store.send({ type: 'reading failed', turn, faults: store.get().trouble });
      return;
    }
    const found = await findJob(
      host,
      loaded,
      yieldNowAndThen(() => performance.now()),
    );
    if (found.ok) {
      result = found.value;
      store.send({ type: 'job read', turn, found: found.value });
    } else {
      store.send({ type: 'reading failed', turn, faults: found.faults });
      if (isPassing(found.faults)) setTimeout(() => tryAgain(tools, host, turn), EDITING_MS);
    }
  });
  return result;
}

function isPassing(faults: readonly Fault[]): boolean {
  return faults.some(({ code }) => code === 'host.editing-cell');
}

function tryAgain(tools: ActionTools, host: WorkbookHost, turn: number): void {
  const state = tools.store.get();
  if (state.reading.turn === turn && openHostOf(state) === host) void checkJob(tools);
}

/**
 * Checks again soon after a change on any sheet but those written here; returns what ends it. Where
 * Undo takes back what was written, a change of it ends the word that it was.
 */
export function watchJob(host: WorkbookHost, tools: ActionTools): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let ticksTimer: ReturnType<typeof setTimeout> | undefined;
  const hearTicks = (sheet: string): void => {
    if (!TICKED_SHEETS.has(sheet) || tools.store.get().planning.written === undefined) return;
    clearTimeout(ticksTimer);
    ticksTimer = setTimeout(() => void checkTicks(tools), SETTLE_MS);
  };
  const unwatch = host.watch((sheet) => {
    hearTicks(sheet);
    if (isWrittenHere(tools.store, sheet)) {
      if (!host.can.undoWrites || tools.store.get().writing.kind !== 'written') return;
      tools.store.send({ type: 'writing dropped' });
    }
    clearTimeout(timer);
    timer = setTimeout(() => void checkJob(tools), SETTLE_MS);
  }, hearTicks);
  const unfollow = host.watchRow((row) => tools.store.send({ type: 'row chosen', row }));
  return () => {
    clearTimeout(timer);
    clearTimeout(ticksTimer);
    unfollow();
    unwatch();
  };
}

/** What is being written or planned asks for the ticks itself. */
async function checkTicks(tools: ActionTools): Promise<void> {
  if (isOccupied(tools.store.get())) return;
  await tools.run(async () => {
    const loaded = await tools.planner();
    if (loaded !== undefined) await readTicksNow(tools, loaded);
  });
}

function isWrittenHere(store: PaneStore, name: string): boolean {
  const { reading, writing } = store.get();
  const sheets = reading.found?.survey.sheets ?? [];
  const isLast = writing.kind === 'written' && writing.sheets.includes(name);
  return isLast || sheets.some((sheet) => sheet.ours && sheet.name === name);
}
