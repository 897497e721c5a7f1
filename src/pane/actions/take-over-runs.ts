/** Takes runs over that Walls and Trim make: as rows of the person's own Runs, where they stand in their place. */
import type { WorkbookHost } from '../../hosts/host.ts';
import { rowsForRuns } from '../../planning/input/rows-for-runs.ts';
import { keyOf } from '../../planning/rooms/typed-runs.ts';
import { count } from '../../sheets/words/print-length.ts';
import type { JobFound } from '../job/job-found.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';
import { placeOf, withTable } from './with-table.ts';

const RUNS = 'Runs';

export interface RunActions {
  /** @param keys of made runs, as `keyOf` gives them: all that one stands for are taken over together. */
  readonly takeOver: (keys: readonly string[]) => Promise<void>;
}

export function runActions(tools: ActionTools): RunActions {
  const { store, accept, run } = tools;

  async function add(host: WorkbookHost, before: JobFound, keys: ReadonlySet<string>) {
    const found = await withTable(tools, host, before, RUNS);
    const table = found?.inputs.find(({ name }) => name === RUNS);
    const place = found === undefined ? undefined : placeOf(found, RUNS);
    if (found === undefined || table === undefined || place === undefined) return;
    const runs = found.runs.flatMap((one) =>
      one.from.row === undefined && keys.has(keyOf(one.run)) ? [one.run] : [],
    );
    if (runs.length === 0) {
      store.send({ type: 'done', notice: 'Nothing was taken over: no such run is made any more.' });
      return;
    }
    const rows = accept(rowsForRuns(table, runs, found.shop));
    if (rows === undefined) return;
    const added = accept(await host.appendRows(place, rows.value));
    if (added === undefined) return;
    const { line } = added.value;
    const shown = accept(await host.show({ sheet: place.sheet, cell: `A${line}` }));
    const were = runs.length === 1 ? 'was' : 'were';
    const from = runs.length === 1 ? `row ${line}` : `rows ${line} to ${line + runs.length - 1}`;
    const notice = `${count(runs.length, 'run')} ${were} taken over: on ${place.sheet}, ${from}. What stands there is planned now in place of what was made.`;
    // Where a cell can't be shown, that is what stands in the pane.
    if (shown !== undefined) store.send({ type: 'done', notice });
    await checkJob(tools);
  }

  return {
    takeOver: (keys) =>
      run(async () => {
        const host = openHostOf(store.get());
        if (host === undefined || store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Taking the runs over' });
        // Somebody may have typed since the tables were read.
        const found = await checkJob(tools);
        if (found !== undefined) await add(host, found, new Set(keys));
        store.send({ type: 'busy', with: undefined });
      }),
  };
}
