/** A table of the person's own to put rows into: where there is none yet, its sheet is made first. */
import { fault } from '../../core/faults/fault.ts';
import type { TablePlace, WorkbookHost } from '../../hosts/host.ts';
import { tableArgument } from '../../planning/input/raw-table.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import { sameName } from '../../planning/job.ts';
import { missingSheets } from '../job/input-sheets.ts';
import type { JobFound } from '../job/job-found.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';

/** The job with that table; undefined where it can't be made, which is said. */
export async function withTable(
  tools: ActionTools,
  host: WorkbookHost,
  found: JobFound,
  name: JobTableName,
): Promise<JobFound | undefined> {
  const { store, accept, planner } = tools;
  if (placeOf(found, name) !== undefined) return found;
  const loaded = await planner();
  if (loaded === undefined) return undefined;
  const missing = missingSheets(loaded.describeInput(), found.tables, found.survey);
  const sheets = missing.sheets.filter((one) => sameName(one.name, name));
  if (sheets.length > 0) {
    const description = { ...missing, sheets };
    const made = accept(await host.write(description, { owner: 'person', replace: [] }));
    if (made === undefined) return undefined;
    const after = await checkJob(tools);
    if (after === undefined || placeOf(after, name) !== undefined) return after;
  }
  const gone = fault('table.missing', tableArgument(name), found.survey.name);
  store.send({ type: 'trouble', faults: [gone] });
  return undefined;
}

export function placeOf({ tables }: JobFound, name: JobTableName): TablePlace | undefined {
  return tables.find((one) => one.name === name)?.place;
}
