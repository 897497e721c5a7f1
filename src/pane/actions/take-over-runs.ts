/** Takes runs over that Walls and Trim make: as rows of the person's own Runs, where they stand in their place. */
import { fault } from '../../core/faults/fault.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import { tableArgument } from '../../planning/input/raw-table.ts';
import { rowsForRuns } from '../../planning/input/rows-for-runs.ts';
import { sameName } from '../../planning/job.ts';
import { keyOf } from '../../planning/rooms/typed-runs.ts';
import { count } from '../../sheets/words/print-length.ts';
import { missingSheets } from '../job/input-sheets.ts';
import type { JobFound } from '../job/job-found.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';

const RUNS = 'Runs';

export interface RunActions {
  /** @param keys of made runs, as `keyOf` gives them: all that one stands for are taken over together. */
  readonly takeOver: (keys: readonly string[]) => Promise<void>;
}

export function runActions(tools: ActionTools): RunActions {
  const { store, accept, planner, run } = tools;

  /** Where there is no table Runs yet, its sheet is made first. */
  async function withRuns(host: WorkbookHost, found: JobFound): Promise<JobFound | undefined> {
    if (placeOf(found) !== undefined) return found;
    const loaded = await planner();
    if (loaded === undefined) return undefined;
    const missing = missingSheets(loaded.describeInput(), found.tables, found.survey);
    const sheets = missing.sheets.filter(({ name }) => sameName(name, RUNS));
    if (sheets.length > 0) {
      const description = { ...missing, sheets };
      const made = accept(await host.write(description, { owner: 'person', replace: [] }));
      if (made === undefined) return undefined;
      const after = await checkJob(tools);
      if (after === undefined || placeOf(after) !== undefined) return after;
    }
    const gone = fault('table.missing', tableArgument(RUNS), found.survey.name);
    store.send({ type: 'trouble', faults: [gone] });
    return undefined;
  }

  async function add(host: WorkbookHost, before: JobFound, keys: ReadonlySet<string>) {
    const found = await withRuns(host, before);
    const table = found?.inputs.find(({ name }) => name === RUNS);
    const place = found === undefined ? undefined : placeOf(found);
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

function placeOf({ tables }: JobFound) {
  return tables.find(({ name }) => name === RUNS)?.place;
}
