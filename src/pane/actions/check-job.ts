/** Reads the workbook's job, at once when asked and soon after a change. */
import type { WorkbookHost } from '../../hosts/host.ts';
import { findJob } from '../job/find-job.ts';
import type { PaneStore } from '../state/store.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';

/** While a person types on, the tables aren't read. */
export const SETTLE_MS = 400;

/** Reads the job; what another reading has overtaken is dropped. */
export async function checkJob({ store, planner, run }: ActionTools): Promise<void> {
  const host = openHostOf(store.get());
  if (host === undefined) return;
  store.send({ type: 'reading begun' });
  const { turn } = store.get().reading;
  await run(async () => {
    const loaded = await planner();
    if (loaded === undefined) {
      store.send({ type: 'reading failed', turn, faults: store.get().trouble });
      return;
    }
    const found = await findJob(host, loaded);
    if (found.ok) store.send({ type: 'job read', turn, found: found.value });
    else store.send({ type: 'reading failed', turn, faults: found.faults });
  });
}

/** Checks again soon after a change on any sheet but those written here; returns what ends it. */
export function watchJob(host: WorkbookHost, tools: ActionTools): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const unwatch = host.watch((sheet) => {
    if (isWrittenHere(tools.store, sheet)) return;
    clearTimeout(timer);
    timer = setTimeout(() => void checkJob(tools), SETTLE_MS);
  });
  return () => {
    clearTimeout(timer);
    unwatch();
  };
}

function isWrittenHere(store: PaneStore, name: string): boolean {
  const sheets = store.get().reading.found?.look.sheets ?? [];
  return sheets.some((sheet) => sheet.ours && sheet.name === name);
}
