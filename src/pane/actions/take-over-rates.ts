/** Takes a learned rate over, as a row of the person's own Work: only where no cell of theirs says it yet. */
import type { WorkbookHost } from '../../hosts/host.ts';
import { rowForRate } from '../../planning/input/row-for-rate.ts';
import { sayMinutes } from '../../sheets/words/say-bid.ts';
import { sayKind } from '../../sheets/words/say-hours.ts';
import type { JobFound } from '../job/job-found.ts';
import { isNewRow, learnedNow } from '../plan/learned-now.ts';
import { openHostOf } from '../state/open-host.ts';
import type { ActionTools } from './action-tools.ts';
import { checkJob } from './check-job.ts';
import { placeOf, withTable } from './with-table.ts';

const NOTHING =
  'Nothing was taken over: the job has changed since it was planned. Plan it again, and look at its rates.';

export interface RateActions {
  /** @param kind of work, as `sayKind` gives it */
  readonly takeOverRate: (kind: string) => Promise<void>;
}

export function rateActions(tools: ActionTools): RateActions {
  const { store, accept, run } = tools;

  async function add(host: WorkbookHost, before: JobFound, kind: string): Promise<void> {
    const { result } = store.get().planning;
    const { job } = before;
    const isNow = job !== undefined && result?.fingerprint === before.fingerprint;
    const learned = isNow
      ? learnedNow(result.plan, job).works.find((one) => sayKind(one) === kind)
      : undefined;
    if (job === undefined || learned === undefined || !isNewRow(job, learned)) {
      store.send({ type: 'done', notice: NOTHING });
      return;
    }
    const found = await withTable(tools, host, before, 'Work');
    const table = found?.inputs.find(({ name }) => name === 'Work');
    const place = found === undefined ? undefined : placeOf(found, 'Work');
    if (table === undefined || place === undefined) return;
    const row = accept(rowForRate(table, learned, job));
    if (row === undefined) return;
    const added = accept(await host.appendRows(place, [row.value]));
    if (added === undefined) return;
    const { line } = added.value;
    const shown = accept(await host.show({ sheet: place.sheet, cell: `A${line}` }));
    const minutes = sayMinutes(learned.rate.rate, job.shop.decimalSign);
    const price = learned.row.isOurs
      ? 'Plan the job again to have its price by it'
      : 'It is not in the price, as before (Ours: no)';
    const notice = `${minutes} for ${kind}, were taken over: on ${place.sheet}, row ${line}. ${price}.`;
    // Where a cell can't be shown, that is what stands in the pane.
    if (shown !== undefined) store.send({ type: 'done', notice });
    await checkJob(tools);
  }

  return {
    takeOverRate: (kind) =>
      run(async () => {
        const host = openHostOf(store.get());
        if (host === undefined || store.get().busy !== undefined) return;
        store.send({ type: 'busy', with: 'Taking the rate over' });
        // Somebody may have typed since the tables were read.
        const found = await checkJob(tools);
        if (found !== undefined) await add(host, found, kind);
        store.send({ type: 'busy', with: undefined });
      }),
  };
}
