/** Plans that are kept with the workbook, and the ticks on the sheets that were written from one. */
import type { KeptTextKey, WorkbookHost } from '../../hosts/host.ts';
import { yieldNowAndThen } from '../../hosts/yield-to-browser.ts';
import type { Ticks } from '../../planning/cut/cut-already.ts';
import type { PlanToKeep } from '../../planning/kept/keep-plan.ts';
import { SHEET_NAMES } from '../../sheets/plan-anchors.ts';
import type { Fault } from '../../core/faults/fault.ts';
import type { Planner } from '../planner.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';

/** Soon after a workbook is opened: its plans are there again, or it is said why not. */
export async function recallPlans(tools: ActionTools, host: WorkbookHost): Promise<void> {
  const { store, planner, accept } = tools;
  const texts: Partial<Record<KeptTextKey, string>> = {};
  for (const key of ['plan', 'written-plan'] as const) {
    const text = accept(await host.keptText(key));
    if (text === undefined) return;
    if (text.value !== undefined) texts[key] = text.value;
  }
  if (Object.keys(texts).length === 0) return;
  const loaded = await planner();
  if (loaded === undefined) return;
  const faults: Fault[] = [];
  const read = async (text: string | undefined): Promise<PlanToKeep | undefined> => {
    if (text === undefined) return undefined;
    const plan = await loaded.readKeptPlan(
      text,
      yieldNowAndThen(() => performance.now()),
    );
    if (plan.ok) return plan.value;
    faults.push(...plan.faults);
    return undefined;
  };
  const written = await read(texts['written-plan']);
  const last = await read(texts.plan);
  if (openHostOf(store.get()) !== host) return;
  const keyOf = ({ plan }: PlanToKeep): string => loaded.keyOfCut(plan.cut);
  const result = last ?? written;
  store.send({
    type: 'plans recalled',
    written,
    result: result === undefined ? undefined : { ...result, wrong: [], cutKey: keyOf(result) },
    faults,
  });
  await readTicksNow(tools, loaded);
}

/** The ticks as they stand on the sheets; undefined where no plan is known that they are of. */
export async function readTicksNow(
  { store, accept }: ActionTools,
  loaded: Planner,
): Promise<Ticks | undefined> {
  const host = openHostOf(store.get());
  const { written } = store.get().planning;
  if (host === undefined || written === undefined) return undefined;
  const cutting = accept(await host.readSheet(SHEET_NAMES.cutting));
  const pieces = accept(await host.readSheet(SHEET_NAMES.pieces));
  if (cutting === undefined || pieces === undefined) return undefined;
  if (openHostOf(store.get()) !== host || store.get().planning.written !== written) {
    return undefined;
  }
  const ticks = loaded.readTicks(written.plan, {
    cutting: cutting.value,
    pieces: pieces.value,
  });
  if (ticks === undefined) {
    store.send({ type: 'ticks read', ticks: undefined });
    return undefined;
  }
  const cut = loaded.cutFromPlan(written.plan, ticks);
  store.send({
    type: 'ticks read',
    ticks: {
      cutKey: loaded.keyOfCut(cut),
      sticksCut: cut.length,
      sticks: written.plan.totals.sticks,
      keepsCuts: loaded.keepsCuts(written.plan, ticks),
    },
  });
  return ticks;
}

/** What can't be kept is said; the plan stands all the same until the pane is left. */
export async function keepPlanAs(
  { accept }: ActionTools,
  host: WorkbookHost,
  key: KeptTextKey,
  text: string | undefined,
): Promise<void> {
  accept(await host.keepText(key, text));
}
