/** Writes what was planned, after asking where sheets are replaced. */
import type { WorkbookHost } from '../../hosts/host.ts';
import { sameName } from '../../planning/job.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { WRITTEN_NOTE } from '../job/find-job.ts';
import { askWriting } from '../plan/ask-writing.ts';
import { writeNote } from '../plan/written-note.ts';
import { isOccupied } from '../state/is-occupied.ts';
import { openHostOf } from '../state/open-host.ts';
import type { PlanResult } from '../state/pane-state.ts';
import type { ActionTools } from './action-tools.ts';
import type { Planner } from '../planner.ts';
import { sayNewTicks } from '../plan/say-ticks.ts';
import { checkJob } from './check-job.ts';
import { keepPlanAs, readTicksNow } from './kept-plans.ts';
import { yieldToBrowser } from '../../hosts/yield-to-browser.ts';

export interface WriteActions {
  /** Writes at once where nothing is replaced; else asks first. */
  readonly askToWrite: () => Promise<void>;
  /** After the question was answered with yes. */
  readonly write: () => Promise<void>;
}

/** What is to be written, and where, of inputs that are still those of the plan. */
interface Ready {
  readonly host: WorkbookHost;
  readonly loaded: Planner;
  readonly result: PlanResult;
  readonly description: WorkbookDescription;
}

export function writeActions(tools: ActionTools): WriteActions {
  const { store, planner, writer, accept, run, services } = tools;

  /** Nothing where there is no sound plan, or one of inputs that have changed: the Plan tab says so. */
  async function prepare(): Promise<Ready | undefined> {
    const host = openHostOf(store.get());
    const { result } = store.get().planning;
    if (host === undefined || result === undefined || result.wrong.length > 0) return undefined;
    store.send({ type: 'writing begun', of: 0 });
    const found = await checkJob(tools);
    if (found?.job === undefined || found.fingerprint !== result.fingerprint) return undefined;
    const { job } = found;
    const loaded = await planner();
    const making = loaded === undefined ? undefined : await writer();
    if (loaded === undefined || making === undefined) return undefined;
    // A large plan takes a while to be laid out: the screen is drawn before.
    await yieldToBrowser();
    // Ticks that were typed since the plan must not go with the old sheets.
    const ticks = await readTicksNow(tools, loaded);
    if (sayNewTicks(store.get().planning) !== undefined) return undefined;
    const { keepsFormulas, planning } = store.get();
    const isWritten = planning.written?.plan === result.plan && ticks !== undefined;
    const plan = isWritten ? loaded.markCut(result.plan, ticks) : result.plan;
    // Hours are no input of the plan: they may have been written down since.
    const description = making.describePlan(loaded.withHoursOf(plan, job), {
      keepsFormulas,
      stamp: result,
      ...(services.pageAddress === undefined ? {} : { pageAddress: services.pageAddress }),
    });
    return { host, loaded, result, description };
  }

  async function writeNow(ready: Ready, replace: readonly string[]): Promise<void> {
    const { host, loaded, result, description } = ready;
    const text = loaded.keepPlan(result);
    // A file that is written takes along what is kept: so it is kept before.
    if (!host.can.writeInPlace) await keepWritten(host, text);
    store.send({ type: 'writing begun', of: description.sheets.length });
    const outcome = await host.write(description, {
      owner: 'tool',
      replace,
      onProgress: (done, of) => store.send({ type: 'writing moved', done, of }),
    });
    const written = accept(outcome);
    if (written === undefined) {
      store.send({ type: 'writing dropped' });
      return;
    }
    const { sheets, file } = written.value;
    if (file !== undefined) services.saveFile(file.name, file.bytes);
    const { plan, fingerprint, tables, day, effort } = result;
    const from = { plan, fingerprint, tables, day, effort };
    const at = services.clock();
    store.send({ type: 'written', sheets, file: file?.name, from, at });
    accept(await host.remember({ [WRITTEN_NOTE]: writeNote(fingerprint, at) }));
    if (host.can.writeInPlace) await keepWritten(host, text);
    await readTicksNow(tools, loaded);
  }

  /** The plan last made is the written one now. */
  async function keepWritten(host: WorkbookHost, text: string): Promise<void> {
    await keepPlanAs(tools, host, 'written-plan', text);
    await keepPlanAs(tools, host, 'plan', undefined);
  }

  return {
    askToWrite: () =>
      run(async () => {
        if (isOccupied(store.get())) return;
        const ready = await prepare();
        const survey = ready === undefined ? undefined : accept(await ready.host.survey());
        if (ready === undefined || survey === undefined) {
          store.send({ type: 'writing dropped' });
          return;
        }
        const question = askWriting(
          ready.description.sheets.map(({ name }) => name),
          survey.value,
        );
        if (question.replaced.length > 0 && ready.host.can.writeInPlace) {
          store.send({ type: 'writing asked', question });
        } else {
          await writeNow(ready, question.replaced);
        }
      }),
    write: () =>
      run(async () => {
        const { writing } = store.get();
        if (writing.kind !== 'asking') return;
        const ready = await prepare();
        if (ready === undefined) {
          store.send({ type: 'writing dropped' });
          return;
        }
        // Only what was asked about may be replaced, whatever has come to stand there since.
        const asked = ready.description.sheets
          .map(({ name }) => name)
          .filter((name) => writing.question.replaced.some((one) => sameName(one, name)));
        await writeNow(ready, asked);
      }),
  };
}
